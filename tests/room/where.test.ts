import { describe, expect, it } from 'vitest';
import { hostClutch } from '../../src/room/lives.ts';
import { room } from '../rooms.ts';
import { birdIn, clutchIn, codes, days, eggIn, journal, pairIn, waxbills } from './facts.ts';

const laid = 'date: 2026-03-05, laid: 4, sitting';
const place = (entry: string, foster = '') => {
  const files = {
    P: waxbills(`${laid}\n${entry}`),
    Q: journal('BF-1', 'bengalese finch', foster, 'housing: cage 4'),
  };
  return room(files, '2026-04-01');
};
const lastPlace = (known: ReturnType<typeof room>) => eggIn(known, 'LW-1/1/e1').places.at(-1)?.place;

/** The same with e1 under another pair since 8 March. */
const underFoster = (foster: string) => place('date: 2026-03-08, fostered: {BF-1: e1}', foster);

describe('where an egg lies', () => {
  it('is its own nest from the day it was laid', () => {
    expect(lastPlace(place(''))).toMatchObject({ kind: 'nest', pair: { id: 'LW-1' }, clutch: { number: 1 } });
  });

  it('is the store once it is pulled, and counts as in no nest', () => {
    const known = place('date: 2026-03-06, pulled: e1');
    expect(lastPlace(known)).toEqual({ kind: 'store' });
    expect([...pairIn(known, 'LW-1').here.eggs].map(({ ref }) => ref)).toEqual(['e2', 'e3', 'e4']);
  });

  it.each(['incubator', 'hand'] as const)('may be the %s', (kind) => {
    const known = place(`date: 2026-03-06, fostered: {${kind}: e1}`);
    expect(lastPlace(known)).toEqual({ kind });
  });

  it('is the foster’s nest, with the clutch that is sat on there', () => {
    const known = place(
      'date: 2026-03-08, fostered: {BF-1: e1}',
      'date: 2026-01-05, laid: 1\ndate: 2026-01-20, lost: {clear: 1}\ndate: 2026-03-06, laid: 2',
    );
    expect(lastPlace(known)).toMatchObject({ kind: 'nest', pair: { id: 'BF-1' }, clutch: { number: 2 } });
  });

  it('is with the guests that lie there already, from whatever pair they came: a nest is one nest', () => {
    const files = {
      P: waxbills(`${laid}\ndate: 2026-03-08, fostered: {BF-1: all}`),
      Q: journal(
        'BF-1',
        'bengalese finch',
        'date: 2026-03-04, laid: 4, sitting\ndate: 2026-03-08, lost: {removed: all}',
      ),
      R: journal('SF-1', 'star finch', 'date: 2026-03-12, laid: 2, fostered: {BF-1: all}'),
    };
    const hosts = [...pairIn(room(files, '2026-03-12'), 'BF-1').here.eggs].map(({ places }) => {
      const place = places.at(-1)?.place;
      return place?.kind === 'nest' ? (place.clutch?.number ?? null) : undefined;
    });
    expect(hosts).toEqual([1, 1, 1, 1, 1, 1]);
  });

  it('is with the youngest clutch of the foster’s that has an egg or a chick left, whatever became of the others', () => {
    const clutch = (foster: string) => {
      const place = lastPlace(underFoster(foster));
      return place?.kind === 'nest' ? (place.clutch?.number ?? null) : undefined;
    };
    const sat = 'date: 2026-02-20, laid: 2, sitting';
    expect(clutch(sat)).toBe(1);
    expect(clutch(`${sat}\ndate: 2026-03-01, lost: {broken: e1}`)).toBe(1);
    expect(clutch(`${sat}\ndate: 2026-03-01, lost: {broken: all}`)).toBeNull();
    const fed = 'date: 2026-02-10, laid: 2, sitting\ndate: 2026-02-25, hatched: 2';
    expect(clutch(`${fed}\ndate: 2026-03-01, died: c1`)).toBe(1);
    expect(clutch(`${fed}\ndate: 2026-03-01, died: all`)).toBeNull();
    expect(clutch(`${fed}\ndate: 2026-03-06, laid: 1`)).toBe(2);
  });

  it('is elsewhere with those from the store, where it was laid on the day on which all are set there', () => {
    const stored = 'date: 2026-03-01, laid: 1, pulled: 1\ndate: 2026-03-02, laid: 1, pulled: 1\n';
    const set = (entry: string, nest = 'LW-1') => {
      const known = room(
        { P: waxbills(stored + entry), Q: journal('BF-1', 'bengalese finch', 'date: 2026-02-01, paired') },
        '2026-04-01',
      );
      return [[...pairIn(known, nest).here.eggs].map(({ ref }) => ref).join(' '), ...codes(known)];
    };
    expect(set('date: 2026-03-03, laid: 1, set: {BF-1: all}')).toEqual(['']);
    expect(set('date: 2026-03-03, laid: 1, set: {BF-1: 3}', 'BF-1')).toEqual(['e1 e2 e3']);
    expect(set('date: 2026-03-03, laid: 1, set: {incubator: 2}')).toEqual(['e3']);
    // Left to the hen before that day, it is hers.
    expect(set('date: 2026-03-03, laid: 1\ndate: 2026-03-04, set: {BF-1: all}')).toEqual(['e3']);
    expect(set('date: 2026-03-03, laid: 1, set: all')).toEqual(['e3 e1 e2']);
  });

  it('is with no clutch of a foster that has none', () => {
    expect(lastPlace(place('date: 2026-03-08, fostered: {BF-1: e1}'))).toMatchObject({ clutch: null });
  });

  it('cannot be a pair that the room does not have; the nearest name is asked about', () => {
    const { findings } = place('date: 2026-03-08, fostered: {BF-2: e1}');
    expect(findings.map(({ code, args }) => [code, args.pair, args.suggestion])).toEqual([
      ['no-such-pair', 'BF-2', 'BF-1'],
    ]);
  });

  it('is the incubator or the hand where that is misspelt, or so it is asked', () => {
    const { findings } = place('date: 2026-03-08, set: {incubater: e1}');
    expect(findings.map(({ args }) => args.suggestion)).toEqual(['incubator']);
    const hand = place('date: 2026-03-08, fostered: {hnad: e1}').findings;
    expect(hand.map(({ args }) => args.suggestion)).toEqual(['hand']);
  });

  it('is never its own nest again by mistake: fostering a count to itself is an error', () => {
    expect(codes(place('date: 2026-03-08, fostered: {LW-1: 2}'))).toEqual(['fostered-to-itself']);
  });
});

