import { expect, it } from 'vitest';
import { observation } from '../../../src/journal/grammar/observation.ts';
import { empty } from '../../../src/journal/grammar/values.ts';

it('is its definition', () => {
  const definition = { value: empty, order: 1, look: false, example: 'x', takes: 'nothing', doc: 'x' };
  expect(observation(definition)).toBe(definition);
});
