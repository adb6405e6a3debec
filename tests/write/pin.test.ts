import { expect, test } from 'vitest';
import { pairLog } from '../../src/journal/pair-journal.ts';
import { lineOf } from '../../src/journal/print.ts';
import { clutchBegun, pinned } from '../../src/write/pin.ts';
import { entryOfWords } from '../../src/write/words.ts';
import { day, room } from '../rooms.ts';

const ON = '2026-06-01';

/** The number that an entry of the day is pinned to, in a journal with these entries. */
function pin(log: string[], words: string[], date: string): string | null {
  const spoken = entryOfWords(words, { day: day(date), note: null, grammar: pairLog });
  if ('wrong' in spoken) throw new Error(spoken.wrong);
  const files = (entries: string[]) => ({
    'LW-1': `pair: LW-1\nspecies: lavender waxbill\nlog:\n${entries.map((entry) => `  - ${entry}\n`).join('')}`,
  });
  const line = lineOf(spoken.entry).slice(2);
  const begun = clutchBegun(spoken.entry, 'LW-1', room(files(log), ON), room(files([...log, line]), ON));
  return begun === null ? null : lineOf(pinned(spoken.entry, begun));
}

const FIRST = ['{date: 2026-03-01, laid: 1}', '{date: 2026-03-02, laid: 1}'];

test('a first egg gets the number of its clutch', () => {
  expect(pin([], ['laid=1', 'time=07:30', 'note=first'], '2026-03-01')).toBe(
    '- {date: 2026-03-01, time: 07:30, clutch: 1, laid: 1, note: "first"}',
  );
  expect(pin(FIRST, ['laid=1'], '2026-05-10')).toBe('- {date: 2026-05-10, clutch: 2, laid: 1}');
});

test('a further egg needs none', () => {
  expect(pin(FIRST, ['laid=1'], '2026-03-03')).toBeNull();
});

test('what says its clutch itself, or lays nothing, is left as it is', () => {
  expect(pin([], ['laid=1', 'clutch=4'], '2026-03-01')).toBeNull();
  expect(pin([], ['sitting'], '2026-03-01')).toBeNull();
});
