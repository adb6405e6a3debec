import { describe, expect, it } from 'vitest';
import { day } from '../../rooms.ts';
import { line, pair, spell, warned, waxbills } from './warned.ts';

const brood = `
  date: 2026-03-01, laid: 4
  date: 2026-03-02, sitting: hen
  date: 2026-03-14, hatched: 3
  date: 2026-03-15, hatched: 1
`;
const files = (more: string) => ({ 'LW-1': waxbills(`${brood}\n${more}`) });

// A chick that has not gained since the day before in the first half of its time in the nest, or fell by about 10 %:
// common practice.
describe('a chick that loses weight', () => {
  it('presses when a nestling fell by a tenth, for three days', () => {
    const room = files('date: 2026-03-24, weighed: {c1: 7.0}\n date: 2026-03-25, weighed: {c1: 6.3}');
    expect(spell(room, 'weight', '2026-03-14', '2026-04-10')).toEqual(['03-25 … 03-28 act']);
    expect(line(room, 'weight', '2026-03-25').text).toBe(
      'c1 weighed 7 g on 24 Mar and 6.3 g on 25 Mar. A chick that grows gains every day: this one is not fed enough, cold or ill.',
    );
  });

  it('is looked at in the first half of the nest time when it did not gain, and not later', () => {
    const early = files('date: 2026-03-18, weighed: {c1: 3.0}\n date: 2026-03-19, weighed: {c1: 3.0}');
    expect(line(early, 'weight', '2026-03-19')).toMatchObject({ level: 'watch' });
    const late = files('date: 2026-03-27, weighed: {c1: 8.0}\n date: 2026-03-28, weighed: {c1: 7.7}');
    expect(warned(late, 'weight', '2026-03-28')).toEqual([]);
  });

  it('is over with the next good weighing', () => {
    const room = files(`date: 2026-03-24, weighed: {c1: 7.0}
      date: 2026-03-25, weighed: {c1: 6.3}
      date: 2026-03-26, weighed: {c1: 6.6}`);
    expect(spell(room, 'weight', '2026-03-14', '2026-04-10')).toEqual(['03-25 act']);
  });

  it('is told by weighings three days apart, not by such that are four', () => {
    const room = (before: string) =>
      files(`date: ${before}, weighed: {c1: 7.0}\n date: 2026-03-25, weighed: {c1: 6.3}`);
    expect(line(room('2026-03-22'), 'weight', '2026-03-25').level).toBe('act');
    expect(warned(room('2026-03-21'), 'weight', '2026-03-25')).toEqual([]);
  });

  it('is watched where it left the nest meanwhile: many lose a little then', () => {
    const out =
      'date: 2026-04-01, weighed: {c1: 8.0}\n date: 2026-04-02, fledged: c1\n date: 2026-04-03, weighed: {c1: 7.0}';
    expect(line(files(out), 'weight', '2026-04-03').level).toBe('watch');
  });

  it('does not press for a brood mate that is a little behind, nor does the one line of both say less', () => {
    const room = files(
      'date: 2026-03-24, weighed: {c1: 7.0, c2: 7.0}\n date: 2026-03-25, weighed: {c1: 6.3, c2: 7.1}\n date: 2026-03-26, weighed: {c2: 4.0, c3: 7.2}',
    );
    expect(line(room, 'weight', '2026-03-26')).toMatchObject({
      level: 'act',
      text: expect.stringMatching(/A chick that grows gains every day/),
    });
  });

  it('is what the one line says, whoever is behind or light beside it, and its day is the last weighing', () => {
    const room = files(
      'date: 2026-03-24, weighed: {c1: 2.9, c2: 7.0, c3: 6.9}\n date: 2026-03-25, weighed: {c2: 6.3}',
    );
    expect(line(room, 'weight', '2026-03-24').text).toContain('It may be pushed aside at feeding.');
    expect(line(room, 'weight', '2026-03-25')).toMatchObject({
      level: 'act',
      text: expect.stringMatching(
        /^c1 weighed 2\.9 g .* siblings of its age; c2 weighed 7 g .* A chick that grows gains/,
      ),
    });
    expect(warned(room, 'weight', '2026-03-25')).toMatchObject([{ date: day('2026-03-25') }]);
  });

  it('is one where nobody knows when its kind leaves the nest, once it lost a tenth', () => {
    const own = 'species: ridge finch\nclutch: 4-5\nincubation: 11-13\n';
    const log = (grams: string) =>
      pair(
        'RF-1',
        'ridge finch',
        `${brood}\n date: 2026-03-18, weighed: {c1: 3.0}\n date: 2026-03-19, weighed: {c1: ${grams}}`,
      );
    for (const profile of [{}, { 'species/ridge-finch.yaml': own }] as Record<string, string>[]) {
      expect(warned({ ...profile, 'RF-1': log('2.9') }, 'weight', '2026-03-19')).toEqual([]);
      expect(line({ ...profile, 'RF-1': log('2.7') }, 'weight', '2026-03-19').level).toBe('act');
    }
  });

  it('is one line for a brood that is short of food', () => {
    const room = files(
      'date: 2026-03-18, weighed: {c1: 3.0, c2: 3.1}\n date: 2026-03-19, weighed: {c1: 2.6, c2: 3.0}',
    );
    expect(line(room, 'weight', '2026-03-19')).toMatchObject({ level: 'act' });
    expect(line(room, 'weight', '2026-03-19').text).toMatch(
      /^c1 weighed .*; c2 weighed .*\. A chick that grows gains every day: /,
    );
  });

  it('is none that gains, however little', () => {
    const room = files('date: 2026-03-18, weighed: {c1: 3.0}\n date: 2026-03-19, weighed: {c1: 3.1}');
    expect(warned(room, 'weight', '2026-03-19')).toEqual([]);
  });

  it('is not told by a day of which two helpers wrote weights that cannot both be', () => {
    const room = files(`date: 2026-03-18, weighed: {c1: 3.0}
      date: 2026-03-19, weighed: {c1: 3.6}
      date: 2026-03-19, weighed: {c1: 2.6}`);
    expect(warned(room, 'weight', '2026-03-19')).toEqual([]);
  });
});

