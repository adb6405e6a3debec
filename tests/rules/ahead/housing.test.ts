import { describe, expect, it } from 'vitest';
import { formatDay } from '../../../src/days.ts';
import { housingAhead } from '../../../src/rules/ahead/housing.ts';
import { weekly, weeksFrom } from '../../../src/rules/ahead/weeks.ts';
import { broodsOf } from '../../../src/rules/brood.ts';
import { learnedDurations } from '../../../src/rules/durations.ts';
import { type Files, room } from '../../rooms.ts';
import { DRAWS, futures, layingPair } from './futures.ts';

function housing(files: Files, on: string, number = 12) {
  const stood = room(files, on);
  const courses = futures(stood);
  const weeks = weekly(courses, weeksFrom(stood.day, number), DRAWS);
  return housingAhead(stood, courses, {
    broods: broodsOf(stood, learnedDurations(stood)),
    weeks,
    draws: DRAWS,
  });
}

const REARED = [
  '{date: 2026-03-15, hatched: 4}',
  '{date: 2026-04-04, fledged: 4}',
  '{date: 2026-04-20, independent: 4}',
];
const NEXT = ['{date: 2026-04-18, clutch: 2, laid: 1}', '{date: 2026-04-22, laid: 4, sitting}'];

describe('young that must leave', () => {
  it('are those that feed themselves beside their parents', () => {
    const { leaving } = housing({ A: layingPair('A', 4, REARED) }, '2026-04-21');
    expect(leaving).toMatchObject([
      { pair: 'A', clutch: 'A/1', housing: 'cage A', ready: 4, days: null, nextClutch: null },
    ]);
  });

  it('are no longer those that were moved', () => {
    const one = [
      ...REARED,
      '{date: 2026-04-21, moved: {c1: young flight, c2: young flight, c3: young flight}}',
    ];
    expect(housing({ A: layingPair('A', 4, one) }, '2026-04-22').leaving).toMatchObject([{ ready: 1 }]);
  });

  it('are those to come, with the days and the hatch that they should be gone by', () => {
    const fed = REARED.slice(0, 2);
    const [first, next] = housing({ A: layingPair('A', 4, [...fed, ...NEXT]) }, '2026-04-23').leaving;
    expect(first).toMatchObject({ clutch: 'A/1', ready: 0, nextClutch: 'A/2' });
    expect(first?.young.mean).toBeGreaterThan(3);
    expect(first?.days?.to).toBeGreaterThan(first?.days?.from ?? 0);
    expect(formatDay(first?.nextHatch?.from ?? 0) > '2026-04-28').toBe(true);
    expect(next?.clutch).toBe('A/2');
  });
});

it('fostered young must leave the pair that feeds them, not the one that laid them', () => {
  const own = layingPair('A', 4, [...REARED.slice(0, 1), '{date: 2026-03-16, fostered: {B: [c1, c2]}}']);
  const { leaving } = housing({ A: own, B: layingPair('B', 4) }, '2026-03-17');
  expect(leaving.map(({ pair, clutch, housing: where }) => [pair, clutch, where])).toContainEqual([
    'B',
    'A/1',
    'cage B',
  ]);
  expect(leaving.find(({ pair }) => pair === 'A')?.young.high).toBeLessThanOrEqual(2);
});

it('a bird on loan leaves its place to others', () => {
  const list = (log: string) =>
    `birds:\n  - {id: X, log: [{date: 2026-01-01, arrived: cage 9}${log}]}\n  - {id: Y, log: [{date: 2026-02-01, arrived: cage 9}, {date: 2026-02-20, moved: cage 8}]}\n`;
  const most = (log: string) =>
    housing({ 'birds.yaml': list(log) }, '2026-04-01').occupied.find(
      ({ housing: where }) => where === 'cage 9',
    );
  expect(most('')).toMatchObject({ now: 1, most: 2 });
  expect(most(', {date: 2026-01-05, gone: lent}, {date: 2026-03-01, back}')).toMatchObject({
    now: 1,
    most: 1,
  });
});

describe('where weaned young go', () => {
  const moves = '{date: 2026-04-22, moved: {c1: young flight, c2: young flight, c3: young flight}}';
  const files = {
    A: layingPair('A', 4, [
      ...REARED,
      moves,
      '{date: 2026-05-02, gone: {sold: [c1, c2]}}',
      '{date: 2026-05-03, clutch: 2, laid: 1}',
      '{date: 2026-05-07, laid: 4, sitting}',
    ]),
  };

  it('is where most of them went before, with the most that it ever held', () => {
    const { place } = housing(files, '2026-05-08');
    expect(place).toMatchObject({ housing: 'young flight', went: 3, moved: 3, now: 1, most: 3 });
    expect(formatDay(place?.mostOn ?? 0)).toBe('2026-04-22');
  });

  it('fills week by week if nobody leaves', () => {
    const weeks = housing(files, '2026-05-08').place?.weeks ?? [];
    expect(weeks[0]?.birds).toEqual({ mean: 1, low: 1, high: 1 });
    weeks.slice(1).forEach(({ birds }, i) => {
      expect(birds.mean).toBeGreaterThanOrEqual(weeks[i]?.birds.mean ?? 0);
    });
    expect(weeks.at(-1)?.birds.mean).toBeGreaterThan(2);
  });

  it('is not known while none was ever moved', () => {
    expect(housing({ A: layingPair('A', 4) }, '2026-03-06').place).toBeNull();
  });
});

it('each housing is told with the birds that feed themselves there, and the most that ever did', () => {
  const moved = '{date: 2026-04-22, moved: {c1: young flight, c2: young flight}}';
  const sold = '{date: 2026-04-25, gone: {sold: c1}}';
  const { occupied } = housing({ A: layingPair('A', 4, [...REARED, moved, sold]) }, '2026-04-26');
  expect(occupied.map(({ housing: name, now, most }) => [name, now, most])).toEqual([
    ['cage A', 2, 4],
    ['young flight', 1, 2],
  ]);
});

it('a housing stands empty where nobody of the record lives today', () => {
  const birds = `
    birds:
      - id: ZF-1
        species: zebra finch
        log:
          - {date: 2026-01-01, arrived: cage 9}
          - {date: 2026-02-01, moved: flight 1}
      - id: ZF-2
        species: zebra finch
        log:
          - {date: 2026-01-01, arrived: cage 8}
          - {date: 2026-02-01, died: unknown}
  `;
  expect(housing({ 'birds.yaml': birds }, '2026-03-01').empty).toEqual(['cage 8', 'cage 9']);
  expect(housing({ 'birds.yaml': birds }, '2026-01-15').empty).toEqual([]);
});
