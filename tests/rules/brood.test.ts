import { describe, expect, it } from 'vitest';
import { formatDay } from '../../src/days.ts';
import { fullRef } from '../../src/room/model.ts';
import { type Brood, mayHatch, onLiveFood, profilesToHatch } from '../../src/rules/brood.ts';
import type { Files } from '../rooms.ts';
import {
  ALL_OUT,
  brood,
  broods,
  FOUR_EGGS,
  hillFinches,
  lines,
  species,
  THREE_CHICKS,
} from './agenda/hill-finch.ts';
import { pair } from './warnings/warned.ts';

/** What is cared for as one, a line a brood: `HF-1/1 nest: 2 eggs; c1 c2`. */
function cared(files: Files, on: string): string[] {
  return broods(files, on).map(({ pair: { id }, clutch, where, eggs, stored, young }) =>
    [
      `${id}/${clutch?.number ?? 'guests'} ${where}:`,
      ...[...eggs, ...young].map(fullRef),
      ...stored.map((egg) => `(${egg.ref})`),
    ].join(' '),
  );
}

const window = (expected: Brood['hatch']) =>
  expected === null
    ? null
    : [expected.from, expected.likely, expected.to].map((on) => formatDay(on).slice(5)).join(' ');

/** Two pairs of hill finches with their logs. */
const two = (first: string, second: string): Files => ({
  ...species(),
  'HF-1': pair('HF-1', 'hill finch', first),
  'HF-2': pair('HF-2', 'hill finch', second),
});

describe('eggs and young', () => {
  it('are those of the clutch, as long as they are open', () => {
    expect(cared(hillFinches(FOUR_EGGS), '2026-03-04')).toEqual([
      'HF-1/1 nest: HF-1/1/e1 HF-1/1/e2 HF-1/1/e3 HF-1/1/e4',
    ]);
    expect(cared(hillFinches(THREE_CHICKS), '2026-03-15')).toEqual([
      'HF-1/1 nest: HF-1/1/e4 HF-1/1/c1 HF-1/1/c2 HF-1/1/c3',
    ]);
  });

  it('remember everyone who hatched, whatever became of them', () => {
    const known = brood(hillFinches(`${THREE_CHICKS}date: 2026-03-18, died: c2`), '2026-03-20');
    expect(known.young.map(({ ref }) => ref)).toEqual(['c1', 'c3']);
    expect(known.hatched.map(({ ref }) => ref)).toEqual(['c1', 'c2', 'c3']);
  });

  it('of a clutch that a guest was not reared with are not joined by it', () => {
    const host = 'date: 2026-03-10, laid: 1\ndate: 2026-03-25, lost: {clear: e1}\ndate: 2026-04-30, laid: 1';
    const files = two(
      `${ALL_OUT}date: 2026-04-06, fostered: {HF-2: c1}`,
      host.replace('2026-03-25', '2026-04-08'),
    );
    const hatched = broods(files, '2026-05-01')
      .filter(({ pair: { id } }) => id === 'HF-2')
      .map((one) => [one.clutch?.number, one.hatched.map(fullRef)]);
    expect(hatched).toEqual([
      [1, ['HF-1/1/c1']],
      [2, []],
    ]);
  });

  it('of two clutches are two broods', () => {
    const log = `${ALL_OUT}date: 2026-04-05, lost: {clear: e4}\ndate: 2026-04-12, clutch: 2, laid: 1`;
    expect(cared(hillFinches(log), '2026-04-12')).toEqual([
      'HF-1/1 nest: HF-1/1/c1 HF-1/1/c2 HF-1/1/c3',
      'HF-1/2 nest: HF-1/2/e1',
    ]);
  });

  it('in the cool store stay with their clutch, beside those in the nest', () => {
    expect(cared(hillFinches(`${FOUR_EGGS}date: 2026-03-04, pulled: [e1, e2]`), '2026-03-04')).toEqual([
      'HF-1/1 nest: HF-1/1/e3 HF-1/1/e4 (e1) (e2)',
    ]);
  });
});

