import fc from 'fast-check';
import { expect, it } from 'vitest';
import { founderEquivalents, founders } from '../../../src/statistics/pedigree/founders.ts';
import { pedigreeOf } from '../../../src/statistics/pedigree/pedigree.ts';
import { anyParents } from './any.ts';
import { lines } from './lines.ts';

it('one with a single known parent has a founder for the other', () => {
  const { pedigree, of, names } = lines('x = A × ?');
  const found = founders(pedigree, [of('x')]);
  expect(found.map(({ of: one, which, share }) => [names[one], which, share])).toEqual([
    ['x', 'its dam', 1 / 2],
    ['A', 'itself', 1 / 2],
  ]);
});

it('who gave most stands first, and of those alike who was named first', () => {
  const { pedigree, of, names } = lines('x = ? × A; y = B × C; z = B × D');
  const found = founders(pedigree, [of('y'), of('z'), of('x')]);
  expect(found.map(({ of: one, which }) => `${names[one]} ${which}`)).toEqual([
    'B itself',
    'x its sire',
    'A itself',
    'C itself',
    'D itself',
  ]);
});

it('a living founder stands for itself', () => {
  const { pedigree, of } = lines('x = A × B');
  const found = founders(pedigree, [of('x'), of('A')]);
  expect(found.map(({ share }) => share)).toEqual([3 / 4, 1 / 4]);
});

it('equal contributions are as many equivalents as there are founders', () => {
  const { pedigree, of } = lines('x = A × B; y = C × D');
  expect(founderEquivalents(founders(pedigree, [of('x'), of('y')]))).toBe(4);
});

it('contributions of any group add up to 1', () => {
  fc.assert(
    fc.property(anyParents, (birds) => {
      const pedigree = pedigreeOf(
        birds.map(({ sire }) => sire),
        birds.map(({ dam }) => dam),
      );
      const found = founders(
        pedigree,
        birds.map((_, one) => one),
      );
      expect(found.reduce((sum, { share }) => sum + share, 0)).toBeCloseTo(1, 12);
      expect(founderEquivalents(found)).toBeGreaterThanOrEqual(1 - 1e-12);
    }),
  );
});
