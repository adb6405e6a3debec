import { expect, it } from 'vitest';
import { day, moment, period, time } from '../../../src/journal/grammar/moment.ts';
import { read } from '../reading.ts';
import { typedValue } from './schemas.ts';

it.each([
  ['1970-01-02', 1],
  ['1.3.2026', 'date-shape'],
  ['2026-02-30', 'impossible-date'],
  ['[a]', 'wrong-value'],
])('day: %s', (typed, expected) => {
  expect(typedValue(day, typed)).toBe(expected);
});

it.each([
  ['1970-01-02', { from: 1, to: 1 }],
  ['1970-01', { from: 0, to: 30 }],
  ['" 1970 "', { from: 0, to: 364 }],
  ['1972-02', { from: 761, to: 789 }],
  ['1972', { from: 730, to: 1095 }],
  ['1970-13', 'impossible-date'],
  ['1949', 'early-date'],
  ['24', 'date-shape'],
  ['May 1970', 'date-shape'],
  ['[1970]', 'wrong-value'],
])('period: %s', (typed, expected) => {
  expect(typedValue(period, typed)).toEqual(expected);
});

it.each([
  ['07:30', 450],
  ['1:30', 90],
  ['" 07:30 "', 450],
  ['7.30', 'not-a-time'],
])('time: %s', (typed, expected) => {
  expect(typedValue(time, typed)).toBe(expected);
});

it.each([
  ['1970-01-02', { day: 1, time: null }],
  ['1970-01-02 18:00', { day: 1, time: 1080 }],
  ['1970-01-02T18:00', { day: 1, time: 1080 }],
  ['1970-01-02   18:00', { day: 1, time: 1080 }],
  ['" 18:00 "', { day: null, time: 1080 }],
  ['about 1970-01-02 18:00', 'date-shape'],
  ['on 1970-01-02T6pm', 'date-shape'],
  ['1970-01-02T6pm or so', 'date-shape'],
  ['1970-01-02T6pm', 'not-a-time'],
  ['1970-01-02T18:00:30', 'not-a-time'],
  ['1970-01-02 18:00 or so', 'date-shape'],
  ['1.3.2026 18:00', 'date-shape'],
  ['18:00', { day: null, time: 1080 }],
  ['1970-01-02 25:00', 'not-a-time'],
  ['2026-02-30 18:00', 'impossible-date'],
  ['yesterday', 'date-shape'],
])('moment: %s', (typed, expected) => {
  expect(typedValue(moment, typed)).toEqual(expected);
});

it.each([
  ['5/2024', '2024-05'],
  ['05/2024', '2024-05'],
  ['12.2024', '2024-12'],
  ['1 / 2024', '2024-01'],
  ['2024-5', '2024-05'],
  ['2024 - 12', '2024-12'],
  ['2024/25', '2024'],
  ['2024-0', '2024'],
  ['spring 2024', '2024'],
  ['May 2024', '2024-05'],
  ['about 2024', '2024'],
])('a bird hatched in %s is answered with the month or the year', (typed, meant) => {
  expect(read(`birds:\n  - {id: A, hatched: ${typed}}\n`, 'birds.yaml').fixes).toEqual([
    `write \`hatched: ${meant}\``,
  ]);
});

it('a time that no day has is told as typed', () => {
  const { found, said } = read(
    'pair: LW-1\nlog:\n  - {date: 2026-03-01, after: 2026-02-28 25:00, laid: 1}\n',
  );
  expect(found).toEqual(['3:31 not-a-time']);
  expect(said[0]).toContain('25:00');
});
