import { expect, it } from 'vitest';
import { oneOf } from '../../src/commands/one-of.ts';

const sex = oneOf('--sex <sex>', ['cock', 'hen', 'unknown']);

it('takes one of its words, and tells a shell which they are', () => {
  expect(sex.parse?.('hen')).toBe('hen');
  expect(sex.completes).toEqual(['cock', 'hen', 'unknown']);
  expect(sex.description).toBe('cock, hen, unknown');
});

it('names all of them where another is given, and the one that was probably meant', () => {
  expect(() => sex.parse?.('Cock')).toThrow(
    '--sex takes cock, hen, unknown, not `Cock`; did you mean `cock`?',
  );
  expect(() => sex.parse?.('pullet')).toThrow(/not `pullet`$/);
});