describe('where a chick lives', () => {
  it('is the housing and the nest of the pair that feeds it', () => {
    const known = place('date: 2026-03-18, hatched: 2\ndate: 2026-03-20, fostered: {BF-1: c1}');
    expect(birdIn(known, 'LW-1/1/c1').stays.at(-1)).toMatchObject({
      housing: 'cage 4',
      nest: { id: 'BF-1' },
    });
    expect([...pairIn(known, 'BF-1').guests].map(({ id }) => id)).toEqual(['LW-1/1/c1']);
  });

  it('comes home from the hand by count or all together, and its own pair feeds it again', () => {
    const hand = `date: 2026-03-05, laid: 3, sitting\ndate: 2026-03-18, hatched: 3\ndate: 2026-03-20, fostered: {hand: [c1, c2]}\n`;
    const home = (entry: string) => {
      const known = room(
        { P: waxbills(`${hand}date: 2026-03-22, fostered: {LW-1: ${entry}}`) },
        '2026-03-22',
      );
      return [pairIn(known, 'LW-1').here.young.size, codes(known)];
    };
    expect(home('all')).toEqual([3, []]);
    expect(home('1')).toEqual([2, []]);
  });

  it('is with its keeper when it is fed by hand: no pair feeds it, and its own journal goes on telling of it', () => {
    const known = place(
      'date: 2026-03-18, hatched: 2\ndate: 2026-03-20, fostered: {hand: c1}\ndate: 2026-04-01, died: c1',
    );
    const chick = birdIn(known, 'LW-1/1/c1');
    expect(chick.stays.at(-1)).toMatchObject({ housing: 'hand', nest: null });
    expect(chick.fate?.kind).toBe('died');
    expect([...pairIn(known, 'LW-1').here.young].map(({ ref }) => ref)).toEqual(['c2']);
  });

  it('is with its own clutch again when it comes home', () => {
    const known = place(
      'date: 2026-03-18, hatched: 2\ndate: 2026-03-20, fostered: {BF-1: c1}',
      'date: 2026-03-25, fostered: {LW-1: LW-1/1/c1}',
    );
    expect(birdIn(known, 'LW-1/1/c1').stays.at(-1)).toMatchObject({
      nest: { id: 'LW-1' },
      clutch: { number: 1 },
    });
    expect(pairIn(known, 'BF-1').here.young.size).toBe(0);
  });
});

