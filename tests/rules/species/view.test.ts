import { expect, test } from 'vitest';
import { speciesView } from '../../../src/rules/species/view.ts';
import { findSpecies } from '../../../src/species/find.ts';
import type { Profile } from '../../../src/species/profile.ts';
import { room } from '../../rooms.ts';

const files = {
  'LW-1': `
    pair: LW-1
    species: lavender waxbill
    log:
      - {date: 2026-03-04, after: 2026-03-03, clutch: 1, laid: 1, sitting}
      - {date: 2026-03-16, after: 2026-03-15, hatched: 1}
      - {date: 2026-04-03, fledged: 1}
  `,
  'LW-2': `
    pair: LW-2
    species: Estrilda caerulescens
    log:
      - {date: 2026-05-04, after: 2026-05-03, clutch: 1, laid: 1, sitting}
      - {date: 2026-05-18, after: 2026-05-17, hatched: 1}
  `,
};

test('one species under two names in two journals is one species, with the experience of both', () => {
  const stood = room(files, '2026-06-01');
  const profile = findSpecies('lavender waxbill');
  if (profile === null) return expect.unreachable();
  const view = speciesView(stood, profile);
  expect(view.pairs).toEqual(['LW-1', 'LW-2']);
  // 12 and 14 days of sitting.
  expect(view.own.incubation?.observed).toEqual({ mean: 13, low: 12, high: 14 });
  expect(view.own.fledging).toMatchObject({ n: 1, observed: { mean: 18 } });
});

test('a species that the room does not keep has the book alone', () => {
  const profile = findSpecies('star finch');
  if (profile === null) return expect.unreachable();
  const view = speciesView(room(files, '2026-06-01'), profile);
  expect(view.pairs).toEqual([]);
  expect(view.own.incubation).toMatchObject({ n: 0, observed: null, record: null });
});

test('a species of which the book knows no days has none here, beside pairs that nobody has a book for', () => {
  const own = {
    'species/moonfinch.yaml': 'species: moonfinch\nincubation: 13\n',
    'M-1': 'pair: M-1\nspecies: moonfinch\nlog: []\n',
    'X-1': 'pair: X-1\nspecies: greater moonfinch\nlog: []\n',
  };
  const stood = room(own, '2026-06-01');
  const view = speciesView(stood, stood.pairs[0]?.profile as Profile);
  expect([view.pairs, view.own.incubation?.basis, view.own.fledging]).toEqual([['M-1'], '13 d, book', null]);
});
