import { expect, it } from 'vitest';
import { housingKind } from '../../../src/rules/discretion/housing-kind.ts';

it.each([
  ['flight 2', 'flight'],
  ['Cage 14, by the window', 'cage'],
  ['the young flights', 'flight'],
  ['north aviary', 'aviary'],
  ['aviaries', 'aviary'],
  ['planted enclosure', 'enclosure'],
  ['cage in flight 3', 'flight'],
])('%s is a %s', (name, kind) => {
  expect(housingKind(name)).toBe(kind);
});

it.each(['Elm Street 4', 'birdcages', ''])('%s does not say which kind it is', (name) => {
  expect(housingKind(name)).toBeNull();
});
