import { describe, expect, it } from 'vitest';
import type { Span } from '../../src/days.ts';
import { day, room } from '../rooms.ts';
import { birdIn, clutchIn, codes, days, journal, waxbills } from './facts.ts';
import { at, clutches } from './waxbill-log.ts';

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

  it('is the same by its clutch’s number or without it', () => {
    expect(codes(at('date: 2026-03-01, sitting\ndate: 2026-03-06, candled: {clear: 1/e3}'))).toEqual([
      'counted-as-laid',
    ]);
    const byNumber = rings.replaceAll('c', '1/c');
    for (const found of ['2026-03-18, heard\ndate: 2026-03-25', '2026-03-25, checked: {chicks: 3}']) {
      const log = `date: 2026-03-05, laid: 5, sitting\ndate: ${found}`;
      expect(ringsOf(`${log}, ${byNumber}`), found).toEqual(['014', '015', '016']);
      expect(codes(at(`${log}, ${byNumber}`)), found).toEqual(codes(at(`${log}, ${rings}`)));
    }
    expect(codes(at(`date: 2026-03-25, ${byNumber}`))).toEqual(Array(3).fill('no-such-chick'));
  });

  it('under foster parents is one of the guests there, in either journal, and of no egg that nobody brought', () => {
    const ringed = (eggs: string, own: string, guest: string) => {
      const files = {
        P: waxbills(`date: 2026-03-05, ${eggs}\ndate: 2026-03-07, fostered: {BF-1: all}\n${own}`),
        Q: journal('BF-1', 'bengalese finch', `date: 2026-03-01, paired\n${guest}`),
      };
      const known = room(files, '2026-03-30');
      const { chicks } = clutchIn(known, 'LW-1/1');
      return [...chicks.map(({ ring, stays }) => `${ring} with ${stays[0]?.nest?.id}`), ...codes(known)];
    };
    const two = ['014 with BF-1', '015 with BF-1'];
    const heard = 'date: 2026-03-20, heard';
    const here = 'date: 2026-03-28, ringed: {LW-1/c1: "014", LW-1/c2: "015"}';
    expect(ringed('laid: 4', here.replaceAll('LW-1/', ''), heard)).toEqual([...two, 'counted-as-hatched']);
    const named = here.replaceAll('LW-1/', 'LW-1/1/');
    expect(ringed('laid: 4', '', `${heard}\n${named}`)).toEqual([...two, 'counted-as-hatched']);
    expect(ringed('laid: 4', '', named)).toEqual([...two, 'counted-as-hatched', 'counted-as-hatched']);
    expect(ringed('sitting', '', named)).toEqual(['014 with BF-1', 'counted-as-hatched', 'no-such-chick']);
    // Of four eggs no fifth chick came, and none of them hatched for it.
    expect(ringed('laid: 4', '', `${heard}\n${named.replace('c2', 'c5')}`)).toEqual([
      '014 with BF-1',
      'no-such-chick',
    ]);
  });

  it('is one more of a brood of which so many were told at the least, with a question', () => {
    const some = 'date: 2026-03-05, laid: 5, sitting\ndate: 2026-03-18, hatched: 2+';
    expect(ringsOf(`${some}\ndate: 2026-03-25, ${rings}`)).toEqual(['014', '015', '016']);
    expect(codes(at(`${some}\ndate: 2026-03-25, ${rings}`))).toEqual(['counted-as-hatched']);
    expect(codes(at(`${some}\ndate: 2026-03-25, ringed: {c6: "016"}`))).toEqual(['no-such-chick']);
    // It may be as old as they are, and they are known as well as before.
    const { chicks } = clutchIn(at(`${some}\ndate: 2026-03-25, ${rings}`), 'LW-1/1');
    expect(chicks.map(({ placeholder }) => placeholder)).toEqual([false, false, false]);
    expect(chicks[2]?.hatched.from).toBeLessThanOrEqual(day('2026-03-18'));
    // None is left in a nest of which all flew, or died.
    for (const end of ['fledged: 2', 'died: all'])
      expect(codes(at(`${some}\ndate: 2026-04-06, ${end}\ndate: 2026-04-07, ${rings}`)), end).toContain(
        'no-such-chick',
      );
    // Of an exact number there is no more.
    expect(codes(at(`${some.replace('2+', '2')}\ndate: 2026-03-25, ${rings}`))).toEqual(['no-such-chick']);
  });

  it('may be as old as those that were named or heard before it, as no line counts who was left in the nest', () => {
    const heard = 'date: 2026-03-05, laid: 5, sitting\ndate: 2026-03-18, heard';
    const named = `${heard}\ndate: 2026-03-23, ringed: {c1: "014", c2: "015"}`;
    for (const later of ['ringed: {c3: "016"}', 'crops: {full: c3}', 'checked: {chicks: 3}']) {
      const c3 = birdIn(at(`${named}\ndate: 2026-03-25, ${later}`), 'LW-1/1/c3').hatched as Span;
      // Not on the last two days, as if it were none of those that had been there: within four days of the eldest.
      expect(c3.from, later).toBeLessThanOrEqual(day('2026-03-18'));
      expect(c3.to, later).toBeLessThanOrEqual(day('2026-03-23') + 4);
    }
    // A look that counted two says that the third came after it.
    const counted = `${heard}\ndate: 2026-03-19, checked: {chicks: 2}\ndate: 2026-03-21, checked: {chicks: 3}`;
    expect(days(birdIn(at(counted), 'LW-1/1/c3').hatched as Span)).toBe('03-20…03-21');
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

  it('is told with whoever its number passes over, and with the clutch that begins with it', () => {
    const asked = (log: string) => at(log).findings.map(({ code, args }) => [code, args]);
    expect(asked('date: 2026-03-03, sitting\ndate: 2026-03-05, set: {incubator: [e1, e2, e5]}')).toEqual([
      ['counted-as-laid', { who: 'e3, e4', count: 2, clutch: 1 }],
    ]);
    const lost = 'date: 2026-01-11, laid: 1\ndate: 2026-01-22, lost: {deserted: 1}';
    expect(asked(`${lost}\ndate: 2026-04-20, ringed: {c1: "418"}`)).toEqual([
      ['counted-as-hatched', { who: 'e1', count: 1, clutch: 2 }],
    ]);
    expect(asked('date: 2026-03-05, laid: 4, sitting\ndate: 2026-03-25, weighed: {c2: 5.1}')).toEqual([
      ['counted-as-hatched', { who: 'e1, e2', count: 2 }],
    ]);
  });

  it('is none of a brood that has flown, nor one that ended before, whatever else lies there', () => {
    const files = {
      P: journal(
        'BF-1',
        'bengalese finch',
        'date: 2026-03-10, fledged: 1\ndate: 2026-03-29, fostered: {LW-1: [e1, e2]}',
      ),
      Q: waxbills(''),
    };
    expect(codes(room(files, '2026-03-30'))).toEqual(['impossible', 'no-such-egg']);
    const two = 'date: 2026-03-01, sitting\ndate: 2026-03-06, candled: {fertile: [e1, e2]}';
    expect(codes(at(`${two}\ndate: 2026-03-13, hatched: e2\ndate: 2026-03-14, hatched: e2`))).toEqual([
      'hatched-twice',
    ]);
    expect(codes(at(`${two}\ndate: 2026-03-13, hatched: e1\ndate: 2026-03-14, hatched: e1`))).toEqual([
      'hatched-twice',
    ]);
    const dead = 'date: 2026-03-18, heard\ndate: 2026-03-20, died: c1\ndate: 2026-03-22, heard';
    expect(codes(at(`${dead}\ndate: 2026-03-24, fostered: {hand: c1}`))).toEqual(['dead-bird']);
  });

  it('is one more of its eggs, though the first have hatched', () => {
    const log =
      'date: 2026-03-01, sitting\ndate: 2026-03-06, candled: {fertile: [e1, e2]}\ndate: 2026-03-13, hatched: e1\ndate: 2026-03-24, lost: {addled: [e2, e3]}';
    expect([clutches(log), codes(at(log))]).toEqual([['1: 3+ eggs, 1+ chicks'], []]);
  });

  it('came of its own brood, and of no egg that was laid since', () => {
    const log =
      'date: 2026-03-05, ringed: {c1: "112"}\ndate: 2026-03-21, laid: some\ndate: 2026-03-31, fledged: [c1, c2]';
    expect(clutches(log)).toEqual(['1: 2+ eggs, 2+ chicks', '2: 1+ eggs, 0 chicks']);
  });

  it('hatched of the first of eggs that are sat on as they are laid; of none that nobody sat on yet', () => {
    const first = 'date: 2026-03-05, laid: 1, sitting\ndate: 2026-03-09, laid: 1';
    expect(clutches(`${first}\ndate: 2026-03-16, ringed: {c1: "014"}`)).toEqual(['1: 2 eggs, 1+ chicks']);
    expect(codes(at('date: 2026-03-24, laid: 1\ndate: 2026-03-25, ringed: {c1: "014"}'))).toEqual([
      'no-such-chick',
    ]);
    const guests = {
      P: waxbills('date: 2026-03-08, sitting\ndate: 2026-03-08, fostered: {BF-1: 4}'),
      Q: journal('BF-1', 'bengalese finch', 'date: 2026-03-15, weighed: {c1: 5.1}'),
    };
    expect(codes(room(guests, '2026-03-16'))).toEqual(['no-such-chick']);
  });

  it('is there though a look of that day found no egg', () => {
    expect(clutches('date: 2026-03-22, checked: {eggs: 0}, ringed: {c2: "116"}')).toEqual([
      '1: 2+ eggs, 2+ chicks',
    ]);
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

  it('found dead alone leaves whoever may be there: another chick, or the eggs that are left', () => {
    const dead = 'date: 2026-03-25, died: 1';
    // Of one that was only heard another is assumed; of eggs that lie there still one may hatch.
    const heard = 'date: 2026-03-01, sitting\ndate: 2026-03-18, heard';
    expect(clutches(`${heard}\n${dead}`)).toEqual(['1: 2+ eggs, 2+ chicks']);
    expect(clutches(`date: 2026-03-05, laid: 3+, sitting\ndate: 2026-03-18, heard\n${dead}`)).toEqual([
      '1: 3+ eggs, 1+ chicks',
    ]);
    expect(clutches(`date: 2026-03-05, laid: 1, sitting\ndate: 2026-03-18, heard\n${dead}`)).toEqual([
      '1: 1 eggs, 1+ chicks',
    ]);
  });

  it('whose crop was looked at hatched there, though nobody wrote of hatching', () => {
    const log = 'date: 2026-03-05, laid: 4, sitting\ndate: 2026-03-24, crops: {full: [c1, c2], thin: c3}';
    expect(clutches(log)).toEqual(['1: 4 eggs, 3+ chicks']);
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
