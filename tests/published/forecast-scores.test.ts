import { describe, expect, it } from 'vitest';
import { normalCdf, normalQuantile } from '../../src/statistics/normal.ts';
import { crpsDays } from '../../src/statistics/scores.ts';
import { crpsNormal } from '../statistics/crps-normal.ts';

const mean = (numbers: readonly number[]) => numbers.reduce((sum, next) => sum + next, 0) / numbers.length;

describe('CRPS of a normal forecast (Gneiting & Raftery 2007, JASA 102:359, eq. 21, sign turned)', () => {
  // Computed by numerical integration and with the R package scoringRules 1.1.1.
  it.each([
    [0, 0, 1, 0.2336949773],
    [1, 0, 1, 0.6024413576],
    [13, 13.2, 0.9, 0.2279836402],
    [15, 13.2, 0.9, 1.3075126395],
  ])('%f under N(%f, %f²)', (happened, centre, deviation, score) => {
    expect(crpsNormal(centre, deviation, happened)).toBeCloseTo(score, 10);
  });

  it('the value in the tests of the R package scoringRules, and scaled by 0.9', () => {
    expect(crpsNormal(0, 1, -3)).toBeCloseTo(2.43657473, 8);
    expect(crpsNormal(0, 1, -3)).toBeCloseTo(2.4365747251, 10);
    expect(crpsNormal(0, 0.9, -2.7)).toBeCloseTo(0.9 * 2.4365747251, 10);
  });
});

describe('CRPS of a forecast over days', () => {
  // Computed with exact fractions in Python.
  it.each([
    [13, 0.13],
    [15, 1.53],
  ])('12 d 0.2, 13 d 0.5, 14 d 0.3, happened on %i', (happened, score) => {
    expect(crpsDays({ first: 12, probabilities: [0.2, 0.5, 0.3] }, happened)).toBeCloseTo(score, 12);
  });

  // Computed with the R package scoringRules 1.1.1 (empirical distribution function).
  it.each([
    [13, 0.2469135802],
    [16, 2.3580246914],
  ])('nine lengths 11, 12, 12, 13, 13, 13, 14, 14, 15, happened on %i', (happened, score) => {
    const probabilities = [1, 2, 3, 2, 1].map((count) => count / 9);
    expect(crpsDays({ first: 11, probabilities }, happened)).toBeCloseTo(score, 10);
  });

  // Computed with the R package scoringRules 1.1.1.
  it('Poisson(2.5), happened 3', () => {
    const probabilities = [Math.exp(-2.5)];
    for (let k = 1; k < 60; k++) probabilities.push(((probabilities[k - 1] ?? 0) * 2.5) / k);
    expect(crpsDays({ first: 0, probabilities }, 3)).toBeCloseTo(0.4576085205, 10);
  });
});

describe('ten normal forecasts together (computed with scipy 1.17.1 and the R package scoringRules 1.1.1)', () => {
  const batch = [
    [13.2, 0.9, 13],
    [13.2, 0.9, 14],
    [13, 1, 12],
    [13.5, 0.8, 15],
    [12.8, 1.2, 13],
    [14, 1, 14],
    [13.1, 0.7, 13],
    [13.4, 0.9, 11],
    [12.9, 1.1, 14],
    [13.6, 0.6, 14],
  ].map(([centre = 0, deviation = 0, happened = 0]) => ({ centre, deviation, happened }));

  it('mean CRPS', () => {
    const scores = batch.map(({ centre, deviation, happened }) => crpsNormal(centre, deviation, happened));
    expect(mean(scores)).toBeCloseTo(0.5871202533, 10);
  });

  // The last is Φ(2/3) = 0.747507462453; the list it comes from has a slip in its seventh digit.
  it('where each fell in its forecast', () => {
    const expected = [
      0.4120704479, 0.8129686013, 0.1586552539, 0.9696036382, 0.5661838326, 0.5, 0.4432015032, 0.0038303806,
      0.8413447461, 0.7475074625,
    ];
    batch.forEach(({ centre, deviation, happened }, index) => {
      expect(normalCdf((happened - centre) / deviation)).toBeCloseTo(expected[index] ?? Number.NaN, 10);
    });
  });
});

describe('points of the normal distribution (mpmath 1.3.0)', () => {
  it.each([
    [0.95, 1.959963984540054],
    [0.9, 1.644853626951473],
    [0.8, 1.281551565545],
    [0.5, 0.674489750196],
  ])('the central %f lies within ± %f', (share, z) => {
    expect(normalQuantile((1 + share) / 2)).toBeCloseTo(z, 12);
  });
});
