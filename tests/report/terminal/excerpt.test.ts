import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { excerpt } from '../../../src/report/terminal/excerpt.ts';
import { widthOf } from '../../../src/report/terminal/width.ts';
import { FORBIDDEN, hostileText } from '../hostile.ts';

/** The line, and a row of marks under the place of `what` in it. */
function marked(line: string, what: string, room = 60): [string, string] {
  const before = [...line.slice(0, line.indexOf(what))].length;
  const shown = excerpt(line, before + 1, [...what].length, room);
  return [shown.line, ' '.repeat(shown.before) + '^'.repeat(shown.length)];
}

describe('the marker is under the place', () => {
  test('in plain text', () => {
    expect(marked('- {date: 2026-03-10, candeld: 2}', 'candeld')).toEqual([
      '- {date: 2026-03-10, candeld: 2}',
      '                     ^^^^^^^',
    ]);
  });

  test('behind wide characters, which take two columns', () => {
    expect(marked('- {巣箱: x, laid: 0}', '0')).toEqual(['- {巣箱: x, laid: 0}', '                  ^']);
  });

  test('on wide characters', () => {
    expect(marked('- {巣箱: x}', '巣箱')).toEqual(['- {巣箱: x}', '   ^^^^']);
  });

  test('behind characters beyond the first plane, which count as one', () => {
    expect(marked('note: 🐤🐤 laid', 'laid')).toEqual(['note: 🐤🐤 laid', '           ^^^^']);
  });

  test('behind a tab and an escape, which are shown by name', () => {
    expect(marked('\t\u001Blaid', 'laid')).toEqual(['<TAB><ESC>laid', '          ^^^^']);
  });

  test('on a tab', () => {
    expect(marked('-\tdate', '\t')).toEqual(['-<TAB>date', ' ^^^^^']);
  });

  test('behind the end of the line, where something is missing', () => {
    expect(excerpt('laid:', 7, 1, 60)).toEqual({ line: 'laid:', before: 5, length: 1 });
  });
});

describe('a long line', () => {
  const line = `- {date: 2026-03-10, note: "${'sat well, '.repeat(30)}", laid: -1, note: "${'off, '.repeat(30)}"}`;

  test('is cut on both sides of the place', () => {
    expect(marked(line, 'laid', 40)).toEqual([
      '…sat well, sat well, ", laid: -1, note:…',
      '                        ^^^^',
    ]);
  });

  test('is cut at its end when the place is near its beginning', () => {
    expect(marked(line, 'date', 40)[0]).toBe('- {date: 2026-03-10, note: "sat well, s…');
  });

  test('is cut within the place when that is wider than the room', () => {
    const [shown, marks] = marked(line, line.slice(3, 200), 40);
    expect(shown).toBe('…date: 2026-03-10, note: "sat well, sa……');
    expect(marks).toBe(` ${'^'.repeat(38)}`);
  });

  test('of ten megabytes takes no time', () => {
    const huge = `- {date: 2026-03-10, ${'x'.repeat(10_000_000)}: 1}`;
    const began = performance.now();
    excerpt(huge, 22, 10_000_000, 60);
    expect(performance.now() - began).toBeLessThan(200);
  });
});

test('whatever the line holds, it fits, obeys nothing, and the marker lies under it', () => {
  fc.assert(
    fc.property(
      hostileText,
      fc.integer({ min: 1, max: 60 }),
      fc.integer({ min: 1, max: 60 }),
      fc.integer({ min: 12, max: 50 }),
      (text, column, length, room) => {
        const shown = excerpt(text, column, length, room);
        expect(widthOf(shown.line)).toBeLessThanOrEqual(room);
        expect(shown.line).not.toMatch(FORBIDDEN);
        expect(shown.before + shown.length).toBeLessThanOrEqual(Math.max(room, widthOf(shown.line) + 1));
      },
    ),
  );
});
