import { describe, expect, it } from 'vitest';
import { fullRef } from '../../src/room/model.ts';
import { room } from '../rooms.ts';
import { journal, waxbills } from './facts.ts';
import { dead, doubts, five, guests } from './guests.ts';

// A count chooses between the young and eggs of a nest; where it matters which, it is a guess that is told.

describe('own and guests in one nest', () => {
  it('that are eggs: which of them the lamp showed clear, which broke and which pipped are a guess', () => {
    const eggs = (entry: string) => ({
      P: waxbills(`${five}\ndate: 2026-03-06, fostered: {BF-1: [e1, e2]}`),
      Q: journal('BF-1', 'bengalese finch', `date: 2026-03-04, laid: 3, sitting\ndate: 2026-03-13, ${entry}`),
    });
    const guess = (did: string, taken = 'e1', others = 'e2, e3, LW-1/1/e1, LW-1/1/e2') =>
      `${did}: taken as ${taken}, but ${others} would do as well and count differently. name them: refs such as e1 or c2`;
    expect(doubts(eggs('candled: {clear: 1, fertile: 4}'))).toEqual([guess('candled clear')]);
    expect(doubts(eggs('lost: {broken: 1}'))).toEqual([guess('lost')]);
    // The guests are of a species that sits two days less.
    expect(doubts(eggs('pipped: 1'))).toEqual([guess('pipped', 'LW-1/1/e1', 'LW-1/1/e2, e1, e2, e3')]);
    expect(doubts(eggs('candled: {clear: 5}'))).toEqual([]);
    expect(doubts(eggs('candled: {clear: LW-1/1/e1, fertile: 4}'))).toEqual([]);
  });

  it('that are all due: of whom a chick is that is one more than the house laid, or one fewer than all, is a guess', () => {
    const due = (hatched: number) =>
      doubts({
        P: waxbills(`${five}\ndate: 2026-03-06, fostered: {BF-1: all}`),
        Q: journal('BF-1', 'lavender waxbill', `${five}\ndate: 2026-03-18, hatched: ${hatched}`),
      });
    for (const hatched of [1, 4, 5, 6, 9]) expect(due(hatched), `${hatched}`).toHaveLength(1);
    expect(due(10)).toEqual([]);
  });

  it('in the nest die before fledglings of the house as a rule; it is a guess, and said to be one', () => {
    const files = guests('date: 2026-03-30, fledged: [c1, c2]\ndate: 2026-03-31, died: 1');
    expect(dead(files)).toEqual(['LW-1/1/c4']);
    expect(doubts(files)).toEqual([
      'died: taken as LW-1/1/c4, but LW-1/1/c5, c1, c2 would do as well and count differently. name them: refs such as e1 or c2',
    ]);
  });

  it('go on to a third nest by count, or those of the house, or those in the hand: a guess that a hint tells', () => {
    const third = { R: journal('BF-2', 'bengalese finch', 'date: 2026-03-01, paired') };
    const told = (entry: string) => doubts({ ...guests(entry), ...third });
    expect(told('date: 2026-03-22, fostered: {BF-2: 2}')).toEqual([
      'fostered: taken as c1, c2, but LW-1/1/c4, LW-1/1/c5 would do as well and count differently. name them: refs such as e1 or c2',
    ]);
    const hand = 'date: 2026-03-21, fostered: {hand: [c1]}';
    expect(told(`${hand}\ndate: 2026-03-22, fostered: {BF-2: c1}`)).toEqual([]);
    const own = `${five}\ndate: 2026-03-18, hatched: 5\n${hand}\ndate: 2026-03-22, fostered:`;
    expect(doubts({ P: waxbills(`${own} {BF-2: 4}`), ...third })).toEqual([
      'fostered: taken as c2, c3, c4, c5, but c1 would do as well and count differently. name them: refs such as e1 or c2',
    ]);
    expect(doubts({ P: waxbills(`${own} {hand: 3}`), ...third })).toEqual([]);
    expect(doubts({ P: waxbills(`${own} {BF-2: all}`), ...third })).toEqual([]);
  });

  it('sat on for days longer hatch before the eggs of the house, that are too young yet', () => {
    const files = {
      P: waxbills(`${five}\ndate: 2026-03-10, fostered: {BF-1: [e1, e2]}`),
      Q: journal(
        'BF-1',
        'bengalese finch',
        `date: 2026-03-08, laid: 1\ndate: 2026-03-09, laid: 1\ndate: 2026-03-10, laid: 1, sitting
         date: 2026-03-18, hatched: 2`,
      ),
    };
    const known = room(files, '2026-03-18');
    expect(known.birds.filter(({ clutch }) => clutch !== null).map(fullRef)).toEqual([
      'LW-1/1/c1',
      'LW-1/1/c2',
    ]);
    expect(doubts(files)).toEqual([]);
  });
});

describe('a brood that is half out', () => {
  it('one that dies while some of its nest are out is taken as a nestling, and asked about: another rate', () => {
    const part = `${five}\ndate: 2026-03-18, hatched: 5\ndate: 2026-04-06, fledged: 3\ndate: 2026-04-07, died:`;
    expect(dead({ P: waxbills(`${part} 1`) })).toEqual(['LW-1/1/c4']);
    expect(doubts({ P: waxbills(`${part} 1`) })).toEqual([
      'died: taken as c4, but c5, c1, c2, c3 would do as well and count differently. name them: refs such as e1 or c2',
    ]);
    expect(doubts({ P: waxbills(`${part} c4`) })).toEqual([]);
  });
});

describe('a brood of which some are fed by hand', () => {
  const hand = (log: string) => ({
    P: waxbills(
      `${five}\ndate: 2026-03-18, hatched: 5\ndate: 2026-03-22, fostered: {hand: [c1, c2]}\n${log}`,
    ),
  });

  it('one that dies is taken as a nestling, and asked about: those in the hand are in no pair’s rate', () => {
    const one = hand('date: 2026-03-24, died: 1');
    expect(dead(one)).toEqual(['LW-1/1/c3']);
    expect(doubts(one)).toEqual([
      'died: taken as c3, but c4, c5, c1, c2 would do as well and count differently. name them: refs such as e1 or c2',
    ]);
    expect(doubts(hand('date: 2026-03-24, died: c3'))).toEqual([]);
    expect(doubts(hand('date: 2026-03-24, died: 5'))).toEqual([]);
  });

  it('one that dies while the next clutch is in the nest is taken as of that, and it is asked which', () => {
    const next = `date: 2026-03-24, fostered: {hand: all}\ndate: 2026-03-28, clutch: 2, laid: 3, sitting
      date: 2026-04-11, hatched: 3\ndate: 2026-04-12,`;
    expect(dead(hand(`${next} died: 1`))).toEqual(['LW-1/2/c1']);
    expect(doubts(hand(`${next} died: 1`))).toEqual([
      'died: possible in more than one clutch; taken as clutch 2, not clutch 1. say which: `clutch: 2`',
    ]);
    expect(doubts(hand(`${next} clutch: 2, died: 1`))).toEqual([]);
  });

  it('those that go to another pair by count are nestlings before fledglings, and asked about', () => {
    const third = { R: journal('BF-2', 'bengalese finch', 'date: 2026-03-01, paired') };
    const out = 'date: 2026-04-06, fledged: c3\ndate: 2026-04-06, time: 12:00, fostered: {BF-2: 1}';
    expect(doubts({ ...hand(out), ...third })).toEqual([
      'fostered: taken as c4, but c5, c3, c1, c2 would do as well and count differently. name them: refs such as e1 or c2',
    ]);
  });
});
