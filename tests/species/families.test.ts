import { expect, test } from 'vitest';
import { familyOf } from '../../src/species/families.ts';
import { allShipped } from '../../src/species/shipped.ts';

test.each([
  ['Glaucestrilda caerulescens', 'estrildids'],
  ['Nymphicus hollandicus', 'parrots'],
  ['Geopelia cuneata', 'doves'],
  ['Synoicus chinensis', 'quails'],
  ['Serinus canaria', 'other'],
  ['', 'other'],
])('%s belongs to the %s', (name, family) => {
  expect(familyOf(name)).toBe(family);
});

test('parrots and doves lay every other day, small perching birds daily (common practice)', () => {
  for (const { scientific, layingInterval, species } of allShipped()) {
    const family = familyOf(scientific);
    const days = layingInterval?.value;
    if (family === 'parrots' || family === 'doves') expect(days?.high, species).toBe(2);
    if (family === 'estrildids') expect(days, species).toEqual({ low: 1, high: 1 });
  }
});
