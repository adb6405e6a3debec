import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import type { Room } from '../../src/room/fold.ts';
import type { Beliefs } from '../../src/rules/ahead/beliefs.ts';
import { coursesOf } from '../../src/rules/ahead/courses.ts';
import { NEVER } from '../../src/rules/ahead/fate.ts';
import { prospectsOf } from '../../src/rules/ahead/prospects.ts';
import { countBy } from '../../src/rules/ahead/weeks.ts';
import { learnedDurations } from '../../src/rules/durations.ts';
import { type Beta, logBeta } from '../../src/statistics/beta.ts';
import { designEffect } from '../../src/statistics/design-effect.ts';
import { estimateOf } from '../../src/statistics/estimate.ts';
import { room } from '../rooms.ts';

const DRAWS = 40_000;
/** A share that is known, members that are strangers: as near as a beta distribution comes to them. */
const SURE = 1e9;
const STRANGERS = 1e-9;

const certain = (p: number): Beta => ({ a: p * SURE, b: (1 - p) * SURE });

/** Beliefs in which every egg is fertile and hatching is as asked. */
function hatching(share: Beta, likeness: number): Beliefs {
  const own = { k: 0, n: 0, clutches: 0 };
  const all = { share: certain(1 - 1e-9), likeness: STRANGERS, own };
  return { fertility: all, hatchOfFertile: { share, likeness, own }, fledge: all, independence: all };
}

/** How often the futures have 0, 1, 2 … of the eggs hatched. */
function sharesOf(stood: Room, beliefs: Beliefs): { shares: number[]; counts: Int32Array } {
  const prospects = prospectsOf(stood).prospects.filter(({ is }) => is.stage === 'egg' && is.toCome === null);
  const courses = coursesOf(prospects, {
    day: stood.day,
    draws: DRAWS,
    beliefs: () => beliefs,
    durations: learnedDurations(stood),
  });
  const counts = countBy(
    courses.map(({ hatched }) => hatched),
    { from: 0, to: NEVER - 1 },
    DRAWS,
  );
  const shares = Array.from(
    { length: prospects.length + 1 },
    (_, k) => counts.filter((n) => n === k).length / DRAWS,
  );
  return { shares, counts };
}

/** Eggs seen one by one, so that no look says anything of what may have hatched. */
const clutch = (pair: string, eggs: number) => `
  pair: ${pair}
  species: zebra finch
  log:
    - {date: 2026-03-01, clutch: 1, laid: 1}
${Array.from({ length: eggs - 1 }, (_, i) => `    - {date: 2026-03-0${i + 2}, laid: 1}\n`).join('')}
    - {date: 2026-03-05, sitting}
`;
const one = room({ A: clutch('A', 4) }, '2026-03-06');
const four = room(
  Object.fromEntries(['A', 'B', 'C', 'D'].map((pair) => [pair, clutch(pair, 1)])),
  '2026-03-06',
);

/** Four standard errors of a share. */
const within = (p: number) => 4 * Math.sqrt((p * (1 - p)) / DRAWS) + 1e-6;

function choose(n: number, k: number): number {
  return k === 0 ? 1 : (choose(n - 1, k - 1) * n) / k;
}

