import { describe, expect, it } from 'vitest';
import { line, pair, spell, warned, waxbills } from './warned.ts';

// A species that no profile was written for, neither in the program nor in the room: eggs of small cage birds hatch after
// 10–25 d of sitting (common practice: from the smallest waxbills to the larger parrots).
const sat = `
  date: 2026-03-01, laid: 1
  date: 2026-03-02, laid: 1
  date: 2026-03-03, laid: 1, sitting: hen
`;
const grassfinches = (log: string) => ({ 'RG-1': pair('RG-1', 'reed grassfinch', log) });

describe('a species without a profile', () => {
  it('is no quiet morning while its eggs are sat on', () => {
    const files = grassfinches(sat);
    expect(spell(files, 'no-profile', '2026-02-20', '2026-05-01')).toEqual(['03-01 … 04-04 watch']);
    expect(line(files, 'no-profile', '2026-03-05').text).toBe(
      '3 eggs, and no profile says how long the reed grassfinch takes: no day of hatching is expected, and tasks that hang on it are not given. Hatching may fall on 11–28 Mar (10–25 d of sitting, as of any small cage bird).',
    );
  });

  it('is watched on with nestlings, heard or counted, until they are out', () => {
    const chicks = `${sat}\n date: 2026-03-16, hatched: all\n date: 2026-04-10, fledged: all`;
    expect(spell(grassfinches(chicks), 'no-profile', '2026-03-10', '2026-05-01')).toEqual([
      '03-10 … 04-09 watch',
    ]);
    expect(line(grassfinches(chicks), 'no-profile', '2026-03-20').text).toMatch(
      /^Nestlings, and no profile says/,
    );
    const forgotten = `${sat}\n date: 2026-03-16, hatched: all`;
    expect(spell(grassfinches(forgotten), 'no-profile', '2026-05-01', '2026-06-01')).toEqual([
      '05-01 … 05-02 watch',
    ]);
    const heard = 'date: 2026-03-16, heard';
    expect(warned(grassfinches(heard), 'no-profile', '2026-03-18')).toHaveLength(1);
  });

  it('is at rest once its eggs have a fate', () => {
    const lost = `${sat}\n date: 2026-03-20, lost: {deserted: all}`;
    expect(spell(grassfinches(lost), 'no-profile', '2026-03-15', '2026-04-01')).toEqual([
      '03-15 … 03-19 watch',
    ]);
  });

  it('is meant also where its eggs lie under foster parents that are known', () => {
    const files = {
      ...grassfinches(`${sat}\n date: 2026-03-04, fostered: {SF-1: all}`),
      'SF-1': pair('SF-1', 'Bengalese finch', 'date: 2026-03-01, laid: 1, sitting: both'),
    };
    expect(warned(files, 'no-profile', '2026-03-06')).toMatchObject([{ pair: 'SF-1', clutch: 1 }]);
    // The host's own egg beside it is of a species that is known.
    expect(line(files, 'no-profile', '2026-03-06').text).toContain('how long the reed grassfinch takes');
  });

  it('is known from the day on which the room has a profile of it', () => {
    const own = {
      ...grassfinches(sat),
      'species/reed-grassfinch.yaml': 'species: reed grassfinch\nincubation: 12-14\nfledging: 19-23',
    };
    expect(warned(own, 'no-profile', '2026-03-06')).toEqual([]);
    expect(warned({ 'LW-1': waxbills(sat) }, 'no-profile', '2026-03-06')).toEqual([]);
  });
});
