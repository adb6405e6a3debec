import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { parse } from 'yaml';
import { mergeProfiles, profileFromData } from '../../src/species/profile.ts';

/** A profile file as a keeper writes it. */
function profile(text: string, id = 'own') {
  return profileFromData(parse(text, { schema: 'failsafe' }), id);
}

/** What is wrong in it, as `key: code`. */
function problems(text: string) {
  return profile(text).problems.map(({ path, code }) => `${path.join('.')}: ${code}`);
}

describe('a profile file', () => {
  test('may give a few keys, the others are unknown', () => {
    const { profile: munia, problems } = profile('incubation: 12-14\nclutch: 5', 'dusky-munia');
    expect(problems).toEqual([]);
    expect(munia.id).toBe('dusky-munia');
    expect(munia.species).toBe('dusky munia');
    expect(munia.incubation).toEqual({
      value: { low: 12, high: 14 },
      source: 'own profile',
      grade: 'common practice',
    });
    expect(munia.clutch?.value).toEqual({ low: 5, high: 5 });
    expect(munia.fledging).toBeNull();
  });

  test('gives a value with source, grade and note in the long form', () => {
    const text = 'ring-size: {range: 2.0-2.3, source: ring list 2026, grade: read, note: "2.2 fits best"}';
    expect(profile(text).profile.ringSize).toEqual({
      value: { low: 2, high: 2.3 },
      source: 'ring list 2026',
      grade: 'read',
      note: '2.2 fits best',
    });
  });

  test.each([
    ['restart: -2', { low: -2, high: -2 }],
    ['restart: -5--2', { low: -5, high: -2 }],
    ['restart: -2-3', { low: -2, high: 3 }],
    ['incubation: 11 – 13', { low: 11, high: 13 }],
    ['incubation: 11 to 13', { low: 11, high: 13 }],
  ])('%s', (text, range) => {
    const { profile: bird } = profile(text);
    expect((bird.restart ?? bird.incubation)?.value).toEqual(range);
  });

  test('sitting may start with the last egg', () => {
    expect(profile('sitting-from: last').profile.sittingFrom?.value).toBe('last');
    expect(profile('sitting-from: 3-4').profile.sittingFrom?.value).toEqual({ low: 3, high: 4 });
  });

  test.each(['-999', 'NA', 'NAV', 'unknown', '""'])(
    '%s stands for nothing known, as in the open data sets',
    (text) => {
      const { profile: bird, problems } = profile(`incubation: ${text}`);
      expect(bird.incubation).toBeNull();
      expect(problems).toEqual([]);
    },
  );
});

describe('what is wrong in a profile is named with its key, and the rest works', () => {
  test.each([
    ['incubation: 14-12', 'incubation: profile-reversed'],
    ['incubation: {range: 14-12}', 'incubation.range: profile-reversed'],
    ['incubation: 0', 'incubation: profile-not-positive'],
    ['clutch: -2', 'clutch: profile-not-positive'],
    ['fledging: -1', 'fledging: profile-not-positive'],
    ['incubation: two weeks', 'incubation: profile-not-a-number'],
    ['ring-size: 2,0-2,3', 'ring-size: profile-not-a-number'],
    ['incubation: [12, 14]', 'incubation: profile-not-a-number'],
    ['sitting-from: first', 'sitting-from: profile-not-a-number'],
    ['incubaton: 12', 'incubaton: profile-unknown-key'],
    ['incubation: {range: 12, sorce: x}', 'incubation.sorce: profile-unknown-key'],
    ['incubation: {range: 12, grade: heard}', 'incubation.grade: profile-unknown-word'],
    ['live-food: always', 'live-food: profile-unknown-word'],
    ['nest-looks: {value: rarely}', 'nest-looks.value: profile-unknown-word'],
    ['scientific: [a, b]', 'scientific: profile-not-a-name'],
    ['also: [{a: b}]', 'also: profile-not-a-name'],
    ['- 12', ': not-a-mapping'],
    ['incubation: 222', 'incubation: profile-absurd'],
  ])('%s', (text, expected) => {
    expect(problems(text)).toEqual([expected]);
    if (!text.startsWith('-')) {
      expect(profile(`${text}\ncandling: 5-6`).profile.candling?.value).toEqual({ low: 5, high: 6 });
    }
  });

  test('a value that cannot be read is unknown, never a wrong number', () => {
    expect(profile('incubation: 14-12').profile.incubation).toBeNull();
    expect(profile('incubation: 222').profile.incubation).toBeNull();
  });

  test('whatever is written, reading it throws nothing and gives no NaN', () => {
    const keys = fc.constantFrom('incubation', 'clutch', 'also', 'species', 'live-food', 'sitting-from', 'x');
    const tree = fc.letrec((tie) => ({
      node: fc.oneof(
        fc.string(),
        fc.constant(null),
        fc.array(tie('node')),
        fc.dictionary(fc.string(), tie('node')),
      ),
    })).node;
    fc.assert(
      fc.property(fc.oneof(tree, fc.dictionary(keys, tree)), (data) => {
        expect(JSON.stringify(profileFromData(data, 'x').profile)).not.toMatch(/NaN|"(low|high)":null/);
      }),
    );
  });
});

describe('an own profile over the shipped one', () => {
  const shipped = profile(
    `
species: lavender waxbill
scientific: Glaucestrilda caerulescens
also: [lavender finch]
incubation: {range: 11-13, source: a book, grade: read}
fledging: {range: 17-21, source: a book, grade: read}
independence: {range: 30-40, source: a book, grade: read}`,
    'lavender-waxbill',
  ).profile;

  test('own keys win, key by key; the others keep their source', () => {
    const own = profile('incubation: 12', 'my-lavender').profile;
    const { profile: merged, problems } = mergeProfiles(own, shipped);
    expect(problems).toEqual([]);
    expect(merged.incubation).toEqual({
      value: { low: 12, high: 12 },
      source: 'own profile',
      grade: 'common practice',
    });
    expect(merged.fledging?.source).toBe('a book');
  });

  test('it is one species under the names of both', () => {
    const own = profile('species: grey waxbill\nalso: [blue-grey]', 'grey').profile;
    const { profile: merged } = mergeProfiles(own, shipped);
    expect(merged.id).toBe('lavender-waxbill');
    expect(merged.species).toBe('grey waxbill');
    expect(merged.scientific).toBe('Glaucestrilda caerulescens');
    expect(merged.also).toEqual(['lavender waxbill', 'blue-grey', 'lavender finch']);
  });

  test('a shipped scientific name goes on to be known where the own file has another', () => {
    const own = profile('species: lavender waxbill\nscientific: Estrilda caerulescens', 'grey').profile;
    const { profile: merged } = mergeProfiles(own, shipped);
    expect(merged.scientific).toBe('Estrilda caerulescens');
    expect(merged.also).toEqual(['lavender finch', 'Glaucestrilda caerulescens']);
  });

  test('an own value that contradicts the shipped ones is a problem at the own key, and the shipped one stays', () => {
    const { profile: merged, problems } = mergeProfiles(profile('fledging: 32-45').profile, shipped);
    expect(problems.map(({ path, code }) => [path, code])).toContainEqual([['fledging'], 'profile-absurd']);
    expect(merged.fledging?.value).toEqual({ low: 17, high: 21 });
    expect(merged.independence?.value).toEqual({ low: 30, high: 40 });
  });
});
