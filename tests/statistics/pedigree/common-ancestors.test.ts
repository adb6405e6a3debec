import fc from 'fast-check';
import { expect, it } from 'vitest';
import { commonAncestors } from '../../../src/statistics/pedigree/common-ancestors.ts';
import { pedigreeOf } from '../../../src/statistics/pedigree/pedigree.ts';
import { kinship, relate } from '../../../src/statistics/pedigree/relationship.ts';
import { anyParents } from './any.ts';
import { lines } from './lines.ts';

function causes(text: string, one: string, other: string): Record<string, number> {
  const { pedigree, names, of } = lines(text);
  const found = commonAncestors(relate(pedigree), of(one), of(other));
  return Object.fromEntries(found.map(({ ancestor, share }) => [names[ancestor], share]));
}

it('brother and sister are related through both parents alike', () => {
  expect(causes('x = A × B; y = A × B', 'x', 'y')).toEqual({ A: 1 / 8, B: 1 / 8 });
});

it('an uncle and his niece through the grandparents', () => {
  expect(causes('u = A × B; p = A × B; niece = p × C', 'u', 'niece')).toEqual({ A: 1 / 16, B: 1 / 16 });
});

it('a sire and his daughter through himself, not through his own ancestors', () => {
  expect(causes('S = A × B; d = S × C', 'S', 'd')).toEqual({ S: 1 / 4 });
});

it('an inbred ancestor counts for more: (1 + F) of Wright', () => {
  const text = 'a = P × Q; b = P × Q; S = a × b; x = S × C; y = S × D';
  expect(causes(text, 'x', 'y')).toEqual({ S: (1 / 2) ** 3 * (1 + 1 / 4) });
});

it('who counts for most is named first, of however early a generation', () => {
  const text = 'G = K × L; d = G × P; e = G × Q; x = S × d; y = S × e';
  expect(Object.entries(causes(text, 'x', 'y'))).toEqual([
    ['S', 1 / 8],
    ['G', 1 / 32],
  ]);
});

it('of those who count alike, who was named first', () => {
  const text = 'x = A × B; y = A × B; v = x × y; w = x × y';
  expect(Object.keys(causes(text, 'v', 'w')).slice(0, 2)).toEqual(['x', 'y']);
  expect(Object.keys(causes('x = A × B; y = B × A', 'x', 'y'))).toEqual(['A', 'B']);
});

it('strangers have none', () => {
  expect(causes('x = A × B; y = C × D', 'x', 'y')).toEqual({});
});

it('the shares of any two add up to their kinship', () => {
  const two = fc.tuple(anyParents, fc.nat(), fc.nat());
  fc.assert(
    fc.property(two, ([birds, a, b]) => {
      const one = a % birds.length;
      const other = b % birds.length;
      fc.pre(one !== other);
      const relationship = relate(
        pedigreeOf(
          birds.map(({ sire }) => sire),
          birds.map(({ dam }) => dam),
        ),
      );
      const shares = commonAncestors(relationship, one, other).map(({ share }) => share);
      const sum = shares.reduce((total, share) => total + share, 0);
      expect(sum).toBeCloseTo(kinship(relationship, one, other), 11);
      expect(Math.min(...shares, 1)).toBeGreaterThan(0);
    }),
  );
});
