import { describe, expect, it } from 'vitest';
import { besideLines, comparisonLines } from '../../../../src/report/terminal/season/comparison.ts';
import type { Comparison, RateComparison } from '../../../../src/rules/season/compare.ts';
import { measureWords } from '../../../../src/rules/season/measures/index.ts';
import { page } from '../../seasons.ts';

const words = { measures: measureWords, others: 'all others' };
const one: RateComparison = {
  measure: 'fertility',
  group: 'LW-1',
  rate: 0.9,
  other: 0.5,
  difference: 0.4,
  low: 0.1,
  high: 0.6,
  confidence: 0.95,
  shown: true,
};
const all = (comparison: Partial<Comparison>) =>
  comparisonLines({ rates: [], survival: [], ...comparison }, words, page(200));

describe('what differences amount to', () => {
  it('those that the numbers show, then what they cannot', () => {
    expect(all({ rates: [one, { ...one, group: 'LW-2', shown: false }] })).toEqual([
      '  LW-1: more fertile: 90 % against 50 % of all others; the difference lies at +10 to +60 points.',
      '  Beside that, no difference that these numbers could show.',
    ]);
  });

  it('none is said as plainly', () => {
    expect(all({ rates: [{ ...one, shown: false }] })).toEqual([
      '  No difference that these numbers could show.',
    ]);
    expect(all({})).toEqual([]);
  });

  it('survival of chicks in a sentence', () => {
    const test = {
      group: 'cage 2',
      observed: 6,
      expected: 2.5,
      variance: 1,
      chiSquare: 9,
      designEffect: 1,
      p: 0.002,
      adjusted: 0.01,
      shown: true,
    };
    expect(all({ survival: [test] })[0]).toBe(
      '  cage 2: chicks survived worse than all others: 6 died where 2.5 were to be expected.',
    );
  });
});

it('every rate beside an earlier one', () => {
  expect(besideLines({ rates: [one], survival: [] }, measureWords, page())).toEqual([
    '            now  before  the difference lies at',
    '  fertile  90 %    50 %  +10 to +60 points',
  ]);
  expect(besideLines({ rates: [], survival: [] }, measureWords, page())).toEqual([]);
});
