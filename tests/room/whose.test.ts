import { describe, expect, it } from 'vitest';
import { fullRef } from '../../src/room/model.ts';
import { type Files, room } from '../rooms.ts';
import { birdIn, clutchIn, eggIn, journal, pairIn, waxbills } from './facts.ts';
import { dead, doubts, finches, five, guests } from './guests.ts';

// Whose eggs and young words mean where several clutches, pairs and guests are in one nest.

const two = `${five}
  date: 2026-03-18, hatched: [e1, e2, e3, e4, e5]
  date: 2026-04-06, fledged: all
  date: 2026-04-10, laid: 4, sitting
  date: 2026-04-23, hatched: 3`;

describe('two broods of one pair', () => {
  it('a count takes the older, and says which, which not, and what to write', () => {
    expect(doubts({ P: waxbills(`${two}\ndate: 2026-04-24, died: 1`) })).toEqual([
      'died: possible in more than one clutch; taken as clutch 1, not clutch 2. say which: `clutch: 1`',
    ]);
  });

  it('a count means young that live in another flight last, though theirs is the older brood, and says so', () => {
    const away = {
      P: waxbills(`${two}\ndate: 2026-04-20, moved: {all: nursery}\ndate: 2026-04-24, died: 1`),
    };
    expect(dead(away)).toEqual(['LW-1/2/c1']);
    expect(doubts(away)).toEqual([
      'died: possible in more than one clutch; taken as clutch 2, not clutch 1. say which: `clutch: 2`',
    ]);
  });

  it('a ref takes the younger, and says which, which not, and what to write', () => {
    expect(doubts({ P: waxbills(`${two}\ndate: 2026-04-24, died: c1`) })).toEqual([
      'died: possible in more than one clutch; taken as LW-1/2, not LW-1/1. say which: `clutch: 2`',
    ]);
  });

  it('a ref that only one of them has leaves no doubt', () => {
    const files = { P: waxbills(`${two}\ndate: 2026-04-24, died: c5`) };
    expect(doubts(files)).toEqual([]);
    expect(dead(files)).toEqual(['LW-1/1/c5']);
  });

  it('the clutch’s number in the entry leaves none either, for counts, `all` and refs', () => {
    const died = (who: string, clutch: number) =>
      dead({ P: waxbills(`${two}\ndate: 2026-04-24, clutch: ${clutch}, died: ${who}`) });
    expect(died('2', 1)).toEqual(['LW-1/1/c1', 'LW-1/1/c2']);
    expect(died('2', 2)).toEqual(['LW-1/2/c1', 'LW-1/2/c2']);
    expect(died('all', 2)).toEqual(['LW-1/2/c1', 'LW-1/2/c2', 'LW-1/2/c3']);
    expect(died('c3', 1)).toEqual(['LW-1/1/c3']);
    expect(doubts({ P: waxbills(`${two}\ndate: 2026-04-24, clutch: 2, died: c5`) })).toEqual([
      'there is no chick `c5` (clutch 2). the chicks there are c1, c2, c3',
    ]);
    expect(doubts({ P: waxbills(`${two}\ndate: 2026-04-24, clutch: 3, died: c1`) })).toEqual([
      'LW-1 has no clutch 3 on that day. it has 1, 2',
      'there is no chick `c1` (LW-1 has no such clutch). record it with `hatched: 1` first',
    ]);
  });

  // A brood that is found dead, or whose crops are looked at, lies in the nest (common practice).
  it('`all` that died, or whose crops were seen, are those in the nest, and not their elders that fly', () => {
    const died = { P: waxbills(`${two}\ndate: 2026-04-24, died: all`) };
    expect(dead(died)).toEqual(['LW-1/2/c1', 'LW-1/2/c2', 'LW-1/2/c3']);
    expect(doubts(died)).toEqual([
      'died: possible in more than one clutch; taken as clutch 2, not clutch 1. say which: `clutch: 2`',
    ]);
    const crops = { P: waxbills(`${two}\ndate: 2026-04-24, crops: {full: all}`) };
    expect(doubts(crops)).toEqual([]);
    const seen = room(crops, '2026-07-01').birds.filter((bird) => bird.crops.length > 0);
    expect(seen.map(fullRef)).toEqual(['LW-1/2/c1', 'LW-1/2/c2', 'LW-1/2/c3']);
    // With nobody in the nest they are those that fly.
    expect(
      dead({
        P: waxbills(`${two}\ndate: 2026-04-24, died: [2/c1, 2/c2, 2/c3]
      date: 2026-04-25, died: all`),
      }),
    ).toHaveLength(8);
  });

  it('`all` that are given to another pair are the nestlings as well', () => {
    const files = {
      P: waxbills(`${two}\ndate: 2026-04-24, fostered: {BF-1: all}`),
      Q: journal('BF-1', 'bengalese finch', 'date: 2026-03-01, paired'),
    };
    const given = room(files, '2026-04-25').birds.filter(({ stays }) => stays.at(-1)?.nest?.id === 'BF-1');
    expect(given.map(fullRef)).toEqual(['LW-1/2/c1', 'LW-1/2/c2', 'LW-1/2/c3']);
    expect(doubts(files)[0]).toMatch(/^fostered: possible in more than one clutch; taken as clutch 2/);
  });

  it('who feeds itself is meant no more by a ref, where another is still fed', () => {
    const files = {
      P: waxbills(`${two}\ndate: 2026-04-26, independent: all\ndate: 2026-05-01, weighed: {c1: 4}`),
    };
    expect(doubts(files)).toEqual([]);
    expect(birdIn(room(files, '2026-07-01'), 'LW-1/2/c1').weights).toHaveLength(1);
  });

  it('by an egg’s number the chick is meant that came of it', () => {
    const files = { P: waxbills(`${two}\ndate: 2026-04-24, weighed: {2/c3: 4}, died: 2/e3`) };
    expect(doubts(files)).toEqual([]);
    expect(dead(files)).toEqual(['LW-1/2/c3']);
  });

  it('a count over both is no longer a guess where every one of the older is dead', () => {
    const files = {
      P: waxbills(`${two}\ndate: 2026-04-24, clutch: 1, died: all\ndate: 2026-04-25, died: 1`),
    };
    expect(doubts(files)).toEqual([]);
    expect(dead(files).at(-1)).toBe('LW-1/2/c1');
  });
});

