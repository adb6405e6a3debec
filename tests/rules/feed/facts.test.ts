import { describe, expect, it } from 'vitest';
import { factsOf } from '../../../src/rules/feed/facts.ts';
import { findSpecies } from '../../../src/species/find.ts';
import { profileFromData } from '../../../src/species/profile.ts';
import { allShipped } from '../../../src/species/shipped.ts';

const facts = factsOf();

describe('the facts of a species', () => {
  it('are its profile’s', () => {
    expect(facts(findSpecies('lavender waxbill', []))).toMatchObject({
      species: 'lavender waxbill',
      mass: 8.5,
      fledging: 19,
      independence: 40,
      liveFood: 'required',
      lead: 2,
      assumed: [],
    });
  });

  it('are those of a small finch where there is no profile, each named', () => {
    const unknown = facts(null);
    expect(unknown).toMatchObject({
      species: null,
      mass: 12,
      fledging: 20,
      independence: 60,
      liveFood: null,
    });
    expect(unknown.assumed.join('; ')).toBe(
      'incubation 10–25 d; adult-mass 12 g; fledging 18–22 d; independence 30–60 d; live-food unknown, so none is planned',
    );
  });

  it('name only what a keeper’s own profile leaves out', () => {
    const { profile } = profileFromData(
      { species: 'cloud finch', 'live-food': 'no', fledging: '20' },
      'cloud',
    );
    expect(facts(profile).assumed).toEqual(['incubation 10–25 d', 'adult-mass 12 g', 'independence 30–60 d']);
  });

  it('of chicks that walk off at once are reckoned to independence, not over one day', () => {
    expect(facts(findSpecies('king quail', [])).nestling.length).toBeGreaterThan(20);
  });
});

it('every shipped species has a curve of energy and mass that can be reckoned with', () => {
  const all = allShipped();
  expect(all.length).toBeGreaterThan(50);
  for (const profile of all) {
    const { nestling, massAt, independence, fledging, assumed } = facts(profile);
    expect(assumed, profile.id).toEqual([]);
    expect(independence).toBeGreaterThan(fledging);
    expect(
      nestling.every((kJ) => Number.isFinite(kJ) && kJ > 0),
      profile.id,
    ).toBe(true);
    expect(massAt(5)).toBeGreaterThan(massAt(0));
  }
});
