import { describe, expect, it } from 'vitest';
import { factsOf } from '../../../src/rules/feed/facts.ts';
import { expectedMass, type GrowthCurve, growthCurve } from '../../../src/rules/growth/curve.ts';
import { findSpecies } from '../../../src/species/find.ts';
import { type Profile, profileFromData } from '../../../src/species/profile.ts';
import { allShipped } from '../../../src/species/shipped.ts';

/** Reckoned anew each time. */
const facts = (profile: Profile | null) => factsOf()(profile);
const own = (data: Record<string, string>) =>
  profileFromData({ species: 'cloud finch', ...data }, 'cloud').profile;

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
      lead: 2,
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
    const quail = facts(findSpecies('king quail', []));
    expect(quail.nestling.length).toBeGreaterThan(20);
    expect(quail.fledging).toBe(quail.nestling.length);
    expect(quail.independence).toBeGreaterThan(quail.fledging);
  });

  it('have the young feed themselves a day after they left the nest at the earliest', () => {
    expect(facts(own({ fledging: '20', independence: '20' }))).toMatchObject({
      fledging: 20,
      independence: 21,
    });
    expect(facts(own({ fledging: '20', independence: '21-25' }))).toMatchObject({
      fledging: 20,
      independence: 25,
    });
  });

  it('have live food ready so many days before as the profile asks', () => {
    expect(facts(own({ 'live-food': 'required', 'live-food-lead': '3-5' })).lead).toBe(5);
  });

  it('are worked out once for each species', () => {
    const once = factsOf();
    expect(once(null)).toBe(once(null));
  });

  // Half grown at four tenths of the time in the nest, as the growth curve has it; hatched at 6.5 % of the adult’s mass.
  it('let a chick of unknown kind grow like a small finch', () => {
    const { massAt } = facts(null);
    expect(massAt(0)).toBeCloseTo(12 * 0.065, 9);
    expect(massAt(8)).toBeCloseTo(6, 9);
    expect(massAt(60)).toBeCloseTo(12, 1);
  });

  it('let a chick grow as its weights are judged by', () => {
    for (const name of ['zebra finch', 'lavender waxbill', 'canary']) {
      const profile = findSpecies(name, []) as Profile;
      const curve = growthCurve(profile) as GrowthCurve;
      for (const age of [0, 5, 15])
        expect(facts(profile).massAt(age)).toBeCloseTo(expectedMass(curve, age).likely, 9);
    }
  });

  it('let it hatch with the mass of its own profile, but for one that hatches half grown', () => {
    const hatched = (mass: string) => facts(own({ 'hatch-mass': mass })).massAt(0);
    expect(hatched('1.5')).toBeCloseTo(1.5, 9);
    expect(hatched('6')).toBeCloseTo(4, 9);
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
