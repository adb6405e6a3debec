import { expect, it } from 'vitest';
import {
  count,
  parseCount,
  parseRef,
  ref,
  who,
  whoKey,
  whoOrNone,
} from '../../../src/journal/grammar/who.ts';
import { Text } from '../../../src/journal/nodes.ts';
import { readLog } from '../reading.ts';
import { typedValue } from './schemas.ts';

const at = { file: 'a', line: 1, column: 1, length: 1 };

it.each([
  ['e1', 'egg'],
  ['c12', 'chick'],
  ['2/c1', 'chick'],
  ['SF-2/1/e3', 'egg'],
  ['cock', 'parent'],
  ['both', 'parent'],
  ['ring:e1', 'ring'],
  ['e0', 'name'],
  ['E1', 'name'],
  ['SF-2/c1', 'name'],
  ['LW-19-04', 'name'],
])('%s is a ref to a %s', (text, form) => {
  expect(parseRef(new Text(text, at)).form).toBe(form);
});

it.each([
  ['2', 2, 'exactly'],
  ['012', 12, 'exactly'],
  ['3+', 3, 'at least'],
  ['some', 1, 'at least'],
  ['~3', 3, 'about'],
])('%s is a count', (text, number, exact) => {
  expect(parseCount(new Text(text, at))).toEqual({ kind: 'count', count: number, exact, at });
});

it.each(['e1', '-1', '1.5', 'two', '3 +', '', '~'])('%s is no count', (text) => {
  expect(parseCount(new Text(text, at))).toBeNull();
});

it('is nobody only where that is worth saying', () => {
  expect(typedValue(who, '0')).toBe('zero-count');
  expect(typedValue(whoOrNone, '0')).toMatchObject({ count: 0 });
  expect(typedValue(count, '0')).toMatchObject({ count: 0 });
});

it('is one of them where a key or value names one', () => {
  expect(typedValue(ref, 'c1')).toMatchObject({ form: 'chick', number: 1 });
  expect(typedValue(ref, '[c1, c2]')).toBe('wrong-value');
});

it.each([
  ['c1', ['c1']],
  ['"c1, c2"', ['c1', 'c2']],
  ['"2/c1,hen , LW 26 014,"', ['2/c1', 'hen', 'LW 26 014']],
])('before a value, %s names whom it is about', (text, names) => {
  expect(typedValue(whoKey, text)).toMatchObject({
    kind: 'refs',
    refs: names.map((name) => ({ text: name })),
  });
});

it('before a value a number is a count, and `all` stands alone', () => {
  expect(typedValue(whoKey, '2')).toMatchObject({ kind: 'count', count: 2 });
  expect(typedValue(whoKey, 'all')).toMatchObject({ kind: 'all' });
  expect(typedValue(whoKey, '"all, c1"')).toBe('not-a-ref');
  expect(typedValue(whoKey, '"c1, 2"')).toBe('not-a-ref');
  expect(typedValue(whoKey, '0')).toBe('zero-count');
  expect(typedValue(whoKey, '","')).toBe('empty-list');
});

it('may be a chick of another clutch, or of another pair', () => {
  expect(parseRef(new Text('c1', at))).toMatchObject({ pair: null, clutch: null, number: 1 });
  expect(parseRef(new Text('2/c1', at))).toMatchObject({ pair: null, clutch: 2, number: 1 });
  expect(parseRef(new Text('SF-2/1/e3', at))).toMatchObject({ pair: 'SF-2', clutch: 1, number: 3 });
});

it('may be a ring that looks like something else', () => {
  expect(parseRef(new Text('ring:014', at))).toMatchObject({ ring: '014' });
  expect(parseRef(new Text('ring: 014', at))).toMatchObject({ ring: '014' });
});

it.each([
  ['40', { count: 40 }],
  ['41', 'absurd-count'],
  ['4.5', 'not-a-who'],
  ['12,5 or so', 'not-a-who'],
  ['LW 26.014', { refs: [{ form: 'name', text: 'LW 26.014' }] }],
])('a nest may hold %s', (typed, expected) => {
  const read = typedValue(who, typed);
  if (typeof expected === 'string') expect(read).toBe(expected);
  else expect(read).toMatchObject(expected);
});

it('what says neither how many nor which is told as typed', () => {
  expect(
    readLog('- {date: 2026-03-10, checked: {eggs: -1}}', '- {date: 2026-03-11, hatched: [e1, [e2, e3]]}')
      .said,
  ).toEqual(['-1 is less than none', 'this does not say which egg or chick']);
});
