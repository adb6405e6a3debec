import { describe, expect, it } from 'vitest';
import { line, spell, warned, waxbills } from './warned.ts';

const sat = `
  date: 2026-03-01, laid: 1
  date: 2026-03-02, laid: 1
  date: 2026-03-03, laid: 1
  date: 2026-03-04, laid: 1, sitting: hen
`;
const files = (more: string) => ({ 'LW-1': waxbills(`${sat}\n${more}`) });

// Lavender waxbills sit some days, leave a day or two and sit again (lavender-waxbill.com): cold eggs at one look are
// no desertion; two looks some hours apart are common practice.
describe('deserted eggs', () => {
  it('are asked about after two looks that found nobody on, for four days', () => {
    const room = files('date: 2026-03-09, sitting: off\n date: 2026-03-10, sitting: off');
    expect(spell(room, 'deserted', '2026-03-01', '2026-03-31')).toEqual(['03-10 … 03-14 watch']);
    expect(line(room, 'deserted', '2026-03-10').text).toBe(
      '4 eggs found cold or alone on 9 Mar and 10 Mar; sitting was last seen on 4 Mar. Deserted? Cold eggs are not dead at once. No pair in this room is at that stage and has room.',
    );
  });

  it('are not, after one look', () => {
    expect(warned(files('date: 2026-03-09, sitting: off'), 'deserted', '2026-03-09')).toEqual([]);
    expect(warned(files('date: 2026-03-09, sitting: off'), 'deserted', '2026-03-12')).toEqual([]);
  });

  it('are, after a morning and an evening look of one day', () => {
    const looks = (morning: string, evening: string) =>
      files(
        `date: 2026-03-09, time: ${morning}, sitting: off\n date: 2026-03-09, time: ${evening}, sitting: off`,
      );
    expect(line(looks('07:00', '18:30'), 'deserted', '2026-03-09').text).toContain('at two looks on 9 Mar');
    expect(warned(looks('07:00', '07:20'), 'deserted', '2026-03-09')).toEqual([]);
  });

  it('are, after two looks of one day that lie two hours apart, whoever looked in between and wrote no hour', () => {
    const looks = (evening: string) =>
      files(`date: 2026-03-09, time: 07:00, sitting: off
        date: 2026-03-09, sitting: off
        date: 2026-03-09, time: ${evening}, sitting: off`);
    expect(warned(looks('09:00'), 'deserted', '2026-03-09')).toHaveLength(1);
    expect(warned(looks('08:59'), 'deserted', '2026-03-09')).toEqual([]);
  });

  it('are told with the last two of many looks', () => {
    const looks = ['08', '09', '10'].map((on) => `date: 2026-03-${on}, sitting: off`);
    expect(line(files(looks.join('\n')), 'deserted', '2026-03-10').text).toMatch(
      /^4 eggs found cold or alone on 9 Mar and 10 Mar;/,
    );
  });

  it('are not, where another helper saw her on that day', () => {
    const room = files(`date: 2026-03-09, sitting: off
      date: 2026-03-10, sitting: off
      date: 2026-03-10, sitting: hen`);
    expect(warned(room, 'deserted', '2026-03-10')).toEqual([]);
  });

  it.each([
    ['she sits again', 'sitting: hen'],
    ['the eggs are given away', 'lost: {deserted: all}'],
    ['chicks are heard', 'heard'],
    ['they are taken to an incubator', 'set: {incubator: all}'],
  ])('are no more asked about when %s', (_what, then) => {
    const room = files(
      `date: 2026-03-09, sitting: off\n date: 2026-03-10, sitting: off\n date: 2026-03-11, ${then}`,
    );
    expect(spell(room, 'deserted', '2026-03-01', '2026-03-31')).toEqual(['03-10 watch']);
  });

  it('are not those on which nobody sits yet', () => {
    const laying = 'date: 2026-03-01, laid: 1, sitting: off\n date: 2026-03-02, laid: 1, sitting: off';
    expect(warned({ 'LW-1': waxbills(laying) }, 'deserted', '2026-03-02')).toEqual([]);
  });

  // Lavender waxbills sit from the third or fourth egg on (from memory).
  it('count from the egg with which the species begins to sit, also where nobody was seen sitting', () => {
    const laid = [1, 2, 3, 4].map((on) => `date: 2026-03-0${on}, laid: 1, sitting: off`).join('\n');
    const room = { 'LW-1': waxbills(`${laid}\n date: 2026-03-05, sitting: off`) };
    expect(warned(room, 'deserted', '2026-03-04')).toEqual([]);
    expect(line(room, 'deserted', '2026-03-05').text).toMatch(
      /^4 eggs found cold or alone on 4 Mar and 5 Mar; nobody was seen sitting yet\./,
    );
  });

  it('are also those of a small clutch, once no more is awaited', () => {
    const two = 'date: 2026-03-01, laid: 1, sitting: off\n date: 2026-03-02, laid: 1, sitting: off';
    const looks = ['03', '08', '09'].map((on) => `date: 2026-03-${on}, sitting: off`).join('\n');
    expect(line({ 'LW-1': waxbills(`${two}\n ${looks}`) }, 'deserted', '2026-03-09').text).toMatch(
      /^2 eggs found cold or alone on 8 Mar and 9 Mar; nobody was seen sitting yet\./,
    );
  });

  it('are another warning’s where a parent died', () => {
    const room = {
      'LW-1': waxbills(
        `${sat}\n date: 2026-03-09, sitting: off, died: hen\n date: 2026-03-10, sitting: off`,
        'hen: LW-20-11',
      ),
    };
    expect(warned(room, 'deserted', '2026-03-10')).toEqual([]);
    expect(warned(room, 'parent-lost', '2026-03-10')).toHaveLength(1);
  });

  it('are another warning’s where the hen was taken away: it says that nobody was on them', () => {
    const room = {
      'LW-1': waxbills(
        `${sat}\n date: 2026-03-09, moved: {hen: cage 4}\n date: 2026-03-09, sitting: off\n date: 2026-03-10, sitting: off`,
        'hen: LW-20-11\nhousing: flight 2',
      ),
    };
    expect(warned(room, 'deserted', '2026-03-10')).toEqual([]);
    expect(line(room, 'parent-lost', '2026-03-10').text).toContain(
      'Nobody was on them on 10 Mar; unwarmed they last hours.',
    );
  });

  it('ask after the hen alone where the cock was taken away', () => {
    const room = {
      'LW-1': waxbills(
        `${sat}\n date: 2026-03-06, moved: {cock: cage 4}\n date: 2026-03-09, sitting: off\n date: 2026-03-10, sitting: off`,
        'cock: LW-20-01\nhen: LW-20-11\nhousing: flight 2',
      ),
    };
    expect(line(room, 'deserted', '2026-03-10').check).toContain('is the hen, who sits alone now, well?');
    const looks = 'date: 2026-03-09, sitting: off\n date: 2026-03-10, sitting: off';
    for (const before of ['', 'date: 2026-03-06, parted\n'])
      expect(line(files(`${before}${looks}`), 'deserted', '2026-03-10').check).toContain(
        'are both birds well?',
      );
  });
});
