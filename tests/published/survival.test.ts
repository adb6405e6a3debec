/** Survival curves against published tables. Digits recomputed with the R packages survival 3.5.3 and npsurv 0.5.0. */

import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { type IntervalStep, turnbullCurve } from '../../src/statistics/interval-censored.ts';
import { logRank } from '../../src/statistics/log-rank.ts';
import { kaplanMeier, type Life } from '../../src/statistics/survival.ts';
import { survivingAt } from '../statistics/surviving.ts';

const reference = process.env.NESTLOG_REFERENCE;

/** `6 6+ 7`: times, with a plus where the life was only followed so far. */
function lives(text: string): Life[] {
  return text
    .trim()
    .split(/\s+/)
    .map((word) => ({ entry: 0, time: Number.parseInt(word, 10), died: !word.endsWith('+') }));
}

// Freireich et al. 1963, Blood 21:699–716: weeks of remission.
const treated = lives('6 6 6 6+ 7 9+ 10 10+ 11+ 13 16 17+ 19+ 20+ 22 23 25+ 32+ 32+ 34+ 35+');
const placebo = lives('1 1 2 2 3 4 4 5 5 8 8 8 8 11 11 12 12 15 17 22 23');

// Miller 1981, Survival Analysis; aml of the R package survival: weeks of remission with and without maintenance.
const maintained = lives('9 13 13+ 18 23 28+ 31 34 45+ 48 161+');
const not = lives('5 5 8 8 12 16+ 23 27 30 33 43 45');

describe('6-MP', () => {
  // Klein & Moeschberger 2003, Survival Analysis, table 4.1 (from memory).
  it('as printed to three and four digits', () => {
    const steps = kaplanMeier(treated);
    expect(steps.map(({ surviving }) => surviving.toFixed(3))).toEqual([
      '0.857',
      '0.807',
      '0.753',
      '0.690',
      '0.627',
      '0.538',
      '0.448',
    ]);
    [0.0764, 0.0869, 0.0963, 0.1068, 0.1141, 0.1282, 0.1346].forEach((se, i) => {
      expect(steps[i]?.se).toBeCloseTo(se, 4);
    });
  });

  it('recomputed, with Greenwood’s error and log-log limits', () => {
    const digits = [
      [6, 21, 3, 0.8571428571, 0.0763603548, 0.6197179553, 0.9515517476],
      [7, 17, 1, 0.8067226891, 0.0869352852, 0.5631465646, 0.9228090192],
      [10, 15, 1, 0.7529411765, 0.096349653, 0.5031995108, 0.8893618352],
      [13, 12, 1, 0.6901960784, 0.1068147078, 0.4316102225, 0.8490659633],
      [16, 11, 1, 0.6274509804, 0.1140538653, 0.367510856, 0.8049121895],
      [22, 7, 1, 0.5378151261, 0.1282337517, 0.2677789368, 0.7467907176],
      [23, 6, 1, 0.4481792717, 0.1345914568, 0.188052006, 0.6801426285],
    ];
    const steps = kaplanMeier(treated);
    expect(steps.map(({ time, atRisk, died }) => [time, atRisk, died])).toEqual(
      digits.map((row) => row.slice(0, 3)),
    );
    steps.forEach(({ surviving, se, low, high }, i) => {
      [surviving, se, low, high].forEach((found, j) => {
        expect(found).toBeCloseTo(digits[i]?.[j + 3] as number, 9);
      });
    });
  });

  // Kleinbaum & Klein, Survival Analysis: 16.79 (from memory).
  it('against placebo: the log-rank test', () => {
    const test = logRank(treated, placebo);
    expect(test?.observed).toBe(9);
    expect(test?.expected).toBeCloseTo(19.250500948, 9);
    expect(test?.variance).toBeCloseTo(6.2569605737, 9);
    expect(test?.chiSquare).toBeCloseTo(16.7929409892, 8);
    expect(test?.chiSquare.toFixed(2)).toBe('16.79');
    expect(test?.p).toBeCloseTo(4.168809109e-5, 13);
  });
});

describe('acute myelogenous leukaemia', () => {
  it('both arms', () => {
    const found = (arm: Life[]) =>
      kaplanMeier(arm).map(({ time, surviving }) => [time, surviving.toFixed(10)]);
    expect(found(maintained)).toEqual([
      [9, '0.9090909091'],
      [13, '0.8181818182'],
      [18, '0.7159090909'],
      [23, '0.6136363636'],
      [31, '0.4909090909'],
      [34, '0.3681818182'],
      [48, '0.1840909091'],
    ]);
    expect(found(not)).toEqual([
      [5, '0.8333333333'],
      [8, '0.6666666667'],
      [12, '0.5833333333'],
      [23, '0.4861111111'],
      [27, '0.3888888889'],
      [30, '0.2916666667'],
      [33, '0.1944444444'],
      [43, '0.0972222222'],
      [45, '0.0000000000'],
    ]);
  });

  it('their errors, and no limits where nobody is left', () => {
    expect(kaplanMeier(maintained)[0]?.se).toBeCloseTo(0.0866784172, 10);
    expect(kaplanMeier(maintained).at(-1)?.se).toBeCloseTo(0.1534927458, 10);
    expect(kaplanMeier(not).at(-1)).toMatchObject({ surviving: 0, se: 0, low: null, high: null });
  });

  it('the log-rank test: 3.4, p = 0.07', () => {
    const test = logRank(maintained, not);
    expect(test?.observed).toBe(7);
    expect(test?.expected).toBeCloseTo(10.6893359923, 9);
    expect(test?.variance).toBeCloseTo(4.0075507459, 9);
    expect(test?.chiSquare).toBeCloseTo(3.396388699, 9);
    expect(test?.p).toBeCloseTo(0.065339322, 9);
  });
});

