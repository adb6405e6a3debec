import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { codeOf } from '../../src/journal/system-error.ts';

test('an error of the system has a code, any other has none', () => {
  expect(() => readFileSync('/')).toThrow(expect.toSatisfy((error) => codeOf(error) === 'EISDIR'));
  expect(codeOf(new Error('odd'))).toBe('');
  expect(codeOf('odd')).toBe('');
});
