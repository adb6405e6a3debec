import { expect, test } from 'vitest';
import { pairLog } from '../../src/journal/pair-journal.ts';
import { terminalWords } from '../../src/write/pasted.ts';

test.each([
  ['- {date: 2026-05-01, laid: 1}', 'laid=1 --date 2026-05-01'],
  ['{date: 2026-05-01, Laid: 1, sitting}', 'laid=1 sitting --date 2026-05-01'],
  ['- date: 2026-05-01, laid: 1', 'laid=1 --date 2026-05-01'],
  ['candled={fertile: [e1, e2], clear: e3}', 'candled.fertile=e1,e2 candled.clear=e3'],
  ['lost: {dead-in-shell: 2/e4}', 'lost.dead-in-shell=2/e4'],
  ['food: {live food: 20}', '"food.live food=20"'],
  ['moved: {c1: young flight}', 'moved.c1="young flight"'],
  [
    'laid: 1, time: 07:30, note: "she said \\"so\\", twice"',
    'laid=1 time=07:30 note="she said \\"so\\", twice"',
  ],
  ['ringed: {c1: ring:014}', 'ringed.c1=ring:014'],
])('%s is said at the terminal as %s', (line, words) => {
  expect(terminalWords(line, pairLog)).toBe(words);
});

test.each([
  'laid=1',
  '{date: 2026-05-01}',
  '{eggs: 4}',
  'candled={fertile: {e1: e2}}',
  'candled={fertile}',
  'candled={}',
  'laid: {',
])('%s is none', (line) => {
  expect(terminalWords(line, pairLog)).toBeNull();
});
