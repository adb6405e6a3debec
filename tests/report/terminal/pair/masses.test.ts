import { expect, it } from 'vitest';
import { fateLines } from '../../../../src/report/terminal/pair/fates.ts';
import { day } from '../../../rooms.ts';
import { pair, story } from '../../seasons.ts';

function fates(log: string, on: string): string[] {
  const files = { 'ZF-1': pair('ZF-1', 'zebra finch', log) };
  const [clutch] = story('ZF-1', files, on).clutches;
  return clutch === undefined ? [] : fateLines(clutch, day(on), 120).map((text) => text.trim());
}

it('an egg in the incubator says where it is heading', () => {
  const log = `
    date: 2026-03-03, laid: 1
    date: 2026-03-03, pulled: e1, measured: {e1: 15.2 x 11.2}
    date: 2026-03-04, set: {incubator: all}, weighed: {e1: 1.03}
    date: 2026-03-07, weighed: {e1: 1.00}
    date: 2026-03-10, weighed: {e1: 0.965}
  `;
  const told = (on: string) => fates(log, on).join(' ').split(' · open · ')[1];
  expect(told('2026-03-04')).toBe('15.2 x 11.2 mm, 0.97 cm³ · 1.03 g at day 0');
  expect(told('2026-03-10')).toBe(
    '15.2 x 11.2 mm, 0.97 cm³ · 0.965 g at day 6, 6 % less than 1.03 g · 11–15 % by pipping: on track',
  );
});

it('an egg that gained weight says so', () => {
  const log = `
    date: 2026-03-03, laid: 1, pulled: e1
    date: 2026-03-04, set: {incubator: all}, weighed: {e1: 1.00}
    date: 2026-03-07, weighed: {e1: 1.03}
  `;
  expect(fates(log, '2026-03-07').join(' ')).toContain('1.03 g at day 3, 3 % more than 1.00 g');
});

it('an egg that a hen sat on shows what the scales and the calliper did', () => {
  const log = `date: 2026-03-03, laid: 2, weighed: {e1: 1.03}, measured: {e2: 15.2 x 11.2}
    date: 2026-03-10, weighed: {e1: 0.97}`;
  expect(fates(log, '2026-03-10').map((text) => text.split(' · open')[1])).toEqual([
    ' · 1.03 → 0.97 g',
    ' · 15.2 x 11.2 mm, 0.97 cm³',
  ]);
});

it('a chick’s last weight in the nest stands beside the usual one', () => {
  const log = `
    date: 2026-03-03, laid: 1, sitting
    date: 2026-03-17, after: 2026-03-16, hatched: 1
    date: 2026-03-24, weighed: {c1: 5.2}
    date: 2026-04-06, fledged: 1
    date: 2026-04-20, weighed: {c1: 11.5}
  `;
  expect(fates(log, '2026-05-01').at(-1)).toMatch(/ · 5\.2 g at 7 d \(usual 3\.\d–\d\.\d g\)$/);
});
