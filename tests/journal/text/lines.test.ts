import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { Lines } from '../../../src/journal/text/lines.ts';

describe('places', () => {
  it('count lines and columns from 1', () => {
    const lines = new Lines('a.yaml', 'pair: x\nlog:\n');
    expect(lines.place(8, 11)).toEqual({ file: 'a.yaml', line: 2, column: 1, length: 3 });
  });

  it('count code points: a bird is one column, whatever it takes in memory', () => {
    const text = '🐣🐣 egg\n🐣 chick';
    const lines = new Lines('a', text);
    expect(lines.place(text.indexOf('egg'), text.indexOf('egg') + 3)).toMatchObject({ column: 4, length: 3 });
    expect(lines.place(text.indexOf('chick'), text.length)).toMatchObject({ line: 2, column: 3, length: 5 });
    expect(lines.place(0, 4)).toMatchObject({ column: 1, length: 2 });
  });

  it('stay on their line, and have a length even where nothing stands', () => {
    const lines = new Lines('a', 'one\r\ntwo');
    expect(lines.place(1, 8)).toMatchObject({ line: 1, column: 2, length: 2 });
    expect(lines.place(8, 8)).toMatchObject({ line: 2, column: 4, length: 1 });
  });

  it('know where a line begins and ends', () => {
    const lines = new Lines('a', 'one\r\n\ntwo');
    expect([lines.lineStart(2), lines.lineEnd(2)]).toEqual([0, 3]);
    expect([lines.lineStart(5), lines.lineEnd(5)]).toEqual([5, 5]);
    expect([lines.lineStart(7), lines.lineEnd(7)]).toEqual([6, 9]);
  });

  it('are the same as counting by hand, in any order of asking', () => {
    const text = fc
      .array(fc.constantFrom('a', '\n', '🐣', '\r\n', 'é', '\ud800'))
      .map((parts) => parts.join(''));
    fc.assert(
      fc.property(text, fc.array(fc.nat(60)), (whole, offsets) => {
        const lines = new Lines('a', whole);
        for (const offset of offsets.filter((at) => at <= whole.length)) {
          const before = whole.slice(0, offset).split('\n');
          const { line, column } = lines.place(offset, offset);
          expect(line).toBe(before.length);
          const inPair =
            /[\ud800-\udbff]$/.test(whole.slice(0, offset)) && /^[\udc00-\udfff]/.test(whole.slice(offset));
          if (!inPair) expect(column).toBe([...(before.at(-1) as string)].length + 1);
        }
      }),
    );
  });
});
