import { describe, expect, it } from 'vitest';
import { fullRef } from '../../src/room/model.ts';
import { room } from '../rooms.ts';
import { due } from '../situations/morning.ts';
import { clutchIn, codes, fates, journal, pairIn, waxbills } from './facts.ts';
import { at, clutches } from './waxbill-log.ts';

// Lavender waxbills leave the nest at 21 days at the latest, and feed themselves at 40 (species profile).
describe('a chick of which nobody wrote that it left the nest or died', () => {
  const brood =
    'date: 2026-01-05, laid: 3, sitting\ndate: 2026-01-18, hatched: 3\ndate: 2026-02-06, fledged: [c1, c2]';

  it('lies in it for a week longer than its kind does: who sits by then broods', () => {
    // Hatched on the 18th at the latest: 21 days and a week are over on 15 February.
    expect(clutches(`${brood}\ndate: 2026-02-15, sitting: hen`)).toHaveLength(1);
    expect(clutches(`${brood}\ndate: 2026-02-16, sitting: hen`)).toHaveLength(2);
  });

  it('does not hide the next brood: what sits on eggs and begs is of that', () => {
    const next = `${brood}\ndate: 2026-03-14, sitting: hen`;
    expect(clutches(next, '2026-03-27')).toEqual(['1: 3 eggs, 3 chicks', '2: 1+ eggs, 0+ chicks']);
    expect(due({ P: waxbills(next) }, '2026-03-26')).toEqual(
      expect.arrayContaining(['LW-1 hatch', 'LW-1 live-food']),
    );
    expect(clutches(`${next}\ndate: 2026-03-27, heard`)).toEqual([
      '1: 3 eggs, 3 chicks',
      '2: 1+ eggs, 1+ chicks',
    ]);
    expect(clutches(`${brood}\ndate: 2026-03-27, heard`)).toEqual([
      '1: 3 eggs, 3 chicks',
      '2: 1+ eggs, 1+ chicks',
    ]);
  });

  it('does not hide those that are counted in the nest once the next eggs are due', () => {
    const next = `${brood.replace('[c1, c2]', 'c1')}\ndate: 2026-02-14, laid: 3, sitting`;
    // Hatched on the 18th of January at the latest, two may lie there until 15 February, and a little longer where one is late.
    expect(clutches(`${next}\ndate: 2026-02-16, checked: {chicks: 1}`).at(-1)).toBe('2: 3 eggs, 0 chicks');
    const found = `${next}\ndate: 2026-02-28, checked: {eggs: 1, chicks: 2}`;
    expect(clutches(found)).toEqual(['1: 3 eggs, 3 chicks', '2: 3 eggs, 2 chicks']);
    expect(due({ P: waxbills(found) }, '2026-03-01')).toContain('LW-1 first-feed');
    expect(codes(at(`${found}\ndate: 2026-03-05, checked: {chicks: 2}`, '2026-03-05'))).not.toContain(
      'counts-differ',
    );
  });

  it('is none of those that a look counts too many in the next brood', () => {
    const next = `${brood}\ndate: 2026-02-14, laid: 3, sitting\ndate: 2026-02-27, hatched: 3`;
    const seen = (chicks: number) =>
      codes(at(`${next}\ndate: 2026-03-01, checked: {chicks: ${chicks}}`, '2026-03-02'));
    expect([seen(3), seen(4)]).toEqual([[], ['counts-differ']]);
  });

  it('keeps nobody from ringing the next brood, as if it were about to leave the nest', () => {
    const sat = 'date: 2026-02-14, laid: 3, sitting\ndate: 2026-02-22, candled: {fertile: 3}';
    const next = `${brood}\n${sat}\ndate: 2026-02-28, hatched: 3`;
    expect(due({ P: waxbills(next) }, '2026-03-06').join()).toContain('LW-1 ring');
  });

  it('does not hide a brood of which nobody saw an egg, that a look finds once it would feed itself', () => {
    const found = `${brood}\ndate: 2026-03-07, checked: {chicks: 3}`;
    expect(clutches(found)).toEqual(['1: 3 eggs, 3 chicks', '2: 3+ eggs, 3+ chicks']);
    expect(clutches(found.replace('03-07', '03-06'))).toHaveLength(1);
  });

  it('lies in it no more on the day on which it flew', () => {
    const flown = 'date: 2026-01-05, laid: 1, sitting\ndate: 2026-02-06, fledged: 1, checked: {chicks: 1}';
    expect(codes(at(flown, '2026-02-06', 'nest-looks: freely'))).toEqual(['counts-differ']);
  });

  it('begs with those that flew until its kind feeds itself, and a week', () => {
    // Hatched on the 18th at the latest: 40 days and a week are over on 6 March.
    expect(clutches(`${brood}\ndate: 2026-03-06, heard`)).toHaveLength(1);
    expect(clutches(`${brood}\ndate: 2026-03-07, heard`)).toHaveLength(2);
  });

  it('is not the one that is found dead by count beside the next brood, but it is asked about', () => {
    const next = `${brood}\ndate: 2026-03-01, laid: 3, sitting\ndate: 2026-03-14, hatched: 3`;
    const known = at(`${next}\ndate: 2026-03-17, died: 1`, '2026-03-18');
    const dead = pairIn(known, 'LW-1').clutches.map(
      ({ chicks }) => chicks.filter(({ fate }) => fate !== null).length,
    );
    expect(dead).toEqual([0, 1]);
    expect(codes(known)).toEqual(['which-clutch']);
  });

  it('is none of those that fly by count from the next brood, but is by its name', () => {
    const next = `${brood}\ndate: 2026-03-01, laid: 3, sitting\ndate: 2026-03-14, hatched: 3`;
    const flown = (who: string) =>
      pairIn(at(`${next}\ndate: 2026-04-03, fledged: ${who}`), 'LW-1').clutches.map(({ chicks }) =>
        chicks.map(({ fledged }) => (fledged === null ? '-' : 'f')).join(''),
      );
    expect(flown('2')).toEqual(['ff-', 'ff-']);
    expect(flown('1/c3')).toEqual(['fff', '---']);
  });
});