describe('fostering', () => {
  it('eggs given away are in the other pair’s brood, under their own names', () => {
    const files = two(
      `${FOUR_EGGS}date: 2026-03-06, fostered: {HF-2: [e1, e2]}`,
      'date: 2026-03-02, laid: 1',
    );
    expect(cared(files, '2026-03-06')).toEqual([
      'HF-1/1 nest: HF-1/1/e3 HF-1/1/e4',
      'HF-2/1 nest: HF-2/1/e1 HF-1/1/e1 HF-1/1/e2',
    ]);
  });

  it('a pair’s own come before its guests, whoever came when', () => {
    const files = two(
      `${FOUR_EGGS}date: 2026-03-06, fostered: {HF-2: [e1, e2]}`,
      'date: 2026-03-06, laid: 1\ndate: 2026-03-07, laid: 1\ndate: 2026-03-08, laid: 1',
    );
    expect(cared(files, '2026-03-08')[1]).toBe(
      'HF-2/1 nest: HF-2/1/e1 HF-2/1/e2 HF-2/1/e3 HF-1/1/e1 HF-1/1/e2',
    );
  });

  it('chicks brought back are in their own brood again', () => {
    const away = `${THREE_CHICKS}date: 2026-03-18, fostered: {HF-2: [c1, c2]}\n`;
    const host = (home: string) => `date: 2026-03-10, laid: 1\n${home}`;
    expect(cared(two(away, host('')), '2026-03-20')).toEqual([
      'HF-1/1 nest: HF-1/1/e4 HF-1/1/c3',
      'HF-2/1 nest: HF-2/1/e1 HF-1/1/c1 HF-1/1/c2',
    ]);
    expect(cared(two(away, host('date: 2026-03-22, fostered: {HF-1: HF-1/1/c1}')), '2026-03-22')).toEqual([
      'HF-1/1 nest: HF-1/1/e4 HF-1/1/c1 HF-1/1/c3',
      'HF-2/1 nest: HF-2/1/e1 HF-1/1/c2',
    ]);
  });

  it('a nest that holds guests only is a brood without a clutch', () => {
    const files = two(
      `${THREE_CHICKS}date: 2026-03-18, fostered: {HF-2: [c1, c2]}`,
      'date: 2026-03-10, paired',
    );
    expect(cared(files, '2026-03-20')).toEqual([
      'HF-1/1 nest: HF-1/1/e4 HF-1/1/c3',
      'HF-2/guests nest: HF-1/1/c1 HF-1/1/c2',
    ]);
    const guests = broods(files, '2026-03-20').find(({ clutch }) => clutch === null);
    expect(guests?.hatched.map(fullRef)).toEqual(['HF-1/1/c1', 'HF-1/1/c2']);
    expect(guests?.sitting).toBeNull();
    // 15 March + 20, 21, 22 d.
    expect(window(guests?.fledge ?? null)).toBe('04-04 04-05 04-06');
  });

  it('is over when the last guest has gone', () => {
    const log = `${THREE_CHICKS}date: 2026-03-18, fostered: {HF-2: c1}`;
    expect(
      cared(two(log, 'date: 2026-03-10, paired\ndate: 2026-03-19, died: HF-1/1/c1'), '2026-03-20'),
    ).toEqual(['HF-1/1 nest: HF-1/1/e4 HF-1/1/c2 HF-1/1/c3']);
  });
});