describe('an egg forgotten in the nest for months', () => {
  // Laid on 5 March; the next clutch two months later.
  const forgotten = `date: 2026-03-05, laid: 5, sitting
    date: 2026-03-11, candled: {clear: e5, fertile: [e1, e2, e3, e4]}
    date: 2026-03-18, hatched: 4
    date: 2026-04-06, fledged: all
    date: 2026-04-25, independent: all
    date: 2026-05-10, laid: 4, sitting`;
  const endings = (log: string) => {
    const known = room(
      { P: waxbills(`${forgotten}\n${log}`), Q: journal('BF-1', 'bengalese finch', '') },
      '2026-07-01',
    );
    return pairIn(known, 'LW-1').clutches.flatMap(({ eggs }) =>
      eggs.filter(({ fate }) => fate?.kind !== 'hatched' && fate !== null).map(fullRef),
    );
  };

  it('is not one of those that the lamp counts today, and nobody needs to be asked', () => {
    const files = { P: waxbills(`${forgotten}\ndate: 2026-05-16, candled: {clear: 2, fertile: 2}`) };
    expect(clutchIn(room(files, '2026-05-16'), 'LW-1/2').eggs.map(({ lamp }) => lamp.at(-1)?.saw)).toEqual([
      'clear',
      'clear',
      'fertile',
      'fertile',
    ]);
    expect(doubts(files)).toEqual([]);
  });

  it('is neither the one that broke today nor one of those taken into store', () => {
    expect(endings('date: 2026-05-12, lost: {broken: 1}')).toEqual(['LW-1/2/e1']);
    const known = room({ P: waxbills(`${forgotten}\ndate: 2026-05-11, pulled: 2`) }, '2026-05-11');
    expect(eggIn(known, 'LW-1/1/e5').places.at(-1)?.place.kind).toBe('nest');
    expect(clutchIn(known, 'LW-1/2').eggs.map(({ places }) => places.at(-1)?.place.kind)).toEqual([
      'store',
      'store',
      'nest',
      'nest',
    ]);
  });

  it('is not what begs while the eggs of today are too young, nor the chick that a look counts', () => {
    expect(
      doubts({ P: waxbills(`${forgotten}\ndate: 2026-05-06, checked\ndate: 2026-05-12, heard: begging`) })[0],
    ).toContain('e1 cannot have hatched: it was laid on');
    const checked = { P: waxbills(`${forgotten}\ndate: 2026-05-23, checked: {chicks: 1}`) };
    expect(clutchIn(room(checked, '2026-05-23'), 'LW-1/2').chicks).toHaveLength(1);
  });

  it('is counted where more are counted than the clutch of today has', () => {
    expect(endings('date: 2026-05-12, lost: {eaten: 5}')).toHaveLength(5);
    expect(endings('date: 2026-05-12, lost: {eaten: all}')).toHaveLength(5);
  });

  it('is the one that is thrown away at last as clear, addled or removed', () => {
    for (const cause of ['clear', 'addled', 'removed'])
      expect(endings(`date: 2026-05-12, lost: {${cause}: 1}`), cause).toEqual(['LW-1/1/e5']);
  });
});

