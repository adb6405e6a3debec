import { expect, it } from 'vitest';
import { Fields, holdsRefused, List, Refused, Text } from '../../src/journal/nodes.ts';

const at = { file: 'a', line: 1, column: 1, length: 1 };
const text = new Text('x', at);

it('finds what was refused, however deep', () => {
  const deep = (inner: Text | Refused) =>
    new Fields([[text, new List([text, new Fields([[text, inner]], at)], at)]], at);
  expect(holdsRefused(deep(new Refused(at)))).toBe(true);
  expect(holdsRefused(deep(text))).toBe(false);
});
