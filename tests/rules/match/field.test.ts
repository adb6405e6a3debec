import { describe, expect, it } from 'vitest';
import { fieldOf, isWithin, matingsOf } from '../../../src/rules/match/field.ts';
import { birdIn, stock } from '../stock/rooms.ts';

const family = stock(
  {
    'birds.yaml': `
      birds:
        - {id: S, sex: cock}
        - {id: T, sex: cock}
        - {id: d, sex: hen, sire: S}
        - {id: e, sex: hen, sire: T}
    `,
  },
  '2026-01-01',
);

describe('the free birds of a species', () => {
  const field = fieldOf(family.birds, family, null);

  it('are weighed each against each of the other sex', () => {
    expect(
      matingsOf(birdIn(family, 'd'), field).map(({ cock, inbreeding }) => [cock.id, inbreeding]),
    ).toEqual([
      ['S', 1 / 4],
      ['T', 0],
    ]);
    expect(matingsOf(birdIn(family, 'S'), field).map(({ hen }) => hen.id)).toEqual(['d', 'e']);
  });

  it('and the best together are those that are no kin', () => {
    expect(field.chosen.map(({ cock, hen }) => `${cock.id} × ${hen.id}`)).toEqual(['S × e', 'T × d']);
  });

  it('a limit is meant to be reached, not passed', () => {
    const [mating] = matingsOf(birdIn(family, 'd'), field);
    if (mating === undefined) throw new Error('no mating');
    expect([0.24, 0.25, null].map((limit) => isWithin(mating, limit))).toEqual([false, true, true]);
  });
});

it('of a crowd those with the fewest relatives are weighed', () => {
  const birds = Array.from(
    { length: 300 },
    (_, i) => `  - {id: x${i}, sex: cock${i < 280 ? ', sire: P' : ''}}`,
  );
  const all = stock({ 'birds.yaml': `birds:\n${birds.join('\n')}\n  - {id: h, sex: hen}\n` }, '2026-01-01');
  const { cocks, crowdedOut } = fieldOf(all.birds, all, null);
  expect([cocks.length, crowdedOut.size]).toEqual([250, 50]);
  expect(cocks).toContain(birdIn(all, 'x299'));
});
