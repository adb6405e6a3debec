import { expect, it } from 'vitest';
import { agendaOf } from '../../../src/rules/agenda/agenda.ts';
import { day, type Files } from '../../rooms.ts';
import { line, pair, spell, view, warned, waxbills } from './warned.ts';

function tasksOn(files: Files, on: string) {
  const { room, broods } = view(files, on);
  return agendaOf(room, broods, 0);
}

const forgotten = `
  date: 2026-01-01, laid: 3
  date: 2026-01-02, sitting: hen
`;

it('eggs without an end are one note, for thirty days after their task was given up', () => {
  const files = { 'LW-1': waxbills(forgotten) };
  expect(spell(files, 'unaccounted', '2026-01-01', '2026-06-30')).toEqual(['03-19 … 04-18 note']);
  expect(line(files, 'unaccounted', '2026-04-01').text).toBe(
    '3 eggs have no end in the journal long after their time, in LW-1/1. The season’s rates leave them open.',
  );
});

it('eggs beside chicks are asked about when the nest comes down, and are no note before that is given up', () => {
  const beside = `${forgotten}
  date: 2026-01-14, hatched: 2
  date: 2026-02-02, fledged: 2
  date: 2026-02-25, independent: all
`;
  const files = { 'LW-1': waxbills(beside) };
  const asked = tasksOn(files, '2026-04-15').filter(({ task }) => task === 'unhatched');
  expect(asked).toMatchObject([{ pair: 'LW-1', who: ['e3'] }]);
  expect(warned(files, 'unaccounted', '2026-04-15')).toEqual([]);
  expect(spell(files, 'unaccounted', '2026-01-01', '2026-08-30')).toEqual(['04-17 … 05-17 note']);
  expect(tasksOn(files, '2026-04-16').some(({ task }) => task === 'unhatched')).toBe(true);
  expect(tasksOn(files, '2026-04-17').some(({ task }) => task === 'unhatched')).toBe(false);
  expect(line(files, 'unaccounted', '2026-05-01').check).toMatch(/^what became of it:/);
});

it('of the whole room it is one line', () => {
  const files = { 'LW-1': waxbills(forgotten), 'LW-2': pair('LW-2', 'lavender waxbill', forgotten) };
  expect(warned(files, 'unaccounted', '2026-04-01')).toMatchObject([{ pair: null, clutch: null }]);
  expect(line(files, 'unaccounted', '2026-04-01').text).toContain(
    '6 eggs have no end in the journal long after their time, in LW-1/1 and LW-2/1.',
  );
});

it('of many clutches it names six', () => {
  const files = Object.fromEntries(
    [1, 2, 3, 4, 5, 6, 7, 8].map((n) => [`LW-${n}`, pair(`LW-${n}`, 'lavender waxbill', forgotten)]),
  );
  expect(line(files, 'unaccounted', '2026-04-01').text).toContain('LW-5/1, LW-6/1 and 2 more.');
  const one = pair('LW-1', 'lavender waxbill', 'date: 2026-01-01, laid: 1\n date: 2026-01-02, sitting: hen');
  expect(line({ 'LW-1': one }, 'unaccounted', '2026-04-01').text).toMatch(
    /^1 egg has no end in the journal long after its time, in LW-1\/1\./,
  );
});

it('young that nobody called independent are asked about as well, eggs in store sooner', () => {
  const young = `${forgotten}\n date: 2026-01-14, hatched: 3\n date: 2026-02-02, fledged: 3`;
  // A bird of which nobody knows whether it lives is asked after for a year.
  expect(spell({ 'LW-1': waxbills(young) }, 'unaccounted', '2026-01-01', '2026-12-31')).toEqual([
    '04-25 … 12-31 note',
  ]);
  expect(warned({ 'LW-1': waxbills(young) }, 'unaccounted', '2027-04-25')).toHaveLength(1);
  expect(warned({ 'LW-1': waxbills(young) }, 'unaccounted', '2027-04-26')).toEqual([]);
  expect(line({ 'LW-1': waxbills(young) }, 'unaccounted', '2026-05-01').text).toMatch(/^3 young have no end/);
  const store = 'date: 2026-01-01, laid: 1, pulled: e1';
  expect(spell({ 'LW-1': waxbills(store) }, 'unaccounted', '2026-01-01', '2026-06-30')).toEqual([
    '01-16 … 02-15 note',
  ]);
});

it('an egg and a young bird are two, and the line is as old as the last of them', () => {
  const egg = pair('LW-2', 'lavender waxbill', 'date: 2026-02-15, laid: 1\n date: 2026-02-16, sitting: hen');
  const young =
    'date: 2026-01-01, laid: 1\n date: 2026-01-02, sitting: hen\n date: 2026-01-14, hatched: 1\n date: 2026-02-02, fledged: 1';
  const files = { 'LW-1': waxbills(young), 'LW-2': egg };
  const { text, check } = line(files, 'unaccounted', '2026-05-05');
  expect(text).toMatch(
    /^1 egg and 1 young have no end in the journal long after their time, in LW-1\/1 and LW-2\/1\./,
  );
  expect(check).toMatch(/^what became of them:/);
  expect(warned(files, 'unaccounted', '2026-05-05')).toMatchObject([{ date: day('2026-05-05') }]);
});

it('an honest `missing` ends it', () => {
  const files = { 'LW-1': waxbills(`${forgotten}\n date: 2026-04-02, lost: {missing: all}`) };
  expect(spell(files, 'unaccounted', '2026-04-01', '2026-06-30')).toEqual(['04-01 note']);
});

it('eggs of a nest that is never looked into are asked about once chicks would have left it, as no task asks', () => {
  // Lavender waxbills: 13 days at most, and 21 in the nest.
  const files = { 'LW-1': waxbills('date: 2026-03-04, sitting: hen', 'nest-looks: never') };
  expect(spell(files, 'overdue', '2026-03-10', '2026-06-30')).toEqual(['03-21 … 04-05 watch']);
  expect(spell(files, 'unaccounted', '2026-03-10', '2026-06-30')).toEqual(['04-06 … 05-06 note']);
});

it('two eggs and one young bird are several, and eggs beside young in the nest are a note with them, not before', () => {
  const files = {
    'LW-1': waxbills(
      'date: 2026-01-01, laid: 3\n date: 2026-01-02, sitting: hen\n date: 2026-01-14, hatched: 1',
    ),
  };
  // Forty days and the sixty of its task after the hatching of the young one.
  expect(spell(files, 'unaccounted', '2026-01-01', '2026-04-30')).toEqual(['04-25 … 04-30 note']);
  const { text, check } = line(files, 'unaccounted', '2026-04-25');
  expect(text).toMatch(/^2 eggs and 1 young have no end in the journal long after their time, in LW-1\/1\./);
  expect(check).toMatch(/^what became of them:/);
});
