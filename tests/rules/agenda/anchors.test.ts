import { describe, expect, it } from 'vitest';
import { NIGHTS_OUT } from '../../../src/rules/agenda/anchors.ts';
import { days } from '../../room/facts.ts';
import { agenda } from '../../rooms.ts';
import { pair } from '../warnings/warned.ts';
import { anchors, beside, found, fourth, unseen } from './found.ts';
import { ALL_OUT, brood, FOUR_EGGS, hillFinches, species, THREE_CHICKS } from './hill-finch.ts';

describe('from the eggs', () => {
  it('the last egg, while something may still be laid', () => {
    expect(found('lastEgg', FOUR_EGGS, '2026-03-04')).toEqual(['03-04; e4 laid 4 Mar']);
    expect(found('lastEgg', THREE_CHICKS, '2026-03-15')).toEqual([]);
    expect(found('lastEgg', 'date: 2026-03-01, laid: 3+', '2026-03-02')).toEqual([]);
    // Found two days after the last look, it may lie there since the day before.
    const gap = 'date: 2026-03-01, laid: 1\ndate: 2026-03-02, checked: {eggs: 1}\ndate: 2026-03-04, laid: 1';
    expect(found('lastEgg', gap, '2026-03-04')).toEqual(['03-04; e2 laid by 4 Mar']);
    expect(
      found('lastEgg', 'date: 2026-03-01, laid: 1\ndate: 2026-03-02, lost: {broken: e1}', '2026-03-02'),
    ).toEqual([]);
  });

  it('no last egg of this pair where guests lie in its nest, or eggs in an incubator', () => {
    const guests = beside(
      'date: 2026-03-01, paired',
      'date: 2026-03-01, laid: 1\ndate: 2026-03-02, fostered: {HF-1: e1}',
    );
    expect(found('lastEgg', guests, '2026-03-02')).toEqual([]);
    expect(found('sittingEgg', guests, '2026-03-02')).toEqual([]);
    const warm = `${FOUR_EGGS}date: 2026-03-05, fostered: {incubator: all}`;
    expect(found('lastEgg', warm, '2026-03-05', 'incubator')).toEqual([]);
  });

  it('the last egg, with one in the nest and one in store', () => {
    const log = 'date: 2026-03-01, laid: 1, pulled: e1\ndate: 2026-03-02, laid: 1';
    expect(found('lastEgg', log, '2026-03-02')).toEqual(['03-02; e2 laid 2 Mar']);
  });

  it('no egg to sit on where nobody knows with which the species begins', () => {
    const whole = brood(hillFinches(FOUR_EGGS, { 'sitting-from': '' }), '2026-03-04');
    expect(anchors.sittingEgg(whole)).toEqual([]);
    expect(found('sittingEgg', { 'HF-1': pair('HF-1', 'ridge finch', FOUR_EGGS) }, '2026-03-04')).toEqual([]);
  });

  it('the last egg counts though it lies in store', () => {
    expect(found('lastEgg', 'date: 2026-03-01, laid: 1, pulled: e1', '2026-03-02')).toEqual([
      '03-01; e1 laid 1 Mar',
    ]);
  });

  it('the egg that the species sits on, once it is there', () => {
    expect(found('sittingEgg', FOUR_EGGS, '2026-03-02')).toEqual([]);
    expect(found('sittingEgg', FOUR_EGGS, '2026-03-04')).toEqual(['03-03; e3 laid 3 Mar']);
  });

  it('the last egg, where the species sits on the whole clutch', () => {
    const whole = brood(hillFinches(FOUR_EGGS, { 'sitting-from': 'last' }), '2026-03-04');
    expect(anchors.sittingEgg(whole).map(({ says }) => says)).toEqual(['e4 laid 4 Mar']);
  });

  it('nothing to sit on in an incubator', () => {
    const log = `${FOUR_EGGS}date: 2026-03-05, fostered: {incubator: all}`;
    expect(found('sittingEgg', log, '2026-03-06', 'incubator')).toEqual([]);
    expect(found('sittingEgg', log, '2026-03-06')).toEqual([]);
  });

  it('stored eggs from the day on which the first was taken', () => {
    const log = 'date: 2026-03-01, laid: 1, pulled: e1\ndate: 2026-03-02, laid: 1, pulled: e2';
    expect(found('stored', log, '2026-03-02')).toEqual(['03-01; e1, e2 pulled 1–2 Mar; HF-1/1/e1 HF-1/1/e2']);
    expect(found('stored', FOUR_EGGS, '2026-03-04')).toEqual([]);
  });

  it('an egg taken into store again, from that day', () => {
    const log =
      'date: 2026-03-01, laid: 1, pulled: e1\ndate: 2026-03-03, set: {HF-1: e1}\ndate: 2026-03-05, pulled: e1';
    expect(found('stored', log, '2026-03-06')).toEqual(['03-05; e1 pulled 5 Mar; HF-1/1/e1']);
  });
});

