import { describe, expect, it } from 'vitest';
import { room } from '../rooms.ts';
import { birdIn, clutchIn, codes, days, eggIn, fates, journal, pairIn, waxbills } from './facts.ts';
import { at, clutches, hatched, laid } from './waxbill-log.ts';

describe('whom a look finds', () => {
  const eggs = 'date: 2026-03-05, laid: 5, sitting: hen';
  const looks = ['checked: {eggs: 3, chicks: 2}', 'checked: {chicks: 2+}'];

  it('can be named in whatever else is told of that day', () => {
    for (const look of looks) {
      const named = at(
        `${eggs}\ndate: 2026-03-24, ${look}, ringed: {c1: "014", c2: "015"}, weighed: {c2: 4.1}`,
      );
      expect(clutchIn(named, 'LW-1/1').chicks.map(({ ring }) => ring)).toEqual(['014', '015']);
      expect(birdIn(named, 'LW-1/1/c2').weights).toMatchObject([{ grams: 4.1 }]);
      expect(codes(named)).toEqual(['counted-as-hatched']);
    }
  });

  it('can be named in another entry of that day', () => {
    const named = `${eggs}\ndate: 2026-03-24, aged: {6: [c1, c2]}\ndate: 2026-03-24, time: 07:30, checked: {chicks: 2}`;
    expect([hatched(named), hatched(named, 'LW-1/1/c2')]).toEqual(['03-18', '03-18']);
    expect(codes(at(named))).toEqual(['counted-as-hatched']);
  });

  it('are eggs, too: a nest that was found is told of in one line', () => {
    const found = 'date: 2026-03-12, checked: {eggs: 3}, candled: {fertile: [e1, e2], clear: e3}';
    expect(clutchIn(at(found), 'LW-1/1').eggs.map(({ lamp }) => lamp[0]?.saw)).toEqual([
      'fertile',
      'fertile',
      'clear',
    ]);
    expect(codes(at(found))).toEqual(['counted-as-laid']);
    const grown = 'date: 2026-03-05, laid: 2\ndate: 2026-03-06, checked: {eggs: 3}, weighed: {e3: 1.1}';
    expect(eggIn(at(grown), 'LW-1/1/e3').weights).toMatchObject([{ grams: 1.1 }]);
  });

  it('is nobody more than it counted', () => {
    const third = at(`${eggs}\ndate: 2026-03-24, checked: {chicks: 2}, weighed: {c3: 4.1}`);
    expect(clutchIn(third, 'LW-1/1').chicks).toHaveLength(2);
    expect(codes(third)).toEqual(['counted-as-hatched', 'no-such-chick']);
  });

  it('is found once: a count that does not agree is not told twice, whatever else names them', () => {
    const six = at(
      `${eggs}\ndate: 2026-03-24, checked: {eggs: 1, chicks: 5}, ringed: {c1: "014", c2: "015"}`,
    );
    expect(codes(six)).toEqual(['counts-differ', 'counted-as-hatched']);
    expect(clutchIn(six, 'LW-1/1').mismatches).toHaveLength(1);
  });

  it('is not known before its turn where one came or went that day: it counted what was left', () => {
    const lost = at(`${eggs}\ndate: 2026-03-24, checked: {chicks: 2}, weighed: {c1: 4.1}, died: {thrown: 1}`);
    expect(clutchIn(lost, 'LW-1/1').chicks.map(({ fate }) => fate?.kind ?? 'open')).toEqual([
      'died',
      'open',
      'open',
    ]);
  });

  it('is in the nest of which the look tells', () => {
    const two = 'date: 2026-03-01, site: left, laid: 4\ndate: 2026-03-02, site: right, laid: 4';
    const named = at(`${two}\ndate: 2026-03-18, site: right, checked: {chicks: 1}, weighed: {c1: 2.1}`);
    expect(birdIn(named, 'LW-1/2/c1').weights).toMatchObject([{ grams: 2.1 }]);
    expect(codes(named)).toEqual(['counted-as-hatched']);
    const pinned = at(`${two}\ndate: 2026-03-18, clutch: 2, checked: {chicks: 1}, weighed: {c1: 2.1}`);
    expect(codes(pinned)).toEqual(['counted-as-hatched']);
  });
});