describe('young that were with other pairs', () => {
  const given = `${laid}\ndate: 2026-03-18, hatched: 4\ndate: 2026-03-20, fostered: {BF-1: [c3, c4]}`;
  const homeOf = (log: string, foster = '', more: Record<string, string> = {}) => {
    const files = { P: waxbills(`${given}\n${log}`), Q: journal('BF-1', 'bengalese finch', foster), ...more };
    const known = room(files, '2026-03-24');
    return [[...pairIn(known, 'LW-1').here.young].map(({ ref }) => ref).sort(), codes(known)];
  };
  const all = [['c1', 'c2', 'c3', 'c4'], []];

  it('come home by count or all together, whichever of the two journals tells it', () => {
    for (const who of ['2', 'all']) {
      expect(homeOf(`date: 2026-03-24, fostered: {LW-1: ${who}}`)).toEqual(all);
      expect(homeOf(`date: 2026-03-24, clutch: 1, fostered: {LW-1: ${who}}`)).toEqual(all);
      expect(homeOf('', `date: 2026-03-24, fostered: {LW-1: ${who}}`)).toEqual(all);
    }
  });

  it('come home once where both journals tell it, and those with a third pair stay there', () => {
    const told = 'date: 2026-03-24, fostered: {LW-1: 2}';
    expect(homeOf(told, told)).toEqual(all);
    const third = { R: journal('BF-2', 'bengalese finch', 'date: 2026-03-01, paired') };
    const one = 'date: 2026-03-21, fostered: {BF-2: LW-1/1/c4}\ndate: 2026-03-24, fostered: {LW-1: 1}';
    expect(homeOf('date: 2026-03-24, fostered: {LW-1: 1}', one, third)).toEqual([['c1', 'c2', 'c3'], []]);
  });

  it('or in the hand are asked about where a count may mean either; those in the hand are taken first', () => {
    const some = (who: string) =>
      homeOf(`date: 2026-03-22, fostered: {hand: c1}\ndate: 2026-03-24, fostered: {LW-1: ${who}}`);
    expect(some('1')).toEqual([['c1', 'c2'], ['guessed']]);
    expect(some('3')).toEqual(all);
    expect(some('4')).toEqual([['c1', 'c2', 'c3', 'c4'], ['too-many']]);
  });

  it('go home rather than the foster parents’ own young go there, and it is asked about', () => {
    const own =
      'date: 2026-03-04, laid: 2, sitting\ndate: 2026-03-20, hatched: 2\ndate: 2026-03-24, fostered:';
    expect(homeOf('', `${own} {LW-1: 2}`)).toEqual([['c1', 'c2', 'c3', 'c4'], ['guessed']]);
  });
});

