import { describe, expect, it } from 'vitest';
import { birdColumns, birdTable } from '../../../src/report/tables/birds.ts';
import { stock } from '../../rules/stock/rooms.ts';
import { FAMILY_DAY, family } from '../family.ts';

describe('the table of birds', () => {
  const { name, columns, rows: all } = birdTable(stock(family, FAMILY_DAY));
  const rows = [...all];
  const row = (id: string) => rows.find((each) => each.id === id);

  it('has at least the columns that programs were promised', () => {
    expect(name).toBe('birds');
    expect(columns).toEqual(
      expect.arrayContaining([
        'id',
        'ring',
        'species',
        'sex',
        'hatched',
        'sire',
        'dam',
        'status',
        'housing',
        'inbreeding',
        'meanKinship',
      ]),
    );
    for (const each of rows) expect(Object.keys(each)).toEqual(columns);
    expect(new Set(columns).size).toBe(birdColumns.length);
  });

  it('has everyone, the dead and gone included, each once', () => {
    expect(rows.map(({ id }) => id)).toHaveLength(15);
    expect(row('SF-20-02')).toMatchObject({
      status: 'died',
      left: '2025-08-03',
      how: 'age',
      housing: null,
      meanKinship: null,
    });
    expect(row('SF-23-13')).toMatchObject({ status: 'gone', how: 'sold', chick: 'SF-1/1/c3' });
    expect(row('SF-2/1/c3')).toMatchObject({ status: 'unaccounted' });
  });

  it('has parents as ids, whatever names the journals use, and nothing where they are not certain', () => {
    expect(row('SF-24-51')).toMatchObject({ sire: 'SF-23-11', dam: 'SF-22-30' });
    expect(row('SF-22-30')).toMatchObject({ sire: null, dam: 'SF-18-02' });
  });

  it('has the days on which a bird can have hatched', () => {
    expect(row('SF-20-01')).toMatchObject({ hatched: '2020-04-02', hatchedFrom: '2020-04-02' });
    expect(row('ZF-1')).toMatchObject({ hatched: null, hatchedFrom: null, ring: '2291', origin: 'a dealer' });
  });
});
