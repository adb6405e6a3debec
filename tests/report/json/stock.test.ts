import { expect, it } from 'vitest';
import { run } from '../../../src/commands/stock.ts';
import { runCommand } from '../../commands/run.ts';
import { FAMILY_DAY, family } from '../family.ts';

const stock = async (options = {}) =>
  JSON.parse((await runCommand({ run }, family, { on: FAMILY_DAY, json: true, options })).text);

it('has the birds that are here, and what each species holds', async () => {
  const { nestlog, date, room, birds, species, unaccounted } = await stock();
  expect([nestlog, date, room]).toEqual([1, FAMILY_DAY, 'the long shed']);
  expect(birds).toHaveLength(12);
  expect(birds[0]).toMatchObject({ id: 'SF-3/1/c1', inbreeding: 1 / 8, sire: 'SF-20-01', dam: 'SF-24-51' });
  expect(species[0]).toMatchObject({
    species: 'star finch',
    birds: 10,
    cocks: 4,
    hens: 4,
    notSexed: 2,
    ages: { chick: 0, fledgling: 0, young: 2, adult: 8 },
  });
  expect(species[0].living.geneDiversity).toBe(1 - species[0].living.meanKinship);
  expect(species[0].breeders.birds).toBe(8);
  expect(unaccounted).toEqual(['SF-2/1/c3']);
});

it('of a part of them has null where it would be of another group', async () => {
  const { species } = await stock({ age: 'young' });
  expect(species).toEqual([expect.objectContaining({ birds: 2, living: null, breeders: null })]);
});
