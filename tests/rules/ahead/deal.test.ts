import { describe, expect, it } from 'vitest';
import type { Clutch } from '../../../src/room/model.ts';
import { steps } from '../../../src/rules/ahead/beliefs.ts';
import { type Deal, dealt, type SpeciesDraws, seenOf, speciesDraws } from '../../../src/rules/ahead/deal.ts';
import { learnedDurations } from '../../../src/rules/durations.ts';
import { findSpecies } from '../../../src/species/find.ts';
import { randomOf } from '../../../src/statistics/random.ts';
import { room } from '../../rooms.ts';
import { layingPair } from './futures.ts';

/** How far the first clutch has told how it fares, `k of n` for each step. */
function told(more: readonly string[], on: string): string[] {
  const clutch = room(
    {
      A: layingPair(
        'A',
        4,
        more.map((one) => `{${one}}`),
      ),
    },
    on,
  ).pairs[0]?.clutches[0] as Clutch;
  return steps.map((step) => {
    const { k, n } = seenOf(clutch, step);
    return `${k} of ${n}`;
  });
}

describe('what a clutch has told of itself', () => {
  it('is nothing while it is laid', () => {
    expect(told([], '2026-03-04')).toEqual(['0 of 0', '0 of 0', '0 of 0', '0 of 0']);
  });

  it('is what the lamp showed, and no hatching of the clear', () => {
    const lamp = 'date: 2026-03-10, candled: {fertile: [e1, e2, e3], clear: e4}';
    expect(told([lamp], '2026-03-10')).toEqual(['3 of 4', '0 of 0', '0 of 0', '0 of 0']);
    expect(told([lamp, 'date: 2026-03-11, lost: {clear: e4}'], '2026-03-11')[1]).toBe('0 of 0');
    expect(told([lamp, 'date: 2026-03-11, lost: {thrown-out: e4}'], '2026-03-11')[1]).toBe('0 of 0');
  });

  it('is who hatched, left the nest and feeds itself, of those whose turn has come', () => {
    const young = [
      'date: 2026-03-17, hatched: [e1, e2, e3], lost: {dead-in-shell: e4}',
      'date: 2026-03-20, died: c3',
      'date: 2026-04-07, fledged: [c1, c2]',
      'date: 2026-04-20, independent: c1',
    ];
    expect(told(young, '2026-04-20')).toEqual(['4 of 4', '3 of 4', '2 of 3', '1 of 1']);
  });

  it('is no more of a fledgling that was sold before it fed itself; one that died then did not come through', () => {
    const out = ['date: 2026-03-17, hatched: 4', 'date: 2026-04-07, fledged: 4'];
    const later = (fates: string) => told([...out, `date: 2026-04-10, ${fates}`], '2026-04-10')[3];
    expect(later('died: c2')).toBe('0 of 1');
    expect(later('gone: {sold: c3}')).toBe('0 of 0');
    expect(later('independent: [c1, c4], died: c2, gone: {sold: c3}')).toBe('2 of 3');
  });

  it('is no judgement of eggs that our hand took', () => {
    expect(told(['date: 2026-03-06, lost: {given: e1}'], '2026-03-06')[1]).toBe('0 of 0');
  });
});

const DRAWS = 8000;
const average = (numbers: readonly number[]) => numbers.reduce((sum, one) => sum + one, 0) / numbers.length;

/** What is drawn for a species of which 70 % come through each step, clutch mates faring a little alike. */
function drawsOf(species: string): SpeciesDraws {
  const belief = { share: { a: 0.7e9, b: 0.3e9 }, likeness: 0.2, own: { k: 0, n: 0, clutches: 0 } };
  return speciesDraws(species, findSpecies(species, []), {
    draws: DRAWS,
    beliefs: () => ({ fertility: belief, hatchOfFertile: belief, fledge: belief, independence: belief }),
    durations: learnedDurations(room({}, '2026-03-10')),
  });
}

/** What a clutch of so many eggs is dealt in many futures. */
function deals(
  eggs: number,
  {
    toCome = false,
    luck = [],
  }: { toCome?: boolean; luck?: { step: 'fertility' | 'fledge'; seen: { k: number; n: number } }[] } = {},
): Deal[] {
  const laid = `\npair: A\nspecies: zebra finch\nlog:\n  - {date: 2026-03-01, clutch: 1, laid: ${eggs}}\n`;
  const clutch = room({ A: laid }, '2026-03-01').pairs[0]?.clutches[0] as Clutch;
  const shared = drawsOf('zebra finch');
  const chance = randomOf('a clutch');
  return Array.from({ length: DRAWS }, (_, draw) => dealt(clutch, shared, { draw, luck, toCome, chance }));
}