describe('from the sitting', () => {
  it('as it was seen', () => {
    expect(found('sitting', FOUR_EGGS, '2026-03-05')).toEqual(['03-03; sitting since 3 Mar']);
  });

  it('as it follows from the egg, and says so', () => {
    expect(found('sitting', unseen, '2026-03-05')).toEqual(['03-03; sitting since 3 Mar (inferred from e3)']);
  });

  it('as the lamp told it, where it told the age of every egg', () => {
    const aged = (who: string) => `date: 2026-03-10, laid: 4\ndate: 2026-03-10, aged: {4: ${who}}`;
    expect(found('sitting', aged('all'), '2026-03-10')).toEqual([
      '03-06; sat on since 6 Mar (aged under the lamp)',
    ]);
    expect(found('sitting', aged('[e1, e2]'), '2026-03-10')[0]).toContain('inferred from e3');
  });

  it('as it follows from eggs that nobody counted', () => {
    const [line] = found('sitting', 'date: 2026-03-01, laid: 3+', '2026-03-02');
    expect(line).toMatch(/; sitting since .+–1 Mar \(inferred\)$/);
  });

  it('not before it can have begun', () => {
    expect(found('sitting', unseen, '2026-03-02')).toEqual([]);
  });

  it('as the incubator warms the eggs, each by its own clock', () => {
    // e1 … e3 were sat on from the 3rd, e4 from the 4th; the days in the incubator go on from there.
    expect(
      found('sitting', `${FOUR_EGGS}date: 2026-03-06, fostered: {incubator: all}`, '2026-03-08', 'incubator'),
    ).toEqual(['03-03…03-04; warm since 3–4 Mar']);
  });

  it('the hatch window of the eggs that may hatch', () => {
    expect(found('hatchWindow', FOUR_EGGS, '2026-03-05')).toEqual(['03-14…03-17; sitting since 3 Mar']);
    // Without e4, which began a day later, it ends a day sooner.
    expect(found('hatchWindow', `${FOUR_EGGS}date: 2026-03-09, candled: {clear: e4}`, '2026-03-09')).toEqual([
      '03-14…03-16; sitting since 3 Mar',
    ]);
    expect(found('hatchWindow', `${FOUR_EGGS}date: 2026-03-09, candled: {clear: all}`, '2026-03-09')).toEqual(
      [],
    );
    expect(found('hatchWindow', `${FOUR_EGGS}date: 2026-03-13, pipped: e2`, '2026-03-13')).toEqual([
      '03-13…03-17; sitting since 3 Mar, e2 pipped 13 Mar',
    ]);
  });

  it('what became of eggs that did not hatch is asked once their window is past', () => {
    const asked = '03-19…03-21; sitting since 3 Mar; hatching was expected until 17 Mar; HF-1/1/e1 HF-1/1/e2';
    expect(found('leftOver', FOUR_EGGS, '2026-03-17')).toEqual([]);
    expect(found('leftOver', FOUR_EGGS, '2026-03-18')).toEqual([`${asked} HF-1/1/e3 HF-1/1/e4`]);
    // Of one that lay with chicks: not before the last of these died or was taken to another pair.
    const until = (end: string) => found('leftOver', beside(`${THREE_CHICKS}${end}`, ''), '2026-03-25');
    const words = 'sitting since 3 Mar; hatching was expected until 17 Mar';
    expect(until('date: 2026-03-18, died: all')).toEqual([`03-19…03-21; ${words}; HF-1/1/e4`]);
    expect(until('date: 2026-03-22, fostered: {HF-2: [c1, c2, c3]}')).toEqual([
      `03-22; ${words}, young were here until 22 Mar; HF-1/1/e4`,
    ]);
  });
});

