import { describe, expect, it } from 'vitest';
import { expectedMass, growthCurve, HATCH_SHARE } from '../../../src/rules/growth/curve.ts';
import { type Profile, profileFromData } from '../../../src/species/profile.ts';
import { allShipped } from '../../../src/species/shipped.ts';

/** An own profile with these figures. */
function finch(more: Record<string, string>): Profile {
  return profileFromData({ species: 'hill finch', ...more }, 'hill-finch').profile;
}

const figures = { fledging: '18-22', 'adult-mass': '12', 'hatch-mass': '1' };

describe('the growth curve of a species', () => {
  it('starts at the hatch mass, is half-way at two fifths of the time in the nest, and ends at the adult mass', () => {
    const curve = growthCurve(finch(figures));
    if (curve === null) throw new Error('no curve');
    expect(expectedMass(curve, 0).likely).toBeCloseTo(1, 9);
    expect(expectedMass(curve, 8).likely).toBeCloseTo(6, 9);
    expect(expectedMass(curve, 60).likely).toBeCloseTo(12, 3);
  });

  it('takes a usual share of the adult mass where the mass at hatching is not known', () => {
    const curve = growthCurve(finch({ fledging: '20', 'adult-mass': '10' }));
    if (curve === null) throw new Error('no curve');
    expect(expectedMass(curve, 0).likely).toBeCloseTo(0.65, 9);
  });

  it('covers every age that a chick may have', () => {
    const curve = growthCurve(finch(figures));
    if (curve === null) throw new Error('no curve');
    const span = expectedMass(curve, 4, 6);
    expect(span.low).toBe(expectedMass(curve, 4).low);
    expect(span.high).toBe(expectedMass(curve, 6).high);
    expect(span.likely).toBe(expectedMass(curve, 5).likely);
  });

  it.each([
    ['adult-mass', { fledging: '20', 'hatch-mass': '1' }],
    ['fledging', { 'adult-mass': '10', 'hatch-mass': '1' }],
  ])('is not made up without %s', (_, given) => {
    expect(growthCurve(finch(given as Record<string, string>))).toBeNull();
  });

  it('is not for young that leave the nest as they hatch', () => {
    const quail = {
      scientific: 'Synoicus chinensis',
      fledging: '0-1',
      'adult-mass': '40',
      'hatch-mass': '3.4',
    };
    expect(growthCurve(finch(quail))).toBeNull();
    expect(growthCurve(finch({ ...quail, fledging: '14' }))).toBeNull();
  });
});

describe('the shipped species', () => {
  const nestlings = allShipped().flatMap((profile) => {
    const curve = growthCurve(profile);
    return curve === null ? [] : [{ id: profile.id, curve }];
  });

  it('all have a curve but the quails', () => {
    const without = allShipped().filter((profile) => growthCurve(profile) === null);
    expect(without.map(({ id }) => id)).toEqual(['king-quail']);
  });

  it('grow from day to day, inside their band, at every age', () => {
    for (const { id, curve } of nestlings) {
      let before = 0;
      for (let age = 0; age <= 40; age++) {
        const { low, likely, high } = expectedMass(curve, age);
        expect(low > 0 && low < likely && likely < high, `${id} at ${age} d`).toBe(true);
        expect(likely, `${id} at ${age} d`).toBeGreaterThan(before);
        before = likely;
      }
    }
  });

  it('that give both masses hatch with the usual share of the adult’s, half of them above and half below', () => {
    const shares = allShipped()
      .flatMap(({ hatchMass, adultMass }) => {
        if (hatchMass === null || adultMass === null) return [];
        const [hatch, adult] = [hatchMass.value, adultMass.value];
        return [(hatch.low + hatch.high) / (adult.low + adult.high)];
      })
      .sort((a, b) => a - b);
    expect(shares.length).toBeGreaterThan(50);
    expect(shares[Math.floor(shares.length / 2)]).toBeCloseTo(HATCH_SHARE, 2);
  });
});
