import { describe, expect, it } from 'vitest';
import {
  afterAnchor,
  afterWindow,
  beforeHatch,
  days,
  FROM_FIRST,
  plus,
  SAFE_EARLY,
} from '../../../src/rules/agenda/windows.ts';
import { day } from '../../rooms.ts';
import { brood, FOUR_EGGS, hillFinches } from './hill-finch.ts';

/** Something that happened on the 10th, 11th or 12th of a month. */
const anchor = { span: { from: 10, to: 12 }, says: 'hatched 10–12', who: null };

describe('the days of a task', () => {
  const of = (window: { from: number; to: number | null }) => [window.from, window.to];

  it('are judged by the latest that it can have been, watched from the earliest, put out before the earliest', () => {
    expect(of(days(5, 6)(anchor))).toEqual([17, 18]);
    expect(of(days(5, 6, SAFE_EARLY)(anchor))).toEqual([15, 18]);
    expect(of(days(-2, 0, FROM_FIRST)(anchor))).toEqual([8, 10]);
  });

  it('may have no end', () => {
    expect(of(days(5, null)(anchor))).toEqual([17, null]);
  });

  it.each([
    [5, 6, '+ 5–6 d'],
    [5, 5, '+ 5 d'],
    [5, null, '+ 5 d'],
    [0, 3, '+ 0–3 d'],
    [-2, null, '− 2 d'],
  ])('from %s to %s are told as days that are added', (low, high, words) => {
    expect(plus(low, high)).toBe(words);
  });
});

describe('a task that nobody did is shown', () => {
  it('for some days after its window, or after its first day where it has no last', () => {
    expect(afterWindow(2)(anchor, days(5, 6)(anchor))).toBe(20);
    expect(afterWindow(2)(anchor, days(5, null)(anchor))).toBe(19);
  });

  it('for some days after what it is counted from', () => {
    expect(afterAnchor(4)(anchor)).toBe(16);
  });

  it('until some days before the hatch window, and on where none is foreseen', () => {
    const sat = brood(hillFinches(FOUR_EGGS), '2026-03-08');
    expect(beforeHatch(3)(anchor, days(5, 6)(anchor), sat)).toBe(day('2026-03-14') - 3);
    expect(beforeHatch(3)(anchor, days(5, 6)(anchor), { ...sat, hatch: null })).toBeNull();
  });
});
