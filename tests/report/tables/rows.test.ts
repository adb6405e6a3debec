import { describe, expect, test } from 'vitest';
import { chickTable } from '../../../src/report/tables/chicks.ts';
import { clutchTable } from '../../../src/report/tables/clutches.ts';
import { eggTable } from '../../../src/report/tables/eggs.ts';
import { eventTable } from '../../../src/report/tables/events.ts';
import { pairTable } from '../../../src/report/tables/pairs.ts';
import { rateTable } from '../../../src/report/tables/rates.ts';
import { understandRoom } from '../../../src/room/fold.ts';
import { eventsOf } from '../../../src/rules/events/events.ts';
import { chickEntries, clutchEntries, eggEntries, rateEntries } from '../../../src/rules/season/ledger.ts';
import { record, room as understood } from '../../rooms.ts';

/** Four eggs: one clear, three fertile; three hatched, one starved, two fledged and fed themselves. */
const room = {
  'LW-1': `
    pair: LW-1
    species: lavender waxbill
    cock: C-1
    hen: H-1
    housing: flight 2
    log:
      - {date: 2025-03-01, clutch: 1, laid: 1}
      - {date: 2025-03-02, laid: 1}
      - {date: 2025-03-03, laid: 1}
      - {date: 2025-03-04, laid: 1, sitting}
      - {date: 2025-03-10, candled: {fertile: [e1, e2, e3], clear: e4}}
      - {date: 2025-03-16, hatched: [e1, e2, e3]}
      - {date: 2025-03-18, died: {not fed: c3}}
      - {date: 2025-04-04, fledged: [c1, c2]}
      - {date: 2025-04-14, nest: removed, lost: {clear: e4}}
      - {date: 2025-04-22, independent: all}
  `,
};

const stood = understood(room, '2025-06-01');
const read = record(room, '2025-06-01');
const tables = {
  eggs: eggTable(eggEntries(stood)),
  chicks: chickTable(chickEntries(stood)),
  clutches: clutchTable(clutchEntries(stood)),
  rates: rateTable(rateEntries(stood)),
  pairs: pairTable(stood.pairs),
  events: eventTable(eventsOf(read, understandRoom(read, stood))),
};

describe.each(Object.entries(tables))('%s', (_name, { columns, rows }) => {
  test('every row has every column, and no other', () => {
    expect(rows.length).toBeGreaterThan(0);
    for (const row of rows) expect(Object.keys(row)).toEqual(columns);
  });

  test('what is unknown is null, never a word for it', () => {
    for (const row of rows) {
      for (const value of Object.values(row))
        expect(['NaN', 'undefined', 'null']).not.toContain(String(value ?? ''));
    }
  });
});

test('one row an egg, a chick, a clutch', () => {
  expect([tables.eggs, tables.chicks, tables.clutches].map(({ rows }) => rows.length)).toEqual([4, 3, 1]);
});
