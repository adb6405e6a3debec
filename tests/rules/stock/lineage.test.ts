import { describe, expect, it } from 'vitest';
import type { Lineage } from '../../../src/rules/stock/lineage.ts';
import { kinship, type Relationship } from '../../../src/statistics/pedigree/relationship.ts';
import { birdIn, stock, threeGenerations } from './rooms.ts';

describe('the pedigree of a room', () => {
  const kin = (
    one: string,
    other: string,
    pick: (lineage: Lineage) => Relationship = (of) => of.autosomes,
  ) => {
    const all = stock(threeGenerations, '2025-06-20');
    return kinship(pick(all.lineage), birdIn(all, one).ancestor.number, birdIn(all, other).ancestor.number);
  };

  it('has brothers and sisters, parents and grandparents', () => {
    expect(kin('LW-3/1/c1', 'LW-3/1/c2')).toBe(1 / 4);
    expect(kin('SON', 'LW-1/1/c2')).toBe(1 / 4);
    expect(kin('A', 'SON')).toBe(1 / 4);
    expect(kin('A', 'LW-3/1/c1')).toBe(1 / 8);
    expect(kin('SON', 'GIRL')).toBe(0);
  });

  it('on the Z chromosome a hen has her sire’s only', () => {
    const onZ = (one: string, other: string) => kin(one, other, (of) => of.z());
    expect(onZ('GIRL', 'D')).toBe(0);
    expect(onZ('GIRL', 'C')).toBe(1 / 2);
    expect(onZ('SON', 'B')).toBe(1 / 2);
  });
});

describe('on the Z chromosome a bird that nobody sexed', () => {
  /** How like two full sibs are on the Z, as their unsexed dam or sire is taken for a hen or not. */
  const onZ = (birds: string, one: string, other: string) => {
    const all = stock({ 'birds.yaml': `birds: [${birds}]` }, '2026-01-01');
    return kinship(all.lineage.z(), birdIn(all, one).ancestor.number, birdIn(all, other).ancestor.number);
  };
  const young = '{id: x, sex: cock, sire: s, dam: d}, {id: y, sex: cock, sire: s, dam: d}';

  it('is a hen where it stands as a dam, and no hen where it stands as a sire', () => {
    // Sons have half their Z from the sire, who has two to give, and half from the dam, who has one: ⅜ = ¼ · ½ + ¼.
    expect(onZ(young, 'x', 'y')).toBe(3 / 8);
    expect(onZ(`{id: s}, {id: d}, ${young}`, 'x', 'y')).toBe(3 / 8);
  });

  it('is of the sex that is written, whatever it stands as', () => {
    expect(onZ(`{id: s, sex: hen}, {id: d}, {id: z, sire: s}, ${young}`, 'x', 'y')).toBe(1 / 2);
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
  const circle = () =>
    stock(
      { 'birds.yaml': 'birds: [{id: x, sire: y}, {id: y, sire: x}, {id: young, sire: x}, {id: other}]' },
      '2026-01-01',
    );

  it('has no F, nor has anyone who descends from it', () => {
    const all = circle();
    expect(['x', 'y', 'young'].map((name) => birdIn(all, name).inbreeding)).toEqual([null, null, null]);
    expect(birdIn(all, 'other').inbreeding).toBe(0);
  });

  it('has no ancestors that run in a circle', () => {
    expect(birdIn(circle(), 'young').ancestor.sire?.sire).toBeNull();
  });
});