describe('eggs that were with another pair', () => {
  it('come home by count, told in their own journal', () => {
    const known = place('date: 2026-03-06, fostered: {BF-1: all}\ndate: 2026-03-08, fostered: {LW-1: 3}');
    expect(pairIn(known, 'LW-1').here.eggs.size).toBe(3);
    expect(codes(known)).toEqual([]);
  });

  it('come home without those that lie in the cool store, and without those that are lost', () => {
    const away =
      'date: 2026-03-06, pulled: e1\ndate: 2026-03-06, fostered: {BF-1: [e2, e3]}\ndate: 2026-03-07, lost: {broken: e3}';
    const home = place(`${away}\ndate: 2026-03-08, fostered: {LW-1: all}`);
    expect([...pairIn(home, 'LW-1').here.eggs].map(({ ref }) => ref).sort()).toEqual(['e2', 'e4']);
    expect(codes(home)).toEqual([]);
    expect(codes(place(`${away}\ndate: 2026-03-08, fostered: {LW-1: 2}`))).toEqual(['too-many']);
  });

  it('are what a count means while all the young are in the hand, and not once one is in the nest', () => {
    const hand = 'date: 2026-03-18, hatched: 2\ndate: 2026-03-19, fostered: {hand: [c1, c2]}';
    const given = (log: string) => {
      const { eggs, young } = pairIn(place(`${log}\ndate: 2026-03-20, fostered: {BF-1: 2}`), 'BF-1').here;
      return [...eggs, ...young].map(({ ref }) => ref);
    };
    expect(given(hand)).toEqual(['e3', 'e4']);
    expect(given(`${hand}\ndate: 2026-03-19, lost: {clear: [e3, e4]}`)).toEqual(['c1', 'c2']);
    expect(given('date: 2026-03-18, hatched: 2')).toEqual(['c1', 'c2']);
  });

  it('are not what a count means while chicks out of the incubator wait for parents, and are again where those stayed in the hand', () => {
    const hatchery =
      'date: 2026-03-06, set: {incubator: all}\ndate: 2026-03-14, laid: 2\ndate: 2026-03-18, hatched: 4, clutch: 1';
    const given = (on: string, who: string) => {
      const { eggs, young } = pairIn(
        place(`${hatchery}\ndate: ${on}, fostered: {BF-1: ${who}}`),
        'BF-1',
      ).here;
      return [...eggs, ...young].map(({ ref }) => ref);
    };
    expect(given('2026-03-23', 'all')).toEqual(['c1', 'c2', 'c3', 'c4']);
    expect(given('2026-03-19', '2')).toEqual(['c1', 'c2']);
    expect(given('2026-03-24', '2')).toEqual(['e1', 'e2']);
    // Those that had parents and are in the hand again wait for none.
    const back =
      'date: 2026-03-19, fostered: {BF-1: all}\ndate: 2026-03-20, fostered: {hand: [1/c1, 1/c2, 1/c3, 1/c4]}';
    const known = place(`${hatchery}\n${back}\ndate: 2026-03-21, fostered: {BF-1: 2}`);
    expect([...pairIn(known, 'BF-1').here.eggs].map(({ ref }) => ref)).toEqual(['e1', 'e2']);
  });
});

describe('what its own pair’s journal tells of an egg or chick that another pair has', () => {
  const told = (own: string, foster: string) =>
    place(`date: 2026-03-08, fostered: {BF-1: e1}\n${own}`, foster);
  const hatched = (foster: string, own = 'date: 2026-03-20, hatched: e1') => {
    const { hatched } = birdIn(told(own, foster), 'LW-1/1/c1');
    return hatched && days(hatched);
  };

  it('happened after the last look into that nest, not into its own', () => {
    expect(hatched('date: 2026-03-06, laid: 2, sitting\ndate: 2026-03-17, checked')).toBe('03-18…03-20');
    expect(
      hatched('date: 2026-03-06, laid: 2', 'date: 2026-03-19, checked\ndate: 2026-03-20, hatched: e1'),
    ).toBe('03-08…03-20');
  });

  it('happened since the day that the entry itself tells', () => {
    expect(hatched('date: 2026-03-17, checked', 'date: 2026-03-20, after: 2026-03-18, hatched: e1')).toBe(
      '03-19…03-20',
    );
  });

  it('did not happen before it came there', () => {
    expect(hatched('date: 2026-03-01, checked')).toBe('03-08…03-20');
  });

  it('did not happen before it came to the last of the nests in which it was', () => {
    const log = 'date: 2026-03-06, fostered: {incubator: e1}\ndate: 2026-03-14, fostered: {BF-1: e1}';
    const { hatched } = birdIn(place(`${log}\ndate: 2026-03-20, hatched: e1`), 'LW-1/1/c1');
    expect(hatched && days(hatched)).toBe('03-14…03-20');
  });

  it('happened since it came there, where nobody looked in before: who brought it saw that nest', () => {
    expect(hatched('')).toBe('03-08…03-20');
    const there = told('', 'date: 2026-03-20, hatched: LW-1/1/e1\ndate: 2026-03-24, died: LW-1/1/c1');
    const { fate } = birdIn(there, 'LW-1/1/c1');
    expect(fate?.kind === 'died' && days(fate.span)).toBe('03-21…03-24');
  });

  it('is so of eggs that were lost, and of chicks that died', () => {
    const looked = 'date: 2026-03-06, laid: 2, sitting\ndate: 2026-03-17, checked\ndate: 2026-03-22, checked';
    const { fate } = eggIn(told('date: 2026-03-20, lost: {dead-in-shell: e1}', looked), 'LW-1/1/e1');
    expect(fate && days(fate.span)).toBe('03-18…03-20');
    const chick = birdIn(
      told('date: 2026-03-18, hatched: e1\ndate: 2026-03-25, died: c1', looked),
      'LW-1/1/c1',
    );
    expect(chick.fate?.kind === 'died' && days(chick.fate.span)).toBe('03-23…03-25');
  });
});