describe('guests of another species', () => {
  // The host sits for 16–18 d (out on day 16, 17, 18) and rears without live food; its young are ringed later.
  const host = species({
    species: 'dale finch',
    scientific: 'Exemplum vallicola',
    incubation: '16-18',
    'live-food': 'no',
    'ring-age': '9-10',
    independence: '50-60',
  });
  const files = (guest: string, own = '') => ({
    ...species(),
    'species/dale-finch.yaml': Object.values(host)[0] as string,
    'HF-1': pair('HF-1', 'hill finch', `${FOUR_EGGS}date: 2026-03-05, fostered: {DF-1: all}\n${guest}`),
    'DF-1': pair('DF-1', 'dale finch', `${FOUR_EGGS}${own}`),
  });
  const hosted = (on: string) => broods(files(''), on).find(({ pair: { id } }) => id === 'DF-1');

  it('hatch after their own sitting, the host’s after theirs', () => {
    // Guests from 3 March + 11, likely + 12; the host's last egg, of 4 March, + 18.
    expect(window(hosted('2026-03-06')?.hatch ?? null)).toBe('03-14 03-15 03-22');
    expect(hosted('2026-03-06')?.hatch?.duration.range).toEqual({ low: 11, high: 13 });
  });

  it('have their live food in time, though the host’s need none', () => {
    expect(profilesToHatch(hosted('2026-03-06') as Brood).map((profile) => profile.species)).toEqual([
      'dale finch',
      'hill finch',
    ]);
    expect(lines(files(''), 'live-food', '2026-03-12').map((item) => item.pair)).toEqual(['DF-1']);
    expect(lines(files(''), 'live-food', '2026-03-11')).toEqual([]);
  });

  it('are none that need live food once they are clear, nor where nobody knows their kind', () => {
    const clear = files(
      '',
      'date: 2026-03-10, candled: {clear: [HF-1/1/e1, HF-1/1/e2, HF-1/1/e3, HF-1/1/e4]}',
    );
    const host = broods(clear, '2026-03-11').find(({ pair: { id } }) => id === 'DF-1') as Brood;
    expect(profilesToHatch(host).map((profile) => profile.species)).toEqual(['dale finch']);
    expect(onLiveFood(hosted('2026-03-11') as Brood).eggs.map(fullRef)).toEqual(
      ['e1', 'e2', 'e3', 'e4'].map((ref) => `HF-1/1/${ref}`),
    );
    const strange = {
      ...files(''),
      'HF-1': (files('')['HF-1'] as string).replace('hill finch', 'unheard-of finch'),
    };
    const unknown = broods(strange, '2026-03-11').find(({ pair: { id } }) => id === 'DF-1') as Brood;
    expect(profilesToHatch(unknown).map((profile) => profile.species)).toEqual(['dale finch']);
  });

  it('make a nest that holds nobody else one of their kind, eggs or young', () => {
    const only = (log: string, on: string) => {
      const nests = {
        ...files(''),
        'HF-1': pair('HF-1', 'hill finch', log),
        'DF-1': pair('DF-1', 'dale finch', 'date: 2026-03-02, paired'),
      };
      const found = broods(nests, on).filter(({ pair: { id } }) => id === 'DF-1');
      return found.map(({ profile, eggs, young }) => [profile?.species, eggs.length, young.length]);
    };
    expect(only(`${FOUR_EGGS}date: 2026-03-05, fostered: {DF-1: all}`, '2026-03-06')).toEqual([
      ['hill finch', 4, 0],
    ]);
    expect(only(`${THREE_CHICKS}date: 2026-03-18, fostered: {DF-1: [c1, c2]}`, '2026-03-20')).toEqual([
      ['hill finch', 0, 2],
    ]);
  });

  it('are ringed and weaned at their own age', () => {
    const hatched =
      'date: 2026-03-15, after: 2026-03-14, hatched: [HF-1/1/e1]\ndate: 2026-03-17, after: 2026-03-16, hatched: e1';
    const who = (task: string, on: string) =>
      lines(files('', hatched), task, on).map((item) => item.who?.join(' '));
    // Guest: 15 March + 6 is the 21st. Own: 17 March + 8 is the 25th.
    expect([who('ring', '2026-03-20'), who('ring', '2026-03-21')]).toEqual([[], ['HF-1/1/c1']]);
    expect(who('ring', '2026-03-25')).toEqual(['c1']);
    // Guest: 15 March + 30 is 14 April. Own: 17 March + 50 is 6 May.
    expect(who('independent', '2026-04-14')).toEqual(['HF-1/1/c1']);
    expect(who('independent', '2026-05-06')).toEqual(['HF-1/1/c1', 'c1']);
  });
});

