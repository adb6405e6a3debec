import { expect, it } from 'vitest';
import { slowExpressions } from './expressions.mjs';

const complaints = (text: string) => slowExpressions([{ path: 'src/a.ts', text }]).map(({ line }) => line);

it('an expression that a long line of blanks would keep busy is named', () => {
  expect(complaints('const LINE = 1;\nconst END = /\\s+$/;')).toEqual([2]);
});

it('the same that begins only where the blanks begin is well', () => {
  expect(complaints('const END = /(?<!\\s)\\s+$/;')).toEqual([]);
});