describe('what is known of a brood is not told of it again while another is there', () => {
  const grown = `${two}
    date: 2026-04-25, clutch: 1, independent: all
    date: 2026-05-20, sexed: {cock: [1/c1, 1/c2], hen: [1/c3, 1/c4, 1/c5]}, moult: {started: [1/c1, 1/c2, 1/c3, 1/c4, 1/c5]}`;

  it('its sex: a hen is no cock by count', () => {
    const known = room({ P: waxbills(`${grown}\ndate: 2026-07-01, sexed: {cock: 2}`) }, '2026-07-01');
    expect(clutchIn(known, 'LW-1/1').chicks.map(({ sex }) => sex)).toEqual([
      'cock',
      'cock',
      'hen',
      'hen',
      'hen',
    ]);
    expect(clutchIn(known, 'LW-1/2').chicks.map(({ sex }) => sex)).toEqual(['cock', 'cock', null]);
    expect(known.findings).toEqual([]);
  });

  it('its moult: who is in it does not begin it', () => {
    const known = room({ P: waxbills(`${grown}\ndate: 2026-07-01, moult: {started: 3}`) }, '2026-07-01');
    expect(clutchIn(known, 'LW-1/1').chicks.map(({ moult }) => moult.length)).toEqual([1, 1, 1, 1, 1]);
    expect(clutchIn(known, 'LW-1/2').chicks.map(({ moult }) => moult.length)).toEqual([1, 1, 1]);
  });
});

