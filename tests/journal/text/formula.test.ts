import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { marked, unmarked } from '../../../src/journal/text/formula.ts';
import { hostileText } from '../../report/hostile.ts';

describe('a text in a cell', () => {
  it('that a keeper typed himself stays as it is', () => {
    expect(unmarked('=1+1')).toBe('=1+1');
    expect(unmarked("'tis cold")).toBe("'tis cold");
  });

  it.each([
    '=HYPERLINK("file:///x")',
    '+1',
    '-5 °C at night',
    '@SUM(A1)',
    '\t=1+1',
    '\r=1+1',
    '\n=1+1',
    '＝1+1',
  ])('%j is no formula any more', (text) => {
    expect(marked(text)).toBe(`'${text}`);
    expect(unmarked(marked(text))).toBe(text);
  });

  it.each(['sat well', '5 - 3', "'tis a fine hen", '', '2026-03-01', '🐤=1'])('%j stays as it is', (text) => {
    expect(marked(text)).toBe(text);
    expect(unmarked(text)).toBe(text);
  });

  it('that looks marked already is told from one that nestlog marked', () => {
    expect(marked("'=1")).toBe("''=1");
    expect(unmarked("''=1")).toBe("'=1");
  });

  it('comes back, whatever it is, and never begins as a formula does', () => {
    const text = fc.oneof(
      hostileText,
      fc.string({ unit: fc.constantFrom("'", '=', '+', '-', '@', '\t', '\r', '\n', 'a') }),
    );
    fc.assert(
      fc.property(text, (one) => {
        expect(unmarked(marked(one))).toBe(one);
        expect(marked(one)).not.toMatch(/^[=+\-@\t\r\n]/);
      }),
    );
  });
});
