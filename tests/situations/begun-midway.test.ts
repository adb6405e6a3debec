import { describe, expect, it } from 'vitest';
import { room } from '../rooms.ts';
import { codes, due, journal, spell, warned } from './morning.ts';

describe('a journal begun in the middle of rearing, with a chick that is nursed by hand for some days', () => {
  // Gouldian finches: rings at 7 to 9 days, out at 20 to 24, feeding themselves at 40 to 50 (the profile).
  const files = {
    a: journal(
      'GF-1',
      'gouldian finch',
      `
      date: 2026-05-09, checked: {chicks: 4}, aged: {8: all}
      date: 2026-05-12, unwell: {c4: thin and cold}, crops: {empty: c4, full: [c1, c2, c3]}
      date: 2026-05-12, time: 18:00, fostered: {hand: c4}
      date: 2026-05-17, fostered: {GF-1: c4}
      date: 2026-05-18, crops: {full: all}
      date: 2026-05-24, fledged: 3
      date: 2026-05-26, fledged: 1
      date: 2026-06-15, independent: all
    `,
      'housing: cage 1',
    ),
  };
  const days = (task: string) => spell(files, task, 'GF-1', '2026-05-09', '2026-06-30');

  it('reads without a word, and asks for rings and warm nights at the age that was told', () => {
    expect(codes(room(files, '2026-06-30'))).toEqual([]);
    expect(days('ring')).toEqual(['05-09 … 05-10']);
    expect(days('warm-nights')).toEqual(['05-09 … 05-12']);
  });

  it('has the empty crop and the ill chick in the morning, wherever it is kept', () => {
    expect(warned(files, 'empty-crop', '2026-05-12')).toHaveLength(1);
    for (const day of ['2026-05-12', '2026-05-13', '2026-05-17'])
      expect(warned(files, 'unwell', day), day).toMatchObject([{ bird: 'GF-1/1/c4' }]);
  });

  it('sees to the first feed of the one that was brought home, until every crop was seen full', () => {
    expect(due(files, '2026-05-17', 'GF-1')).toEqual(['GF-1 first-feed c4']);
    expect(days('first-feed')).toEqual(['05-17']);
  });

  it('waits for the last to leave the nest, and for all to feed themselves', () => {
    expect(days('fledge')).toEqual(['05-21 … 05-25']);
    expect(due(files, '2026-05-25', 'GF-1')).toEqual(['GF-1 fledge c4']);
    expect(days('independent')).toEqual(['06-10 … 06-14']);
  });

  it('counts four young reared, and none that died', () => {
    const { birds } = room(files, '2026-06-30');
    const young = birds.filter(({ ref }) => ref !== null);
    expect(young.map(({ independent, fate }) => independent !== null && fate === null)).toEqual(
      Array(4).fill(true),
    );
  });
});