describe('an egg that a brood left behind', () => {
  // Lavender waxbills sit 13 days at the longest (species profile).
  const brood =
    'date: 2026-01-05, laid: 4, sitting\ndate: 2026-01-18, hatched: 3\ndate: 2026-02-06, fledged: 3';

  it('is not what the hen sits on later: the next brood is awaited', () => {
    const next = `${brood}\ndate: 2026-02-20, sitting: hen`;
    expect(clutches(next, '2026-03-03')).toEqual(['1: 4 eggs, 3 chicks', '2: 1+ eggs, 0+ chicks']);
    expect(due({ P: waxbills(next) }, '2026-03-03')).toEqual(
      expect.arrayContaining(['LW-1 hatch', 'LW-1 live-food']),
    );
  });

  it('is none of those that hatch or are lost by number in the next brood, but is by its name', () => {
    const next = `${brood}\ndate: 2026-02-14, laid: 3, sitting`;
    const ends = (more: string) => fates(clutchIn(at(`${next}\n${more}`), 'LW-1/1')).at(-1);
    expect(ends('date: 2026-02-27, hatched: 3')).toBe('e4 open');
    expect(ends('date: 2026-02-20, lost: {broken: 1}')).toBe('e4 open');
    expect(ends('date: 2026-02-20, lost: {clear: 1/e4}')).toBe('e4 lost (clear)');
  });

  it('lies there as long as a look counts it: nobody writes of each that it was taken out', () => {
    const found = (...eggs: number[]) => {
      const looks = eggs.map((count, i) => `date: 2026-02-${10 + i}, checked: {eggs: ${count}}`);
      const log = [brood, ...looks].join('\n');
      return [...clutches(log), ...codes(at(log, '2026-02-20'))];
    };
    expect(found(1)).toEqual(['1: 4 eggs, 3 chicks']);
    expect(found(0, 1, 0)).toEqual(['1: 4 eggs, 3 chicks']);
    // The second is of the next clutch; whether it is one, or the first is gone and there are two, nobody knows.
    expect(found(1, 2)).toEqual(['1: 4 eggs, 3 chicks', '2: 1+ eggs, 0+ chicks', 'counted-as-laid']);
    expect(found(0, 2, 3)).toEqual([
      '1: 4 eggs, 3 chicks',
      '2: 2+ eggs, 0+ chicks',
      'counted-as-laid',
      'counted-as-laid',
    ]);
  });

  it('beside those of the next clutch may be counted with them, or be gone by then', () => {
    const next = `${brood}\ndate: 2026-02-14, laid: 4, sitting`;
    const differs = (eggs: number) =>
      codes(at(`${next}\ndate: 2026-02-20, checked: {eggs: ${eggs}}`, '2026-02-20'));
    expect(differs(4)).toEqual([]);
    expect(differs(5)).toEqual([]);
    expect(differs(3)).toEqual(['counts-differ']);
  });

  it('went with its nest: what a look finds after that is the next clutch', () => {
    const cleaned = brood.replace('2026-02-06, fledged: 3', '2026-02-04, nest: cleaned, fledged: 3');
    const log = `${cleaned}\ndate: 2026-02-12, checked: {eggs: 2}`;
    expect(clutches(log)).toEqual(['1: 4 eggs, 3 chicks', '2: 2 eggs, 0 chicks']);
    // Eggs that were still waited for were put back.
    const sat = 'date: 2026-01-05, laid: 4, sitting\ndate: 2026-01-12, nest: cleaned';
    expect(clutches(`${sat}\ndate: 2026-01-13, checked: {eggs: 4}`)).toEqual(['1: 4 eggs, 0 chicks']);
  });

  it('is asked about no more where the nest is cleaned, nor is a chick of which nobody wrote that it flew', () => {
    const asked = (log: string) =>
      codes(at(`${log}\ndate: 2026-02-16, nest: cleaned`, '2026-02-16')).filter(
        (code) => code === 'nest-over-brood',
      );
    const late = brood.replace(/2026-02-06, fledged: 3/, '2026-02-06, fledged: 2');
    expect(asked(brood)).toEqual([]);
    expect(asked(late)).toEqual([]);
    expect(asked(`${brood}\ndate: 2026-02-14, laid: 1`)).toEqual(['nest-over-brood']);
  });

  it('goes to no foster parents by number beside newer ones', () => {
    const log = `${brood}\ndate: 2026-02-12, independent: all\ndate: 2026-02-14, laid: 4, sitting\ndate: 2026-02-20, fostered: {BF-1: 3}`;
    const files = { P: waxbills(log), Q: journal('BF-1', 'bengalese finch', '') };
    const left = [...pairIn(room(files, '2026-02-21'), 'LW-1').here.eggs];
    expect(left.map((egg) => fullRef(egg))).toEqual(['LW-1/1/e4', 'LW-1/2/e4']);
  });

  it('is no chick of a brood whose eggs nobody saw, however many are counted, found or heard there', () => {
    const next = `${brood}\ndate: 2026-02-10, sitting: hen`;
    // Laid by 5 January, it has lain for less than the 40 days after which nobody means any egg.
    for (const found of [
      'hatched: 3',
      'checked: {chicks: 3}',
      'heard\ndate: 2026-02-14, checked: {chicks: 3}',
    ]) {
      const log = `${next}\ndate: 2026-02-14, ${found}`;
      expect(fates(clutchIn(at(log), 'LW-1/1')).at(-1), found).toBe('e4 open');
      expect(clutchIn(at(log), 'LW-1/2').chicks, found).toHaveLength(3);
    }
  });

  it('may be one of the young that lie in the nest days after the first of them flew, as nobody had counted them', () => {
    const first =
      'date: 2026-01-05, laid: 4, sitting\ndate: 2026-01-18, hatched: 1\ndate: 2026-02-06, fledged: 1';
    for (const day of ['2026-02-06', '2026-02-12'])
      expect(clutches(`${first}\ndate: ${day}, checked: {chicks: 2}`), day).toEqual(['1: 4 eggs, 3 chicks']);
    // More than a week after the first, the last of a brood has flown.
    expect(clutches(`${first}\ndate: 2026-02-14, checked: {chicks: 2}`)).toEqual(['1: 4 eggs, 1 chicks']);
  });

  it('is none while the brood hatches, though the first of it is out of the nest already', () => {
    // Quail chicks walk off as they hatch; one of a nest may fall out of it.
    const out = 'date: 2026-01-18, hatched: 1\ndate: 2026-01-19, fledged: c1\ndate: 2026-01-20, hatched: 2';
    const log = `date: 2026-01-05, laid: 4, sitting\n${out}`;
    expect(clutches(log, '2026-01-20')).toEqual(['1: 4 eggs, 3 chicks']);
    expect(codes(at(log, '2026-01-20'))).toEqual([]);
  });

  it('is sat on while the chicks are in the nest, and where they died before they could fly', () => {
    expect(clutches(`${brood.split('\ndate: 2026-02-06')[0]}\ndate: 2026-01-30, sitting: hen`)).toHaveLength(
      1,
    );
    const dead =
      'date: 2026-01-05, laid: 4, sitting\ndate: 2026-01-18, hatched: 1\ndate: 2026-01-20, died: 1';
    expect(clutches(`${dead}\ndate: 2026-01-22, sitting: hen`)).toHaveLength(1);
  });

  it('is not sat on once the keeper took the young from beside it to foster parents, and it is overdue', () => {
    // Laid by 5 January: 13 days of sitting at the most and a week are over on the 25th.
    const given = `${brood.split('\ndate: 2026-02-06')[0]}\ndate: 2026-01-20, fostered: {BF-1: all}`;
    const clutchesWith = (entry: string) => {
      const files = { P: waxbills(`${given}\n${entry}`), Q: journal('BF-1', 'bengalese finch', '') };
      return pairIn(room(files, '2026-02-14'), 'LW-1').clutches.length;
    };
    expect([clutchesWith('date: 2026-01-25, sitting'), clutchesWith('date: 2026-01-26, sitting')]).toEqual([
      1, 2,
    ]);
    expect(clutchesWith('date: 2026-01-24, checked: {eggs: 4}')).toBe(1);
    expect(clutchesWith('date: 2026-01-30, checked: {eggs: 4}')).toBe(2);
    const files = {
      P: waxbills(`${given}\ndate: 2026-02-01, sitting\ndate: 2026-02-02, checked: {eggs: 4}`),
      Q: journal('BF-1', 'bengalese finch', ''),
    };
    expect(due(files, '2026-02-14')).toEqual(expect.arrayContaining(['LW-1 hatch', 'LW-1 live-food']));
  });

  it('is sat on while its brood hatched elsewhere, or died, or one chick lies beside it', () => {
    const sat = 'date: 2026-01-05, laid: 4, sitting';
    const warm = `${sat}\ndate: 2026-01-08, set: {incubator: [e1, e2]}\ndate: 2026-01-18, hatched: [e1, e2]`;
    expect(clutches(`${warm}\ndate: 2026-01-27, sitting: hen`)).toHaveLength(1);
    const brooded = `${sat}\ndate: 2026-01-18, hatched: [e1, e2]`;
    expect(clutches(`${brooded}\ndate: 2026-01-20, died: all\ndate: 2026-01-27, sitting: hen`)).toHaveLength(
      1,
    );
    const one = `${brooded}\ndate: 2026-01-20, fostered: {hand: c1}\ndate: 2026-01-27, hatched: 1`;
    expect([clutches(one), codes(at(one))]).toEqual([['1: 4 eggs, 3 chicks'], []]);
  });

  it('where none hatched is sat on for a month and more: it is waited for, and may be clear', () => {
    const laid = 'date: 2026-01-05, laid: 1\ndate: 2026-01-08, laid: 3, sitting';
    // Twice the longest sitting and a fortnight: 40 days from the 8th.
    expect(clutches(`${laid}\ndate: 2026-02-17, sitting: hen`)).toHaveLength(1);
    expect(clutches(`${laid}\ndate: 2026-02-18, sitting: hen`)).toHaveLength(2);
  });
});