describe('hatchings of four eggs of one clutch', () => {
  it.each([0.2, 0.5, 0.85])('that share nothing are binomial, p = %f', (p) => {
    const { shares, counts } = sharesOf(one, hatching(certain(p), STRANGERS));
    shares.forEach((share, k) => {
      const expected = choose(4, k) * p ** k * (1 - p) ** (4 - k);
      expect(Math.abs(share - expected)).toBeLessThan(within(expected));
    });
    expect(estimateOf(counts).mean).toBeCloseTo(4 * p, 1);
  });

  // Predictive counts of four after Beta(4, 2), computed in R and mpmath. Likeness 1/7 is a beta of weight 6.
  const BETA_4_2 = [0.0396825397, 0.126984127, 0.2380952381, 0.3174603175, 0.2777777778];
  it('that share their luck are beta-binomial', () => {
    const { shares, counts } = sharesOf(one, hatching(certain(4 / 6), 1 / 7));
    shares.forEach((share, k) => {
      expect(Math.abs(share - (BETA_4_2[k] as number))).toBeLessThan(within(BETA_4_2[k] as number));
    });
    // Quantiles of these shares: 0.0397 + 0.1270 passes 0.1 at one egg, 0.7222 is below 0.9 and four eggs reach it.
    expect(estimateOf(counts)).toMatchObject({ low: 1, high: 4 });
  });

  it('of four clutches are beta-binomial too where only the share is not known', () => {
    const { shares } = sharesOf(four, hatching({ a: 4, b: 2 }, STRANGERS));
    shares.forEach((share, k) => {
      expect(Math.abs(share - (BETA_4_2[k] as number))).toBeLessThan(within(BETA_4_2[k] as number));
    });
  });

  // Mean n·a/(a+b) and variance n·a·b·(a+b+n) / ((a+b)²·(a+b+1)): Johnson, Kemp & Kotz, Univariate Discrete
  // Distributions, section 6.2.2 (from memory). Likeness is 1/(a+b+1).
  it.each([
    { a: 8, b: 2 },
    { a: 1, b: 1 },
    { a: 0.5, b: 0.3 },
  ])('have the mean and variance of the closed form, %o', ({ a, b }) => {
    const n = 4;
    const { counts, shares } = sharesOf(one, hatching(certain(a / (a + b)), 1 / (a + b + 1)));
    const mean = (n * a) / (a + b);
    const variance = (n * a * b * (a + b + n)) / ((a + b) ** 2 * (a + b + 1));
    const found = counts.reduce((sum, k) => sum + k, 0) / DRAWS;
    const squares = counts.reduce((sum, k) => sum + (k - found) ** 2, 0) / DRAWS;
    expect(Math.abs(found - mean)).toBeLessThan(4 * Math.sqrt(variance / DRAWS));
    expect(squares / variance).toBeCloseTo(1, 1);
    const none = Math.exp(logBeta(a, b + n) - logBeta(a, b));
    expect(Math.abs((shares[0] as number) - none)).toBeLessThan(within(none));
  });
});

/**
 * Great tits in nest boxes, Scotland 2016–2018 (Womack et al., bioRxiv 2022.07.01.498449; data MIT, copyright 2022
 * Pablo Capilla-Lasheras). Known of the data: hatched 504 of 696, fledged 442 of 504.
 */
const folder = process.env.NESTLOG_REFERENCE;
const title = 'the wild birds that the first guess is put beside';
describe.skipIf(!folder)(folder ? title : `${title} (skipped: NESTLOG_REFERENCE names no folder)`, () => {
  const rowsOf = () =>
    readFileSync(join(folder ?? '', 'nests/greattit_scotland_nests.csv'), 'utf8')
      .trim()
      .split('\n')
      .slice(1)
      .map((line) => line.replaceAll('"', '').split(',').slice(6, 9).map(Number));
  const likeness = (clusters: { k: number; n: number }[]) => {
    const n = clusters.reduce((sum, one) => sum + one.n, 0);
    const size = clusters.reduce((sum, one) => sum + one.n ** 2, 0) / n;
    return {
      k: clusters.reduce((sum, one) => sum + one.k, 0),
      n,
      alike: (designEffect(clusters) - 1) / (size - 1),
    };
  };

  it('hatched in nests that were alike by 0.36, and fledged by 0.73', () => {
    const rows = rowsOf();
    const hatched = likeness(rows.map(([eggs = 0, chicks = 0]) => ({ k: chicks, n: eggs })));
    const fledged = likeness(rows.map(([, chicks = 0, out = 0]) => ({ k: out, n: chicks })));
    expect(hatched).toMatchObject({ k: 504, n: 696 });
    expect(fledged).toMatchObject({ k: 442, n: 504 });
    expect(hatched.alike).toBeCloseTo(0.36, 2);
    expect(fledged.alike).toBeCloseTo(0.73, 2);
  });
});
