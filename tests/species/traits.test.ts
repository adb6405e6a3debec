import { expect, test } from 'vitest';
import { traitByName, traitKeys, traits } from '../../src/species/traits.ts';

test('every trait is found under the name that a profile file gives it', () => {
  for (const key of traitKeys) expect(traitByName(traits[key].name)).toBe(traits[key]);
});

test('files write their keys in small letters with hyphens', () => {
  for (const key of traitKeys) expect(traits[key].name).toMatch(/^[a-z]+(?:-[a-z]+)*$/);
  expect(traits.layingInterval.name).toBe('laying-interval');
});

test('a trait counts something or is one of some words', () => {
  for (const key of traitKeys)
    expect(traits[key].unit !== '' || (traits[key].words?.length ?? 0) > 1).toBe(true);
});

test('what no profile has is no trait', () => {
  for (const name of ['wingspan', 'constructor', '__proto__', undefined])
    expect(traitByName(name)).toBeNull();
});