describe('a chick well below its siblings', () => {
  it('is below two thirds of those of its age', () => {
    const room = files('date: 2026-03-20, weighed: {c1: 4.0, c2: 4.2, c3: 2.5}');
    expect(spell(room, 'weight', '2026-03-14', '2026-04-10')).toEqual(['03-20 … 03-23 watch']);
    expect(line(room, 'weight', '2026-03-20').text).toBe(
      'c3 weighed 2.5 g on 20 Mar, well below siblings of its age. It may be pushed aside at feeding.',
    );
  });

  it('is told by one of its age that was weighed with it, not by those weighed before', () => {
    const room = files(
      'date: 2026-03-19, weighed: {c2: 2.6, c4: 2.4}\n date: 2026-03-20, weighed: {c1: 4.2, c3: 2.5}',
    );
    expect(line(room, 'weight', '2026-03-20').text).toMatch(
      /^c3 weighed 2\.5 g on 20 Mar, well below siblings/,
    );
  });

  it('is not told by the one that grew fastest', () => {
    const room = files('date: 2026-03-20, weighed: {c1: 2.8, c2: 3.5, c3: 6.3, c4: 3.6}');
    expect(warned(room, 'weight', '2026-03-20')).toEqual([]);
  });

  it('is no one that has left the nest', () => {
    const room = files(
      'date: 2026-04-02, fledged: c3\n date: 2026-04-03, weighed: {c1: 8.0, c2: 8.1, c3: 4.0}',
    );
    expect(warned(room, 'weight', '2026-04-03')).toEqual([]);
  });

  // Hatching spreads over about three days in captive zebra finches (Ikebuchi et al. 2017).
  it('is not the one that hatched a day later', () => {
    const room = files('date: 2026-03-20, weighed: {c1: 4.0, c2: 4.2, c4: 2.5}');
    expect(warned(room, 'weight', '2026-03-20')).toEqual([]);
    const far = files('date: 2026-03-20, weighed: {c1: 4.0, c2: 4.2, c4: 1.9}');
    expect(line(far, 'weight', '2026-03-20').text).toMatch(
      /^c4 weighed 1\.9 g on 20 Mar, well below siblings/,
    );
  });

  it('is not the one that hatched two days later, nor one weighed on another day, nor one of another species', () => {
    const late = {
      'LW-1': waxbills(`${brood.replace('03-15, hatched', '03-16, hatched')}
      date: 2026-03-20, weighed: {c1: 4.0, c2: 4.2, c4: 1.8}`),
    };
    expect(warned(late, 'weight', '2026-03-20')).toEqual([]);
    const another = files(
      'date: 2026-03-20, weighed: {c1: 4.0, c2: 4.2}\n date: 2026-03-21, weighed: {c3: 2.5}',
    );
    expect(line(another, 'weight', '2026-03-21').text).not.toContain('siblings');
    const guests = {
      ...files('date: 2026-03-20, weighed: {BF-1/1/c1: 8.0, BF-1/1/c2: 8.2, c3: 4.0}'),
      'BF-1': pair('BF-1', 'Bengalese finch', `${brood}\n date: 2026-03-16, fostered: {LW-1: [c1, c2]}`),
    };
    expect(warned(guests, 'weight', '2026-03-20')).toEqual([]);
  });
});

