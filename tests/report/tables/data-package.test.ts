import { expect, it } from 'vitest';
import { dataPackage } from '../../../src/report/tables/data-package.ts';
import { pairTable } from '../../../src/report/tables/pairs.ts';
import { day, room } from '../../rooms.ts';
import { whole } from '../../whole.ts';

const pairs = room(
  { 'SF-1': 'pair: SF-1\nspecies: star finch\nhousing: "=1+1"\nlog:\n  - {date: 2026-03-01, paired}\n' },
  '2026-03-02',
).pairs;
const files = dataPackage([pairTable(pairs)], { day: day('2026-03-02'), room: 'the finch room' });
const said = (file: string) => whole(files.find(({ path }) => path === file)?.parts ?? []);
const description = JSON.parse(said('datapackage.json'));

it('is a CSV for each table, and the file that describes them', () => {
  expect(files.map(({ path }) => path)).toEqual(['pairs.csv', 'datapackage.json']);
  expect(said('pairs.csv')).toContain(
    "\r\nSF-1,star finch,Bathilda ruficauda,,,'=1+1,yes,pairs/SF-1.yaml\r\n",
  );
});

it('says whose it is and of which day, from the record alone', () => {
  expect(description).toMatchObject({
    name: 'nestlog',
    title: 'the finch room',
    created: '2026-03-02T00:00:00Z',
  });
  expect(description.description).toContain('as known on 2026-03-02');
});

it('describes each column as the manual does', () => {
  const { schema, path } = description.resources[0];
  expect(path).toBe('pairs.csv');
  expect(schema.primaryKey).toEqual(['pair']);
  expect(schema.missingValues).toEqual(['']);
  expect(schema.fields[0]).toEqual({
    name: 'pair',
    type: 'string',
    description: 'the pair’s id',
    constraints: { required: true },
  });
  expect(schema.fields[6]).toMatchObject({ name: 'together', constraints: { enum: ['yes', 'no'] } });
});
