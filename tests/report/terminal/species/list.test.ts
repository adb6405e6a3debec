import { expect, test } from 'vitest';
import { keptSpeciesText, speciesListText } from '../../../../src/report/terminal/species/list.ts';
import { widthOf } from '../../../../src/report/terminal/width.ts';
import { keptSpecies } from '../../../../src/rules/species/list.ts';
import { findSpecies } from '../../../../src/species/find.ts';
import type { Profile } from '../../../../src/species/profile.ts';
import { allShipped } from '../../../../src/species/shipped.ts';
import { expectGolden } from '../../../golden.ts';
import { stood } from './kept-room.ts';

const some = ['star finch', 'lavender waxbill', 'diamond dove'].map((name) => findSpecies(name) as Profile);

test.each([80, 120])('at %d columns', (width) => {
  const options = { width, color: false };
  expectGolden(import.meta.url, `list-${width}.txt`, speciesListText(some, options));
  expectGolden(import.meta.url, `kept-${width}.txt`, keptSpeciesText(keptSpecies(stood, some), options));
});

test('every shipped species fits the width', () => {
  const lines = speciesListText(allShipped(), { width: 80, color: true }).split('\n');
  for (const line of lines) expect(widthOf(line)).toBeLessThanOrEqual(80);
});

test('where the room has no own clutch, nothing stands beside the book', () => {
  const [star] = keptSpecies(stood, some);
  const text = keptSpeciesText(star === undefined ? [] : [star], { width: 80, color: false });
  expect(text).toMatch(/^star finch +12–14 d +15–22 d$/m);
});

test('an empty list says how to see them all', () => {
  expect(speciesListText([], { width: 80, color: false })).toContain('`nestlog species` lists all there are');
});
