import { describe, expect, it } from 'vitest';
import { line, spell, warned, waxbills } from './warned.ts';

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

  it('is not told by weighings a week apart', () => {
    const room = files('date: 2026-03-18, weighed: {c1: 7.0}\n date: 2026-03-25, weighed: {c1: 6.3}');
    expect(warned(room, 'weight', '2026-03-25')).toEqual([]);
  });

  it('is one line for a brood that is short of food', () => {
    const room = files(
      'date: 2026-03-18, weighed: {c1: 3.0, c2: 3.1}\n date: 2026-03-19, weighed: {c1: 2.6, c2: 3.0}',
    );
    expect(line(room, 'weight', '2026-03-19')).toMatchObject({ level: 'act' });
    expect(line(room, 'weight', '2026-03-19').text).toMatch(/^c1 weighed .*; c2 weighed/);
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

  // Hatching spreads over about three days in captive zebra finches (Ikebuchi et al. 2017).
  it('is not the one that hatched a day later', () => {
    const room = files('date: 2026-03-20, weighed: {c1: 4.0, c2: 4.2, c4: 2.5}');
    expect(warned(room, 'weight', '2026-03-20')).toEqual([]);
  });
});
