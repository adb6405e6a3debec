/** Survival of nests by days of exposure. Digits recomputed with R and Python, which agree. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { stageSurvival } from '../../src/statistics/nest-survival.ts';

const reference = process.env.NESTLOG_REFERENCE;

// Klett, Duebbert, Faanes & Higgins 1986, US Fish and Wildlife Service Resource Publication 158, “Estimating nest
// success”: the daily rate 0.96 raised to the days of laying and incubation. 4 losses in 100 days make that rate.
it.each([
  [2, 0.922, 0.9216],
  [3, 0.885, 0.884736],
  [35, 0.2396, 0.2396034993],
  [30, 0.2939, 0.2938576432],
])('a daily survival of 0.96 over %i days', (days, printed, exact) => {
  const { period } = stageSurvival(4, 100, days);
  expect(period).toBeCloseTo(exact, 10);
  expect(Math.abs((period ?? 0) - printed)).toBeLessThan(0.0005);
});

// Mayfield 1961 and 1975: 35 losses in 878 nest-days, incubation of 14 days (the counts from memory).
it('Kirtland’s warbler', () => {
  const { daily, se, period, low, high } = stageSurvival(35, 878, 14);
  expect(daily).toBeCloseTo(0.9601366743, 10);
  expect(se).toBeCloseTo(0.0066024639, 10);
  expect((se ?? 0) ** 2).toBeCloseTo(4.359252961e-5, 13);
  expect(period).toBeCloseTo(0.5657998423, 10);
  expect(low).toBeCloseTo(0.457643106, 9);
  expect(high).toBeCloseTo(0.6680334738, 9);
});

it.each([
  [6, 210, 14, 0.6664264379, 0.4301026381, 0.8409836372],
  [6, 213.5, 26, 0.4765689726, 0.2267433889, 0.738696854],
])(
  '%i losses in %d days, a stage of %i: limits normal on the logit',
  (losses, exposure, days, period, low, high) => {
    const found = stageSurvival(losses, exposure, days);
    expect(found.period).toBeCloseTo(period, 9);
    expect(found.low).toBeCloseTo(low, 9);
    expect(found.high).toBeCloseTo(high, 9);
  },
);

it('nothing lost in 120 days: the exact binomial bound', () => {
  expect(stageSurvival(0, 120, 1)).toMatchObject({ daily: 1, se: 0, period: 1, high: 1 });
  expect(stageSurvival(0, 120, 1).low).toBeCloseTo(0.9697270274, 10);
  expect(stageSurvival(0, 120, 14).low).toBeCloseTo(0.6502689258, 10);
});

interface Nest {
  lost: boolean;
  exposure: number;
  columns: Record<string, number>;
}

/** Exposure ends with the last look that found the nest in course, of failed nests in the middle of the last interval. */
function nestsOf(file: string): Nest[] {
  const text = readFileSync(join(reference as string, 'nests', file), 'utf8').replace(/"/g, '');
  const [head = '', ...lines] = text.trim().split('\n');
  return lines.map((line) => {
    const cells = line.split(',');
    const columns = Object.fromEntries(head.split(',').map((name, i) => [name, Number(cells[i])]));
    const { FirstFound = 0, LastPresent = 0, LastChecked = 0, Fate = 0 } = columns;
    const lost = Fate === 1;
    return {
      lost,
      exposure: LastPresent - FirstFound + (lost ? (LastChecked - LastPresent) / 2 : 0),
      columns,
    };
  });
}

function survivalOf(nests: readonly Nest[]) {
  const exposure = nests.reduce((sum, nest) => sum + nest.exposure, 0);
  return stageSurvival(nests.filter(({ lost }) => lost).length, exposure, 26);
}

describe.skipIf(reference === undefined)('sets of nests', () => {
  it('killdeer (the example set of Program MARK)', () => {
    const { losses, exposure, daily, se } = survivalOf(nestsOf('killdeer.csv'));
    expect([losses, exposure]).toEqual([6, 213.5]);
    expect(daily).toBeCloseTo(0.9718969555, 10);
    expect(se).toBeCloseTo(0.0113106576, 10);
  });

  it('mallard (Rotella, Dinsmore & Shaffer 2004, Animal Biodiversity and Conservation 27:187–204)', () => {
    const nests = nestsOf('mallard.csv');
    const { losses, exposure, daily, se } = survivalOf(nests);
    expect([nests.length, losses, exposure]).toEqual([565, 317, 6594]);
    expect(daily).toBeCloseTo(0.951926, 6);
    expect(se).toBeCloseTo(0.002634, 6);
  });

  it.each([
    ['Native', 168, 108, 1958.5, 0.944855757, 0.0051578779],
    ['Planted', 321, 165, 3708, 0.9555016181, 0.0033862418],
  ])('mallard, %s cover', (cover, count, losses, exposure, daily, se) => {
    const nests = nestsOf('mallard.csv').filter(({ columns }) => columns[cover] === 1);
    const found = survivalOf(nests);
    expect([nests.length, found.losses, found.exposure]).toEqual([count, losses, exposure]);
    expect(found.daily).toBeCloseTo(daily, 10);
    expect(found.se).toBeCloseTo(se, 10);
  });
});
