import type { Day } from '../../days.ts';
import { independence } from '../../room/lives.ts';
import type { Bird, Chick, Clutch } from '../../room/model.ts';
import type { IntervalLife } from '../../statistics/interval-censored.ts';
import { lastSign } from '../stock/life.ts';

/** Entered before any age: it was seen from its hatching on. */
const FROM_HATCHING = -1;

/** A chick's life by age in days up to independence: dead in (left, right], or last known alive at left. */
export interface ChickLife extends IntervalLife {
  bird: Chick;
  /** In which it hatched. */
  clutch: Clutch;
}

/** The life of a chick of this room; null where it stands for uncounted ones. */
export function chickLife(bird: Chick, day: Day): ChickLife | null {
  const { hatched, firstSeen, fate, clutch, placeholder } = bird;
  if (placeholder) return null;
  const age = (on: Day) => Math.max(0, on - hatched.to);
  const end = independence(clutch.pair.profile).high;
  const seen = age(firstSeen);
  const entry = seen === 0 ? FROM_HATCHING : seen;
  const alive = (until: number): ChickLife => {
    return { bird, clutch, entry, left: Math.min(until, end), right: Number.POSITIVE_INFINITY };
  };
  if (fate?.kind === 'gone') return alive(age(fate.day));
  if (fate?.kind !== 'died') return alive(age(lastAlive(bird, day)));
  const right = age(fate.day);
  const known = Math.max(age(fate.span.from) - 1, lastAlive(bird, fate.day - 1) - hatched.to);
  const left = Math.min(right - 1, known);
  return right > end ? alive(Math.max(0, left)) : { bird, clutch, entry, left, right };
}

/**
 * The last day on which it is known to have been alive: something was written of it, or its nest was looked into, or a
 * dead one taken out, while it lay there and nobody missed it.
 */
function lastAlive(bird: Bird, day: Day): Day {
  const nestling = bird.fledged?.day ?? day;
  const looks = bird.stays.flatMap(({ from, nest, clutch }, i) => {
    if (nest === null) return [];
    const until = Math.min(nestling, bird.stays[i + 1]?.from ?? day);
    const missed = clutch?.mismatches.find(({ what, known, seen }) => what === 'chicks' && seen < known)?.day;
    const last = missed === undefined ? until : Math.min(until, missed - 1);
    const seen = [
      lastIn(nest.looks, from, last),
      lastIn(nest.events, from, last, ({ key }) => key === 'died'),
    ];
    return seen.flatMap((on) => on ?? []);
  });
  return Math.max(lastSign(bird), bird.independent?.day ?? Number.NEGATIVE_INFINITY, ...looks);
}

/** The last day, from one up to another, of a list in order of days; null where there is none. */
function lastIn<T extends { day: Day }>(
  list: readonly T[],
  from: Day,
  to: Day,
  wanted: (one: T) => boolean = () => true,
): Day | null {
  let low = 0;
  let high = list.length;
  while (low < high) {
    const middle = (low + high) >>> 1;
    if ((list[middle] as T).day <= to) low = middle + 1;
    else high = middle;
  }
  for (let i = low - 1; i >= 0; i--) {
    const one = list[i] as T;
    if (one.day < from) return null;
    if (wanted(one)) return one.day;
  }
  return null;
}