describe('a pair with two nests', () => {
  const hatched = (log: string) => {
    const { hatched } = birdIn(room({ P: waxbills(log) }, '2026-04-01'), 'LW-1/1/c1');
    return hatched && days(hatched);
  };
  const right = 'date: 2026-03-18, site: right, nest: lined, checked';

  it('has young that hatched since the last look into theirs, though their line does not say which', () => {
    const left = 'date: 2026-03-05, site: left, laid: 4, sitting';
    for (const line of ['hatched: 3', 'site: left, hatched: 3', 'clutch: 1, hatched: 3'])
      expect(hatched(`${left}\n${right}\ndate: 2026-03-20, ${line}`), line).toBe('03-06…03-20');
    const looked = 'date: 2026-03-17, site: left, checked';
    expect(hatched(`${left}\n${looked}\n${right}\ndate: 2026-03-20, hatched: 3`)).toBe('03-18…03-20');
  });

  it('of which nobody said in which the eggs lie, until it is said where they hatched', () => {
    const laid = `date: 2026-03-05, laid: 4, sitting\n${right}`;
    expect(hatched(`${laid}\ndate: 2026-03-20, hatched: 3`)).toBe('03-19…03-20');
    expect(hatched(`${laid}\ndate: 2026-03-20, site: left, hatched: 3`)).toBe('03-06…03-20');
  });
});

it('young that are told to have hatched in a nest that nobody had looked into hatched on that day', () => {
  const known = room(
    { P: waxbills('date: 2026-03-05, sitting\ndate: 2026-03-18, hatched: 3') },
    '2026-04-01',
  );
  const { hatched } = birdIn(known, 'LW-1/1/c1');
  expect(hatched && days(hatched)).toBe('03-18');
});

it('a chick that was only put into another cage that morning goes to the foster parents with the others', () => {
  const log = `date: 2026-03-18, hatched: 3\ndate: 2026-03-25, time: 08:00, moved: {c1: cage 9}
    date: 2026-03-25, time: 10:00, fostered: {BF-1: all}`;
  expect(pairIn(place(log), 'BF-1').here.young.size).toBe(3);
});

it('eggs that come to a pair whose own wait in store lie in the clutch that it sits on', () => {
  const files = {
    P: waxbills(`date: 2026-03-05, laid: 4, sitting\ndate: 2026-03-10, lost: {broken: e1}
      date: 2026-03-12, pulled: [e2, e3, e4]`),
    Q: journal('BF-1', 'bengalese finch', 'date: 2026-03-15, laid: 3\ndate: 2026-03-20, fostered: {LW-1: 2}'),
  };
  const known = room(files, '2026-03-21');
  expect(clutchIn(known, 'BF-1/1').eggs.map((egg) => hostClutch(egg)?.pair.id)).toEqual([
    'LW-1',
    'LW-1',
    'BF-1',
  ]);
});
