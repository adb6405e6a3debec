import { describe, expect, it } from 'vitest';
import type { WarningLine } from '../../../src/rules/agenda/item.ts';
import { onlyFor } from '../../../src/rules/agenda/only.ts';
import { room } from '../../rooms.ts';
import { line, spell, warned, waxbills } from './warned.ts';

const heads = 'cock: LW-20-01\nhen: LW-20-11\nhousing: flight 2';
// Hatched on 15 March; young lavender waxbills feed themselves from 30 days on, 14 April.
const fledged = `
  date: 2026-03-01, laid: 3
  date: 2026-03-03, sitting: hen
  date: 2026-03-14, checked: {eggs: 3}
  date: 2026-03-15, hatched: 3
  date: 2026-04-03, fledged: 3
`;
const files = (more: string, head = heads) => ({ 'LW-1': waxbills(`${fledged}\n${more}`, head) });

// Young are parted from their parents when none of them has begged for a week: common practice.
describe('young that are moved away from both parents before they feed themselves', () => {
  it('may starve: two days press, five are watched', () => {
    const known = files('date: 2026-04-08, moved: {all: flight 7}');
    expect(spell(known, 'young-away', '2026-04-01', '2026-04-30')).toEqual([
      '04-08 … 04-10 act',
      '04-11 … 04-13 watch',
    ]);
    const { text, check } = line(known, 'young-away', '2026-04-08');
    expect(text).toBe(
      'c1, c2 and c3 were moved to flight 7 on 8 Apr, at 24 d, away from both parents; young of the species feed themselves from 30 d on. Young that nobody feeds starve within a day or two.',
    );
    expect(check).toMatch(/^each crop within hours.*back to the parent that did.*avian vet$/);
  });

  it.each([
    ['each was seen fed there', 'feeding: {hand: all}'],
    ['each crop was full', 'crops: {full: all}'],
    ['they feed themselves', 'independent: all'],
    ['they are with their parents again', 'moved: {"c1, c2, c3": flight 2}'],
  ])('are out of danger when %s', (_what, then) => {
    const known = files(`date: 2026-04-08, moved: {all: flight 7}\n date: 2026-04-09, ${then}`);
    expect(spell(known, 'young-away', '2026-04-01', '2026-04-30')).toEqual(['04-08 act']);
  });

  it('are told where they are, not where their parents live', () => {
    const away = files('date: 2026-04-08, moved: {c2: flight 7}');
    const narrow = (housing: string) =>
      onlyFor(room(away, '2026-04-08'), { pair: null, housing, species: null });
    const [told] = warned(away, 'young-away', '2026-04-08') as [WarningLine];
    expect([narrow('flight 7')(told), narrow('flight 2')(told)]).toEqual([true, false]);
    const [thin] = warned(
      files('date: 2026-04-08, moved: {c2: flight 7}, crops: {empty: c2}'),
      'empty-crop',
      '2026-04-08',
    );
    expect(thin?.housing).toBe('flight 7');
  });

  it('are in the same danger where the one they were moved to has died', () => {
    const known = files(
      'date: 2026-04-08, moved: {cock: flight 7, all: flight 7}\n date: 2026-04-09, died: cock',
    );
    expect(spell(known, 'young-away', '2026-04-01', '2026-04-30')).toEqual([
      '04-09 … 04-10 act',
      '04-11 … 04-13 watch',
    ]);
  });

  it('are counted from the last move, whoever fed them before it', () => {
    const known = files(`date: 2026-04-06, moved: {all: flight 7}
      date: 2026-04-07, crops: {full: all}
      date: 2026-04-09, moved: {"c1, c2, c3": flight 8}`);
    expect(spell(known, 'young-away', '2026-04-01', '2026-04-30')).toEqual([
      '04-06 act',
      '04-09 … 04-11 act',
      '04-12 … 04-14 watch',
    ]);
  });

  it('are one line for each place, with the ages of all that are there', () => {
    const two = fledged
      .replace('hatched: 3', 'hatched: 2\n date: 2026-03-16, hatched: 1')
      .replace('fledged: 3', 'fledged: all');
    const log = (moved: string) => ({
      'LW-1': waxbills(`${two}\n date: 2026-04-08, moved: {${moved}}`, heads),
    });
    expect(line(log('all: flight 7'), 'young-away', '2026-04-08').text).toMatch(
      /^c1, c2 and c3 were moved to flight 7 on 8 Apr, at 23–24 d,/,
    );
    expect(
      warned(log('c1: flight 7, "c2, c3": flight 8'), 'young-away', '2026-04-08').map(
        ({ text }) => text.split(' on')[0],
      ),
    ).toEqual(['c1 was moved to flight 7', 'c2 and c3 were moved to flight 8']);
  });

  it('are told by themselves where the others stayed', () => {
    const known = files('date: 2026-04-08, moved: {c2: flight 7}');
    expect(line(known, 'young-away', '2026-04-08').text).toMatch(/^c2 was moved to flight 7 on 8 Apr/);
  });
});

it.each([
  ['old enough, if nobody wrote that they feed themselves', 'date: 2026-04-14, moved: {all: flight 7}'],
  ['moved together with the pair', 'date: 2026-04-08, moved: flight 7'],
  ['moved with the one that feeds them', 'date: 2026-04-08, moved: {cock: flight 7, all: flight 7}'],
])('young that are %s are no matter', (_what, then) => {
  expect(warned(files(then), 'young-away', '2026-04-14')).toEqual([]);
  expect(warned(files(then), 'young-away', '2026-04-08')).toEqual([]);
});

it('of a pair whose birds nobody named they are away where the pair does not live', () => {
  const known = files('date: 2026-04-08, moved: {all: flight 7}', 'housing: flight 2');
  expect(line(known, 'young-away', '2026-04-08')).toMatchObject({ level: 'act' });
});

it('young of which both parents died are not away: they were not moved, and another warning says it', () => {
  const chicks = fledged.split('date: 2026-04-03')[0] as string;
  const known = { 'LW-1': waxbills(`${chicks}\n date: 2026-03-17, died: both`, heads) };
  expect(warned(known, 'young-away', '2026-03-17')).toEqual([]);
  expect(line(known, 'parent-lost', '2026-03-17').level).toBe('act');
  const parted = { 'LW-1': waxbills(`${chicks}\n date: 2026-03-17, parted`, 'housing: flight 2') };
  expect(warned(parted, 'young-away', '2026-03-17')).toEqual([]);
});

it('young that are fed by hand are no matter, wherever they stand', () => {
  const known = files('date: 2026-04-07, fostered: {hand: all}\n date: 2026-04-08, moved: {all: kitchen}');
  expect(warned(known, 'young-away', '2026-04-08')).toEqual([]);
});
