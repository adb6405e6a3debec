import { describe, expect, it } from 'vitest';
import { line, pair, spell, warned, waxbills } from './warned.ts';

const two = `
  date: 2026-03-05, laid: 1
  date: 2026-03-06, laid: 1
`;

// One egg a day, in the early morning: Woodall 1975, Ostrich 46:55-86 (bronze mannikin); estrildids from memory.
describe('an egg that did not come', () => {
  it('is a reason to look at the hen, for as long as she can be in danger', () => {
    const files = { 'LW-1': waxbills(`${two}\n date: 2026-03-07, checked: {eggs: 2}`) };
    expect(spell(files, 'egg-gap', '2026-03-01', '2026-03-20')).toEqual(['03-07 … 03-10 watch']);
    expect(line(files, 'egg-gap', '2026-03-07').text).toBe(
      '2 eggs, the last on 6 Mar; e3 was due on 7 Mar and did not come, and nobody sits. Below the usual 4 it can be an egg that does not come: egg binding.',
    );
  });

  it.each([
    ['nobody looked on the day', two],
    [
      'the clutch has its usual size',
      `${two}\n date: 2026-03-08, laid: 2\n date: 2026-03-09, checked: {eggs: 4}`,
    ],
    ['they sit', `${two}\n date: 2026-03-07, checked: {eggs: 2}, sitting: hen`],
    ['the eggs are gone', `${two}\n date: 2026-03-07, lost: {eaten: all}`],
    [
      'they sit since the last egg',
      `${two.replace('03-06, laid: 1', '03-06, laid: 1, sitting')}\n date: 2026-03-07, checked: {eggs: 2}`,
    ],
    ['it hatches', 'date: 2026-03-06, laid: 2\n date: 2026-03-07, hatched: 1\n date: 2026-03-08, checked'],
    ['the look was into their other nest', `${two}\n date: 2026-03-07, site: box 2, checked`],
    ['the keeper set it aside', `${two}\n date: 2026-03-07, checked: {eggs: 2}, skip: next-egg`],
  ])('is nothing when %s', (_why, log) => {
    expect(spell({ 'LW-1': waxbills(log) }, 'egg-gap', '2026-03-01', '2026-03-20')).toEqual([]);
  });

  it.each([
    ['they were seen off the eggs', 'checked: {eggs: 2}, sitting: off'],
    ['one of the eggs was broken', 'lost: {broken: e1}, checked: {eggs: 1}'],
    ['another task was set aside', 'checked: {eggs: 2}, skip: candle'],
  ])('is one all the same when %s', (_what, then) => {
    const files = { 'LW-1': waxbills(`${two}\n date: 2026-03-07, ${then}`) };
    expect(warned(files, 'egg-gap', '2026-03-07')).toHaveLength(1);
  });

  it('is one all the same, though she was seen on the nest before the last egg', () => {
    const log = `${two.replace('03-05, laid: 1', '03-05, laid: 1, sitting: hen')}\n date: 2026-03-07, checked: {eggs: 2}`;
    expect(warned({ 'LW-1': waxbills(log, 'hen: LW-20-11') }, 'egg-gap', '2026-03-07')).toHaveLength(1);
  });

  it('is told by a look that names no nest as by one that names it', () => {
    const log = two.replaceAll('laid', 'site: box 1, laid');
    for (const look of ['checked: {eggs: 2}', 'site: box 1, checked: {eggs: 2}'])
      expect(
        warned({ 'LW-1': waxbills(`${log}\n date: 2026-03-07, ${look}`) }, 'egg-gap', '2026-03-07'),
        look,
      ).toHaveLength(1);
  });

  it('is one line of the hen, also where some of her eggs lie in the incubator', () => {
    const log = `${two}\n date: 2026-03-06, fostered: {incubator: e1}\n date: 2026-03-07, checked: {eggs: 1}`;
    expect(warned({ 'LW-1': waxbills(log) }, 'egg-gap', '2026-03-07')).toHaveLength(1);
  });

  it.each([
    ['died', 'died: hen'],
    ['lives in another cage now', 'moved: {hen: cage 4}'],
  ])('is nothing of a hen that %s', (_what, then) => {
    const log = `${two}\n date: 2026-03-07, checked: {eggs: 2}, ${then}`;
    const files = { 'LW-1': waxbills(log, 'hen: LW-20-11\nhousing: flight 2') };
    expect(warned(files, 'egg-gap', '2026-03-07')).toEqual([]);
  });

  it('is nothing where nobody knows how many are usual, or where guests lie', () => {
    const log = `${two}\n date: 2026-03-07, checked: {eggs: 2}`;
    expect(warned({ 'X-1': pair('X-1', 'ridge finch', log) }, 'egg-gap', '2026-03-07')).toEqual([]);
    const guests = {
      'LW-1': waxbills('date: 2026-03-01, paired\n date: 2026-03-08, checked: {eggs: 2}'),
      'LW-2': pair('LW-2', 'lavender waxbill', `${two}\n date: 2026-03-06, fostered: {LW-1: all}`),
    };
    expect(warned(guests, 'egg-gap', '2026-03-08').map((one) => one.pair)).not.toContain('LW-1');
  });

  it('says so where the last egg was found, and may have been laid before', () => {
    const log =
      'date: 2026-03-05, laid: 1\n date: 2026-03-08, laid: 1\n date: 2026-03-09, checked: {eggs: 2}';
    expect(line({ 'LW-1': waxbills(log) }, 'egg-gap', '2026-03-09').text).toMatch(
      /^2 eggs, the last by 8 Mar; e3 was due on 9 Mar and did not come/,
    );
  });

  it('is settled by the next egg', () => {
    const files = {
      'LW-1': waxbills(`${two}\n date: 2026-03-07, checked: {eggs: 2}\n date: 2026-03-08, laid: 1`),
    };
    expect(spell(files, 'egg-gap', '2026-03-01', '2026-03-20')).toEqual(['03-07 watch']);
  });

  // Canary: daily, but sometimes with gaps of 1–3 d (pajaroscanarios.com).
  it('is only a note of a canary that pauses for one to three days', () => {
    const log = `${two}
      date: 2026-03-07, checked: {eggs: 2}
      date: 2026-03-09, checked: {eggs: 2}
      date: 2026-03-10, checked: {eggs: 2}`;
    const files = { 'CA-1': pair('CA-1', 'canary', log) };
    expect(spell(files, 'egg-gap', '2026-03-01', '2026-03-20')).toEqual([
      '03-07 … 03-09 note',
      '03-10 … 03-13 watch',
    ]);
    expect(line(files, 'egg-gap', '2026-03-09').text).toContain('has not come for 3 d');
    expect(line(files, 'egg-gap', '2026-03-09').text).toContain('often pause for 1–3 d in mid-clutch');
  });

  // Parrots and doves lay every second day (IASRI e-course; a dove husbandry page).
  it('is none on the day between two eggs of a parrot', () => {
    const log = 'date: 2026-03-05, laid: 1\n date: 2026-03-06, checked: {eggs: 1}';
    expect(warned({ 'CO-1': pair('CO-1', 'cockatiel', log) }, 'egg-gap', '2026-03-06')).toEqual([]);
    const missed = `${log}\n date: 2026-03-07, checked: {eggs: 1}`;
    expect(warned({ 'CO-1': pair('CO-1', 'cockatiel', missed) }, 'egg-gap', '2026-03-07')).toHaveLength(1);
  });
});