describe('guests in a nest', () => {
  it('by count rank behind the young of the nest, and the hint names both in full where needed', () => {
    const files = guests('date: 2026-03-26, died: 1');
    expect(dead(files)).toEqual(['BF-1/1/c1']);
    expect(doubts(files)).toEqual([
      'died: taken as c1, but c2, LW-1/1/c4, LW-1/1/c5 would do as well and count differently. name them: refs such as e1 or c2',
    ]);
    expect(dead(guests('date: 2026-03-26, died: 3'))).toEqual(['BF-1/1/c1', 'BF-1/1/c2', 'LW-1/1/c4']);
    expect(doubts(guests('date: 2026-03-26, died: 4'))).toEqual([]);
  });

  it('that leave the nest or feed themselves by count with the young of the nest are a guess too', () => {
    const codes = (files: Files) => room(files, '2026-07-01').findings.map(({ code }) => code);
    const files = (more: string) => guests(`date: 2026-04-12, fledged: ${more}`);
    expect(codes(files('1'))).toEqual(['guessed']);
    expect(codes(files('all'))).toEqual([]);
    expect(codes(files('all\ndate: 2026-05-04, independent: 1'))).toEqual(['guessed']);
    expect(codes(files('all\ndate: 2026-05-04, independent: 4'))).toEqual([]);
  });

  it('leave the room by count after those at home; whose nest it took is said by the pairs', () => {
    const { P, Q } = guests('');
    const left = (count: number) => ({ P: `${P}\n  - {date: 2026-05-01, gone: ${count}}`, Q });
    expect(dead(left(1))).toEqual(['LW-1/1/c1']);
    expect(doubts(left(3))).toEqual([]);
    expect(doubts(left(4))).toEqual([
      'gone: possible in more than one clutch; taken as LW-1/1, not BF-1/1. say which: `clutch: 1`',
    ]);
  });

  it('in a nest without a clutch are guests and nothing else', () => {
    const files = guests('date: 2026-03-26, died: 1', '');
    expect(dead(files)).toEqual(['LW-1/1/c4']);
    expect(doubts(files)).toEqual([]);
  });

  it('there before the nest has a clutch of its own: the hint says guests or clutch', () => {
    const late = guests(
      'date: 2026-03-26, laid: 1\ndate: 2026-04-10, hatched: e1\ndate: 2026-04-11, died: 1',
      '',
    );
    expect(doubts(late)).toEqual([
      'died: possible in more than one clutch; taken as the guests, not clutch 1. say which: `clutch: 1`',
    ]);
    expect(dead(late)).toEqual(['LW-1/1/c4']);
  });

  it('are counted by name and number: the tenth after the second', () => {
    const many = {
      P: waxbills(`date: 2026-03-05, laid: 11, sitting\ndate: 2026-03-18, hatched: 11
        date: 2026-03-20, fostered: {BF-1: [c10, c2, c11]}`),
      Q: journal('BF-1', 'bengalese finch', 'date: 2026-03-26, died: 2'),
    };
    expect(dead(many)).toEqual(['LW-1/1/c2', 'LW-1/1/c10']);
    expect(dead({ ...many, Q: journal('BF-1', 'bengalese finch', 'date: 2026-03-26, died: 1') })).toEqual([
      'LW-1/1/c2',
    ]);
  });

  it('are no eggs of the house: what is pinned to its clutch is asked of that clutch and its guests', () => {
    const files = guests('date: 2026-03-26, clutch: 1, died: 3');
    expect(dead(files)).toEqual(['BF-1/1/c1', 'BF-1/1/c2', 'LW-1/1/c4']);
  });

  it('may be eggs; by count they hatch after the eggs of the house that are due with them', () => {
    const eggs = (entry: string) => ({
      P: waxbills(`${five}\ndate: 2026-03-06, fostered: {BF-1: [e1, e2]}`),
      Q: journal('BF-1', 'lavender waxbill', `date: 2026-03-04, laid: 2, sitting\n${entry}`),
    });
    const hatched = (count: number) => {
      const known = room(eggs(`date: 2026-03-20, hatched: ${count}`), '2026-07-01');
      return known.birds.filter(({ clutch }) => clutch !== null).map(fullRef);
    };
    expect(hatched(2)).toEqual(['BF-1/1/c1', 'BF-1/1/c2']);
    expect(hatched(3)).toEqual(['BF-1/1/c1', 'BF-1/1/c2', 'LW-1/1/c1']);
    const known = room(eggs('date: 2026-03-20, hatched: LW-1/1/e2'), '2026-07-01');
    expect(eggIn(known, 'LW-1/1/e2').fate?.kind).toBe('hatched');
    expect(birdIn(known, 'LW-1/1/c1').stays.at(-1)).toMatchObject({
      nest: { id: 'BF-1' },
      clutch: { number: 1 },
    });
    expect([...pairIn(known, 'BF-1').guests].map(fullRef)).toEqual(['LW-1/1/c1']);
  });

  it('named by the number of a clutch that is theirs at home', () => {
    const files = guests('date: 2026-03-26, died: LW-1/1/c5');
    expect(dead(files)).toEqual(['LW-1/1/c5']);
    expect(doubts(guests('date: 2026-03-26, died: LW-1/4/c5'))).toEqual([
      'there is no chick `LW-1/4/c5` (LW-1 has no such clutch). record it with `hatched: 1` first',
    ]);
    expect(doubts(guests('date: 2026-03-26, died: LW-2/1/c5'))).toEqual([
      'no journal has the pair `LW-2`. did you mean `LW-1`?',
    ]);
  });
});

