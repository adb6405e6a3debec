import { describe, expect, test } from 'vitest';
import { findSpecies, ownProfile, suggestSpecies } from '../../src/species/find.ts';
import { comparable, namesOf } from '../../src/species/names.ts';
import { allShipped } from '../../src/species/shipped.ts';

describe('a species is found under all its names', () => {
  test.each([
    ['lavender waxbill', 'lavender-waxbill'],
    ['lavender-waxbill', 'lavender-waxbill'],
    ['Lavender  Waxbill', 'lavender-waxbill'],
    ['Glaucestrilda caerulescens', 'lavender-waxbill'],
    ['Estrilda caerulescens', 'lavender-waxbill'],
    ['Taeniopygia guttata', 'zebra-finch'],
    ['Blue-faced Parrot-Finch', 'blue-faced-parrotfinch'],
    ['Red-cheeked Cordonbleu', 'red-cheeked-cordon-bleu'],
    ['Jamesons firefinch', 'jamesons-firefinch'],
    ['gray-headed silverbill', 'grey-headed-silverbill'],
    ['tricolored parrotfinch', 'tricoloured-parrotfinch'],
    ['Lonchura oryzivóra', 'java-sparrow'],
    ['society finch', 'bengalese-finch'],
  ])('%s', (name, id) => {
    expect(findSpecies(name)?.id).toBe(id);
  });

  test('none under no name or a bird that is not there', () => {
    expect(findSpecies('')).toBeNull();
    expect(findSpecies('- -')).toBeNull();
    expect(findSpecies('house sparrow')).toBeNull();
  });

  test('no name belongs to two species', () => {
    const owners = new Map<string, Set<string>>();
    for (const profile of allShipped()) {
      for (const name of namesOf(profile)) {
        owners.set(comparable(name), (owners.get(comparable(name)) ?? new Set()).add(profile.id));
      }
    }
    expect([...owners].filter(([, ids]) => ids.size > 1)).toEqual([]);
  });
});

describe('a misspelt name', () => {
  test.each([
    ['lavendar waxbil', 'lavender waxbill'],
    ['Estrilda coerulescens', 'Estrilda caerulescens'],
    ['zebrafinsh', 'zebra finch'],
  ])('%s: did you mean %s?', (wrong, right) => {
    expect(suggestSpecies(wrong)).toBe(right);
  });

  test('nothing is suggested for what is near to nothing', () => {
    expect(suggestSpecies('aardvark')).toBeNull();
    expect(suggestSpecies('')).toBeNull();
  });

  test('half a name is enough where it begins those of one species only', () => {
    expect(suggestSpecies('lavendar')).toBe('lavender waxbill');
    expect(suggestSpecies('zebra')).toBeNull();
  });

  test('own species are suggested too', () => {
    const { profile } = ownProfile({ species: 'dusky munia', incubation: '13-14' }, 'dusky-munia');
    expect(suggestSpecies('duskey munia', [profile])).toBe('dusky munia');
  });
});

describe('a room’s own profiles', () => {
  test('go before the shipped one and are completed from it', () => {
    const { profile, problems } = ownProfile(
      { species: 'Estrilda caerulescens', incubation: '12-13' },
      'mine',
    );
    expect(problems).toEqual([]);
    const found = findSpecies('lavender finch', [profile]);
    expect(found?.incubation).toMatchObject({ value: { low: 12, high: 13 }, source: 'own profile' });
    expect(found?.fledging?.value).toEqual({ low: 17, high: 21 });
    expect(findSpecies('lavender finch')?.incubation?.value).toEqual({ low: 11, high: 13 });
  });

  test('a file without a common name keeps the shipped one', () => {
    const { profile } = ownProfile({ scientific: 'Glaucestrilda caerulescens', clutch: '4' }, 'mine');
    expect(profile.species).toBe('lavender waxbill');
    expect(findSpecies('mine', [profile])?.clutch?.value).toEqual({ low: 4, high: 4 });
  });

  test('a species that is not shipped works with the few numbers that it has', () => {
    const { profile } = ownProfile({ scientific: 'Lonchura fuscans', incubation: '13-14' }, 'dusky-munia');
    expect(findSpecies('Dusky munia', [profile])?.incubation?.value).toEqual({ low: 13, high: 14 });
    expect(findSpecies('lonchura fuscans', [profile])?.fledging).toBeNull();
  });

  test('222 days of sitting are refused once, and the shipped range stays', () => {
    const { profile, problems } = ownProfile(
      { species: 'lavender waxbill', incubation: '222' },
      'lavender-waxbill',
    );
    expect(problems.map(({ path, code }) => [path[0], code])).toEqual([['incubation', 'profile-absurd']]);
    expect(profile.incubation?.value).toEqual({ low: 11, high: 13 });
  });

  test('what is doubtful only in that species is said once it is known which', () => {
    const { problems } = ownProfile({ species: 'spotted munia', incubation: '16' }, 'munia');
    expect(problems.map(({ path, code }) => [path[0], code])).toEqual([['incubation', 'profile-doubtful']]);
  });

  test('without an incubation nothing can be expected, which is said; once is enough where a figure is wrong', () => {
    const codes = (data: unknown) => ownProfile(data, 'hill-finch').problems.map(({ code }) => code);
    expect(codes({ clutch: '3-5' })).toEqual(['profile-missing']);
    expect(codes({ incubation: '222' })).toEqual(['profile-absurd']);
    expect(codes({ incubation: '12-14' })).toEqual([]);
    // The shipped profile has one.
    expect(codes({ species: 'star finch', clutch: '3-5' })).toEqual([]);
  });

  test('a shipped species under another scientific name keeps each name once', () => {
    const { profile } = ownProfile({ species: 'lavender waxbill', clutch: '4' }, 'mine');
    expect(namesOf(profile).filter((name) => name === 'Glaucestrilda caerulescens')).toHaveLength(1);
  });
});
