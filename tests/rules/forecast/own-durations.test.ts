import { expect, test } from 'vitest';
import { membersOf, ownDurations } from '../../../src/rules/forecast/own-durations.ts';
import { day, room } from '../../rooms.ts';

const durations = (on: string, ...log: string[]) =>
  ownDurations(
    room(
      {
        'LW-1': `
          pair: LW-1
          species: lavender waxbill
          log:
${log.map((line) => `            - {${line}}`).join('\n')}
        `,
      },
      on,
    ),
  );

const daily = [
  'date: 2026-03-01, clutch: 1, laid: 1',
  'date: 2026-03-02, laid: 1',
  'date: 2026-03-03, laid: 1',
  'date: 2026-03-04, laid: 1, sitting',
];

test('a clutch’s sitting is counted from the day it was seen to begin to the days its eggs hatched', () => {
  // Sitting from egg 3 at the earliest, so since the 3rd or 4th; e1 and e2 hatch on the 16th, e4 on the 17th.
  const [own] = durations(
    '2026-06-01',
    ...daily,
    'date: 2026-03-15, checked',
    'date: 2026-03-16, hatched: [e1, e2]',
    'date: 2026-03-17, hatched: e4',
  );
  expect(own).toMatchObject({ kind: 'incubation', species: 'lavender waxbill', known: day('2026-03-17') });
  // From the middle of the days on which it may have begun: 16 − 3.5, 16 − 3.5 and 17 − 4 days.
  expect(own?.days).toBeCloseTo((12.5 + 12.5 + 13) / 3, 10);
  // Sitting on e1 and e2 began on one of two days; e4 was laid on the day of the look.
  expect(own?.width).toBeCloseTo((1 + 1 + 0) / 3, 10);
  // So long they were sat on at the least: from the 4th on.
  expect(own?.sure).toBeCloseTo((12 + 12 + 13) / 3, 10);
});

test('looks far apart count for less: the width grows with the gap between them', () => {
  const near = durations(
    '2026-06-01',
    ...daily,
    'date: 2026-03-15, checked',
    'date: 2026-03-16, hatched: 4',
  )[0];
  const far = durations(
    '2026-06-01',
    ...daily,
    'date: 2026-03-10, checked',
    'date: 2026-03-16, hatched: 4',
  )[0];
  expect(far?.days).toBe(near?.days);
  expect(far?.width).toBeGreaterThan(near?.width ?? 0);
});

test('fledging is seen without a look into the nest, on its own day', () => {
  const log = [
    ...daily,
    'date: 2026-03-15, checked',
    'date: 2026-03-16, hatched: 4',
    'date: 2026-04-04, fledged: all',
  ];
  const own = durations('2026-06-01', ...log).find(({ kind }) => kind === 'fledging');
  expect(own).toMatchObject({ days: 19, width: 0 });
});

test('nobody learns from a clutch that was not counted, or from a slip of the pen', () => {
  expect(durations('2026-06-01', 'date: 2026-03-01, heard', 'date: 2026-03-20, fledged: 2')).toEqual([]);
  expect(durations('2026-09-01', ...daily, 'date: 2026-04-16, hatched: e1')).toEqual([]);
});

const look = 'date: 2026-03-15, checked';
const kinds = (...log: string[]) => durations('2026-06-01', ...daily, ...log).map(({ kind }) => kind);

test('nobody learns from an age that was told by eye', () => {
  const fledged = 'date: 2026-04-04, fledged: all';
  expect(kinds(look, 'date: 2026-03-16, hatched: all', fledged)).toEqual(['incubation', 'fledging']);
  expect(kinds('date: 2026-03-08, aged: {5: all}', look, 'date: 2026-03-16, hatched: all', fledged)).toEqual([
    'fledging',
  ]);
  expect(kinds(look, 'date: 2026-03-16, hatched: all', 'date: 2026-03-20, aged: {4: all}', fledged)).toEqual(
    [],
  );
});

test('young that left the nest after a week were no usual fledging', () => {
  expect(kinds(look, 'date: 2026-03-16, hatched: all', 'date: 2026-03-23, fledged: all')).toEqual([
    'incubation',
  ]);
});

test('nobody learns from an egg that nobody saw laid, nor from what hatched of it', () => {
  const young = ['date: 2026-03-16, hatched: all', 'date: 2026-04-03, fledged: all'];
  const taught = (...more: string[]) =>
    durations('2026-06-01', ...daily, ...more, look, ...young).map((one) => membersOf(one).length);
  expect(taught()).toEqual([4, 4]);
  // A fifth was found there before any can have hatched.
  expect(taught('date: 2026-03-06, checked: {eggs: 5}')).toEqual([4, 4]);
});

test('a hatching found late lies no further back than the shortest sitting allows', () => {
  // Eleven days at the least (book), so not before the 13th; and sitting began on one of two days.
  const [own] = durations('2026-06-01', ...daily, 'date: 2026-03-16, hatched: all');
  expect(own?.width).toBeLessThanOrEqual(4);
});

test('a species without a profile, or without that figure, teaches nothing', () => {
  const log = [...daily, look, 'date: 2026-03-16, hatched: all', 'date: 2026-04-04, fledged: all']
    .map((line) => `  - {${line}}\n`)
    .join('');
  const taught = (profile: string) =>
    ownDurations(
      room(
        {
          ...(profile === '' ? {} : { 'species/ridge-finch.yaml': `species: ridge finch\n${profile}\n` }),
          'RF-1': `pair: RF-1\nspecies: ridge finch\nlog:\n${log}`,
        },
        '2026-06-01',
      ),
    ).map(({ kind }) => kind);
  expect(taught('')).toEqual([]);
  expect(taught('incubation: 11-13')).toEqual(['incubation']);
  expect(taught('fledging: 17-21')).toEqual(['fledging']);
});

test('what is dated later has taught nothing yet', () => {
  expect(durations('2026-03-15', ...daily, 'date: 2026-03-16, hatched: 4')).toEqual([]);
});
