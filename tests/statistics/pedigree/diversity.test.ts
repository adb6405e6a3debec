import { expect, it } from 'vitest';
import { diversityOf } from '../../../src/statistics/pedigree/diversity.ts';

it('two strangers hold two founders’ genes', () => {
  expect(diversityOf([1 / 4, 1 / 4])).toEqual({
    meanKinship: 1 / 4,
    geneDiversity: 3 / 4,
    founderGenomes: 2,
  });
});

it('nobody has none', () => {
  expect(diversityOf([])).toBeNull();
});