it('by hand: {2, 2, 3+, 5, 5+, 8+}', () => {
  const [two, five] = kaplanMeier(lives('2 2 3+ 5 5+ 8+'));
  expect(two?.surviving).toBeCloseTo(2 / 3, 12);
  expect(two?.se).toBeCloseTo(0.1924500897, 10);
  expect(two?.low).toBeCloseTo(0.1946166368, 10);
  expect(two?.high).toBeCloseTo(0.9044341643, 10);
  expect(five?.surviving).toBeCloseTo(4 / 9, 12);
  expect(five?.se).toBeCloseTo(0.2222222222, 10);
  expect(five?.low).toBeCloseTo(0.0661867531, 10);
  expect(five?.high).toBeCloseTo(0.7849083672, 9);
});

describe.skipIf(reference === undefined)('the tables of the R package survival', () => {
  it('log-log limits of all arms', () => {
    const text = readFileSync(join(reference as string, 'statistics/km-tables.csv'), 'utf8');
    const arms: Record<string, Life[]> = {
      '6-MP': treated,
      placebo,
      'aml maintained': maintained,
      'aml nonmaintained': not,
    };
    let compared = 0;
    for (const line of text.trim().split('\n').slice(1)) {
      const [arm = '', t, n, d, , surviving, se, , , , , low, high] = line.split(',');
      const step = kaplanMeier(arms[arm] ?? []).find(({ time }) => time === Number(t));
      if (step === undefined) continue;
      compared += 1;
      expect([step.atRisk, step.died]).toEqual([Number(n), Number(d)]);
      expect(step.surviving).toBeCloseTo(Number(surviving), 9);
      if (step.surviving === 0) continue;
      expect(step.se).toBeCloseTo(Number(se), 9);
      expect(step.low).toBeCloseTo(Number(low), 9);
      expect(step.high).toBeCloseTo(Number(high), 9);
    }
    expect(compared).toBe(35);
  });
});

/** Into which stretch which share of all deaths falls; what is left at the end lives on. */
function massesOf(curve: readonly IntervalStep[]): { from: number; to: number; mass: number }[] {
  return curve.map(({ from, time, surviving }, i) => ({
    from,
    to: time,
    mass: (curve[i - 1]?.surviving ?? 1) - surviving,
  }));
}

describe('deaths between two looks', () => {
  it('by hand: (0,1] (1,3] (2,4] (3,∞)', () => {
    const found = massesOf(
      turnbullCurve([
        { entry: 0, left: 0, right: 1 },
        { entry: 0, left: 1, right: 3 },
        { entry: 0, left: 2, right: 4 },
        { entry: 0, left: 3, right: Number.POSITIVE_INFINITY },
      ]),
    );
    expect(found.map(({ from, to }) => [from, to])).toEqual([
      [0, 1],
      [2, 3],
      [3, 4],
    ]);
    [0.25, 0.375, 0.375].forEach((mass, i) => {
      expect(found[i]?.mass).toBeCloseTo(mass, 7);
    });
  });

  // Finkelstein & Wolfe 1985, Biometrics 41:933–945; masses as printed by Fay & Shaw 2010, Journal of Statistical
  // Software 36(2), vignette of the R package interval.
  describe.skipIf(reference === undefined)('breast cosmesis after radiation', () => {
    const radiated = () =>
      readFileSync(join(reference as string, 'statistics/breast-cosmesis.csv'), 'utf8')
        .trim()
        .split('\n')
        .slice(1)
        .map((line) => line.split(','))
        .filter((row) => row[2] === 'Rad')
        .map(([left, right]) => ({
          entry: 0,
          left: Number(left),
          right: right === 'Inf' ? Number.POSITIVE_INFINITY : Number(right),
        }));
    const masses: [number, number, number, number][] = [
      [4, 5, 0.0463, 0.046346774],
      [6, 7, 0.0334, 0.0333633709],
      [7, 8, 0.0887, 0.0886673681],
      [11, 12, 0.0708, 0.0707529218],
      [24, 25, 0.0926, 0.0926458366],
      [33, 34, 0.0818, 0.0817857649],
      [38, 40, 0.1209, 0.1208798274],
      [46, 48, 0.4656, 0.4655581364],
    ];

    it('masses, printed and recomputed, and no others', () => {
      const found = massesOf(turnbullCurve(radiated()));
      expect(found.map(({ from, to }) => [from, to])).toEqual(masses.map((row) => row.slice(0, 2)));
      found.forEach(({ mass }, i) => {
        expect(mass).toBeCloseTo(masses[i]?.[2] as number, 4);
        expect(mass).toBeCloseTo(masses[i]?.[3] as number, 7);
      });
    });

    it('the curve: S(4) = 1, S(5) = 0.9537', () => {
      const curve = turnbullCurve(radiated());
      expect(survivingAt(curve, 4)).toBe(1);
      expect(survivingAt(curve, 5)).toBeCloseTo(0.9537, 4);
    });
  });
});
