import { expect, test } from 'vitest';
import { roomRecordJson, speciesJson, speciesListJson } from '../../../src/report/json/species.ts';
import { roomRecords } from '../../../src/rules/species/records.ts';
import { speciesView } from '../../../src/rules/species/view.ts';
import { findSpecies } from '../../../src/species/find.ts';
import type { Profile } from '../../../src/species/profile.ts';
import { room } from '../../rooms.ts';

const profile = findSpecies('king quail') as Profile;

test('what is unknown is null, never missing', () => {
  const data = JSON.parse(speciesJson(speciesView(room({}, '2026-06-01'), profile)));
  expect(data.values['ring-age']).toBeNull();
  expect(data.own.incubation).toMatchObject({ n: 0, observed: null, record: null, past: [] });
});

test('the list gives name, days and need of live food', () => {
  const { species } = JSON.parse(speciesListJson([profile]));
  expect(Object.keys(species[0])).toEqual(['species', 'scientific', 'incubation', 'fledging', 'liveFood']);
});

test('a room without clutches has a record of nulls', () => {
  expect(JSON.parse(roomRecordJson(roomRecords(room({}, '2026-06-01'))))).toEqual({
    nestlog: 1,
    records: { incubation: { species: [], all: null }, fledging: { species: [], all: null } },
  });
});