// The lavender waxbill of the profiles: 0.7 g at hatching, 8.5 g grown, 17–21 d in the nest. The low curve ends at
// 0.8 · 8.5 g, starts at 0.9 · 0.7 g and is half-way at 0.4 · 21 d: by hand 4.13 g at 10 d; the high one 6.95 g.
describe('a chick below the curve of its species', () => {
  const files = (more: string) => ({
    'LW-1': waxbills(`${brood.replace('hatched: 3', 'after: 2026-03-13, hatched: 3')}\n${more}`),
  });

  it('is looked at, with what is usual at its age', () => {
    const room = files('date: 2026-03-24, weighed: {c1: 3.2}');
    expect(spell(room, 'weight', '2026-03-14', '2026-04-10')).toEqual(['03-24 … 03-27 watch']);
    const { text, check } = line(room, 'weight', '2026-03-24');
    expect(text).toBe(
      'c1 weighed 3.2 g on 24 Mar, where 4.1–6.9 g is usual at 10 d. Too light for its age it may be fed too little, cold or ill.',
    );
    expect(check).toMatch(/crop.*who feeds them.*warm.*avian vet$/);
  });

  it('is not spoken of within the band, nor once it has left the nest', () => {
    expect(warned(files('date: 2026-03-24, weighed: {c1: 4.6}'), 'weight', '2026-03-24')).toEqual([]);
    const out = files('date: 2026-04-02, fledged: c1\n date: 2026-04-03, weighed: {c1: 5.0}');
    expect(warned(out, 'weight', '2026-04-03')).toEqual([]);
  });

  it('is told by its siblings first', () => {
    const room = files('date: 2026-03-24, weighed: {c1: 3.2, c2: 6.4, c3: 6.6}');
    expect(line(room, 'weight', '2026-03-24').text).toMatch(
      /^c1 weighed 3\.2 g on 24 Mar, well below siblings/,
    );
  });

  it('with all its siblings may be short of food, or of a small strain', () => {
    const room = files('date: 2026-03-24, weighed: {c1: 3.2, c2: 3.2, c3: 3.3}');
    expect(line(room, 'weight', '2026-03-24').text).toBe(
      'c1 and c2 weighed 3.2 g on 24 Mar, where 4.1–6.9 g is usual at 10 d; c3 weighed 3.3 g on 24 Mar, where 4.1–6.9 g is usual at 10 d. All that were weighed are light: the brood is short of food or warmth, or your birds are smaller than the profile’s adult mass.',
    );
  });

  it('beside one within the band is light by itself, and so is one beside another that loses', () => {
    const one = files('date: 2026-03-24, weighed: {c1: 3.8, c2: 5.0}');
    expect(line(one, 'weight', '2026-03-24').text).toMatch(
      /^c1 weighed 3\.8 g .*\. Too light for its age it may be fed too little/,
    );
    const both = files(
      'date: 2026-03-23, weighed: {c2: 5.0}\n date: 2026-03-24, weighed: {c1: 3.8, c2: 4.4}',
    );
    expect(line(both, 'weight', '2026-03-24').text).toMatch(
      /^c1 weighed 3\.8 g .*; c2 .* A chick that grows gains/,
    );
  });

  it('is not one whose weight is a slip of the pen', () => {
    const room = files('date: 2026-03-23, weighed: {c1: 6.1}\n date: 2026-03-24, weighed: {c1: 0.6}');
    expect(warned(room, 'weight', '2026-03-24')).toEqual([]);
  });
});