describe('the lamp', () => {
  const told = 'date: 2026-03-09, candled: {fertile: [HF-1/1/e1, HF-1/1/e2, HF-1/1/e3, HF-1/1/e4]}\n';
  const other = `
    date: 2026-03-07, laid: 1
    date: 2026-03-08, laid: 1, fostered: {HF-1: e1}
    date: 2026-03-10, fostered: {HF-1: e2}
  `;

  it('counts from the sitting, also when every egg is told', () => {
    expect(found('lamp', FOUR_EGGS, '2026-03-05')).toEqual(['03-03; sitting since 3 Mar']);
    expect(found('lamp', `${FOUR_EGGS}${told}`, '2026-03-09')).toEqual(['03-03; sitting since 3 Mar']);
    expect(found('lamp', 'date: 2026-03-01, laid: 1', '2026-03-01')).toEqual([]);
  });

  it('of eggs that were brought counts from their own days, whether the others are told or not', () => {
    expect(found('lamp', beside(FOUR_EGGS, other), '2026-03-10')).toEqual([
      '03-03; sitting since 3 Mar',
      '03-08…03-10; sat on since 8–10 Mar; HF-2/1/e1 HF-2/1/e2',
    ]);
    expect(found('lamp', beside(`${FOUR_EGGS}${told}`, other), '2026-03-10')).toEqual([
      '03-08…03-10; sat on since 8–10 Mar; HF-2/1/e1 HF-2/1/e2',
    ]);
  });

  const pulled = ['01', '02', '03', '04']
    .map((on, i) => `date: 2026-03-${on}, laid: 1, pulled: e${i + 1}\n`)
    .join('');

  it('of a clutch that was set back whole counts from the sitting on it', () => {
    expect(found('lamp', `${pulled}date: 2026-03-05, set: {HF-1: all}, sitting`, '2026-03-06')).toEqual([
      '03-03…03-05; sitting since 3–5 Mar',
    ]);
  });

  it('of a clutch that was set under a hen on dummies counts from that day', () => {
    const log = `${pulled}date: 2026-03-04, sitting\ndate: 2026-03-06, set: {HF-1: all}`;
    expect(found('lamp', log, '2026-03-07')).toEqual(['03-06; sat on since 6 Mar']);
  });
});