describe('without a pair', () => {
  const warm = `${FOUR_EGGS}date: 2026-03-06, fostered: {incubator: [e1, e2]}\n`;

  it('eggs in an incubator are a brood of their clutch there', () => {
    expect(cared(hillFinches(warm), '2026-03-06')).toEqual([
      'HF-1/1 nest: HF-1/1/e3 HF-1/1/e4',
      'HF-1/1 incubator: HF-1/1/e1 HF-1/1/e2',
    ]);
    expect(brood(hillFinches(warm), '2026-03-06', 'incubator').housing).toBe('incubator');
  });

  it('what lies in store, or hatched in the nest, is the nest’s; what hatched in the incubator is not', () => {
    const stored = `${warm}date: 2026-03-07, pulled: e4\n`;
    expect(cared(hillFinches(stored), '2026-03-07')).toEqual([
      'HF-1/1 nest: HF-1/1/e3 (e4)',
      'HF-1/1 incubator: HF-1/1/e1 HF-1/1/e2',
    ]);
    const hatched = hillFinches(`${warm}date: 2026-03-15, hatched: [e1, e3]`);
    const refs = (where: Brood['where']) =>
      brood(hatched, '2026-03-15', where).hatched.map(({ egg }) => egg?.ref);
    expect([refs('nest'), refs('incubator'), refs('hand')]).toEqual([['e3'], [], ['e1']]);
  });

  it('their days of sitting go on from where they were', () => {
    expect(window(brood(hillFinches(warm), '2026-03-06', 'incubator').hatch)).toBe('03-14 03-15 03-16');
  });

  it('what hatches there is fed by hand', () => {
    expect(cared(hillFinches(`${warm}date: 2026-03-15, hatched: [e1, e2]`), '2026-03-15')).toEqual([
      'HF-1/1 nest: HF-1/1/e3 HF-1/1/e4',
      'HF-1/1 hand: HF-1/1/c1 HF-1/1/c2',
    ]);
  });

  it('chicks taken by hand leave their parents’ brood', () => {
    const files = hillFinches(`${THREE_CHICKS}date: 2026-03-20, fostered: {hand: c3}`);
    expect(cared(files, '2026-03-20')).toEqual([
      'HF-1/1 nest: HF-1/1/e4 HF-1/1/c1 HF-1/1/c2',
      'HF-1/1 hand: HF-1/1/c3',
    ]);
    expect(brood(files, '2026-03-20', 'hand').housing).toBe('hand');
  });
});

describe('forecasts', () => {
  it('of hatching rest on the eggs that may hatch, of the term on all', () => {
    const known = brood(hillFinches(`${FOUR_EGGS}date: 2026-03-09, candled: {clear: e4}`), '2026-03-09');
    expect([window(known.hatch), window(known.term)]).toEqual(['03-14 03-15 03-16', '03-14 03-15 03-17']);
    expect(known.eggs.map(mayHatch)).toEqual([true, true, true, false]);
  });

  it('an egg that pipped may hatch, whatever the lamp said', () => {
    const log = `${FOUR_EGGS}date: 2026-03-09, candled: {clear: e4}\ndate: 2026-03-15, pipped: e4`;
    expect(mayHatch(brood(hillFinches(log), '2026-03-15').eggs[3] as Brood['eggs'][number])).toBe(true);
  });

  it('begin with an egg that was seen pipped before its kind is due, and with none that pips in its time', () => {
    const hatch = (pipped: string, on = pipped.slice(0, 10)) =>
      brood(hillFinches(`${FOUR_EGGS}date: ${pipped}`), on).hatch;
    expect(window(hatch('2026-03-11, pipped: e2'))).toBe('03-11 03-12 03-17');
    expect(hatch('2026-03-11, pipped: e2')?.pipped?.ref).toBe('e2');
    expect(window(hatch('2026-03-14, pipped: e2'))).toBe('03-14 03-15 03-17');
    expect(hatch('2026-03-14, pipped: e2')?.pipped).toBeNull();
    const both = hatch('2026-03-10, pipped: e3\ndate: 2026-03-11, pipped: e1', '2026-03-11');
    expect([window(both), both?.pipped?.ref]).toEqual(['03-10 03-11 03-17', 'e3']);
  });

  it('wait while the eggs lie in store', () => {
    expect(brood(hillFinches('date: 2026-03-01, laid: 1, pulled: e1'), '2026-03-02').hatch).toBeNull();
  });

  it('are not made where nobody knows the species', () => {
    const known = broods({ 'XX-1': pair('XX-1', 'unheard-of finch', FOUR_EGGS) }, '2026-03-05')[0];
    expect([known?.hatch, known?.fledge, known?.profile]).toEqual([null, null, null]);
  });
});

