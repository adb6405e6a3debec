import { describe, expect, it } from 'vitest';
import { line, spell, warned, waxbills } from './warned.ts';

const brood = `
  date: 2026-03-01, laid: 3
  date: 2026-03-02, sitting: hen
  date: 2026-03-14, hatched: 3
`;
const files = (more: string) => ({ 'LW-1': waxbills(`${brood}\n${more}`) });

describe('an empty crop', () => {
  it('presses for two days', () => {
    const room = files('date: 2026-03-18, crops: {full: [c1, c2], empty: c3}');
    expect(spell(room, 'empty-crop', '2026-03-14', '2026-03-31')).toEqual(['03-18 … 03-20 act']);
    expect(line(room, 'empty-crop', '2026-03-18').text).toBe(
      'The crop of c3 was empty on 18 Mar. A chick that is not fed does not last another day.',
    );
    expect(line(room, 'empty-crop', '2026-03-18').check).toContain('Do the parents carry food in');
  });

  it.each([
    ['full at the next look', 'crops: {full: all}'],
    ['seen fed', 'feeding: {hen: all}'],
    ['dead', 'died: c3'],
  ])('is over when it is %s', (_what, then) => {
    const room = files(`date: 2026-03-18, crops: {full: [c1, c2], empty: c3}\n date: 2026-03-19, ${then}`);
    expect(spell(room, 'empty-crop', '2026-03-14', '2026-03-31')).toEqual(['03-18 act']);
  });

  it('presses for a chick that was seen fed before, on that very day too', () => {
    const room = (fed: string) => files(`date: 2026-03-17, crops: {full: all}\n ${fed}`);
    for (const fed of [
      'date: 2026-03-17, feeding: {hen: all}\n date: 2026-03-18, crops: {empty: c3}',
      'date: 2026-03-18, feeding: {hen: all}, crops: {empty: c3}',
    ])
      expect(line(room(fed), 'empty-crop', '2026-03-18').level, fed).toBe('act');
  });

  it('is told with its day of each, where they were looked at on two days', () => {
    const room = files('date: 2026-03-18, crops: {empty: c1}\n date: 2026-03-19, crops: {empty: c2}');
    expect(warned(room, 'empty-crop', '2026-03-19').map(({ text }) => text.split('.')[0])).toEqual([
      'The crop of c1 was empty on 18 Mar',
      'The crop of c2 was empty on 19 Mar',
    ]);
  });

  it('of a chick that is fed by hand is asked of the hand, not of the parents', () => {
    const hand = files('date: 2026-03-16, fostered: {hand: all}\n date: 2026-03-18, crops: {empty: c3}');
    const { level, check } = line(hand, 'empty-crop', '2026-03-18');
    expect([level, check]).toEqual(['watch', expect.stringMatching(/^was it the time of the next meal\?/)]);
    expect(check).not.toContain('parents');
  });

  // A chick lives a day on its yolk: common practice.
  it('is watched on the day of hatching', () => {
    const room = files('date: 2026-03-14, crops: {empty: all}');
    expect(line(room, 'empty-crop', '2026-03-14')).toMatchObject({ level: 'watch' });
    expect(line(room, 'empty-crop', '2026-03-14').text).toContain('its first day on its yolk');
  });

  it('presses on the day after hatching, and beside a chick just hatched for the older one', () => {
    const next = files('date: 2026-03-15, crops: {empty: all}');
    expect(line(next, 'empty-crop', '2026-03-15').level).toBe('act');
    const ages = {
      'LW-1': waxbills(`${brood.replace('hatched: 3', 'hatched: 2')}
        date: 2026-03-16, hatched: 1, crops: {empty: all}`),
    };
    expect(line(ages, 'empty-crop', '2026-03-16')).toMatchObject({
      level: 'act',
      text: expect.stringMatching(
        /^The crops of c1, c2 and c3 were empty on 16 Mar\. A chick that is not fed/,
      ),
    });
  });

  it('is one line for the brood', () => {
    const room = files('date: 2026-03-18, crops: {empty: all}');
    expect(line(room, 'empty-crop', '2026-03-18').text).toMatch(
      /^The crops of c1, c2 and c3 were empty on 18 Mar\./,
    );
  });

  it('of one helper and a full one of another are both said', () => {
    const room = files('date: 2026-03-18, crops: {empty: c3}\n date: 2026-03-18, crops: {full: c3}');
    expect(line(room, 'empty-crop', '2026-03-18')).toMatchObject({ level: 'watch' });
    expect(line(room, 'empty-crop', '2026-03-18').text).toContain(
      'though another look of that day says full',
    );
  });
});

it('a thin crop is watched when it was thin twice', () => {
  const once = files('date: 2026-03-18, crops: {thin: c3}');
  expect(warned(once, 'empty-crop', '2026-03-18')).toEqual([]);
  const twice = files('date: 2026-03-18, crops: {thin: c3}\n date: 2026-03-19, crops: {thin: c3}');
  expect(line(twice, 'empty-crop', '2026-03-19')).toMatchObject({ level: 'watch' });
  expect(line(twice, 'empty-crop', '2026-03-19').text).toMatch(/^c3 had a thin crop at two looks in a row/);
  for (const looks of [
    'date: 2026-03-18, crops: {full: c3}\n date: 2026-03-19, crops: {thin: c3}',
    'date: 2026-03-18, crops: {thin: c3}\n date: 2026-03-19, crops: {thin: c3}\n date: 2026-03-19, crops: {full: c3}',
  ])
    expect(warned(files(looks), 'empty-crop', '2026-03-19'), looks).toEqual([]);
});
