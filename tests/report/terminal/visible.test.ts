import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { visible, visibleData } from '../../../src/report/terminal/visible.ts';
import { FORBIDDEN, hostileText } from '../hostile.ts';

describe('what a terminal would obey or hide is shown by name', () => {
  test.each([
    ['an escape sequence that clears the screen', '\u001B[2Jsat well', '<ESC>[2Jsat well'],
    ['a window title', '\u001B]0;x\u0007', '<ESC>]0;x<BEL>'],
    ['the one-character introducer of C1', '\u009B31m', '<U+009B>31m'],
    ['NUL', 'e1\u0000', 'e1<NUL>'],
    ['a return that would overwrite the line', 'lost\rfine', 'lost<CR>fine'],
    ['a tab', 'a\tb', 'a<TAB>b'],
    ['right-to-left override', 'clear\u202E2e', 'clear<U+202E>2e'],
    ['a bidi isolate', '\u2066x\u2069', '<U+2066>x<U+2069>'],
    ['a zero-width space in a name', 'LW\u200B-1', 'LW<U+200B>-1'],
    ['a byte order mark', '\uFEFFpair', '<U+FEFF>pair'],
    ['a soft hyphen', 'wax\u00ADbill', 'wax<U+00AD>bill'],
    ['the Hangul filler, a letter without ink', 'c1\u3164', 'c1<U+3164>'],
    ['a line separator', 'a\u2028b', 'a<U+2028>b'],
    ['tag characters', 'x\u{E0041}', 'x<U+E0041>'],
    ['half a surrogate pair', 'x\uD800y', 'x<U+D800>y'],
    ['a combining mark on a blank', 'x \u0301', 'x <U+0301>'],
    ['a combining mark with nothing to sit on', '\u0301x', '<U+0301>x'],
    ['a variation selector behind a letter', 'a\uFE01', 'a<U+FE01>'],
  ])('%s', (_, text, shown) => {
    expect(visible(text)).toBe(shown);
  });
});

test.each([
  'hen sat through the night',
  'Prachtfink, Käfig 4',
  'ＬＷ－１ 巣箱',
  'דרור',
  '👩‍🌾',
  '❤️',
  '👩🏽‍🌾',
  'e\u0301',
])('ordinary text stays as it is: %s', (text) => {
  expect(visible(text)).toBe(text);
});

test('a line break inside a value is a blank, with the blanks before it', () => {
  expect(visible('sat well \r\nnow\nlater')).toBe('sat well now later');
});

test('nothing that a terminal obeys is left, and showing twice changes nothing', () => {
  fc.assert(
    fc.property(hostileText, (text) => {
      const shown = visible(text);
      expect(shown).not.toMatch(FORBIDDEN);
      expect(shown).not.toMatch(/\n/);
      expect(visible(shown)).toBe(shown);
    }),
  );
});

test('every text in plain data is shown, whatever it is wrapped in', () => {
  expect(visibleData({ a: ['\u0007', 1, null], b: { c: '\u202E' } })).toEqual({
    a: ['<BEL>', 1, null],
    b: { c: '<U+202E>' },
  });
});
