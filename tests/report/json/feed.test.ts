import { expect, it } from 'vitest';
import { feedJson } from '../../../src/report/json/feed.ts';
import { HATCHED, pairRoom, plan, SITTING } from '../../rules/feed/rooms.ts';

const json = (lines: readonly string[], on: string) =>
  JSON.parse(feedJson(plan(pairRoom('lavender waxbill', lines), on, 2)));

it('has for each housing and day how much of each food, from the least to the most', () => {
  const { nestlog, portions, housings, batches, totals, assumedHours } = json(HATCHED, '2026-03-20');
  expect([nestlog, portions.length, assumedHours.length]).toEqual([1, 7, 5]);
  const [flight] = housings;
  expect(flight).toMatchObject({
    housing: 'flight 2',
    adults: [{ species: 'lavender waxbill', number: 2 }],
    nests: [{ pair: 'LW-1', need: 'required', parents: 2, hatching: [] }],
  });
  expect(flight.nests[0].young[0]).toEqual({ bird: 'LW-1/1/c1', age: 5, fledged: false, counted: true });
  const [first] = flight.days;
  expect(first).toMatchObject({ date: '2026-03-20', young: { expected: 4, most: 4 }, liveFoodUpTo: 4 });
  expect(first.liveFood.low).toBeLessThan(first.liveFood.likely);
  expect(first.liveFoodPortion.high).toBeCloseTo(first.liveFood.high / 7, 1);
  expect(totals.liveFood.likely).toBeCloseTo(first.liveFood.likely + flight.days[1].liveFood.likely, 1);
  expect(batches[0]).toMatchObject({
    for: '2026-03-20',
    soak: '2026-03-18T19:00',
    drain: '2026-03-19T07:00',
    ready: '2026-03-20T07:00',
  });
});

it('has the window and the number of those that may hatch', () => {
  expect(json(SITTING, '2026-03-12').housings[0].nests[0].hatching).toEqual([
    {
      clutch: 1,
      from: '2026-03-14',
      likely: '2026-03-15',
      to: '2026-03-17',
      eggs: 4,
      counted: true,
      expected: 2.56,
    },
  ]);
});

it('has no number that JSON cannot say', () => {
  expect(feedJson(plan({}, '2026-03-20'))).not.toMatch(/null(?=,?\n.*(low|likely|high))/);
  expect(json(['date: 2026-03-01, paired'], '2026-03-20').housings[0].days[0]).toMatchObject({
    liveFood: { low: 0, likely: 0, high: 0 },
    liveFoodUpTo: null,
  });
});