describe('a count for a nest that was never counted', () => {
  const heard = 'date: 2026-04-01, heard: begging';

  it('makes as many as were seen, in that clutch', () => {
    const known = room({ P: waxbills(`${heard}\ndate: 2026-04-17, fledged: 4`) }, '2026-07-01');
    expect(clutchIn(known, 'LW-1/1').chicks).toHaveLength(4);
    expect(known.findings).toEqual([]);
  });

  it('makes none where the clutch it is pinned to was counted', () => {
    const log = `${five}\ndate: 2026-03-18, hatched: [e1, e2, e3, e4, e5]\ndate: 2026-04-06, clutch: 1, fledged: 6`;
    expect(doubts({ P: waxbills(log) })).toEqual([
      '6 fledged, but in the nest of LW-1 it is possible for 5. a smaller count, or the missing ones first',
    ]);
  });

  it('with counted eggs but chicks that nobody counted takes further chicks out of those eggs', () => {
    const log = `${five}\ndate: 2026-03-18, heard: begging\ndate: 2026-04-06, fledged: 3`;
    const known = room({ P: waxbills(log) }, '2026-07-01');
    const { eggs, chicks } = clutchIn(known, 'LW-1/1');
    expect([eggs.length, chicks.length]).toEqual([5, 3]);
    expect(eggs.map(({ fate }) => fate?.kind ?? 'open')).toEqual([
      'hatched',
      'hatched',
      'hatched',
      'open',
      'open',
    ]);
    expect(known.findings).toEqual([]);
  });

  it('of at least so many is content with fewer; of none at all it is an error', () => {
    const log = (who: string) =>
      `${five}\ndate: 2026-03-18, hatched: [e1, e2]\ndate: 2026-03-26, died: ${who}`;
    expect(doubts({ P: waxbills(log('3+')) })).toEqual([]);
    expect(dead({ P: waxbills(log('~3')) })).toEqual(['LW-1/1/c1', 'LW-1/1/c2']);
    expect(doubts({ P: waxbills(`${log('all')}\ndate: 2026-03-27, died: 2+`) })).toEqual([
      '`died` fits nobody in the nest of LW-1 on that day. another clutch, another date, or a missing entry before it',
    ]);
  });

  it('of none is nobody, and no doubt', () => {
    expect(doubts({ P: waxbills(`${five}\ndate: 2026-03-10, candled: {clear: 0, fertile: all}`) })).toEqual(
      [],
    );
  });
});

it('the same bird named twice in one breath is meant once', () => {
  const log = `${five}\ndate: 2026-03-18, hatched: [e1, e2]\ndate: 2026-03-20, weighed: {c1: 1.2}
    date: 2026-03-24, ringed: {c1: LW 26 014}\ndate: 2026-03-25, feeding: {cock: [c1, 1/c1, LW 26 014]}`;
  const known = room({ P: waxbills(log) }, '2026-07-01');
  expect(birdIn(known, 'LW-1/1/c1').fedBy).toHaveLength(1);
  expect(known.findings).toEqual([]);
});

describe('eggs of one clutch in the nest and in the incubator', () => {
  it('hatch by count in the nest first, where somebody has to feed the chick; a guess that is said', () => {
    const both = 'date: 2026-03-05, laid: 4, sitting\ndate: 2026-03-06, set: {incubator: [e1, e2]}';
    const files = (entry: string) => ({ P: waxbills(`${both}\ndate: 2026-03-18, hatched: ${entry}`) });
    const out = ({ P }: Files) =>
      room({ P: P as string }, '2026-03-18').birds.flatMap(({ egg }) => egg?.ref ?? []);
    expect(out(files('1'))).toEqual(['e3']);
    expect(doubts(files('1'))).toEqual([
      'hatched: taken as e3, but e4, e1, e2 would do as well and count differently. name them: refs such as e1 or c2',
    ]);
    for (const sure of ['4', 'e1', '[e1, e2]']) expect(doubts(files(sure)), sure).toEqual([]);
  });
});

describe('chicks that hatched in the incubator', () => {
  const hatched =
    'date: 2026-03-05, laid: 3\ndate: 2026-03-08, set: {incubator: all}\ndate: 2026-03-21, hatched: 3';
  const fostered = (who: string) => ({
    P: waxbills(`${hatched}\ndate: 2026-03-22, fostered: {${who}}`),
    Q: journal('BF-1', 'bengalese finch', finches),
  });
  const homes = (files: Files) =>
    clutchIn(room(files, '2026-03-25'), 'LW-1/1').chicks.map(({ stays }) =>
      stays.map(({ housing, nest }) => nest?.id ?? housing),
    );

  it.each(['hand: all', 'hand: 3', 'hand: some', 'hand: [c1, c3]'])(
    'are in the hand already: nothing happens with {%s}',
    (who) => {
      expect(doubts(fostered(who), '2026-03-25')).toEqual([]);
      expect(homes(fostered(who))).toEqual(homes({ P: waxbills(hatched) }));
    },
  );

  it('are what can be given to a nest while there is nothing in their own', () => {
    expect(doubts(fostered('BF-1: all'), '2026-03-25')).toEqual([]);
    expect(homes(fostered('BF-1: all')).map((stays) => stays.at(-1))).toEqual(['BF-1', 'BF-1', 'BF-1']);
  });

  it('are no more than there are', () => {
    expect(doubts(fostered('hand: 4'), '2026-03-25')).toHaveLength(1);
  });
});
