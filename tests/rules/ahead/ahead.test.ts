import { describe, expect, it } from 'vitest';
import { formatDay } from '../../../src/days.ts';
import { aheadOf } from '../../../src/rules/ahead/ahead.ts';
import { youngIn } from '../../../src/rules/ahead/weeks.ts';
import { exampleRoom } from '../../example/room.ts';
import { day, room } from '../../rooms.ts';
import { DRAWS, futures, layingPair } from './futures.ts';

/** Every number in plain data. */
function numbersIn(data: unknown): number[] {
  if (typeof data === 'number') return [data];
  if (typeof data !== 'object' || data === null) return [];
  return Object.values(data).flatMap(numbersIn);
}

describe('the weeks ahead', () => {
  it('of an empty room hold nothing, and no figure that is none', () => {
    const ahead = aheadOf(room({}, '2026-05-17'), { weeks: 8 });
    expect(ahead).toMatchObject({
      eggs: 0,
      chicks: 0,
      clutches: 0,
      species: [],
      rest: [],
      events: [],
      basis: [],
    });
    expect(ahead.rings.sizes).toEqual([]);
    expect(ahead.housing).toEqual({ place: null, leaving: [], occupied: [], empty: [] });
    expect(numbersIn(ahead).every(Number.isFinite)).toBe(true);
  });

  it('of a species without a profile or a rate are figures all the same', () => {
    const files = { A: layingPair('A', 4).replace('zebra finch', 'lesser moonfinch') };
    const ahead = aheadOf(room(files, '2026-03-10'), { weeks: 12, draws: 500 });
    expect(numbersIn(ahead).every(Number.isFinite)).toBe(true);
    expect(ahead.total.hatching.mean).toBeGreaterThan(1);
    expect(ahead.basis[0]?.fertility.own).toEqual({ k: 0, n: 0, clutches: 0 });
  });

  it('tell how many eggs, chicks and clutches of all species they are made from, and until when', () => {
    const files = {
      A: layingPair('A', 4),
      B: layingPair('B', 3, ['{date: 2026-03-16, hatched: 2}']).replace('zebra finch', 'star finch'),
    };
    const ahead = aheadOf(room(files, '2026-03-16'), { weeks: 2, draws: 100 });
    expect(ahead).toMatchObject({
      eggs: 5,
      chicks: 2,
      clutches: 2,
      day: day('2026-03-16'),
      until: day('2026-03-29'),
    });
  });

  it('tell how much should have come before the day: nobody looked, or nobody wrote', () => {
    const late = (log: string[], on: string) =>
      aheadOf(room({ A: layingPair('A', 4, log) }, on), { weeks: 8, draws: 500 }).before;
    const none = { mean: 0, low: 0, high: 0 };
    // Sat on from the 4th, they hatch about the 17th and leave the nest in April.
    expect(late([], '2026-03-10')).toEqual({ hatching: none, fledging: none, independent: none });
    const unseen = late([], '2026-03-26');
    expect(unseen.hatching.mean).toBeGreaterThan(1);
    expect(unseen.fledging).toEqual(none);
    // Whoever hatched by a look is no egg any more.
    expect(late(['{date: 2026-03-18, hatched: 4}'], '2026-03-26').hatching).toEqual(none);
  });

  it('tell it up to yesterday: what is expected today is no longer or not yet late', () => {
    for (const on of ['2026-03-16', '2026-03-17', '2026-03-18']) {
      const stood = room({ A: layingPair('A', 4) }, on);
      const { before } = aheadOf(stood, { weeks: 8, draws: DRAWS });
      const until = (to: number) => youngIn(futures(stood), { from: 0, to }, DRAWS).hatching;
      expect(before.hatching, on).toEqual(until(stood.day - 1));
      expect(before.hatching, on).not.toEqual(until(stood.day));
    }
  });

  it('have the birds that come of age and the quarantines that end in them, and no other work', () => {
    const files = {
      'nestlog.yaml': 'quarantine: 30\n',
      'birds.yaml':
        'birds:\n  - {id: X, species: zebra finch, sex: hen, log: [{date: 2026-03-01, arrived: cage 9}]}\n  - {id: Y, species: zebra finch, sex: hen, log: [{date: 2026-03-09, arrived: cage 8}]}\n',
      A: layingPair('A', 4),
    };
    const events = (weeks: number) =>
      aheadOf(room(files, '2026-03-10'), { weeks, draws: 100 }).events.map(({ task, bird, from }) => [
        task,
        bird,
        formatDay(from),
      ]);
    expect(events(1)).toEqual([]);
    expect(events(3)).toEqual([['quarantine-end', 'X', '2026-03-31']]);
    expect(events(4)).toEqual([
      ['quarantine-end', 'X', '2026-03-31'],
      ['quarantine-end', 'Y', '2026-04-08'],
    ]);
  });

  it('are wider the less the room knows of the species', () => {
    const known = aheadOf(exampleRoom(), { weeks: 8, draws: 500 }).basis;
    const of = (name: string) => {
      const share = known.find(({ species }) => species === name)?.fertility ?? { low: 0, high: 0 };
      return share.high - share.low;
    };
    expect(of('star finch')).toBeLessThan(of('melba finch'));
  });

  // Clutches of one species share what is believed of it; two sets of futures differ only by chance.
  it('do not wobble: half the futures tell nearly the same', () => {
    const [all, half] = [2000, 1000].map((draws) => aheadOf(exampleRoom(), { weeks: 8, draws }));
    for (const of of ['hatching', 'fledging', 'independent'] as const) {
      expect(Math.abs((all?.total[of].mean ?? 0) - (half?.total[of].mean ?? 1))).toBeLessThan(0.2);
      expect(Math.abs((all?.total[of].high ?? 0) - (half?.total[of].high ?? 9))).toBeLessThanOrEqual(1);
    }
    expect(half?.rings.sizes.map(({ mm, orderBy }) => [mm, orderBy])).toEqual(
      all?.rings.sizes.map(({ mm, orderBy }) => [mm, orderBy]),
    );
  });
});

it('in the example room it says how many rings of which size to order, and by when', () => {
  const { rings } = aheadOf(exampleRoom(), { weeks: 8 });
  const orders = rings.sizes.filter(({ orderBy }) => orderBy !== null);
  expect(orders.map(({ mm, order, orderBy }) => [mm, order, formatDay(orderBy ?? 0)])).toEqual([
    [2.2, 3, '2026-05-19'],
    [2.6, 12, '2026-05-18'],
  ]);
  expect(rings.lead).toEqual({ days: 10, assumed: false });
});