describe('old clutches', () => {
  it('are forgotten half a year after the first egg', () => {
    // 1 March + 180 d is 28 August.
    expect(broods(hillFinches(FOUR_EGGS), '2026-08-28')).toHaveLength(1);
    expect(broods(hillFinches(FOUR_EGGS), '2026-08-29')).toEqual([]);
  });

  it('are kept in mind while somebody of them is still fed', () => {
    expect(broods(hillFinches(ALL_OUT), '2026-10-01')).toHaveLength(1);
    expect(broods(hillFinches(`${ALL_OUT}date: 2026-04-25, independent: all`), '2026-10-01')).toEqual([]);
  });
});

describe('eggs found warm, of which nobody knows how long they were sat on', () => {
  // Grenadiers sit 12–14 d (species profile): eggs found on 3 May may have been begun any day since 18 April.
  const found = 'date: 2026-05-03, laid: 4, sitting';
  const hatch = (log: string, on: string) =>
    broods({ P: pair('A-1', 'purple grenadier', log) }, on)[0]?.hatch ?? null;

  it('were begun no longer ago than they take, where a later look still finds eggs', () => {
    expect(window(hatch(found, '2026-05-09'))).toBe('05-02 05-08 05-15');
    const candled = `${found}\ndate: 2026-05-10, candled: {fertile: 2, unsure: 2}`;
    expect(window(hatch(candled, '2026-05-11'))).toBe('05-10 05-12 05-16');
    expect(formatDay(hatch(candled, '2026-05-11')?.whole ?? 0)).toBe('2026-05-10');
  });

  it('are not put off by a look after their whole time, nor by one at their chicks', () => {
    expect(hatch(`${found}\ndate: 2026-05-19, checked: {eggs: 4}`, '2026-05-19')?.whole).toBeNull();
    const chicks = `${found}\ndate: 2026-05-10, hatched: 2\ndate: 2026-05-11, checked: {chicks: 2}`;
    expect(hatch(chicks, '2026-05-11')?.whole).toBeNull();
  });

  it('keep what an earlier look told, when a later one comes after their whole time or finds the first chicks', () => {
    const candled = `${found}\ndate: 2026-05-10, candled: {fertile: 4}`;
    const told = '05-10 05-12 05-16';
    expect(window(hatch(candled, '2026-05-12'))).toBe(told);
    const looked = `${candled}\ndate: 2026-05-18, checked: {eggs: 4}`;
    expect(window(hatch(looked, '2026-05-18'))).toBe(told);
    expect(window(hatch(`${candled}\ndate: 2026-05-14, hatched: 2`, '2026-05-14'))).toBe(told);
  });

  it('are not told of by a look into the pair’s other nest', () => {
    const here = found.replace('laid: 4', 'site: basket, laid: 4');
    const looked = (site: string) =>
      hatch(
        `${here}\ndate: 2026-05-10, site: ${site}, checked: {eggs: ${site === 'basket' ? 4 : 0}}`,
        '2026-05-11',
      );
    expect(looked('basket')?.whole).not.toBeNull();
    expect(looked('box')?.whole).toBeNull();
  });

  it('do not put off a guest beside them of which it is known when it was begun', () => {
    const guest = `date: 2026-04-26, laid: 1\ndate: 2026-04-27, laid: 1, sitting\ndate: 2026-05-05, fostered: {A-1: e2}`;
    const files = {
      P: pair('A-1', 'purple grenadier', `${found}\ndate: 2026-05-10, checked: {eggs: 5}`),
      Q: pair('B-1', 'purple grenadier', guest),
    };
    const hatching = broods(files, '2026-05-10').find(({ pair: { id } }) => id === 'A-1')?.hatch ?? null;
    // Begun on 27 April, of 12–14 d: 8 in 10 hatch on 9–11 May.
    expect(window(hatching)?.slice(0, 5)).toBe('05-09');
  });

  it('keep their day where it is known: what did not happen is not put off', () => {
    const known =
      'date: 2026-05-01, laid: 1\ndate: 2026-05-04, laid: 3, sitting: both\ndate: 2026-05-03, sitting: off';
    const before = window(hatch(known, '2026-05-10'));
    expect(window(hatch(`${known}\ndate: 2026-05-17, checked: {eggs: 4}`, '2026-05-17'))).toBe(before);
  });
});