describe('from the young', () => {
  it('the first and the last hatching', () => {
    expect(found('firstHatching', fourth, '2026-03-18')).toEqual(['03-15; first hatched 15 Mar']);
    expect(found('lastHatching', fourth, '2026-03-18')).toEqual(['03-17; last hatched 17 Mar']);
    expect(found('firstHatching', FOUR_EGGS, '2026-03-18')).toEqual([]);
  });

  it('the last hatching of those that are brooded, of each species by itself while some of it live', () => {
    const eggs = [1, 2, 3, 4].map((n) => `HF-2/1/e${n}`).join(', ');
    const guests = (log: string) => ({
      ...species(),
      ...{
        'species/dale-finch.yaml': 'species: dale finch\nscientific: Exemplum vallicola\nbrooding: 12-14\n',
      },
      'HF-1': pair('HF-1', 'dale finch', `${fourth}date: 2026-03-20, hatched: [${eggs}]\n${log}`),
      'HF-2': pair('HF-2', 'hill finch', 'date: 2026-03-06, laid: 4, fostered: {HF-1: all}'),
    });
    const young = 'HF-2/1/c1 HF-2/1/c2 HF-2/1/c3 HF-2/1/c4';
    expect(found('brooded', guests(''), '2026-03-20')).toEqual([
      '03-17; last hatched 17 Mar; HF-1/1/c1 HF-1/1/c2 HF-1/1/c3 HF-1/1/c4',
      `03-18…03-20; last hatched 18–20 Mar; ${young}`,
    ]);
    const died = guests(`date: 2026-03-21, died: [${young.replaceAll(' ', ', ')}]`);
    expect(found('brooded', died, '2026-03-21')).toEqual(['03-17; last hatched 17 Mar']);
    // 17 March + 12–14 d of the dale finch, 18–20 March + 7–9 d of the hill finch.
    const nights = agenda(guests(''), '2026-03-20', 14).filter(({ task }) => task === 'warm-nights');
    expect(nights.map(({ from, to }) => days({ from, to: to ?? from }))).toEqual([
      '03-25…03-29',
      '03-29…03-31',
    ]);
    const [item] = agenda(died, '2026-03-21', 14).filter(({ task }) => task === 'warm-nights');
    expect(days({ from: item?.from ?? 0, to: item?.to ?? 0 })).toBe('03-29…03-31');
  });

  it('nestlings without a ring, a line for each day of hatching', () => {
    expect(found('unringed', `${fourth}date: 2026-03-22, ringed: {c1: HF-01}`, '2026-03-22')).toEqual([
      '03-15; hatched 15 Mar; HF-1/1/c2 HF-1/1/c3',
      '03-17; hatched 17 Mar; HF-1/1/c4',
    ]);
  });

  it('no ring is asked for who left the nest', () => {
    expect(found('unringed', ALL_OUT, '2026-04-05')).toEqual([]);
  });

  it('the day of hatching goes before whose they are', () => {
    const guests = beside(
      'date: 2026-03-01, laid: 1, sitting\ndate: 2026-03-13, after: 2026-03-12, hatched: e1\n',
      'date: 2026-02-27, laid: 1, sitting\ndate: 2026-03-11, after: 2026-03-10, hatched: e1\ndate: 2026-03-14, fostered: {HF-1: c1}\n',
    );
    expect(found('unringed', guests, '2026-03-15')).toEqual([
      '03-11; hatched 11 Mar; HF-2/1/c1',
      '03-13; hatched 13 Mar; HF-1/1/c1',
    ]);
  });

  it('ringed nestlings by the day of ringing', () => {
    const rings = `${fourth}date: 2026-03-22, ringed: {c1: HF-01}\ndate: 2026-03-24, ringed: {c4: HF-04}\n`;
    expect(found('ringing', rings, '2026-03-24')).toEqual([
      '03-22; ringed 22 Mar; HF-1/1/c1',
      '03-24; ringed 24 Mar; HF-1/1/c4',
    ]);
    expect(found('ringing', `${rings}date: 2026-04-05, fledged: c1`, '2026-04-05')).toEqual([
      '03-24; ringed 24 Mar; HF-1/1/c4',
    ]);
  });

  it('the days of fledging from the eldest to the youngest', () => {
    expect(found('fledgeWindow', fourth, '2026-03-20')).toEqual(['04-04…04-08; hatched 15–17 Mar']);
    expect(found('fledgeWindow', ALL_OUT, '2026-04-05')).toEqual([]);
    // Once some are out, who is not is named.
    const two = `${THREE_CHICKS}date: 2026-04-05, fledged: [c1, c3]`;
    expect(found('fledgeWindow', two, '2026-04-05')[0]).toMatch(/; HF-1\/1\/c2$/);
    const heard =
      'date: 2026-03-01, sitting\ndate: 2026-03-15, heard\ndate: 2026-03-20, checked: {chicks: 2}';
    expect(found('fledgeWindow', `${heard}\ndate: 2026-04-05, fledged: c1`, '2026-04-05')[0]).toMatch(/c2$/);
  });

  it('who was brought to another nest leaves that one, not the one it hatched in', () => {
    const given = `${THREE_CHICKS}date: 2026-03-20, fostered: {HF-2: c1}\n`;
    const elsewhere = beside(
      `${given}date: 2026-04-05, fledged: [c2, c3]`,
      'date: 2026-03-10, paired\ndate: 2026-04-03, fledged: HF-1/1/c1',
    );
    expect(found('firstFledging', elsewhere, '2026-04-06')).toEqual(['04-05; first fledged 5 Apr']);
  });

  it('who was taken into the hand leaves no nest, whoever feeds itself on the day on which it flies does', () => {
    const hand = `${THREE_CHICKS}date: 2026-03-25, fostered: {hand: c1}\ndate: 2026-04-05, fledged: c1\n`;
    expect(found('firstFledging', hand, '2026-04-06')).toEqual([]);
    const flown = `${THREE_CHICKS}date: 2026-04-05, fledged: c1, independent: c1`;
    expect(found('firstFledging', flown, '2026-04-06')).toEqual(['04-05; first fledged 5 Apr']);
  });

  it('the first fledging at once, the last when the nest is empty', () => {
    const first = `${fourth}date: 2026-04-04, fledged: [c1, c2]\n`;
    expect(found('firstFledging', first, '2026-04-04')).toEqual(['04-04; first fledged 4 Apr']);
    expect(found('lastFledging', first, '2026-04-04')).toEqual([]);
    expect(found('firstFledging', `${first}date: 2026-04-07, fledged: all`, '2026-04-07')).toEqual([
      '04-04; first fledged 4 Apr',
    ]);
    expect(found('lastFledging', `${first}date: 2026-04-07, fledged: all`, '2026-04-07')).toEqual([
      '04-07; last fledged 7 Apr',
    ]);
  });

  it('the young that are still fed', () => {
    expect(found('dependents', fourth, '2026-03-20')).toEqual(['03-15…03-17; hatched 15–17 Mar']);
    expect(found('dependents', `${ALL_OUT}date: 2026-04-20, independent: all`, '2026-04-20')).toEqual([]);
  });
});

