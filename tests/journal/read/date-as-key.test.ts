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

it('a day that says only since when is no date of the entry', () => {
  expect(readLog('- {after: 2026-03-04, laid: 1}').found).toEqual(['3:5 no-date']);
});

it.each([
  ['{date: 2026-03-04; checked}', '3:12 date-shape', '- {date: 2026-03-04, checked}'],
  ['{date: 2026-03-04; hatched; 2}', '3:12 date-shape', '- {date: 2026-03-04, hatched: 2}'],
  [
    '{date: 2026-03-04; heard; checked, sitting: hen}',
    '3:12 date-shape',
    '- {date: 2026-03-04, heard, checked, sitting: hen}',
  ],
  ['{date: 2026-03-04 checked}', '3:12 date-shape', '- {date: 2026-03-04, checked}'],
  ['date: 2026-03-04, checked', '3:11 date-shape', '- {date: 2026-03-04, checked}'],
  ['[date: 2026-03-04, checked]', '3:5 not-an-entry', '- {date: 2026-03-04, checked}'],
  ['[2026-03-04, laid: 1]', '3:5 not-an-entry', '- {date: 2026-03-04, laid: 1}'],
])(
  'signs of another kind between date and sight, `%s`, are answered with the entry that was meant',
  (said, place, line) => {
    expect(readLog(`- ${said}`)).toMatchObject({ found: [place], fixes: [`write:\n${line}`] });
  },
);

it('a time behind the date goes before any of that', () => {
  expect(readLog('- {date: 2026-03-04 07:30, checked}').fixes).toEqual([
    'write `date: 2026-03-04, time: 07:30`',
  ]);
});

it('a list that is no entry at all is only told so', () => {
  expect(readLog('- [laid, checked]').fixes).toEqual([expect.stringMatching(/^an entry has a date/)]);
});

it('an empty `date:` is told of where it stands, whatever else is a date', () => {
  expect(readLog('- {date: , 2026-03-04: paired}').found).toEqual(['3:6 no-date']);
});

it.each([
  ['2026-03-04 laid 1', '- {date: 2026-03-04, laid: 1}'],
  ['2026-03-04, sitting hen', '- {date: 2026-03-04, sitting: hen}'],
  ['"2026-03-04: paired"', '- {date: 2026-03-04, paired}'],
  ['2026-03-04 laid one egg', '- {date: 2026-03-04, laid: 1}'],
  ['2026-03-04 the first egg', '- {date: 2026-03-04, note: "the first egg"}'],
  ['2026-03-04 quiet', '- {date: 2026-03-04, note: "quiet"}'],
  ['2026-03-04', '- {date: 2026-03-04}'],
  ['2026-03-04 laid 1, sitting', '- {date: 2026-03-04, laid: 1, sitting}'],
  ['2026-03-04 laid 1 and sitting: hen', '- {date: 2026-03-04, laid: 1, sitting: hen}'],
  ['2026-03-04 hatched e1 and e2', '- {date: 2026-03-04, hatched: [e1, e2]}'],
  ['2026-03-04 laid egg 4', '- {date: 2026-03-04, laid: e4}'],
  ['2026-03-04 moved flight 2', '- {date: 2026-03-04, moved: flight 2}'],
])('plain words behind a date, `%s`, are answered with the entry that was meant', (words, line) => {
  expect(readLog(`- ${words}`)).toMatchObject({ found: ['3:5 date-as-key'], fixes: [`write:\n${line}`] });
});

it.each([
  ['{note: "late", 2026-03-04: {laid: 1}}', '- {date: 2026-03-04, laid: 1, note: "late"}'],
  ['2026-03-04: [laid: 1, sitting]', '- {date: 2026-03-04, laid: 1, sitting}'],
  ['2026-03-04:', '- {date: 2026-03-04}'],
  ['{day: 2026-03-04, laid: 1}', '- {date: 2026-03-04, laid: 1}'],
  ['{date 2026-03-04, laid 1}', '- {date: 2026-03-04, laid: 1}'],
  ['{date= 2026-03-04, paired, quiet}', '- {date: 2026-03-04, paired, note: "quiet"}'],
  ['2026-03-04 laid: 1', '- {date: 2026-03-04, laid: 1}'],
  ['{2026-03-04 laid: 1, sitting: hen}', '- {date: 2026-03-04, laid: 1, sitting: hen}'],
  ['2026-03-04 candled: {fertile: e1}', '- {date: 2026-03-04, candled: {fertile: e1}}'],
  ['" 2026-03-04 ": paired', '- {date: 2026-03-04, paired}'],
])('a date that stands where its key should, `%s`, is answered with all that was said', (entry, line) => {
  expect(readLog(`- ${entry}`)).toMatchObject({ found: ['3:5 date-as-key'], fixes: [`write:\n${line}`] });
});

it.each([
  '2026-03-04 laid 1, hen nervous',
  '2026-03-04 candled e1 fertile',
  '2026-03-04 hatched yesterday, or today',
  '2026-03-04: [laid 1, laid 1]',
  '2026-03-04: [[quiet], laid]',
  '2026-03-04 lamp: {fertile: e1}',
])('`%s` is not put into a line of ours that would lose an egg', (entry) => {
  const { found, fixes } = readLog(`- ${entry}`);
  expect(found).toEqual(['3:5 date-as-key']);
  expect(fixes[0]).toMatch(/^an entry has a date and what was seen:\n- \{date: /);
});

it('plain words behind what is no date are no entry', () => {
  expect(readLog('- 2026-13-04 laid 1').found).toEqual(['3:5 not-an-entry']);
});

it('a log without dashes is answered with its first entry as it should be', () => {
  const { found, fixes } = readLog('2026-03-04: paired', '2026-03-05: {laid: 1}');
  expect(found).toEqual(['3:3 log-no-list']);
  expect(fixes[0]).toContain('\n- {date: 2026-03-04, paired}');
});