describe('a clutch that is still laid', () => {
  const shares = (eggs: number) => {
    const all = deals(eggs, { toCome: true }).map((deal) => deal.eggs);
    return [4, 5, 6].map((number) => all.filter((one) => one === number).length / DRAWS);
  };

  // Shipped profile: four to six eggs. As the middle 90 % of a normal that is 5 with a deviation of 0.61.
  it('comes to five in three futures of five, and in one each to four or six', () => {
    const [four, five, six] = shares(2);
    expect(four).toBeCloseTo(0.205, 1);
    expect(five).toBeCloseTo(0.589, 1);
    expect(six).toBeCloseTo(0.199, 1);
  });

  it('never comes to fewer than have been laid', () => {
    const [four, five, six] = shares(5);
    expect(four).toBe(0);
    expect(five).toBeCloseTo(0.741, 1);
    expect(six).toBeCloseTo(0.25, 1);
  });

  it('of twelve, which is more than any usual one, has had its last egg', () => {
    expect(new Set(deals(12, { toCome: true }).map((deal) => deal.eggs))).toEqual(new Set([12]));
  });

  it('has the eggs that are there where none are to come', () => {
    expect(new Set(deals(2).map((deal) => deal.eggs))).toEqual(new Set([2]));
  });
});

describe('the luck of a clutch', () => {
  const mean = (k: number, n: number) =>
    average(deals(4, { luck: [{ step: 'fertility', seen: { k, n } }] }).map(({ luck }) => luck.fertility));

  // A likeness of 0.2 makes the species' share worth (1 − 0.2) / 0.2 = 4 eggs of the clutch.
  it('is the species’ before it has told anything', () => {
    expect(mean(0, 0)).toBeCloseTo(0.7, 2);
  });

  it('is drawn to what its own eggs showed: 3 of 4 to 5.8 of 8, 0 of 4 to 2.8 of 8', () => {
    expect(mean(3, 4)).toBeCloseTo(0.725, 2);
    expect(mean(0, 4)).toBeCloseTo(0.35, 2);
  });

  it('is a share whatever is drawn for the species, be it all or none', () => {
    const clutch = room({ A: layingPair('A', 4) }, '2026-03-04').pairs[0]?.clutches[0] as Clutch;
    const shared = drawsOf('zebra finch');
    for (const share of [0, 1]) {
      const drawn = { ...shared, shares: { ...shared.shares, fledge: Float64Array.of(share) } };
      const luck = [{ step: 'fledge' as const, seen: { k: 0, n: 0 } }];
      const chance = randomOf('a clutch');
      expect(dealt(clutch, drawn, { draw: 0, luck, toCome: false, chance }).luck.fledge).toBeCloseTo(
        share,
        6,
      );
    }
  });

  it('of steps that it has behind it is nobody’s', () => {
    const [one] = deals(4, { luck: [{ step: 'fledge', seen: { k: 0, n: 0 } }] });
    expect(one?.luck).toMatchObject({ fertility: 1, hatchOfFertile: 1, independence: 1 });
    expect(one?.luck.fledge).toBeLessThan(1);
  });
});

describe('the days of a clutch', () => {
  // Shipped profile: 12–15 days of sitting, out at 17–22 and by itself at 28–42 days of age; the range is 90 % of clutches.
  it('are those of the profile about its middle, nine in ten within its range', () => {
    const all = deals(4);
    for (const [of, low, high] of [
      ['incubation', 12, 15],
      ['fledging', 17, 22],
      ['independence', 28, 42],
    ] as const) {
      const days = all.map((deal) => deal[of]);
      expect(average(days), of).toBeCloseTo((low + high) / 2, 0);
      expect(days.filter((one) => one >= low && one <= high).length / DRAWS, of).toBeCloseTo(0.9, 1);
    }
  });

  it('begin early as often as late in the days on which they may have begun', () => {
    const starts = deals(4).map(({ start }) => start);
    expect(average(starts)).toBeCloseTo(0.5, 1);
    expect(starts.filter((one) => one < 0.25).length / DRAWS).toBeCloseTo(0.25, 1);
  });
});

describe('what is drawn for a species', () => {
  /** Pearson’s correlation. */
  const together = (a: Float64Array, b: Float64Array) => {
    const about = (all: Float64Array) => {
      const middle = average([...all]);
      return [...all].map((one) => one - middle);
    };
    const [x, y] = [about(a), about(b)];
    const covariance = average(x.map((one, i) => one * (y[i] as number)));
    return covariance / Math.sqrt(average(x.map((one) => one ** 2)) * average(y.map((one) => one ** 2)));
  };

  it('is the same whenever it is asked for', () => {
    expect(drawsOf('zebra finch')).toEqual(drawsOf('zebra finch'));
  });

  it('has nothing to do with what is drawn for another: long sitting there is not long sitting here', () => {
    const [zebra, star] = [drawsOf('zebra finch'), drawsOf('star finch')];
    expect(Math.abs(together(zebra.incubation.means, star.incubation.means))).toBeLessThan(0.05);
    expect(Math.abs(together(zebra.shares.fledge, star.shares.fledge))).toBeLessThan(0.05);
  });

  it('tells nothing of one step by another: who hatches late need not leave the nest late', () => {
    const { incubation, fledging, independence, shares } = drawsOf('zebra finch');
    for (const [a, b] of [
      [incubation.means, fledging.means],
      [fledging.means, independence.means],
      [shares.fertility, shares.hatchOfFertile],
      [shares.fledge, shares.independence],
    ] as const)
      expect(Math.abs(together(a, b))).toBeLessThan(0.05);
  });
});
