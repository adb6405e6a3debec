import { describe, expect, it } from 'vitest';
import { fullRef } from '../../../src/room/model.ts';
import * as all from '../../../src/rules/agenda/anchors.ts';
import { days } from '../../room/facts.ts';
import { ALL_OUT, brood, FOUR_EGGS, hillFinches, THREE_CHICKS } from './hill-finch.ts';

const { NIGHTS_OUT, ...anchors } = all;

type Name = keyof typeof anchors;

/** Where a task starts from on a day: the days, the reason, whom it is about. */
function found(name: Name, log: string, on: string, where?: 'incubator' | 'hand'): string[] {
  return anchors[name](brood(hillFinches(log), on, where)).map(({ span, says, who }) =>
    [days(span), says, ...(who === null ? [] : [who.map(fullRef).join(' ')])].join('; '),
  );
}

const unseen = FOUR_EGGS.replace(', sitting: both', '');
const fourth = `${THREE_CHICKS}date: 2026-03-17, after: 2026-03-16, hatched: e4\n`;

describe('from the eggs', () => {
  it('the last egg, while something may still be laid', () => {
    expect(found('lastEgg', FOUR_EGGS, '2026-03-04')).toEqual(['03-04; e4 laid 4 Mar']);
    expect(found('lastEgg', THREE_CHICKS, '2026-03-15')).toEqual([]);
    expect(found('lastEgg', 'date: 2026-03-01, laid: 3+', '2026-03-02')).toEqual([]);
    expect(
      found('lastEgg', 'date: 2026-03-01, laid: 1\ndate: 2026-03-02, lost: {broken: e1}', '2026-03-02'),
    ).toEqual([]);
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
    expect(found('stored', log, '2026-03-02')).toEqual(['03-01; e1, e2 pulled 1 Mar; HF-1/1/e1 HF-1/1/e2']);
    expect(found('stored', FOUR_EGGS, '2026-03-04')).toEqual([]);
  });
});

describe('from the sitting', () => {
  it('as it was seen', () => {
    expect(found('sitting', FOUR_EGGS, '2026-03-05')).toEqual(['03-03; sitting since 3 Mar']);
  });

  it('as it follows from the egg, and says so', () => {
    expect(found('sitting', unseen, '2026-03-05')).toEqual(['03-03; sitting since 3 Mar (inferred from e3)']);
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
  });
});

describe('from the young', () => {
  it('the first and the last hatching', () => {
    expect(found('firstHatching', fourth, '2026-03-18')).toEqual(['03-15; first hatched 15 Mar']);
    expect(found('lastHatching', fourth, '2026-03-18')).toEqual(['03-17; last hatched 17 Mar']);
    expect(found('firstHatching', FOUR_EGGS, '2026-03-18')).toEqual([]);
  });

  it('nestlings without a ring, a line for each day of hatching', () => {
    expect(found('unringed', `${fourth}date: 2026-03-22, ringed: {c1: HF-01}`, '2026-03-22')).toEqual([
      '03-15; hatched 15 Mar; HF-1/1/c2 HF-1/1/c3',
      '03-17; hatched 17 Mar; HF-1/1/c4',
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
  });

  it('the first fledging at once, the last when the nest is empty', () => {
    const first = `${fourth}date: 2026-04-04, fledged: [c1, c2]\n`;
    expect(found('firstFledging', first, '2026-04-04')).toEqual(['04-04; first fledged 4 Apr']);
    expect(found('lastFledging', first, '2026-04-04')).toEqual([]);
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
    expect(found('nestEmpty', nights('out', 'out'), '2026-04-09')).toEqual([]);
    expect(found('nestEmpty', nights('out', 'out', 'out'), '2026-04-09')).toEqual([
      '04-09; 3 nights with nobody in the nest, to 8 Apr',
    ]);
  });

  it('a night in the nest after three nights out takes it back', () => {
    expect(found('nestEmpty', nights('out', 'out', 'out', 'nest'), '2026-04-10')).toEqual([]);
  });

  it('without looks, after the nights in which the species comes back', () => {
    expect(found('nestEmpty', ALL_OUT, '2026-04-06')).toEqual([
      '04-15; last fledged 5 Apr + 10 d in which young come back to sleep',
    ]);
    expect(anchors.nestEmpty(brood(hillFinches(ALL_OUT, { 'roosting-back': '' }), '2026-04-06'))).toEqual([]);
  });
});
