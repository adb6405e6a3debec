import { expect, it } from 'vitest';
import { meant } from '../../src/commands/meant.ts';

it('asks for the nearest of the words, and says something else where none is near', () => {
  expect(meant('Clutchs', ['eggs', 'clutches'], 'there are two')).toBe('did you mean `clutches`?');
  expect(meant('budgies', ['eggs', 'clutches'], 'there are two')).toBe('there are two');
});