describe('whoever is named in a nest that nobody counted', () => {
  const rings = 'ringed: {c1: "014", c2: "015", c3: "016"}';
  const ringsOf = (log: string) => clutchIn(at(log), 'LW-1/1').chicks.map(({ ring }) => ring);

  it('is one of its eggs, and so are all before it', () => {
    const log = 'date: 2026-03-01, sitting\ndate: 2026-03-06, candled: {fertile: [e1, e2, e3], clear: e4}';
    expect(clutches(log, '2026-03-07')).toEqual(['1: 4+ eggs, 0+ chicks']);
    expect(codes(at(log))).toEqual([]);
    // Lavender waxbills lay five at the most; of eggs that were counted there are no more.
    expect(codes(at('date: 2026-03-01, sitting\ndate: 2026-03-06, candled: {fertile: e6}'))).toEqual([
      'no-such-egg',
    ]);
    expect(codes(at('date: 2026-03-01, laid: 3\ndate: 2026-03-06, candled: {fertile: e4}'))).toEqual([
      'no-such-egg',
    ]);
  });

  it.each([
    'candled: {fertile: 3, clear: 1}',
    'fostered: {BF-1: 4}',
    'set: {incubator: 4}',
    'pulled: 4',
    'aged: {6: 4}',
    'pipped: 4',
  ])('is counted: eggs that were only seen to be sat on are as many as %s tells', (told) => {
    const files = {
      P: waxbills(`date: 2026-03-01, sitting\ndate: 2026-03-09, ${told}`),
      Q: journal('BF-1', 'bengalese finch', 'date: 2026-03-01, laid: 4, sitting'),
    };
    const known = room(files, '2026-03-09');
    expect(codes(known)).toEqual([]);
    expect(clutchIn(known, 'LW-1/1').eggs).toHaveLength(4);
  });

  it('is one of the young that were heard there, whether their eggs were counted or not', () => {
    for (const begun of ['date: 2026-03-01, sitting', 'date: 2026-03-05, laid: 5, sitting']) {
      const log = `${begun}\ndate: 2026-03-18, heard\ndate: 2026-03-25, ${rings}`;
      expect(ringsOf(log), begun).toEqual(['014', '015', '016']);
      expect(
        codes(at(log)).filter((code) => code !== 'counted-as-hatched'),
        begun,
      ).toEqual([]);
    }
  });

  it('is asked about where nothing that day tells of those whom its number passes over', () => {
    const heard = 'date: 2026-03-01, sitting\ndate: 2026-03-18, heard';
    const told = (log: string) => codes(at(`${heard}\n${log}`));
    expect(told('date: 2026-03-25, weighed: {c1: 4.1, c2: 4.2, c5: 4.3}')).toEqual(['counted-as-hatched']);
    expect(told('date: 2026-03-25, died: c3')).toEqual(['counted-as-hatched']);
    expect(told('date: 2026-03-25, weighed: {c3: 4.1, c2: 4.2, c1: 4.3}')).toEqual([]);
    expect(told('date: 2026-03-25, crops: {full: c3}\ndate: 2026-03-25, ringed: {c2: "015"}')).toEqual([]);
    expect(told('date: 2026-03-25, died: c3, checked: {chicks: 2}')).toEqual([]);
    const lamp = (saw: string) => codes(at(`date: 2026-03-01, sitting\ndate: 2026-03-06, candled: {${saw}}`));
    expect(lamp('fertile: [e1, e4]')).toEqual(['counted-as-laid']);
    expect(lamp('fertile: [e1, e4], clear: [e2, e3]')).toEqual([]);
  });

  it('is none of eggs that are too young to have hatched as a rule: whoever saw it says so', () => {
    const eggs = 'date: 2026-03-05, laid: 1\ndate: 2026-03-06, laid: 1\ndate: 2026-03-07, laid: 1, sitting';
    expect(codes(at(`${eggs}\ndate: 2026-03-14, weighed: {c1: 4.1}`))).toEqual(['no-such-chick']);
    // Lavender waxbills sit from the third egg on, eleven days at the least.
    expect(codes(at(`${eggs}\ndate: 2026-03-17, weighed: {c1: 4.1}`))).toEqual(['no-such-chick']);
    expect(codes(at(`${eggs}\ndate: 2026-03-18, weighed: {c1: 4.1}`))).toEqual(['counted-as-hatched']);
    expect(codes(at(`${eggs}\ndate: 2026-03-14, hatched: 1, weighed: {c1: 0.8}`))).toEqual([]);
  });

  it('begins a brood that is asked about once, and none where a look of that day found eggs', () => {
    const named = (log: string) => codes(at(`${log}\ndate: 2026-03-25, weighed: {c1: 4.1, c2: 4.2}`));
    for (const before of ['date: 2026-03-01, paired', 'date: 2026-03-12, sitting'])
      expect(named(before), before).toEqual(['counted-as-hatched']);
    const eggs = 'date: 2026-03-12, sitting\ndate: 2026-03-25, checked: {eggs: 4}';
    expect(named(eggs)).toEqual(['no-such-chick', 'no-such-chick']);
  });

  it('is not more by the one that is found dead: its brothers stand for those who may be there still', () => {
    const log =
      'date: 2026-03-18, heard\ndate: 2026-03-25, crops: {full: [c1, c2, c3, c4]}\ndate: 2026-03-26, died: 1';
    expect(clutches(log)).toEqual(['1: 4+ eggs, 4+ chicks']);
    expect(clutches(`${log}\ndate: 2026-04-05, fledged: 4`)).toEqual(['1: 5+ eggs, 5+ chicks']);
  });

  it('in the hand hatched there, though nobody wrote of eggs or of hatching', () => {
    for (const begun of ['date: 2026-03-01, paired', 'date: 2026-03-05, laid: 5, sitting']) {
      const log = `${begun}\ndate: 2026-03-25, ${rings}`;
      expect(ringsOf(log), begun).toEqual(['014', '015', '016']);
      // Nobody counted them: a fourth may leave the nest.
      expect(clutches(`${log}\ndate: 2026-04-06, fledged: 4`), begun).toContainEqual(
        expect.stringContaining('4+ chicks'),
      );
      expect(
        codes(at(`${log}\ndate: 2026-04-06, fledged: all`)).filter((code) => code !== 'counted-as-hatched'),
        begun,
      ).toEqual([]);
    }
  });

  it('is of the brood in the nest where one of that number has long flown', () => {
    const first =
      'date: 2026-03-20, heard\ndate: 2026-03-28, ringed: {c1: "1A", c2: "1B"}\ndate: 2026-04-05, fledged: 2';
    const second =
      'date: 2026-04-14, sitting\ndate: 2026-04-20, candled: {fertile: [e1, e2]}\ndate: 2026-05-02, heard';
    const log = `${first}\n${second}\ndate: 2026-05-10, ringed: {c1: "2A", c2: "2B"}`;
    expect(clutchIn(at(log), 'LW-1/2').chicks.map(({ ring }) => ring)).toEqual(['2A', '2B']);
    expect(codes(at(log))).toEqual([]);
    const counted = `${first}\ndate: 2026-04-16, laid: 4\ndate: 2026-05-10, checked: {chicks: 2}, ringed: {c1: "2A", c2: "2B"}`;
    expect(clutchIn(at(counted), 'LW-1/2').chicks.map(({ ring }) => ring)).toEqual(['2A', '2B']);
  });

  it('cannot be there where chicks were counted, where no egg can have hatched, nor in no nest at all', () => {
    const third = (log: string) => codes(at(`${log}, ringed: {c3: "016"}`));
    expect(
      third('date: 2026-03-05, laid: 5, sitting\ndate: 2026-03-18, hatched: 2\ndate: 2026-03-25'),
    ).toEqual(['no-such-chick']);
    expect(third('date: 2026-03-22, laid: 1\ndate: 2026-03-25')).toEqual(['no-such-chick']);
    expect(codes(at('date: 2026-03-25, sexed: {hen: c3}'))).toEqual(['no-such-chick']);
  });
});

