import { describe, expect, it } from 'vitest';
import type { Bird } from '../../../src/room/model.ts';
import {
  doubtOf,
  lastStanding,
  standingOf,
  type Weighing,
  weighingsOf,
} from '../../../src/rules/growth/weighings.ts';
import { profileOf } from '../../../src/rules/profile-of.ts';
import { type Files, room } from '../../rooms.ts';
import { hillFinches, THREE_CHICKS } from '../agenda/hill-finch.ts';

const masses = { 'adult-mass': '12', 'hatch-mass': '1' };
const known = (more: string, but: Record<string, string> = masses) =>
  hillFinches(`${THREE_CHICKS}\n${more}`, but);

/** The first chick of the room, which hatched on 15 March, and its species. */
function chick(files: Files, on = '2026-05-01') {
  const stood = room(files, on);
  const bird = stood.birds.find(({ ref }) => ref === 'c1');
  if (bird === undefined) throw new Error('no chick');
  return { bird, profile: profileOf(stood, bird) };
}

function grams(files: Files): number[] {
  const { bird, profile } = chick(files);
  return weighingsOf(bird, profile).map((one) => one.grams);
}

describe('weights that can be compared', () => {
  it('are one a day, oldest first', () => {
    const log = 'date: 2026-03-20, weighed: {c1: 3.5}\ndate: 2026-03-19, weighed: {c1: 2.9}';
    expect(grams(known(log))).toEqual([2.9, 3.5]);
  });

  it('leave out a day of which two looks differ by more than a full crop', () => {
    const log = 'date: 2026-03-20, weighed: {c1: 3.5}\ndate: 2026-03-20, weighed: {c1: 4.5}';
    expect(grams(known(log))).toEqual([]);
    expect(grams(known(log.replace('4.5', '3.8')))).toEqual([3.8]);
  });

  it('leave out slips of the pen', () => {
    const log = 'date: 2026-03-20, weighed: {c1: 200}\ndate: 2026-03-21, weighed: {c1: 0.2}';
    expect(grams(known(log))).toEqual([]);
  });
});

describe('a nestling beside its species', () => {
  it('is put beside the curve at the ages that it may have', () => {
    const { bird, profile } = chick(known('date: 2026-03-20, weighed: {c1: 3.5}'));
    expect(lastStanding(bird, profile)).toMatchObject({ grams: 3.5, age: { low: 5, high: 5 } });
  });

  it('is from the day on which it hatched; one that came from elsewhere is no nestling here, whatever its age', () => {
    const day0 = chick(known('date: 2026-03-15, weighed: {c1: 1.1}'));
    expect(lastStanding(day0.bird, day0.profile)).toMatchObject({ grams: 1.1, age: { low: 0, high: 0 } });
    const list =
      'birds:\n  - {id: B, species: hill finch, hatched: 2026-03-15, log: [{date: 2026-03-20, arrived: cage 1, weighed: 6}]}\n';
    const stood = room({ ...known(''), 'birds.yaml': list }, '2026-05-01');
    const bought = stood.birds.find(({ id }) => id === 'B') as Bird;
    expect(bought.weights).toHaveLength(1);
    expect(lastStanding(bought, profileOf(stood, bought))).toBeNull();
  });

  it('is not, once it has left the nest, nor where age or masses are not known', () => {
    const log = 'date: 2026-04-05, fledged: all\ndate: 2026-04-06, weighed: {c1: 11}';
    const out = chick(known(log));
    expect(lastStanding(out.bird, out.profile)).toBeNull();
    const both = chick(known(`date: 2026-03-20, weighed: {c1: 3.5}\n${log}`));
    expect(lastStanding(both.bird, both.profile)).toMatchObject({ grams: 3.5 });
    const unknown = chick(known('date: 2026-03-20, weighed: {c1: 3.5}', {}));
    expect(lastStanding(unknown.bird, unknown.profile)).toBeNull();
    expect(standingOf(unknown.bird, null, { day: 0, grams: 3.5 })).toBeNull();
    expect(doubtOf(unknown.bird, null, { day: 0, grams: 3500 })).toBeNull();
  });
});

