import { describe, expect, it } from 'vitest';
import {
  ALL,
  begun,
  parseSeasons,
  seasonName,
  seasonOf,
  seasonsMeant,
  seasonsName,
} from '../../../src/rules/season/seasons.ts';
import { day } from '../../rooms.ts';
import { clutches, FOUR, waxbills } from './rooms.ts';

const NEW_YEAR = { month: 1, date: 1 };
const JULY = { month: 7, date: 1 };

describe('the season of a day', () => {
  it.each([
    ['2026-01-01', NEW_YEAR, 2026],
    ['2026-12-31', NEW_YEAR, 2026],
    ['2026-06-30', JULY, 2025],
    ['2026-07-01', JULY, 2026],
    ['2027-01-15', JULY, 2026],
    ['2026-02-27', { month: 2, date: 29 }, 2025],
    ['2026-02-28', { month: 2, date: 29 }, 2026],
    ['2028-02-28', { month: 2, date: 29 }, 2027],
  ])('%s', (on, start, year) => {
    expect(seasonOf(day(on), start)).toBe(year);
  });
});

describe('its name', () => {
  it.each([
    [2026, NEW_YEAR, '2026'],
    [2026, JULY, '2026/27'],
    [1999, JULY, '1999/00'],
    [2026, { month: 1, date: 2 }, '2026/27'],
  ])('%i', (year, start, name) => {
    expect(seasonName(year, start)).toBe(name);
  });

  it('of several', () => {
    expect(seasonsName(ALL, JULY)).toBe('all');
    expect(seasonsName({ from: 2024, to: 2024 }, NEW_YEAR)).toBe('2024');
    expect(seasonsName({ from: ALL.from, to: 2024 }, NEW_YEAR)).not.toBe('all');
    expect(seasonsName({ from: 2024, to: ALL.to }, NEW_YEAR)).not.toBe('all');
    expect(seasonsName({ from: 2024, to: 2026 }, JULY)).toBe('2024/25..2026/27');
  });
});

describe('what is asked for', () => {
  it.each([
    ['2025', { from: 2025, to: 2025 }],
    ['2025/26', { from: 2025, to: 2025 }],
    ['1999/00', { from: 1999, to: 1999 }],
    ['2024..2026', { from: 2024, to: 2026 }],
    ['2024/25..2025/26', { from: 2024, to: 2025 }],
    ['all', ALL],
    ['2026..2024', null],
    ['2025/27', null],
    ['25', null],
    ['2025..', null],
    ['2024..2025..2026', null],
    ['..2025', null],
    ['', null],
    ['everything', null],
  ])('%s', (text, expected) => {
    expect(parseSeasons(text)).toEqual(expected);
  });
});

describe('what is none, but seems meant as one', () => {
  it.each([
    ['2025-26', '2025/26 or 2025..2026'],
    ['25/26', '2025/26 or 2025..2026'],
    [' 25 -- 26 ', '2025/26 or 2025..2026'],
    ['LW-25/26', ''],
    ['2025/2026', '2025/26 or 2025..2026'],
    ['2025–26', '2025/26 or 2025..2026'],
    ['2024-2026', '2024..2026'],
    ['2024.2026', '2024..2026'],
    ['2026-2024', ''],
    ['26', '2026'],
    ['2025,2026', '2025/26 or 2025..2026'],
    ['All', 'all'],
    ['LW-1', ''],
  ])('%s', (text, season) => {
    expect(seasonsMeant(text)).toBe(season);
  });
});

describe('when a clutch was begun', () => {
  it('is the day of its first egg', () => {
    const [clutch] = clutches({ 'LW-1': waxbills(FOUR) }, '2026-03-20');
    expect(clutch && begun(clutch)).toBe(day('2026-03-01'));
  });

  it('of eggs that were seen is that day, though they hatched sooner than their kind does', () => {
    const log = 'date: 2026-01-01, laid: 1\n date: 2026-01-02, laid: 1\n date: 2026-01-09, hatched: e1';
    const [clutch] = clutches({ 'LW-1': waxbills(log) }, '2026-01-09');
    expect(clutch && begun(clutch)).toBe(day('2026-01-01'));
  });

  it('of a brood found in January is the year before, a short sitting earlier', () => {
    const [clutch] = clutches({ 'LW-1': waxbills('date: 2026-01-03, hatched: 2') }, '2026-01-03');
    expect(clutch && begun(clutch)).toBe(day('2025-12-23'));
    // Six days old, they hatched on 28 December.
    const [older] = clutches(
      { 'LW-1': waxbills('date: 2026-01-03, hatched: 2, aged: {6: all}') },
      '2026-01-03',
    );
    expect(older && begun(older)).toBe(day('2025-12-17'));
  });
});
