import { expect, test } from 'vitest';
import { keptSpecies, speciesList } from '../../../src/rules/species/list.ts';
import { record, room } from '../../rooms.ts';

const files = {
  'LW-1': `
    pair: LW-1
    species: lavender waxbill
    log:
      - {date: 2026-03-04, after: 2026-03-03, clutch: 1, laid: 1, sitting}
      - {date: 2026-03-18, after: 2026-03-17, hatched: 1}
  `,
  'LW-2': 'pair: LW-2\nspecies: Estrilda caerulescens\nlog: []\n',
};
const all = { kept: false, liveFood: null, named: null };
const on = '2026-06-01';
const names = (filter: Partial<typeof all> | { liveFood: string } | { named: string }) =>
  speciesList(room(files, on), [], { ...all, ...filter }).map(({ species }) => species);

test('own profiles stand in place of the shipped ones, also under a name of their own', () => {
  const own = { 'species/star-finch.yaml': 'species: red-faced finch\nalso: star finch\nincubation: 13\n' };
  const list = speciesList(room(own, on), record(own, on).ownSpecies, all);
  const stars = list.filter(({ id }) => id === 'star-finch');
  expect(stars.map(({ species, incubation }) => [species, incubation?.value])).toEqual([
    ['red-faced finch', { low: 13, high: 13 }],
  ]);
});

test('kept species are those of the room’s pairs, under whichever name', () => {
  expect(names({ kept: true })).toEqual(['lavender waxbill']);
  const more = { ...files, X: 'pair: X\nspecies: greater moonfinch\nlog: []\n' };
  expect(speciesList(room(more, on), [], { ...all, kept: true }).map(({ species }) => species)).toEqual([
    'lavender waxbill',
  ]);
});

test('part of any name narrows the list, scientific names and hyphens included', () => {
  expect(names({ named: 'coerulescens' })).toEqual([]);
  expect(names({ named: 'caerulesc' })).toEqual(['lavender waxbill']);
  expect(names({ named: 'parrot-finch' })).toContain('blue-faced parrotfinch');
});

test('those that need live food are told apart from those that do without', () => {
  expect(names({ liveFood: 'required' })).toContain('lavender waxbill');
  expect(names({ liveFood: 'required' })).not.toContain('zebra finch');
  expect(names({ liveFood: 'no' })).toContain('zebra finch');
  const own = { 'species/moonfinch.yaml': 'species: moonfinch\nincubation: 13\n' };
  const unsaid = speciesList(room(own, on), record(own, on).ownSpecies, { ...all, liveFood: 'no' });
  expect(unsaid.map(({ species }) => species)).not.toContain('moonfinch');
});

test('a kept species of which a range is not known has no days for it', () => {
  const own = {
    'species/moonfinch.yaml': 'species: moonfinch\nincubation: 13\n',
    'M-1': 'pair: M-1\nspecies: moonfinch\nlog: []\n',
  };
  const stood = room(own, on);
  const [moonfinch] = keptSpecies(
    stood,
    speciesList(stood, record(own, on).ownSpecies, { ...all, kept: true }),
  );
  expect(moonfinch?.profile.species).toBe('moonfinch');
  expect([moonfinch?.now.incubation?.n, moonfinch?.now.fledging]).toEqual([0, null]);
});

test('the list is in the order of common names, whatever their capitals', () => {
  const list = names({});
  expect(list.length).toBeGreaterThanOrEqual(60);
  expect(list).toEqual([...list].sort((a, b) => a.toLowerCase().localeCompare(b.toLowerCase(), 'en')));
});

test('a kept species has the days that forecasts now use; without own clutches they are the book’s', () => {
  const stood = room(files, on);
  const [lavender] = keptSpecies(stood, speciesList(stood, [], { ...all, kept: true }));
  expect(lavender?.now.incubation?.n).toBe(1);
  // 14 days of sitting against a book of 11 to 13.
  expect(lavender?.now.incubation?.range.high).toBeGreaterThan(13);
  expect(lavender?.now.fledging?.n).toBe(0);
  expect(lavender?.now.fledging?.range.low).toBeCloseTo(17, 10);
  expect(lavender?.now.fledging?.range.high).toBeCloseTo(21, 10);
});
