import fc from 'fast-check';
import stringWidth from 'string-width';
import { describe, expect, test } from 'vitest';
import { visible } from '../../../src/report/terminal/visible.ts';
import { flow, pad, truncate, truncateStart, widthOf, wrap } from '../../../src/report/terminal/width.ts';
import { hostileText } from '../hostile.ts';

const shownText = hostileText.map(visible);

/** Boundaries between graphemes of a text, as offsets. */
function boundaries(text: string): Set<number> {
  const segments = [...new Intl.Segmenter('en').segment(text)];
  return new Set([...segments.map(({ index }) => index), text.length]);
}

test.each([
  ['LW-1', 4],
  ['巣箱', 4],
  ['ＬＷ', 4],
  ['e\u0301', 1],
  ['👩‍🌾', 2],
  ['\u001B[1mbold\u001B[22m', 4],
])('%s takes as many columns as a terminal gives it', (text, columns) => {
  // Wide and fullwidth characters take two columns: Unicode Standard Annex 11.
  expect(widthOf(text)).toBe(columns);
});

test('letters that are taken for one column each are one for the library as well', () => {
  const oneColumn = fc.string({
    unit: fc.constantFrom(...'az AZ09~-·–—‘’“”…°éüßŒſ£×−→\u00A0'),
  });
  fc.assert(
    fc.property(oneColumn, (text) => {
      expect(widthOf(text)).toBe(stringWidth(text));
    }),
  );
});

test('padding counts columns, not characters', () => {
  expect(pad('巣箱', 6)).toBe('巣箱  ');
  expect(pad('LW-1', 2)).toBe('LW-1');
});

describe('cutting', () => {
  test('says at which end something is missing', () => {
    expect(truncate('sitting since 4 Mar', 10)).toBe('sitting s…');
    expect(truncateStart('sitting since 4 Mar', 10)).toBe('…nce 4 Mar');
  });

  test('leaves alone what fits', () => {
    expect(truncate('LW-1', 4)).toBe('LW-1');
    expect(truncateStart('LW-1', 4)).toBe('LW-1');
  });

  test('never splits a grapheme or exceeds the width', () => {
    fc.assert(
      fc.property(shownText, fc.integer({ min: 1, max: 30 }), (text, width) => {
        const end = truncate(text, width);
        const start = truncateStart(text, width);
        expect(widthOf(end)).toBeLessThanOrEqual(width);
        expect(widthOf(start)).toBeLessThanOrEqual(width);
        if (end !== text) expect(boundaries(text)).toContain(end.length - 1);
        if (start !== text) expect(boundaries(text)).toContain(text.length - (start.length - 1));
      }),
    );
  });
});

describe('wrapping', () => {
  test('breaks at blanks and indents what follows', () => {
    expect(wrap('check each crop within the next hours', 16, { hanging: 2 })).toEqual([
      'check each crop',
      '  within the',
      '  next hours',
    ]);
  });

  test('counts what stands before the text on the first line', () => {
    expect(wrap('hen sat all night', 10, { taken: 7 })).toEqual(['hen', 'sat all', 'night']);
  });

  test.each([
    ['a number stays with its days', 'sitting since 12 May', 16, ['sitting since', '12 May']],
    ['an offset stays with its plus', 'since 9 May + 12 d', 13, ['since 9 May', '+ 12 d']],
    ['lateness stays in one piece', 'candle the eggs 2 d late', 18, ['candle the eggs', '2 d late']],
  ])('%s', (_, text, width, lines) => {
    expect(wrap(text, width)).toEqual(lines);
  });

  test('breaks a word that is wider than a line', () => {
    expect(wrap('巣箱巣箱巣', 5)).toEqual(['巣箱', '巣箱', '巣']);
  });

  test('loses nothing, splits no grapheme, keeps to the width', () => {
    fc.assert(
      fc.property(
        shownText,
        fc.integer({ min: 6, max: 40 }),
        fc.integer({ min: 0, max: 3 }),
        (text, width, hanging) => {
          const lines = wrap(text, width, { hanging });
          for (const line of lines) expect(widthOf(line)).toBeLessThanOrEqual(width);
          const pieces = lines.flatMap((line) => [...new Intl.Segmenter('en').segment(line)]);
          const inked = (segments: Iterable<{ segment: string }>) =>
            [...segments].map(({ segment }) => segment).filter((segment) => !/^[ \u00A0]$/.test(segment));
          expect(inked(pieces)).toEqual(inked(new Intl.Segmenter('en').segment(text)));
        },
      ),
    );
  });
});

test('phrases share a line with a dot between them, or begin the next without one', () => {
  expect(flow(['15–17 May', 'hatched 9 May + 6–8 d', 'zebra finch, clutch 7'], 34)).toEqual([
    '15–17 May · hatched 9 May + 6–8 d',
    'zebra finch, clutch 7',
  ]);
});
