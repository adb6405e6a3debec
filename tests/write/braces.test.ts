import { expect, test } from 'vitest';
import { flowEnd } from '../../src/write/braces.ts';

/** The text with `|` where one more item would go. */
function marked(text: string): string | null {
  const end = flowEnd(text, text.search(/[[{]/));
  return end === null ? null : `${text.slice(0, end.last)}|${text.slice(end.last)}`;
}

test.each([
  ['log: []', 'log: [|]'],
  ['log: [ ]', 'log: [| ]'],
  ['log: [{a: 1}]', 'log: [{a: 1}|]'],
  ['log: [{a: 1},]', 'log: [{a: 1},|]'],
  ['log: [\n  {a: [1, 2]}, # ]\n]\n', 'log: [\n  {a: [1, 2]},| # ]\n]\n'],
  ["{a: \"}\\\"}\", b: 'it''s }'}", "{a: \"}\\\"}\", b: 'it''s }'|}"],
  ["{a: don't, b: 1}", "{a: don't, b: 1|}"],
  ['{a: b#c}', '{a: b#c|}'],
])('%s', (text, expected) => {
  expect(marked(text)).toBe(expected);
});

test('without its closing sign it has no end', () => {
  expect(marked('log: [{a: 1}')).toBeNull();
});