describe('a weight that cannot be', () => {
  const doubt = (log: string, but = masses as Record<string, string>) => {
    const { bird, profile } = chick(known(log, but));
    const [weight] = bird.weights;
    return weight === undefined ? 'not weighed' : doubtOf(bird, profile, weight);
  };

  it('is far from the curve in the nest, and far from the adult mass out of it', () => {
    expect(doubt('date: 2026-03-20, weighed: {c1: 3.5}')).toBeNull();
    expect(doubt('date: 2026-03-20, weighed: {c1: 35}')?.valueOf()).toMatchObject({
      high: expect.any(Number),
    });
    const out = 'date: 2026-04-05, fledged: all\ndate: 2026-04-06, weighed: {c1: 1.1}';
    expect(doubt(out)).toEqual({ low: 12, high: 12 });
  });

  it('is a lost decimal point, though the curve itself would let it pass', () => {
    // Twice the adult 12 g is 24 g; at 16 days the curve alone goes on to 2.5 times its upper edge.
    expect(doubt('date: 2026-03-31, weighed: {c1: 23}')).toBeNull();
    expect(doubt('date: 2026-03-31, weighed: {c1: 25}')).not.toBeNull();
  });

  it('of a grown bird, bred here or not, is one beyond two and a half times its kind', () => {
    const bought = (grams: number) => {
      const list = `birds:\n  - {id: B, species: hill finch, log: [{date: 2026-01-01, arrived: cage 1}, {date: 2026-02-01, weighed: ${grams}}]}\n`;
      const stood = room({ ...known(''), 'birds.yaml': list }, '2026-05-01');
      const bird = stood.birds.find(({ id }) => id === 'B') as Bird;
      return doubtOf(bird, profileOf(stood, bird), bird.weights[0] as Weighing);
    };
    expect([29, 31].map(bought)).toEqual([null, { low: 12, high: 12 }]);
    const flown = (grams: number, fledged: string) =>
      doubt(`date: ${fledged}, fledged: all\ndate: 2026-04-06, weighed: {c1: ${grams}}`);
    expect([29, 31].map((grams) => flown(grams, '2026-04-05'))).toEqual([null, { low: 12, high: 12 }]);
    // From the very day on which it left the nest, however late it is told.
    expect(flown(29, '2026-04-06')).toBeNull();
    expect(doubt('date: 2026-03-31, weighed: {c1: 29}\ndate: 2026-04-06, fledged: all')).not.toBeNull();
  });

  it('of a young bird that was paired without a word of its leaving the nest is that of a grown one', () => {
    const own =
      'pair: HF-9\nspecies: hill finch\ncock: HF-1/1/c1\nlog:\n  - {date: 2026-10-01, paired}\n  - {date: 2026-10-02, weighed: {cock: 29}}\n';
    const { bird, profile } = chick(
      { ...known('date: 2026-03-31, weighed: {c1: 29}'), 'HF-9': own },
      '2026-10-03',
    );
    expect(bird).toMatchObject({ fledged: null, independent: expect.anything() });
    const doubted = (on: number) => doubtOf(bird, profile, { day: on, grams: 29 }) !== null;
    expect(bird.weights.map((weight) => doubted(weight.day))).toEqual([true, false]);
    // As a grown one it counts from the very day on which it was paired.
    expect(doubted(bird.independent?.day ?? 0)).toBe(false);
  });

  it('of a chick whose kind has no curve is beyond all from hatching to twice its parents', () => {
    // Where no fledging age is known the pace is not known either.
    const at = (grams: number, but: Record<string, string>) =>
      doubt(`date: 2026-03-20, weighed: {c1: ${grams}}`, { ...but, fledging: '' });
    expect([0.5, 23].map((grams) => at(grams, masses))).toEqual([null, null]);
    expect(at(25, masses)).toEqual({ low: 1, high: 12 });
    expect(at(0.3, masses)).toEqual({ low: 1, high: 12 });
    expect(at(0.3, { 'adult-mass': '12' })).toEqual({ low: 12 * 0.065, high: 12 });
  });

  it('is anything where no mass is known', () => {
    expect(doubt('date: 2026-03-20, weighed: {c1: 3500}', {})).toBeNull();
  });
});
