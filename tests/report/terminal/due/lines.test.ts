import { describe, expect, test } from 'vitest';
import type { Row } from '../../../../src/report/terminal/due/fold.ts';
import { besideGutter, rowLines, taskColumn } from '../../../../src/report/terminal/due/lines.ts';
import { unsaid } from '../../../../src/report/terminal/due/where.ts';
import { styles } from '../../../../src/report/terminal/style.ts';
import { day, item } from '../../mornings.ts';

const page = { day: day('2026-05-17'), width: 80, look: styles(false), gutter: 10 };
const row: Row = [item({ say: 'watch whether a parent drives the young', to: null })];

test('words stand at the left of the first line only', () => {
  expect(besideGutter('WATCH', 'watch', ['one', 'two'], page)).toEqual([
    '  WATCH       one',
    '              two',
  ]);
});

describe('a row', () => {
  test('has what to do and where beside each other, and why below', () => {
    expect(rowLines(row, { said: unsaid, column: 20, repeats: false }, page)).toEqual([
      '  now         watch whether a       LW-1 · flight 2',
      '                parent drives the',
      '                young',
      '                since 17 May · lavender waxbill, clutch 3',
      '                sitting since 12 May + 5–6 d',
    ]);
  });

  test('on a narrow page has them one below the other', () => {
    expect(rowLines(row, { said: unsaid, column: 20, repeats: false }, { ...page, width: 56 })).toEqual([
      '  now         watch whether a parent drives the young',
      '              LW-1 · flight 2',
      '                since 17 May',
      '                lavender waxbill, clutch 3',
      '                sitting since 12 May + 5–6 d',
    ]);
  });

  test('does not repeat the day of the row above', () => {
    const [first = ''] = rowLines(row, { said: unsaid, column: 20, repeats: true }, page);
    expect(first).toMatch(/^ {14}watch/);
  });
});

test('the column of what to do is as wide as the widest, but leaves room for where', () => {
  expect(taskColumn([[item({ say: 'candle' })], [item({ say: 'candle the eggs' })]], page)).toBe(15);
  expect(taskColumn([[item({ say: 'x'.repeat(90) })]], page)).toBe(36);
});
