import { expect, test } from 'vitest';
import { comparable, namesOf } from '../../src/species/names.ts';

test.each([
  ['Lavender Waxbill', 'lavender waxbill'],
  ['lavender-waxbill', 'lavender waxbill'],
  ['  lavender   waxbill ', 'lavender waxbill'],
  ['Müller’s munia', 'Muller’s munia'],
])('%s and %s are one name', (one, other) => {
  expect(comparable(one)).toBe(comparable(other));
});

test('two species are two names', () => {
  expect(comparable('star finch')).not.toBe(comparable('sta finch'));
});

test('a species answers to its common name, its scientific name, its synonyms and its id', () => {
  const names = namesOf({
    id: 'star-finch',
    species: 'star finch',
    scientific: 'Bathilda ruficauda',
    also: ['red-faced finch'],
  });
  for (const name of ['star finch', 'Bathilda ruficauda', 'red-faced finch']) expect(names).toContain(name);
});
