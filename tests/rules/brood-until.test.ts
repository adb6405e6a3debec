import { describe, expect, it } from 'vitest';
import { formatDay } from '../../src/days.ts';
import { type Brood, isNeverSeen, mayHoldChicksUntil, placeOf } from '../../src/rules/brood.ts';
import { brood, FOUR_EGGS, hillFinches, THREE_CHICKS } from './agenda/hill-finch.ts';

// The window of the four eggs is 14 … 17 March.
describe('the last day on which there may be chicks that nobody saw', () => {
  const until = (more: string, on: string, where: Brood['where'] = 'nest', but = {}) => {
    const day = mayHoldChicksUntil(brood(hillFinches(`${FOUR_EGGS}${more}`, but), on, where));
    return day === null ? null : formatDay(day);
  };

  it('is a day before nothing comes of the last egg any more: the longest sitting and a fortnight', () => {
    expect(until('', '2026-03-20')).toBe('2026-03-30');
  });

  it('is the last of the window once somebody looked after it; that day itself is none after it', () => {
    expect(until('date: 2026-03-18, checked: {eggs: 4}', '2026-03-20')).toBe('2026-03-17');
    expect(until('date: 2026-03-17, checked: {eggs: 4}', '2026-03-20')).toBe('2026-03-30');
  });

  it('is not told by a look into the pair’s other nest', () => {
    const low = FOUR_EGGS.replaceAll('laid: 1', 'site: basket, laid: 1');
    const looked = (site: string) => {
      const files = hillFinches(`${low}date: 2026-03-18, site: ${site}, checked`);
      return formatDay(mayHoldChicksUntil(brood(files, '2026-03-20')) ?? 0);
    };
    expect([looked('basket'), looked('box')]).toEqual(['2026-03-17', '2026-03-30']);
  });

  it('is that by which they would have left the nest where nobody ever looks', () => {
    // 17 March and 22 d in the nest.
    expect(until('', '2026-03-20', 'nest', { 'nest-looks': 'never' })).toBe('2026-04-08');
    expect(until('date: 2026-03-16, heard', '2026-03-20', 'nest', { 'nest-looks': 'never' })).toBe(
      '2026-03-17',
    );
  });

  it('is the last of the window where chicks were seen, or whose eggs lie in an incubator', () => {
    expect(until('date: 2026-03-15, hatched: e1', '2026-03-20')).toBe('2026-03-17');
    const set = 'date: 2026-03-06, set: {incubator: all}';
    expect(until(set, '2026-03-20', 'incubator')).toBe('2026-03-17');
    expect(until(set, '2026-03-20', 'incubator', { 'nest-looks': 'never' })).toBe('2026-03-17');
  });

  it('is none where no egg may hatch', () => {
    expect(until('date: 2026-03-10, candled: {clear: all}', '2026-03-20')).toBeNull();
  });
});

it('nobody sees a nest that is never looked into, before its young are heard; an incubator is seen', () => {
  const never = (more: string, where: Brood['where'] = 'nest') =>
    isNeverSeen(brood(hillFinches(`${FOUR_EGGS}${more}`, { 'nest-looks': 'never' }), '2026-03-16', where));
  expect(never('')).toBe(true);
  expect(never('date: 2026-03-16, heard')).toBe(false);
  expect(never('date: 2026-03-06, set: {incubator: all}', 'incubator')).toBe(false);
  expect(isNeverSeen(brood(hillFinches(FOUR_EGGS), '2026-03-16'))).toBe(false);
});

describe('where those are whom a task is about', () => {
  const place = (
    more: string,
    who: (one: Brood) => Parameters<typeof placeOf>[1],
    where: Brood['where'] = 'nest',
  ) => {
    const known = brood(hillFinches(`${THREE_CHICKS}${more}`), '2026-03-20', where);
    return placeOf({ ...known, housing: where === 'nest' ? 'flight 2' : known.housing }, who(known));
  };

  it('is where they all live, else where the nest is', () => {
    const out = 'date: 2026-03-18, moved: {c1: nursery, c2: nursery}';
    const young =
      (...refs: string[]) =>
      (one: Brood) =>
        one.young.filter(({ ref }) => refs.includes(ref ?? ''));
    expect(place(out, young('c1', 'c2'))).toBe('nursery');
    expect(place(out, (one) => [...young('c1')(one), ...one.eggs])).toBe('flight 2');
    expect(place(out, () => null)).toBe('flight 2');
  });

  it('is the incubator or the hand for what is there', () => {
    expect(place('date: 2026-03-18, fostered: {hand: c1}', (one) => one.young, 'hand')).toBe('hand');
    expect(place('date: 2026-03-15, set: {incubator: e4}', () => null, 'incubator')).toBe('incubator');
  });
});
