import { describe, expect, it } from 'vitest';
import { kinship } from '../../../src/statistics/pedigree/relationship.ts';
import { birdIn, stock, threeGenerations } from './rooms.ts';

describe('the pedigree of a room', () => {
  const all = stock(threeGenerations, '2025-06-20');
  const kin = (one: string, other: string) =>
    kinship(all.lineage.autosomes, birdIn(all, one).ancestor.number, birdIn(all, other).ancestor.number);

  it('has brothers and sisters, parents and grandparents', () => {
    expect(kin('LW-3/1/c1', 'LW-3/1/c2')).toBe(1 / 4);
    expect(kin('SON', 'LW-1/1/c2')).toBe(1 / 4);
    expect(kin('A', 'SON')).toBe(1 / 4);
    expect(kin('A', 'LW-3/1/c1')).toBe(1 / 8);
    expect(kin('SON', 'GIRL')).toBe(0);
  });

  it('on the Z chromosome a hen has her sire’s only', () => {
    const z = all.lineage.z();
    const onZ = (one: string, other: string) =>
      kinship(z, birdIn(all, one).ancestor.number, birdIn(all, other).ancestor.number);
    expect(onZ('GIRL', 'D')).toBe(0);
    expect(onZ('GIRL', 'C')).toBe(1 / 2);
    expect(onZ('SON', 'B')).toBe(1 / 2);
  });
});

it('two birds with a parent whom only they name are half sibs', () => {
  const all = stock(
    { 'birds.yaml': 'birds: [{id: x, sire: old cock}, {id: y, sire: old cock}]' },
    '2026-01-01',
  );
  const number = (name: string) => birdIn(all, name).ancestor.number;
  expect(kinship(all.lineage.autosomes, number('x'), number('y'))).toBe(1 / 8);
});

it('young of two uncertain sires share their dam only', () => {
  const all = stock(
    { 'birds.yaml': 'birds: [{id: x, sire: [a, b], dam: d}, {id: y, sire: [a, b], dam: d}]' },
    '2026-01-01',
  );
  const number = (name: string) => birdIn(all, name).ancestor.number;
  expect(kinship(all.lineage.autosomes, number('x'), number('y'))).toBe(1 / 8);
});

describe('a bird among its own ancestors', () => {
  const all = stock(
    { 'birds.yaml': 'birds: [{id: x, sire: y}, {id: y, sire: x}, {id: young, sire: x}, {id: other}]' },
    '2026-01-01',
  );

  it('has no F, nor has anyone who descends from it', () => {
    expect(['x', 'y', 'young'].map((name) => birdIn(all, name).inbreeding)).toEqual([null, null, null]);
    expect(birdIn(all, 'other').inbreeding).toBe(0);
  });

  it('has no ancestors that run in a circle', () => {
    expect(birdIn(all, 'young').ancestor.sire?.sire).toBeNull();
  });
});
