import { expect, it } from 'vitest';
import { day } from '../../rooms.ts';
import { line, mixedNest, spell, warned, waxbills } from './warned.ts';

const brood = `
  date: 2026-03-01, laid: 3
  date: 2026-03-02, sitting: hen
  date: 2026-03-13, checked
  date: 2026-03-14, hatched: 3
`;

// Estrildids about the seventh day; too late and the toes will not pass (Tierwelt). Lavender waxbill: 7–8 d, common
// practice.
it('a nestling past its ring age is noted on two days: do not force a ring', () => {
  const files = { 'LW-1': waxbills(`${brood}\n date: 2026-03-21, ringed: {c1: LW 26 01}`) };
  expect(spell(files, 'ring-too-late', '2026-03-14', '2026-04-10')).toEqual(['03-23 … 03-24 note']);
  expect(line(files, 'ring-too-late', '2026-03-23').text).toBe(
    'c2 and c3: 9 d old without a ring; 7–8 d is the age for a closed one. It is too late: do not force a ring over the feet.',
  );
});

it('is one by itself, whatever else the keeper set aside', () => {
  const log = 'date: 2026-03-20, skip: candle\n date: 2026-03-21, ringed: {c1: A1, c2: A2}';
  const room = { 'LW-1': waxbills(`${brood}\n ${log}`) };
  expect(line(room, 'ring-too-late', '2026-03-23').text).toMatch(/^c3: 9 d old .* over the foot\.$/);
  expect(warned(room, 'ring-too-late', '2026-03-23')).toMatchObject([{ date: day('2026-03-22') }]);
});

it('of which nobody knows the day of hatching is as old as the looks allow', () => {
  const weekly = brood.replace('date: 2026-03-14, hatched', 'date: 2026-03-20, hatched');
  expect(line({ 'LW-1': waxbills(weekly) }, 'ring-too-late', '2026-03-29').text).toMatch(
    /^c1, c2 and c3: 9–15 d old without a ring;/,
  );
});

it('the eldest is named first where they hatched on two days', () => {
  const log = `${brood.replace('laid: 3', 'laid: 4')}\n date: 2026-03-15, hatched: 1`;
  expect(line({ 'LW-1': waxbills(log) }, 'ring-too-late', '2026-03-24').text).toMatch(
    /^c1, c2, c3 and c4: 9–10 d/,
  );
});

it.each([
  ['all are ringed', { log: 'date: 2026-03-21, ringed: {c1: A1, c2: A2, c3: A3}' }],
  ['the keeper set it aside', { log: 'date: 2026-03-20, skip: ring' }],
  ['it is set aside beside another task', { log: 'date: 2026-03-20, skip: [candle, ring]' }],
  ['the nest is never looked into', { head: 'nest-looks: never' }],
  ['the room does not ring', { settings: 'ringing: no\n' }],
])(
  'is nothing when %s',
  (_what, { log = '', head = '', settings = '' }: { log?: string; head?: string; settings?: string }) => {
    const files = { 'nestlog.yaml': settings, 'LW-1': waxbills(`${brood}\n${log}`, head) };
    expect(warned(files, 'ring-too-late', '2026-03-23')).toEqual([]);
  },
);

it('guests of another species are ringed at their own age', () => {
  // Lavender waxbills at 7–8 d, Bengalese finches at 7–10 d (common practice).
  const chicks = (on: string) => line(mixedNest(), 'ring-too-late', on).text.split(':')[0];
  expect(warned(mixedNest(), 'ring-too-late', '2026-03-22')).toEqual([]);
  expect(chicks('2026-03-23')).toBe('LW-1/1/c1 and LW-1/1/c2');
  expect(chicks('2026-03-25')).toBe('c1 and c2');
});

it('guests of another species that are late on the same day are told of with their own age', () => {
  const mixed = mixedNest();
  const later = (mixed['LW-1'] as string)
    .replace('2026-03-14, hatched', '2026-03-15, hatched')
    .replace('2026-03-13, checked', '2026-03-14, checked');
  const late = warned({ ...mixed, 'LW-1': later }, 'ring-too-late', '2026-03-25');
  expect(
    late.map(({ text }) => text.replace(' It is too late: do not force a ring over the feet.', '')),
  ).toEqual([
    'c1 and c2: 11 d old without a ring; 7–10 d is the age for a closed one.',
    'LW-1/1/c1 and LW-1/1/c2: 10 d old without a ring; 7–8 d is the age for a closed one.',
  ]);
});
