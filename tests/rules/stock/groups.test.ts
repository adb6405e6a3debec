import { describe, expect, it } from 'vitest';
import { speciesGroups } from '../../../src/rules/stock/groups.ts';
import { stock, threeGenerations } from './rooms.ts';

const groupsOn = (on: string) => speciesGroups(stock(threeGenerations, on));

describe('a species', () => {
  it('has the birds that are here, and of them those that are old enough to breed', () => {
    const [group] = groupsOn('2025-06-20');
    expect(group?.species).toBe('lavender waxbill');
    expect([group?.living.birds, group?.breeders?.birds]).toEqual([11, 8]);
  });

  it('has founders whose parts add up', () => {
    const [group] = groupsOn('2025-06-20');
    expect(group?.living.founders.map(({ founder }) => founder).sort()).toEqual(['A', 'B', 'C', 'D']);
    expect(group?.living.founders.reduce((sum, { share }) => sum + share, 0)).toBeCloseTo(1, 12);
    expect(group?.living.founderEquivalents).toBeCloseTo(4, 12);
  });

  it('has 1 / (2 × mean kinship) founder genomes, less than its founders after chance has worked', () => {
    const living = groupsOn('2025-06-20')[0]?.living;
    expect(living?.founderGenomes).toBeCloseTo(1 / (2 * (living?.meanKinship ?? 0)), 12);
    expect(living?.geneDiversity).toBe(1 - (living?.meanKinship ?? 0));
  });
});

it('an unknown parent is named by its young', () => {
  const [group] = speciesGroups(
    stock({ 'birds.yaml': 'birds: [{id: x, dam: d, sire: [a, b]}]' }, '2026-01-01'),
  );
  expect(group?.living.founders).toEqual([
    { founder: 'unknown sire of x', share: 1 / 2 },
    { founder: 'd', share: 1 / 2 },
  ]);
});

it('without grown birds there are no possible breeders', () => {
  const files = { 'birds.yaml': 'birds: [{id: x, species: zebra finch, hatched: 2026-05-01}]' };
  expect(speciesGroups(stock(files, '2026-06-01'))[0]?.breeders).toBeNull();
});
