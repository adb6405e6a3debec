import { describe, expect, it } from 'vitest';
import { line, spell, warned, waxbills } from './warned.ts';

const laying = `
  date: 2026-03-01, paired
  date: 2026-03-05, laid: 1
  date: 2026-03-06, laid: 1
`;
const hen = 'hen: LW-20-11\ncock: LW-20-01';
const files = (more: string, log = laying) => ({ 'LW-1': waxbills(`${log}\n${more}`, hen) });

// Small hens die of egg binding quickly; one clinic gives about 48 h (veterinary and keepers' pages).
describe('a hen that cannot pass her egg', () => {
  it('is an emergency for an avian vet, on the day and the three that follow; then she is an unwell bird', () => {
    const room = files('date: 2026-03-07, unwell: {hen: fluffed and straining}');
    expect(spell(room, 'egg-binding', '2026-03-01', '2026-03-20')).toEqual(['03-07 … 03-10 act']);
    expect(spell(room, 'unwell', '2026-03-01', '2026-03-20')).toEqual(['03-11 … 03-14 watch']);
    const { text, check } = line(room, 'egg-binding', '2026-03-07');
    expect(text).toContain('The hen LW-20-11: “fluffed and straining” on 7 Mar.');
    expect(text).toContain('an emergency for an avian vet');
    expect(check).toContain('do not press, and do not break the egg');
  });

  it('is feared of a hen on the floor about the time of laying, and of no hen at another time', () => {
    expect(
      warned(files('date: 2026-03-07, unwell: {hen: on the floor}'), 'egg-binding', '2026-03-07'),
    ).toHaveLength(1);
    const beforeFirst = 'date: 2026-03-04, nest: lined, unwell: {hen: sits puffed up all day}';
    expect(warned(files(beforeFirst, ''), 'egg-binding', '2026-03-04')).toHaveLength(1);
    const winter = 'date: 2026-11-20, unwell: {hen: fluffed}';
    expect(warned(files(winter), 'egg-binding', '2026-11-20')).toEqual([]);
    expect(warned(files(winter), 'unwell', '2026-11-20')).toHaveLength(1);
  });

  it('is no cock', () => {
    const room = files('date: 2026-03-07, unwell: {cock: straining}');
    expect(warned(room, 'egg-binding', '2026-03-07')).toEqual([]);
    expect(warned(room, 'unwell', '2026-03-07')[0]?.level).toBe('act');
  });

  it.each([
    ['she laid', 'date: 2026-03-08, laid: 1', '03-07 act'],
    ['the vet saw her', 'date: 2026-03-08, treated: {hen: as the vet ordered}', '03-07 act'],
    ['she is well again', 'date: 2026-03-09, unwell: {hen: well again}', '03-07 … 03-08 act'],
    ['she died', 'date: 2026-03-08, died: {egg bound: hen}', '03-07 act'],
  ])('is no more to be feared when %s', (_what, then, days) => {
    const room = files(`date: 2026-03-07, unwell: {hen: straining}\n${then}`);
    expect(spell(room, 'egg-binding', '2026-03-01', '2026-03-20')).toEqual([days]);
  });

  it('is one cause: no line about the missing egg beside it, and none about an unwell bird', () => {
    const room = files('date: 2026-03-07, checked: {eggs: 2}, unwell: {hen: straining}');
    expect(warned(room, 'egg-gap', '2026-03-07')).toEqual([]);
    expect(warned(room, 'unwell', '2026-03-07')).toEqual([]);
  });
});
