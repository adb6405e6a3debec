import { expect, it } from 'vitest';
import { tellAge } from '../../../src/rules/agenda/tell-age.ts';
import { check, hillFinches, lines } from './hill-finch.ts';

/** Two chicks in a nest of which nothing was written before: any age up to fledging, 20 days and more. */
const FOUND = 'date: 2026-02-01, paired\ndate: 2026-03-14, checked: {chicks: 2}';

check(tellAge.task, [
  [
    'for three days where chicks are found that may be about to leave the nest',
    hillFinches(FOUND),
    ['03-14 … 03-16 now'],
  ],
  ['is done by their age', hillFinches(`${FOUND}\ndate: 2026-03-15, aged: {5: all}`), ['03-14 now']],
  ['is not asked where it stands in the line of that look', hillFinches(`${FOUND}, aged: {5: all}`), []],
  // Found on 14 March, out since the 3rd at the earliest: left alone from two days before the 23rd, and rings from the 9th on.
  [
    'is not asked where a day for rings is left',
    hillFinches('date: 2026-03-01, paired\ndate: 2026-03-02, checked\ndate: 2026-03-14, hatched: 2'),
    [],
  ],
  // They are of one laying: the age of one tells that of the other well enough.
  ['is done by the age of one of them', hillFinches(`${FOUND}, aged: {5: c1}`), []],
  [
    'is not asked of one that hatched late, though its nest is left alone for its eldest brother',
    hillFinches(
      [14, 15, 16, 17, 26]
        .map((on) => `date: 2026-03-${on}, after: 2026-03-${on - 1}, hatched: 1`)
        .join('\n'),
    ),
    [],
  ],
  ['is over with the wish for rings', hillFinches(`${FOUND}\ndate: 2026-03-15, skip: ring`), ['03-14 now']],
  [
    'is not asked of young that were only heard',
    hillFinches(FOUND.replace('checked: {chicks: 2}', 'heard')),
    [],
  ],
  ['is not asked of a pair that is left alone', hillFinches(FOUND, { 'nest-looks': 'never' }), []],
  ['is not asked in a room without rings', hillFinches(FOUND, {}, { 'nestlog.yaml': 'ringing: no\n' }), []],
  ['is not asked of kinds whose ring age nobody knows', hillFinches(FOUND, { 'ring-age': '' }), []],
]);

it('the age that was told brings the ring day', () => {
  const days = (log: string) =>
    lines(hillFinches(log), 'ring', '2026-03-15', 7).map(({ from, to }) => [from, to]);
  expect(days(FOUND)).toEqual([]);
  expect(days(`${FOUND}, aged: {5: all}`)).toHaveLength(1);
});

it('is asked of all that were found with one that hides their ring days, and are hidden with it', () => {
  const found =
    'date: 2026-03-01, laid: 1\ndate: 2026-03-05, laid: 4, sitting\ndate: 2026-03-29, checked: {chicks: 4}';
  const [asked] = lines(hillFinches(found), tellAge.task, '2026-03-29');
  expect(asked?.who).toEqual(['c1', 'c2', 'c3', 'c4']);
});

it('says which chicks, and what hangs on it', () => {
  const [asked] = lines(hillFinches(FOUND), tellAge.task, '2026-03-14');
  expect(asked).toMatchObject({ who: ['c1', 'c2'], basis: 'rings go on at 7–8 d' });
  expect(asked?.why).toMatch(/^hatched \d+ Feb–14 Mar$/);
});
