import { describe, expect, it } from 'vitest';
import { allBy, datedIn, dayAt, entryAt, mentioning } from '../../src/journal/entries.ts';
import { PackedEntries } from '../../src/journal/packed.ts';
import { day } from '../rooms.ts';
import { readLog } from './reading.ts';

const { entries: list } = readLog(
  '- {date: 2026-03-01, laid: 1, skip: candle}',
  '- {date: 2026-03-04, sitting}',
);

describe.each([
  ['a list', list],
  ['packed', PackedEntries.of('pairs/LW-1.yaml', list)],
])('of entries in %s it is known', (_name, entries) => {
  it('which day and what each one is', () => {
    expect([dayAt(entries, 0), dayAt(entries, 1)]).toEqual([day('2026-03-01'), day('2026-03-04')]);
    expect([entryAt(entries, 0), entryAt(entries, 1)]).toEqual(list);
  });

  it('where their dates stand', () => {
    expect([...datedIn(entries)].map(({ date, dateAt }) => ({ date, dateAt }))).toEqual(
      list.map(({ date, dateAt }) => ({ date, dateAt })),
    );
  });

  it('whether all were made by a day', () => {
    expect(allBy(entries, day('2026-03-04'))).toBe(true);
    expect(allBy(entries, day('2026-03-03'))).toBe(false);
  });

  it('which ones tell of a key', () => {
    const telling = [...mentioning(entries, 'skip', 'done')].filter(({ saw }) =>
      saw.some(({ key }) => key === 'skip'),
    );
    expect(telling).toEqual([list[0]]);
  });
});
