import { describe, expect, it } from 'vitest';
import { beliefsOf, steps } from '../../../src/rules/ahead/beliefs.ts';
import { betaInterval, betaMean } from '../../../src/statistics/beta.ts';
import { type Files, room } from '../../rooms.ts';

/** A clutch of four, all fertile, of which so many hatched, each in a pair of its own. */
function hatchedOf(species: string, hatched: readonly number[]): Files {
  const journals = hatched.map((k, i) => {
    const id = `${species.slice(0, 2).toUpperCase()}-${i + 1}`;
    const lost = k < 4 ? [`  - {date: 2026-01-24, lost: {dead-in-shell: ${4 - k}}}`] : [];
    return [
      id,
      `
pair: ${id}
species: ${species}
log:
  - {date: 2026-01-01, clutch: 1, laid: 1}
  - {date: 2026-01-04, laid: 3, sitting}
  - {date: 2026-01-12, candled: {fertile: all}}
${k > 0 ? `  - {date: 2026-01-17, hatched: ${k}}\n` : ''}${lost.join('\n')}
`,
    ] as const;
  });
  return Object.fromEntries(journals);
}

const width = (files: Files, species: string) => {
  const { low, high } = betaInterval(beliefsOf(room(files, '2026-03-01'))(species).hatchOfFertile.share, 0.8);
  return high - low;
};
const mean = (files: Files, species: string) =>
  betaMean(beliefsOf(room(files, '2026-03-01'))(species).hatchOfFertile.share);

describe('what is believed of a species', () => {
  it('is a wide guess in a room without clutches', () => {
    const none = beliefsOf(room({}, '2026-03-01'))('star finch');
    for (const step of steps) {
      const { share, own } = none[step];
      expect(own).toEqual({ k: 0, n: 0, clutches: 0 });
      expect(betaMean(share)).toBeGreaterThan(0.75);
      const { low, high } = betaInterval(share, 0.8);
      expect(high - low).toBeGreaterThan(0.3);
    }
  });

  it('grows narrower with each clutch of its own', () => {
    const widths = [[], [3], [3, 3, 3], Array(10).fill(3)].map((all) =>
      width(hatchedOf('star finch', all), 'star finch'),
    );
    expect(widths).toEqual([...widths].sort((a, b) => b - a));
    expect(new Set(widths).size).toBe(4);
  });

  it('comes from its own clutches where there are many, not from the guess', () => {
    expect(mean(hatchedOf('star finch', Array(12).fill(1)), 'star finch')).toBeLessThan(0.36);
  });

  it('is lent by the other species where it has none, but not as if they were its own', () => {
    const others = hatchedOf('star finch', Array(12).fill(1));
    expect(mean(others, 'zebra finch')).toBeLessThan(0.5);
    expect(width(others, 'zebra finch')).toBeGreaterThan(width(others, 'star finch'));
  });

  it('gives the species’ figures as the season’s book has them', () => {
    const { own } = beliefsOf(room(hatchedOf('star finch', [3, 2]), '2026-03-01'))(
      'star finch',
    ).hatchOfFertile;
    expect(own).toEqual({ k: 5, n: 8, clutches: 2 });
  });

  it('finds clutch mates more alike where whole clutches fail than where each loses one', () => {
    const likeness = (all: number[]) =>
      beliefsOf(room(hatchedOf('star finch', all), '2026-03-01'))('star finch').hatchOfFertile.likeness;
    expect(likeness([4, 4, 0, 0, 4, 4, 0, 0])).toBeGreaterThan(0.45);
    expect(likeness([2, 2, 2, 2, 2, 2, 2, 2])).toBeLessThan(0.15);
  });

  /** How many eggs the belief is worth, the guess of two taken off. */
  const worth = (files: Files, species: string) => {
    const { share, likeness } = beliefsOf(room(files, '2026-03-01'))(species).hatchOfFertile;
    return { eggs: share.a + share.b - 2, likeness };
  };

  // Kish 1965: n eggs in clutches of m are worth n / (1 + (m − 1) · likeness) strangers.
  it('is worth fewer eggs than were counted, as clutch mates fare alike', () => {
    const { eggs, likeness } = worth(hatchedOf('star finch', [3, 2, 4, 0]), 'star finch');
    expect(likeness).toBeGreaterThan(0.1);
    expect(eggs).toBeCloseTo(16 / (1 + 3 * likeness), 9);
  });

  it('is worth no more than twelve eggs where only neighbours have told it', () => {
    expect(worth(hatchedOf('star finch', Array(12).fill(2)), 'zebra finch').eggs).toBeCloseTo(12, 9);
    const { eggs, likeness } = worth(hatchedOf('star finch', [3]), 'zebra finch');
    expect(eggs).toBeCloseTo(4 / (1 + 3 * likeness), 9);
  });

  it('is worth the less where the neighbours fare differently among themselves', () => {
    const files = {
      ...hatchedOf('star finch', Array(12).fill(0)),
      ...hatchedOf('Gouldian finch', Array(12).fill(4)),
    };
    expect(worth(files, 'zebra finch').eggs).toBeLessThan(4);
    expect(mean(files, 'zebra finch')).toBeGreaterThan(0.5);
    expect(mean(files, 'zebra finch')).toBeLessThan(0.8);
  });

  it('takes clutch mates for a little alike until two clutches of a species can be compared', () => {
    const likeness = (all: number[]) => worth(hatchedOf('star finch', all), 'star finch').likeness;
    expect([likeness([]), likeness([3])]).toEqual([0.2, 0.2]);
    // Once two can be compared, what they show counts 1 to 10 against the guess.
    const [one, other] = [likeness([4, 0]), likeness([2, 2])];
    expect(one).toBeGreaterThan(0.2);
    expect(one).toBeLessThan(0.4);
    expect(other).toBeLessThan(0.2);
    expect(other).toBeGreaterThan(0.1);
  });

  it('counts only clutches that have told something', () => {
    const sat = '\npair: Z\nspecies: star finch\nlog:\n  - {date: 2026-02-27, clutch: 1, laid: 1}\n';
    const own = beliefsOf(room({ ...hatchedOf('star finch', [3, 2]), Z: sat }, '2026-03-01'))('star finch');
    expect([own.fertility.own, own.hatchOfFertile.own, own.independence.own]).toEqual([
      { k: 8, n: 8, clutches: 2 },
      { k: 5, n: 8, clutches: 2 },
      { k: 0, n: 0, clutches: 0 },
    ]);
  });
});
