import { expect, it } from 'vitest';
import { troubleOf } from '../../../src/journal/text/trouble.ts';

const error = (code: string, message: string) => ({ code, message, pos: [4, 5] as const });

it('tells one code of the library apart by its message', () => {
  expect(troubleOf(error('BAD_INDENT', 'Flow map in block collection must be …'), '{').why).toBe(
    'brace-open',
  );
  expect(troubleOf(error('BAD_INDENT', 'All mapping items must start at the same column'), 'x').why).toBe(
    'indent',
  );
});

it('blames a tab in the margin before anything else', () => {
  expect(troubleOf(error('UNEXPECTED_TOKEN', 'Unexpected scalar at node end'), 'a: 1\n \tb: 2')).toEqual({
    why: 'tab',
    offset: 6,
  });
});

it('does not know everything', () => {
  expect(troubleOf(error('IMPOSSIBLE', 'This should not happen'), 'x')).toEqual({ why: 'other', offset: 4 });
});

it('shows a quote that is never closed where it was opened, not where its end is missed', () => {
  const missing = (quote: string) => error('MISSING_CHAR', `Missing closing ${quote}quote`);
  expect(troubleOf(missing('"'), 'laid: "1}\n1}')).toEqual({ why: 'quote-open', offset: 6 });
  expect(troubleOf(missing("'"), "note: 'the hen}")).toEqual({ why: 'quote-open', offset: 6 });
  expect(troubleOf(missing('"'), 'note: "done", more: "two')).toEqual({ why: 'quote-open', offset: 20 });
});
