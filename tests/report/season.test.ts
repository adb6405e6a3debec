import { describe, expect, it } from 'vitest';
import { emptyWords, guestsWords, headOf, inCareWords } from '../../src/report/season.ts';
import { room } from '../rooms.ts';
import { book, FOUR, pair, waxbills } from './seasons.ts';

describe('the head of a season', () => {
  it('names the room, the day, and how much there was', () => {
    const files = {
      'nestlog.yaml': 'room: the finch room\n',
      'LW-1': waxbills(FOUR),
      'ZF-1': pair('ZF-1', 'zebra finch', FOUR),
    };
    expect(headOf(book(files, '2026-07-01', '2026'))).toEqual({
      title: 'Season 2026 · the finch room',
      standing: 'as known on Wednesday 1 July 2026',
      counted: '2 clutches of 2 pairs of 2 species',
    });
  });

  it('is of all seasons, in a room without a name', () => {
    const { title, counted } = headOf(book({ 'LW-1': waxbills(FOUR) }, '2026-07-01'));
    expect([title, counted]).toEqual(['All seasons', '1 clutch of 1 pair']);
  });

  it('shows what a room’s name hides', () => {
    expect(headOf(book({ 'nestlog.yaml': 'room: "a\\u202Eb"\n' }, '2026-07-01')).title).toBe(
      'All seasons · a<U+202E>b',
    );
  });
});

describe('a season without a clutch', () => {
  it('says which seasons have some, or that none has', () => {
    expect(emptyWords(book({ 'LW-1': waxbills(FOUR) }, '2026-07-01', '2019'))).toBe(
      'No clutch was begun in it. There are clutches in 2026; `nestlog season all` takes them together.',
    );
    expect(emptyWords(book({}, '2026-07-01'))).toBe('No journal of this room has a clutch yet.');
  });
});

it('what a pair reared of others is said as far as it has come', () => {
  const words = (fledged: number, independent: number) =>
    guestsWords({ taken: 3, hatched: 4, fledged, independent, died: 0 });
  expect(words(0, 0)).toBe(
    'It was given 3 eggs and chicks of other pairs; none that it reared has left the nest.',
  );
  expect(words(4, 0)).toMatch(/; with its own it fledged 4, of which none feeds itself\.$/);
  expect(words(4, 2)).toMatch(/; with its own it fledged 4 and brought 2 to independence\.$/);
  expect(guestsWords({ taken: 0, hatched: 4, fledged: 4, independent: 2, died: 0 })).toBe('');
});

it('whose eggs and young a pair cares for now is said by name, own ones and those that feed themselves left out', () => {
  const words = (on: string) => {
    const known = room(
      {
        'LW-1': waxbills(`date: 2026-03-04, laid: 3, sitting\ndate: 2026-03-06, fostered: {ZF-1: [e1, e2]}`),
        'ZF-1': pair(
          'ZF-1',
          'zebra finch',
          `date: 2026-03-05, laid: 2, sitting\ndate: 2026-03-17, hatched: [LW-1/1/e1]\ndate: 2026-04-05, fledged: all
           date: 2026-04-20, lost: {clear: LW-1/1/e2}, independent: all`,
        ),
      },
      on,
    );
    return known.pairs.map(inCareWords);
  };
  expect(words('2026-03-06')).toEqual(['', 'In its care from other pairs: LW-1/1/e1 and LW-1/1/e2.']);
  expect(words('2026-04-06')).toEqual(['', 'In its care from other pairs: LW-1/1/c1 and LW-1/1/e2.']);
  expect(words('2026-04-20')).toEqual(['', '']);
});
