import { expect, it } from 'vitest';
import { readLog } from '../reading.ts';

it('an entry whose date stands where its key should does not count, and the others do', () => {
  const { entries, found } = readLog('- 2026-03-04: {laid: 1}\n  - {date: 2026-03-05, laid: 1}');
  expect(found).toEqual(['3:5 date-as-key']);
  expect(entries.map(({ saw }) => saw.map(({ key }) => key))).toEqual([['laid']]);
});

it('an entry without any date is only told so', () => {
  expect(readLog('- {laid: 1}').found).toEqual(['3:5 no-date']);
});

it('an empty `date:` is told of where it stands, whatever else is a date', () => {
  expect(readLog('- {date: , 2026-03-04: paired}').found).toEqual(['3:6 no-date']);
});