describe('one found dead on the day on which others were in the hand', () => {
  const brood = 'date: 2026-03-05, laid: 5, sitting\ndate: 2026-03-18, hatched: 4';
  const dead = (log: string) =>
    clutchIn(at(`${brood}\n${log}`), 'LW-1/1').chicks.flatMap(({ ref, fate }) =>
      fate?.kind === 'died' ? ref : [],
    );

  it('is none of those that got a ring, were weighed or showed a crop', () => {
    expect(dead('date: 2026-03-25, ringed: {c1: "014", c2: "015", c3: "016"}, died: 1')).toEqual(['c4']);
    expect(dead('date: 2026-03-25, weighed: {c1: 4.1, c2: 4.2}, died: {thrown-out: 1}')).toEqual(['c3']);
    expect(dead('date: 2026-03-25, crops: {full: [c1, c2, c4]}, died: 1')).toEqual(['c3']);
    // Of those that nobody held that day, one with an empty crop the day before is likelier than its sisters.
    expect(dead('date: 2026-03-24, crops: {full: c1, empty: c2}\ndate: 2026-03-25, died: 1')).toEqual(['c2']);
    expect(dead('date: 2026-03-24, weighed: {c1: 4.1}\ndate: 2026-03-25, died: 1')).toEqual(['c1']);
    expect(dead('date: 2026-03-25, ringed: {c1: "014", c2: "015", c3: "016", c4: "017"}, died: 1')).toEqual([
      'c1',
    ]);
  });

  it('lay in the nest rather than that it flew', () => {
    expect(
      dead('date: 2026-04-05, fledged: [c1, c2]\ndate: 2026-04-06, weighed: {c3: 7, c4: 7}, died: 1'),
    ).toEqual(['c3']);
  });
});

