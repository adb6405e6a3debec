import { describe, expect, it } from 'vitest';
import { days, number, percent, percentRange, pointsRange } from '../../../src/report/terminal/figures.ts';

describe('figures in words', () => {
  it.each([
    [1, '100 %'],
    [0.999, '>99 %'],
    [0.994, '99 %'],
    [0, '0 %'],
    [0.001, '<1 %'],
    [0.505, '51 %'],
  ])('a share of %d', (share, text) => {
    expect(percent(share)).toBe(text);
  });

  it('ranges, with a true minus', () => {
    expect(percentRange(0.123, 1)).toBe('12–100 %');
    expect(pointsRange(-0.08, 0.25)).toBe('−8 to +25 points');
    expect(pointsRange(-0.001, 0)).toBe('0 to 0 points');
  });

  it('days of age and numbers that need not be whole', () => {
    expect([days(3, 3), days(3, 5)]).toEqual(['day 3', 'days 3–5']);
    expect([number(4), number(2.49), number(2.999999)]).toEqual(['4', '2.5', '3']);
  });
});
