import { expect, it } from 'vitest';
import { notesOf } from '../../src/journal/notes.ts';
import { day, record } from '../rooms.ts';

const files = {
  'LW-1': `
    pair: LW-1
    log:
      - {date: 2026-03-09, laid: 1, note: "soft shell?"}
      - {date: 2026-03-01, nest: lined, note: private: the neighbour's feathers}
      - {date: 2026-03-02, note: "Private: paid too much"}
      - {date: 2026-03-01, nest: ready, note: "by noon"}
      - {date: 2026-03-03, laid: 1}
      - {date: 2026-03-30, note: "later"}
  `,
};

it('notes stand in order of time, without those marked private, with or without quotes', () => {
  const [journal] = record(files, '2026-03-20').pairs;
  expect(notesOf([...(journal?.entries ?? [])], day('2026-03-09')).map(({ text }) => text)).toEqual([
    'by noon',
    'soft shell?',
  ]);
  expect(notesOf([...(journal?.entries ?? [])], day('2026-03-08')).map(({ text }) => text)).toEqual([
    'by noon',
  ]);
  expect(notesOf([...(journal?.entries ?? [])], day('2026-03-20'))).toEqual([
    { day: day('2026-03-01'), text: 'by noon' },
    { day: day('2026-03-09'), text: 'soft shell?' },
  ]);
});
