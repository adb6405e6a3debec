import { expect, test } from 'vitest';
import {
  recordSentence,
  recordText,
  roomRecordText,
} from '../../../../src/report/terminal/species/record.ts';
import { roomRecords } from '../../../../src/rules/species/records.ts';
import { speciesView } from '../../../../src/rules/species/view.ts';
import { findSpecies } from '../../../../src/species/find.ts';
import type { Profile } from '../../../../src/species/profile.ts';
import { expectGolden } from '../../../golden.ts';
import { day, room } from '../../../rooms.ts';
import { stood, view } from './kept-room.ts';

const on = day('2026-06-01');
const plain = { width: 80, color: false };

test.each([80, 120])('at %d columns', (width) => {
  const options = { width, color: false };
  expectGolden(import.meta.url, `record-${width}.txt`, recordText(view, on, options));
  expectGolden(import.meta.url, `room-record-${width}.txt`, roomRecordText(roomRecords(stood), options));
});

test('a clutch outside its window is said to be early or late, and by how many days', () => {
  // By the clutch of 14 days alone the room sits long: 12 days are before the likely day. And the other way round.
  const text = recordText(view, on, plain);
  expect(text).toMatch(/LW-1\/1 .+ −\d /);
  expect(text).toMatch(/LW-1\/2 .+ \+\d .+ late$/m);
});

test('without own clutches there is nothing to show, and that is said', () => {
  const star = speciesView(stood, findSpecies('star finch') as Profile);
  expect(recordText(star, on, plain)).toContain('no clutch of known length yet');
  expect(roomRecordText(roomRecords(room({}, '2026-06-01')), plain)).toContain(
    'no clutch of known length yet',
  );
});

const record = {
  n: 4,
  medianError: 0,
  inside: 0.75,
  claimed: 0.9,
  crps: 0.5,
  book: { medianError: 1, crps: 0.4 },
};

test('a room that does no better than the book is told so', () => {
  expect(recordSentence(record)).toBe(
    'half came on the likely day; 3 of 4 clutches inside a window that claims 90 %; mean CRPS 0.50 d, no better yet than the book alone (0.40 d)',
  );
  expect(recordSentence({ ...record, crps: 0.3 })).toContain('0.30 d, better than the book alone (0.40 d)');
  expect(recordSentence({ ...record, crps: 0.401 })).toContain('0.40 d, like the book alone');
});

test('a window never claims to be certain', () => {
  expect(recordSentence({ ...record, claimed: 0.998 })).toContain('claims 99 %');
});
