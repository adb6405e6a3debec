import { readFileSync } from 'node:fs';
import { shippedProfiles } from 'virtual:species-profiles';
import { describe, expect, test } from 'vitest';
import { idFor } from '../../src/species/names.ts';
import { profileFromData } from '../../src/species/profile.ts';
import { allShipped, shippedProfile } from '../../src/species/shipped.ts';
import { type TraitKey, traitByName, traitKeys, traits } from '../../src/species/traits.ts';
import { rangeText } from '../../src/species/value.ts';

/** A profile's values as the file writes them. */
function written(id: string) {
  const profile = shippedProfile(id);
  return Object.fromEntries(
    traitKeys.map((key) => {
      const value = profile?.[key]?.value ?? null;
      return [traits[key].name, typeof value === 'object' && value !== null ? rangeText(value) : value];
    }),
  );
}

describe('the shipped profiles', () => {
  test('are at least sixty species', () => {
    expect(shippedProfiles.length).toBeGreaterThanOrEqual(60);
  });

  test('have nothing wrong, not even doubtful', () => {
    const wrong = shippedProfiles.flatMap(({ file, data }) =>
      profileFromData(data, file).problems.map(({ path, code }) => `${file}: ${path.join('.')}: ${code}`),
    );
    expect(wrong).toEqual([]);
  });

  test('name the source and grade of every value', () => {
    for (const { file, data } of shippedProfiles) {
      for (const [key, value] of Object.entries(data as Record<string, Record<string, string>>)) {
        if (traitByName(key) === null) continue;
        expect(value.source, `${file}: ${key}`).toMatch(/\w/);
        expect(['open data', 'read', 'common practice', 'from memory'], `${file}: ${key}`).toContain(
          value.grade,
        );
      }
    }
  });

  test('are written in the order of a profile', () => {
    const order = ['species', 'scientific', 'also', ...traitKeys.map((key) => traits[key].name)];
    for (const { file, data } of shippedProfiles) {
      const keys = Object.keys(data as object);
      expect(keys, file).toEqual(order.filter((key) => keys.includes(key)));
    }
  });

  // What may be unknown: a mass at hatching that nobody was found to have given, the lead of live food that is not
  // needed, and the ring age of young that leave the nest on the first day.
  test('have every value that a morning needs', () => {
    for (const profile of allShipped()) {
      const absent = traitKeys.filter((key) => profile[key] === null);
      const allowed: TraitKey[] = ['hatchMass'];
      if (profile.liveFood?.value === 'no') allowed.push('liveFoodLead');
      if (profile.id === 'king-quail') allowed.push('ringAge');
      expect(
        absent.filter((key) => !allowed.includes(key)),
        profile.species,
      ).toEqual([]);
    }
  });

  test('the file is named like the species', () => {
    for (const { id, species } of allShipped()) expect(id).toBe(idFor(species));
  });

  test('each value stands on one line, to be corrected by hand', () => {
    const folder = new URL('../../src/species/profiles/', import.meta.url);
    for (const { file } of shippedProfiles) {
      const values = readFileSync(new URL(file, folder), 'utf8')
        .split('\n')
        .filter((line) => line.includes('grade:'));
      for (const line of values)
        expect(line, file).toMatch(/^[a-z-]+: +\{(range|value): .*, +grade: .*, +source: .*\}$/);
    }
  });

  test('the lavender waxbill', () => {
    expect(written('lavender-waxbill')).toEqual({
      sexes: 'alike',
      clutch: '4-5',
      'laying-interval': '1',
      'sitting-from': '3-4',
      incubation: '11-13',
      candling: '5-6',
      'nest-looks': 'sparingly',
      'live-food': 'required',
      'live-food-lead': '2',
      brooding: '7-9',
      'ring-size': '2-2.3',
      'ring-age': '7-8',
      fledging: '17-21',
      'roosting-back': '5-10',
      restart: '5',
      independence: '30-40',
      moult: '40-120',
      'breeding-age': '9-12',
      'clutches-per-year': '3',
      'adult-mass': '8.5',
      'hatch-mass': '0.7',
    });
  });

  test('a king quail’s young leave the nest on the day of hatching', () => {
    expect(written('king-quail')).toMatchObject({
      'sitting-from': 'last',
      fledging: '0-1',
      'roosting-back': '0',
      'ring-age': null,
    });
  });

  test('a species is converted once', () => {
    expect(shippedProfile('zebra finch')).toBe(shippedProfile('Taeniopygia guttata'));
  });
});
