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
    const both = [1, 2].map(
      (clutch) => `date: 2026-03-18, clutch: ${clutch}, checked: {chicks: 1}, weighed: {c1: 2.${clutch}}`,
    );
    const weights = (name: string) => birdIn(at([two, ...both].join('\n')), name).weights;
    expect([...weights('LW-1/1/c1'), ...weights('LW-1/2/c1')].map(({ grams }) => grams)).toEqual([2.1, 2.2]);
  });

  it('is in the nest of which the look tells, be it the second or third that was found that day', () => {
    const found = 'checked: {eggs: 3}, candled: {fertile: e1, clear: e2}';
    const two = {
      P: waxbills(
        `date: 2026-03-24, clutch: 1, site: left, ${found}\ndate: 2026-03-24, clutch: 2, site: right, ${found}`,
      ),
      Q: journal('LW-2', 'lavender waxbill', `date: 2026-03-24, ${found}`),
    };
    const known = room(two, '2026-07-01');
    for (const name of ['LW-1/1', 'LW-1/2', 'LW-2/1'])
      expect(
        clutchIn(known, name).eggs.map(({ lamp }) => lamp[0]?.saw ?? '-'),
        name,
      ).toEqual(['fertile', 'clear', '-']);
  });

  it('is in the clutch that begins with it, where its number stands beside', () => {
    const found = at('date: 2026-03-05, clutch: 1, checked: {eggs: 3}, candled: {fertile: [e1, e2]}');
    expect(clutchIn(found, 'LW-1/1').eggs.map(({ lamp }) => lamp[0]?.saw)).toEqual([
      'fertile',
      'fertile',
      undefined,
    ]);
    expect(codes(found)).toEqual(['counted-as-laid']);
    const chicks = 'clutch: 1, checked: {chicks: 2}, ringed: {c1: "014", c2: "015"}';
    expect(codes(at(`date: 2026-03-25, ${chicks}`))).toEqual([]);
    const slip = at(`${eggs}\ndate: 2026-03-12, clutch: 2, checked: {eggs: 5}, candled: {clear: e1}`);
    expect(codes(slip)).toEqual(['no-such-clutch', 'no-such-egg']);
  });

  it('is nobody of whom an entry speaks that names another clutch', () => {
    const pinned = at(
      `${eggs}\ndate: 2026-03-12, clutch: 1, checked: {eggs: 4}\ndate: 2026-03-12, unwell: {c1: fluffed}`,
    );
    expect(codes(pinned)).toEqual(['counts-differ', 'no-such-chick']);
    expect(clutchIn(pinned, 'LW-1/1').mismatches).toHaveLength(1);
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
    // A hen that lost her eggs can have laid again in five days.
    const lost = 'date: 2026-03-05, laid: 1\ndate: 2026-03-06, lost: {missing: e1}';
    expect(codes(at(`${lost}\n${seen('2026-03-10')}`))).toEqual(['counts-differ']);
    expect(codes(at(`${lost}\n${seen('2026-03-11')}`))).toEqual(['counted-as-laid']);
    expect(clutches(`${lost}\n${seen('2026-03-11')}`)).toHaveLength(2);
  });

  it('and finds one more while the hen lays, though those before it were taken out into store: it is of that clutch', () => {
    const pulled = 'date: 2026-03-05, laid: 2\ndate: 2026-03-06, pulled: all';
    expect(clutches(`${pulled}\ndate: 2026-03-11, checked: {eggs: 1}`)).toEqual(['1: 3 eggs, 0 chicks']);
    expect(clutches(`${pulled}\ndate: 2026-03-12, checked: {eggs: 1}`)).toEqual([
      '1: 2 eggs, 0 chicks',
      '2: 1 eggs, 0 chicks',
    ]);
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
    const weaned = 'date: 2026-04-14, independent: all, checked: {eggs: 4}';
    expect(clutches(`${flown}\n${weaned}`)).toHaveLength(2);
    // No egg is kept in the nest for ten weeks; the last of those found is asked.
    expect(clutches(`${flown}\ndate: 2026-05-29, checked: {eggs: 2}`)).toHaveLength(2);
    const found =
      'date: 2026-03-10, sitting\ndate: 2026-03-25, checked: {chicks: 3}\ndate: 2026-04-10, fledged: all';
    expect(clutches(`${found}\ndate: 2026-04-25, checked: {eggs: 2}`)).toEqual(['1: 5+ eggs, 3+ chicks']);
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
    // Four weeks after the first egg they can still be of it.
    expect(clutches(`date: 2026-03-05, laid: 5\n${seen('2026-04-02')}`)).toEqual(['1: 5 eggs, 3 chicks']);
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

  it('and finds more chicks: it is said which eggs of those that were told they came of, wherever they were sat on', () => {
    const told = (known: ReturnType<typeof at>) =>
      known.findings.map(({ code, args }) => `${code} ${args.who ?? args.count}`);
    const grown = 'date: 2026-03-05, laid: 2, sitting\ndate: 2026-03-20, checked: {chicks: 3}';
    expect(told(at(grown, '2026-07-01', 'nest-looks: never'))).toEqual([
      'counted-as-hatched e1, e2',
      'counted-as-laid 1',
    ]);
    const under = {
      P: waxbills('date: 2026-03-05, laid: 4\ndate: 2026-03-08, set: {BF-1: all}'),
      Q: journal(
        'BF-1',
        'bengalese finch',
        'date: 2026-03-01, paired\ndate: 2026-03-22, checked: {chicks: 2}',
      ),
    };
    expect(told(room(under, '2026-07-01'))).toEqual(['counted-as-hatched LW-1/1/e1, LW-1/1/e2']);
  });

  it('and finds chicks of a second brood of which nobody saw an egg: they are all of that, and none of the first', () => {
    const first = `${five}\ndate: 2026-03-18, hatched: 4\ndate: 2026-04-06, fledged: 4, lost: {clear: e5}`;
    const second = `${first}\ndate: 2026-04-20, sitting: hen\ndate: 2026-05-03, checked: {chicks: 3}`;
    expect(clutches(second)).toEqual(['1: 5 eggs, 4 chicks', '2: 3+ eggs, 3+ chicks']);
    expect(codes(at(second))).toEqual([]);
    // Of eggs that were counted no more can have hatched.
    const counted = `${first}\ndate: 2026-04-20, laid: 4, sitting\ndate: 2026-05-03, checked: {chicks: 5}`;
    expect(clutches(counted)).toEqual(['1: 5 eggs, 4 chicks', '2: 4 eggs, 4 chicks']);
    expect(clutchIn(at(counted), 'LW-1/2').mismatches).toHaveLength(1);
  });

  it('and finds more chicks than eggs that can have hatched: it does not agree', () => {
    expect(differs(`${brood}\ndate: 2026-03-22, checked: {chicks: 6}`)).toEqual(['chicks: 5 known, 6 seen']);
    expect(clutches(`${brood}\ndate: 2026-03-22, checked: {chicks: 6}`)).toEqual(['1: 5 eggs, 5 chicks']);
    expect(differs('date: 2026-03-05, laid: 1\ndate: 2026-03-08, checked: {chicks: 1}')).toEqual([]);
    expect(codes(at('date: 2026-03-05, laid: 1\ndate: 2026-03-08, checked: {chicks: 1}'))).toEqual([
      'counts-differ',
    ]);
  });

  it('and finds more chicks than eggs that are left: the others do not agree', () => {
    const lost = 'date: 2026-03-05, laid: 2, sitting\ndate: 2026-03-08, lost: {broken: e1}';
    expect(differs(`${lost}\ndate: 2026-03-20, checked: {chicks: 2}`)).toEqual(['chicks: 1 known, 2 seen']);
    expect(clutches(`${lost}\ndate: 2026-03-20, checked: {chicks: 2}`)).toEqual(['1: 2 eggs, 1 chicks']);
    const none = 'date: 2026-03-05, sitting\ndate: 2026-03-08, lost: {missing: 4}';
    expect(clutches(`${none}\ndate: 2026-03-20, checked: {chicks: 3}`)).toEqual(['1: 4+ eggs, 0+ chicks']);
  });

  it('and finds no egg under a hen that was seen sitting: it does not agree', () => {
    expect(differs('date: 2026-03-05, checked: {eggs: 0}, sitting')).toEqual(['eggs: 1 known, 0 seen']);
  });

  it('and finds fewer chicks: it is kept with the brood, and not with the eggs beside it', () => {
    const log = `${brood}\ndate: 2026-04-06, laid: 2\ndate: 2026-04-07, checked: {chicks: 2}`;
    expect(pairIn(at(log), 'LW-1').clutches.map(({ mismatches }) => mismatches.length)).toEqual([1, 0]);
  });

  it('and counts young that should have left long ago: of those as many may be late, each brood by itself', () => {
    const late = `date: 2026-03-18, hatched: 3\n`;
    expect(differs(`${late}date: 2026-04-19, checked: {chicks: 1}`)).toEqual([]);
    expect(differs(`${late}date: 2026-04-19, checked: {chicks: 4}`)).toEqual([]);
    // The first brood would feed itself, the second is late.
    const two = `${brood}\ndate: 2026-05-01, laid: 4, sitting\ndate: 2026-05-15, hatched: 3`;
    expect(differs(`${two}\ndate: 2026-06-15, checked: {chicks: 3}`)).toEqual([]);
    expect(clutches(`${two}\ndate: 2026-06-15, checked: {chicks: 3}`)).toEqual([
      '1: 5 eggs, 3 chicks',
      '2: 4 eggs, 3 chicks',
    ]);
    // As soon as one egg of the next can have hatched, it is a chick of that.
    const next = `${brood}\ndate: 2026-04-10, laid: 1\ndate: 2026-04-14, laid: 1`;
    expect(clutches(`${next}\ndate: 2026-04-19, checked: {chicks: 1}`)[1]).toBe('2: 2 eggs, 0 chicks');
    expect(clutches(`${next}\ndate: 2026-04-21, checked: {chicks: 1}`)[1]).toBe('2: 2 eggs, 1 chicks');
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

describe('a look without a time, on a day on which some were taken out', () => {
  const five = 'date: 2026-03-05, laid: 5, sitting';
  const brood = `${five}\ndate: 2026-03-18, hatched: [e1, e2, e3, e4]`;
  const differs = (log: string) => codes(at(log));

  it('may have counted them still', () => {
    for (const eggs of [4, 5])
      expect(differs(`${five}\ndate: 2026-03-12, pulled: e1, checked: {eggs: ${eggs}}`)).toEqual([]);
    for (const chicks of [3, 4])
      expect(
        differs(`${brood}\ndate: 2026-03-24, fostered: {hand: c1}, checked: {chicks: ${chicks}}`),
      ).toEqual([]);
    expect(differs(`${five}\ndate: 2026-03-12, pulled: e1, checked: {eggs: 3}`)).toEqual(['counts-differ']);
  });

  it('may have counted an egg that was thrown out after it, and the living beside one found dead', () => {
    const lamp = `${five}\ndate: 2026-03-12, candled: {fertile: 4, clear: 1}, checked: {eggs: 5}, lost: {clear: 1}`;
    expect([differs(lamp), clutchIn(at(lamp), 'LW-1/1').eggs.length]).toEqual([[], 5]);
    const dead = 'date: 2026-03-20, died: 1, checked: {chicks: 4}';
    expect(differs(`${brood}\n${dead}`)).toEqual(['counted-as-hatched']);
  });

  it('did not count who was gone before that day', () => {
    expect(
      differs(
        `${five}\ndate: 2026-03-10, lost: {broken: e2}\ndate: 2026-03-12, pulled: e1, checked: {eggs: 4}`,
      ),
    ).toEqual([]);
    const gone = ['date: 2026-03-20, died: {cold: c2}', 'date: 2026-04-05, fledged: c2'];
    for (const one of gone)
      expect(
        differs(`${brood}\n${one}\ndate: 2026-04-06, fostered: {hand: c1}, checked: {chicks: 3}`),
      ).toEqual([]);
    const under = {
      P: waxbills(
        `${five}\ndate: 2026-03-10, set: {BF-1: e5}\ndate: 2026-03-12, pulled: e1, checked: {eggs: 4}`,
      ),
      Q: journal('BF-1', 'bengalese finch', 'date: 2026-03-04, laid: 4, sitting'),
    };
    expect(codes(room(under, '2026-03-12'))).toEqual([]);
  });

  it('counted no egg that hatched on it; with its time it counted who was there by then', () => {
    expect(differs(`${five}\ndate: 2026-03-18, hatched: e1, checked: {eggs: 5}`)).toEqual(['counts-differ']);
    const out = `${five}\ndate: 2026-03-18, hatched: 5\ndate: 2026-04-06, time: 08:00, fledged: c1`;
    expect(differs(`${out}\ndate: 2026-04-06, checked: {chicks: 5}`)).toEqual([]);
    expect(differs(`${out}\ndate: 2026-04-06, time: 12:00, checked: {chicks: 5}`)).toEqual(['counts-differ']);
  });
});