describe('eggs that a look finds where none were known', () => {
  const clear = 'date: 2026-01-05, laid: 4, sitting\ndate: 2026-01-17, lost: {clear: all}';
  const seen = (log: string, on: string) => clutches(`${log}\ndate: ${on}, checked: {eggs: 2}`).at(-1);

  it('are a new clutch five days after the last came to nothing, or its young died: hens lay again in about a week', () => {
    expect(seen(clear, '2026-01-21')).toBe('1: 4 eggs, 0 chicks');
    expect(seen(clear, '2026-01-22')).toBe('2: 2 eggs, 0 chicks');
    const dead =
      'date: 2026-01-05, laid: 2, sitting\ndate: 2026-01-18, hatched: 2\ndate: 2026-01-20, died: all';
    expect(seen(dead, '2026-01-24')).toBe('1: 2 eggs, 2 chicks');
    expect(seen(dead, '2026-01-25')).toBe('2: 2 eggs, 0 chicks');
  });

  it('are a new clutch at once where its young had flown before, whatever became of them and of the last egg since', () => {
    const flown =
      'date: 2026-01-05, laid: 4, sitting\ndate: 2026-01-18, hatched: 3\ndate: 2026-02-06, fledged: all';
    for (const since of ['lost: {clear: e4}', 'gone: {sold: c1}', 'died: {found dead: c2}'])
      expect(seen(`${flown}\ndate: 2026-02-11, ${since}`, '2026-02-12'), since).toMatch(/^2: /);
    // Nor does anybody ask after an egg of six weeks ago.
    const old = 'date: 2026-01-05, laid: 1\ndate: 2026-02-15, lost: {addled: e1}';
    expect(seen(old, '2026-02-16')).toBe('2: 2 eggs, 0 chicks');
  });

  it('are a new clutch five days after all were given away', () => {
    const away = 'date: 2026-01-05, laid: 4, sitting\ndate: 2026-01-16, pulled: all';
    expect(seen(away, '2026-01-20')).toBe('1: 4 eggs, 0 chicks');
    expect(seen(away, '2026-01-21')).toBe('2: 2 eggs, 0 chicks');
  });

  it('are a new clutch five days after all were taken out of the nest, however late they are put to warmth', () => {
    const away = 'date: 2026-01-05, laid: 4\ndate: 2026-01-10, pulled: all';
    for (const on of ['12', '16']) {
      const set = `${away}\ndate: 2026-01-${on}, set: {incubator: all}`;
      expect(seen(set, '2026-01-17'), on).toBe('2: 2 eggs, 0 chicks');
    }
    // Once more in the nest, they were taken out on the later day.
    const back = `${away}\ndate: 2026-01-12, set: {LW-1: all}\ndate: 2026-01-22, pulled: all`;
    expect([seen(back, '2026-01-26'), seen(back, '2026-01-27')]).toEqual([
      '1: 4 eggs, 0 chicks',
      '2: 2 eggs, 0 chicks',
    ]);
  });

  it('are a new clutch five days after all went to foster parents', () => {
    const given = (on: string) => {
      const log = `date: 2026-01-05, laid: 4, sitting\ndate: 2026-01-16, fostered: {BF-1: all}`;
      const look = `date: ${on}, checked: {eggs: 2}`;
      const files = { P: waxbills(`${log}\n${look}`), Q: journal('BF-1', 'bengalese finch', '') };
      return pairIn(room(files, '2026-02-01'), 'LW-1').clutches.length;
    };
    expect([given('2026-01-20'), given('2026-01-21')]).toEqual([1, 2]);
  });

  it('are a new clutch five days after all its young went to foster parents or into the hand', () => {
    const given = (to: string, on: string) => {
      const log = `date: 2026-01-05, laid: 2, sitting\ndate: 2026-01-18, hatched: 2\ndate: 2026-01-20, fostered: {${to}: all}`;
      const look = `date: ${on}, checked: {eggs: 2}`;
      const files = { P: waxbills(`${log}\n${look}`), Q: journal('BF-1', 'bengalese finch', '') };
      return pairIn(room(files, '2026-02-01'), 'LW-1').clutches.length;
    };
    expect([given('BF-1', '2026-01-24'), given('BF-1', '2026-01-25')]).toEqual([1, 2]);
    expect([given('hand', '2026-01-24'), given('hand', '2026-01-25')]).toEqual([1, 2]);
  });

  it('are a new clutch once the last of its eggs was lost five days ago, and not while only some were', () => {
    const one = clear.replace('all', '3');
    expect(seen(`${one}\ndate: 2026-01-21, lost: {clear: 1}`, '2026-01-22')).toBe('1: 4 eggs, 0 chicks');
    // Of a clutch that was only seen to be sat on as well.
    const unseen = 'date: 2026-01-05, sitting\ndate: 2026-01-17, lost: {clear: all}';
    expect(seen(unseen, '2026-01-22')).toBe('2: 2 eggs, 0 chicks');
  });

  it('are no clutch of foster parents that sit on guests: it is asked about', () => {
    const files = {
      P: waxbills('date: 2026-02-01, laid: 3\ndate: 2026-02-05, fostered: {BF-1: all}'),
      Q: journal(
        'BF-1',
        'bengalese finch',
        'date: 2026-01-05, laid: 4, sitting\ndate: 2026-01-20, lost: {clear: all}\ndate: 2026-02-08, checked: {eggs: 4}',
      ),
    };
    const known = room(files, '2026-02-09');
    expect(pairIn(known, 'BF-1').clutches).toHaveLength(1);
    expect(codes(known)).toEqual(['counts-differ']);
  });

  it('are eggs of which a hatch was written too much, while its chicks are in the nest', () => {
    const all = 'date: 2026-01-05, laid: 4, sitting\ndate: 2026-01-18, hatched: 4';
    expect(seen(all, '2026-01-30')).toBe('1: 4 eggs, 4 chicks');
    expect(seen(`${all}\ndate: 2026-02-06, fledged: 4`, '2026-02-10')).toBe('2: 2 eggs, 0 chicks');
  });
});
