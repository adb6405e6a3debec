import { expect, it } from 'vitest';
import { eventColumns, eventTable } from '../../../src/report/tables/events.ts';
import { understandRoom } from '../../../src/room/fold.ts';
import { eventsOf } from '../../../src/rules/events/events.ts';
import { day, record } from '../../rooms.ts';

const log = `
  pair: LW-1
  species: lavender waxbill
  log:
    - {date: 2026-03-01, clutch: 1, laid: 1}
    - {date: 2026-03-02, time: 07:30, laid: ~3, sitting, note: "=2+2"}
    - {date: 2026-03-09, candled: {fertile: [e1, e2], clear: 1}}
    - {date: 2026-03-10, weighed: {e1: 1.1}, checked: {eggs: 3+}}
    - {date: 2026-03-12, lost: {broken: all}}
`;
const read = record({ 'LW-1': log }, '2026-03-20');
const table = eventTable(
  eventsOf(read, understandRoom(read, { day: day('2026-03-20'), today: day('2026-03-20') })),
);
const rows = [...table.rows];
const told = (key: string) => rows.filter((row) => row.key === key);

it('has the columns that programs were promised', () => {
  expect(eventColumns.map(({ name }) => name).join()).toBe(
    'date,time,after,pair,bird,species,clutch,site,key,what,who,count,exact,named,said,amount,unit,details,note,file,line,column,part',
  );
});

it('says whom a count turned out to mean, and that nobody named them', () => {
  expect(told('candled')).toMatchObject([
    { what: 'fertile', who: 'LW-1/1/e1; LW-1/1/e2', count: 2, exact: null, named: 'yes', said: 'e1, e2' },
    { what: 'clear', who: 'LW-1/1/e3', count: 1, exact: 'exactly', named: 'no', said: '1' },
  ]);
  expect(told('laid')[1]).toMatchObject({ time: '07:30', exact: 'about', said: '~3', note: '=2+2' });
  expect(told('lost')).toMatchObject([{ what: 'broken', named: 'no', said: 'all', count: 4 }]);
});

it('has what was weighed and counted as numbers', () => {
  expect(told('weighed')).toMatchObject([{ amount: 1.1, unit: 'g', who: 'LW-1/1/e1' }]);
  expect(told('checked')).toMatchObject([
    { what: 'eggs', count: 3, exact: 'at least', said: '3+', who: null, named: null },
  ]);
});