describe('a look that counts', () => {
  const five = 'date: 2026-03-05, laid: 5, sitting';
  const brood = `${five}\ndate: 2026-03-18, hatched: [e1, e2, e3]`;
  const differs = (log: string) =>
    pairIn(at(log), 'LW-1').clutches.flatMap(({ mismatches }) =>
      mismatches.map(({ what, known, seen }) => `${what}: ${known} known, ${seen} seen`),
    );

  it('and finds more eggs while the hen lays: they are laid', () => {
    const log = 'date: 2026-03-05, laid: 2\ndate: 2026-03-07, checked: {eggs: 4}';
    expect(clutches(log)).toEqual(['1: 4 eggs, 0 chicks']);
    expect(at(log).findings).toMatchObject([{ code: 'counted-as-laid', args: { count: 2, clutch: 1 } }]);
    expect(clutchIn(at(log), 'LW-1/1').eggs.map(({ assumed }) => assumed)).toEqual([
      false,
      false,
      true,
      true,
    ]);
  });

  it('and finds more eggs when she lays no more: it does not agree, unless the eggs were never counted', () => {
    expect(differs(`${five}\ndate: 2026-03-14, checked: {eggs: 6}`)).toEqual(['eggs: 5 known, 6 seen']);
    expect(clutches('date: 2026-03-05, laid: 3+\ndate: 2026-03-14, checked: {eggs: 5}')).toEqual([
      '1: 5+ eggs, 0 chicks',
    ]);
  });

  it('and finds eggs where none were known: they are a clutch, unless they may be lost ones of the last', () => {
    const seen = (on: string) => `date: ${on}, checked: {eggs: 4}`;
    expect(clutches(seen('2026-03-14'))).toEqual(['1: 4 eggs, 0 chicks']);
    expect(codes(at(seen('2026-03-14')))).toEqual(['counted-as-laid']);
    // As with any eggs of a first look, nobody knows how old they are.
    expect(laid(seen('2026-03-14'))).toBe(laid('date: 2026-03-14, laid: 4'));
    // Twice the longest sitting of 13 d, and a fortnight: 40 days.
    const lost = 'date: 2026-03-05, laid: 1\ndate: 2026-03-06, lost: {missing: e1}';
    expect(codes(at(`${lost}\n${seen('2026-04-14')}`))).toEqual(['counts-differ']);
    expect(codes(at(`${lost}\n${seen('2026-04-15')}`))).toEqual(['counted-as-laid']);
    expect(clutches(`${lost}\n${seen('2026-04-15')}`)).toHaveLength(2);
  });

  it('and finds a clutch where young flew that nobody counted: it is the next, unless they can be eggs left over', () => {
    const flown = 'date: 2026-03-20, heard\ndate: 2026-04-05, fledged: 3';
    // Lavender waxbills lay five at the most.
    expect(clutches(`${flown}\ndate: 2026-04-14, checked: {eggs: 4}`)).toEqual([
      '1: 3+ eggs, 3+ chicks',
      '2: 4 eggs, 0 chicks',
    ]);
    expect(clutches(`${flown}\ndate: 2026-04-14, checked: {eggs: 2}`)).toEqual(['1: 5+ eggs, 3+ chicks']);
    expect(clutches(`${flown.split('\n')[0]}\ndate: 2026-03-30, checked: {chicks: 3, eggs: 3}`)).toHaveLength(
      1,
    );
  });

  it('once finds some that nobody counted: they may be as old as any clutch that is found', () => {
    expect(laid('date: 2026-03-14, laid: some')).toBe('03-01…03-14');
    expect(laid('date: 2026-03-14, laid: 1')).toBe('03-14');
  });

  it('and finds fewer: it does not agree; at least so many, or about, may', () => {
    expect(differs(`${five}\ndate: 2026-03-14, checked: {eggs: 4}`)).toEqual(['eggs: 5 known, 4 seen']);
    expect(differs(`${five}\ndate: 2026-03-14, checked: {eggs: 4+}`)).toEqual([]);
    expect(differs(`${five}\ndate: 2026-03-14, checked: {eggs: 6+}`)).toEqual(['eggs: 5 known, 6 seen']);
    expect(differs(`${five}\ndate: 2026-03-14, checked: {eggs: ~4}`)).toEqual([]);
    expect(differs(`${five}\ndate: 2026-03-14, checked: {eggs: ~6}`)).toEqual([]);
    expect(differs(`${five}\ndate: 2026-03-14, checked: {eggs: ~3}`)).toEqual(['eggs: 5 known, 3 seen']);
    expect(differs(`${brood}\ndate: 2026-03-22, checked: {chicks: 2}`)).toEqual(['chicks: 3 known, 2 seen']);
    expect(differs(`${brood}\ndate: 2026-03-22, checked: {chicks: 2+}`)).toEqual([]);
    expect(differs(`${brood}\ndate: 2026-03-22, checked: {chicks: ~1}`)).toEqual(['chicks: 3 known, 1 seen']);
  });

  it('and finds chicks of which nobody wrote: they are a brood, unless the last one may still be there', () => {
    const seen = (on: string) => `date: ${on}, checked: {chicks: 3}`;
    expect(clutches(seen('2026-03-20'))).toEqual(['1: 3+ eggs, 3+ chicks']);
    expect(codes(at(seen('2026-03-20')))).toEqual([]);
    // 13 d at the longest (species profile) and a fortnight: 27 days.
    const lost = 'date: 2026-03-05, laid: 1\ndate: 2026-03-06, lost: {broken: e1}';
    expect(codes(at(`${lost}\n${seen('2026-04-01')}`))).toEqual(['counts-differ']);
    expect(clutches(`${lost}\n${seen('2026-04-02')}`)).toHaveLength(2);
    // Fledglings that come back to sleep are counted too.
    expect(clutches(`${brood}\ndate: 2026-04-06, fledged: all\n${seen('2026-04-08')}`)).toHaveLength(1);
  });

  it('and agrees: nothing is said', () => {
    expect(codes(at(`${five}\ndate: 2026-03-14, checked: {eggs: 5}`))).toEqual([]);
    expect(codes(at(`${brood}\ndate: 2026-03-22, checked: {eggs: 2, chicks: 3}`))).toEqual([]);
    expect(codes(at(`${five}\ndate: 2026-03-14, checked`))).toEqual([]);
  });

  it('and finds more chicks: they hatched since the last look, the fertile eggs first', () => {
    const log = `${five}\ndate: 2026-03-12, candled: {clear: e1, fertile: [e3, e4]}\ndate: 2026-03-18, checked: {chicks: 3}`;
    expect(fates(clutchIn(at(log), 'LW-1/1'))).toEqual([
      'e1 open',
      'e2 hatched',
      'e3 hatched',
      'e4 hatched',
      'e5 open',
    ]);
    expect(hatched(log)).toBe('03-13…03-18');
    expect(at(log).findings.map(({ code, args }) => `${code} ${args.who}`)).toEqual([
      'counted-as-hatched e3, e4, e2',
    ]);
  });

  it('and finds more chicks than eggs that can have hatched: it does not agree', () => {
    expect(differs(`${brood}\ndate: 2026-03-22, checked: {chicks: 6}`)).toEqual(['chicks: 3 known, 6 seen']);
    expect(clutches(`${brood}\ndate: 2026-03-22, checked: {chicks: 6}`)).toEqual(['1: 5 eggs, 5 chicks']);
    expect(differs('date: 2026-03-05, laid: 1\ndate: 2026-03-08, checked: {chicks: 1}')).toEqual([]);
    expect(codes(at('date: 2026-03-05, laid: 1\ndate: 2026-03-08, checked: {chicks: 1}'))).toEqual([
      'counts-differ',
    ]);
  });

  it('counts those in the nest: who has left it is none of them', () => {
    const out = `${brood}\ndate: 2026-04-06, fledged: c1`;
    expect(codes(at(`${out}\ndate: 2026-04-07, checked: {chicks: 2}`))).toEqual([]);
    expect(differs(`${out}\ndate: 2026-04-07, checked: {chicks: 1}`)).toEqual(['chicks: 2 known, 1 seen']);
  });

  it('of a clutch never counted finds as many chicks as it finds', () => {
    const log = 'date: 2026-04-01, heard\ndate: 2026-04-04, checked: {chicks: 3}';
    expect(clutches(log)).toEqual(['1: 3+ eggs, 3+ chicks']);
    expect(codes(at(log))).toEqual([]);
  });

  it('is kept with its day in the clutch that it was about', () => {
    const log = `${five}\ndate: 2026-03-14, clutch: 1, checked: {eggs: 4}`;
    expect(clutchIn(at(log), 'LW-1/1').mismatches.map(({ day }) => days({ from: day, to: day }))).toEqual([
      '03-14',
    ]);
    expect(at(log).findings[0]?.args).toEqual({ what: 'eggs', known: 5, seen: 4, pair: 'LW-1' });
  });
});