describe('from an empty nest', () => {
  // Common practice.
  it('is believed after three nights', () => expect(NIGHTS_OUT).toBe(3));

  const nights = (...said: string[]) =>
    ALL_OUT + said.map((where, i) => `date: 2026-04-0${6 + i}, roosting: ${where}\n`).join('');

  it('the morning after the third night in a row', () => {
    const usual = '04-15; last fledged 5 Apr + 10 d in which young come back to sleep';
    expect(found('nestEmpty', nights('out', 'out'), '2026-04-09')).toEqual([usual]);
    expect(found('nestEmpty', nights('out', 'out', 'out'), '2026-04-09')).toEqual([
      '04-09; 3 nights with nobody in the nest, to 8 Apr',
    ]);
  });

  it('three nights are in a row in whatever order the young were seen', () => {
    const seen = [
      ['2026-04-06', 'c1'],
      ['2026-04-08', 'c1'],
      ['2026-04-07', 'c2'],
    ];
    const dusk = seen.map(([night, who]) => `date: ${night}, roosting: {out: ${who}}\n`).join('');
    expect(found('nestEmpty', ALL_OUT + dusk, '2026-04-09')).toEqual([
      '04-09; 3 nights with nobody in the nest, to 8 Apr',
    ]);
  });

  it('a night in the nest after three nights out takes it back', () => {
    expect(found('nestEmpty', nights('out', 'out', 'out', 'nest'), '2026-04-10')).toEqual([
      '04-15; last fledged 5 Apr + 10 d in which young come back to sleep',
    ]);
  });

  it('is not looked for before three nights are over since one was seen in it', () => {
    const late = `${ALL_OUT}date: 2026-04-13, roosting: nest\n`;
    expect(found('nestEmpty', late, '2026-04-14')).toEqual([
      '04-17; last fledged 5 Apr + 10 d in which young come back to sleep, seen in it on 13 Apr',
    ]);
  });

  it('without looks, after the nights in which the species comes back', () => {
    expect(found('nestEmpty', ALL_OUT, '2026-04-06')).toEqual([
      '04-15; last fledged 5 Apr + 10 d in which young come back to sleep',
    ]);
    expect(anchors.nestEmpty(brood(hillFinches(ALL_OUT, { 'roosting-back': '' }), '2026-04-06'))).toEqual([]);
  });
});

describe('eggs given to another species', () => {
  const star = `
    date: 2026-03-26, laid: 1
    date: 2026-03-29, laid: 3, sitting
    date: 2026-04-08, fostered: {B-1: all}`;
  const files = {
    A: pair('A-1', 'star finch', star),
    B: pair(
      'B-1',
      'Bengalese finch',
      `date: 2026-03-18, laid: 1
       date: 2026-03-22, laid: 4, sitting: both
       date: 2026-04-06, hatched: 3
       date: 2026-04-06, lost: {clear: 2}`,
    ),
  };
  const task = (name: string, on: string) =>
    agenda(files, on).find((item) => item.task === name && item.pair === 'B-1');

  it('are expected under their own name, counted from when they were sat on', () => {
    const hatch = task('hatch', '2026-04-10');
    expect(hatch?.species).toBe('star finch');
    expect(hatch?.who).toEqual(['A-1/1/e1', 'A-1/1/e2', 'A-1/1/e3', 'A-1/1/e4']);
    expect(hatch?.why).toBe('sat on since 28–29 Mar + 12–14 d');
  });

  it('are asked after as what they are', () => {
    const unhatched = agenda(
      { ...files, B: pair('B-1', 'Bengalese finch', 'date: 2026-03-18, paired') },
      '2026-04-16',
    ).find((item) => item.task === 'unhatched');
    expect([unhatched?.pair, unhatched?.species]).toEqual(['B-1', 'star finch']);
    expect(unhatched?.why).toMatch(/^sat on since 28–29 Mar; hatching was expected until/);
  });
});
