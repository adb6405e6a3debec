import { describe, expect, it } from 'vitest';
import { rateLines } from '../../../../src/report/terminal/season/rates.ts';
import { book, FOUR, known, ON, page, waxbills } from '../../seasons.ts';

const lines = (files: Parameters<typeof book>[0], on: string, width = 80) => {
  const { totals, measures } = book(files, on);
  return rateLines(totals, measures, page(width));
};

describe('rates', () => {
  it('have counts, share, interval in figures and as a picture', () => {
    const [scale, fertile] = lines(known, ON);
    expect(scale).toMatch(/95 % +0 +50 % +100 %$/);
    expect(fertile).toBe('  fertile                8 of 12     67 %   39–86 %    ·········├──────●────┤···');
  });

  it('name beside them who waits and who cannot be judged', () => {
    expect(lines(known, ON)[4]).toBe('    2 still open, 4 not to be judged');
  });

  it('of which there is nothing yet say so', () => {
    const open = lines({ 'LW-1': waxbills(FOUR) }, '2026-03-06');
    expect(open[0]).toBe('  fertile                nothing to count yet');
    expect(open[1]).toBe('    4 still open');
  });

  it('of thousands of eggs keep a blank before the share', () => {
    const { totals, measures } = book(known, ON);
    const fertility = { ...totals.rates.fertility, k: 4378, n: 5630, rate: 0.78, low: 0.77, high: 0.79 };
    const [, fertile = ''] = rateLines({ rates: { ...totals.rates, fertility } }, measures, page());
    expect(fertile).toContain('4378 of 5630 78 %');
    expect(fertile).toHaveLength(80);
  });

  it('on a narrow page do without the picture', () => {
    expect(lines(known, ON, 60)[0]).toBe('  fertile                8 of 12     67 %   39–86 %');
  });
});
