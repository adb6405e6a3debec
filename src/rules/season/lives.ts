import type { Day } from '../../days.ts';
import { independence } from '../../room/lives.ts';
import type { Bird } from '../../room/model.ts';
import type { IntervalLife } from '../../statistics/interval-censored.ts';
import { lastSign } from '../stock/life.ts';

/** Entered before any age: it was seen from its hatching on. */
const FROM_HATCHING = -1;

/** A chick's life by age in days up to independence: dead in (left, right], or last known alive at left. */
export interface ChickLife extends IntervalLife {
  bird: Bird;
}

/** The life of a chick of this room; null where nobody knows when it hatched, or it stands for uncounted ones. */
export function lifeOf(bird: Bird, day: Day): ChickLife | null {
  const { hatched, firstSeen, fate, clutch, placeholder } = bird;
  if (hatched === null || clutch === null || placeholder) return null;
  const age = (on: Day) => Math.max(0, on - hatched.to);
  const end = independence(clutch.pair.profile).high;
  const seen = age(firstSeen ?? hatched.to);
  const entry = seen === 0 ? FROM_HATCHING : seen;
  const alive = (until: number): ChickLife => {
    return { bird, entry, left: Math.min(until, end), right: Number.POSITIVE_INFINITY };
  };
  if (fate?.kind === 'gone') return alive(age(fate.day));
  if (fate?.kind !== 'died') return alive(age(lastAlive(bird, day)));
  const right = age(fate.day);
  const known = Math.max(age(fate.span.from) - 1, lastAlive(bird, fate.day - 1) - hatched.to);
  const left = Math.min(right - 1, known);
  return right > end ? alive(Math.max(0, left)) : { bird, entry, left, right };
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
    const deaths = nest.events.filter(({ key }) => key === 'died');
    return [...nest.looks, ...deaths]
      .map((look) => look.day)
      .filter((on) => on >= from && on <= until && (missed === undefined || on < missed));
  });
  return Math.max(lastSign(bird), bird.independent?.day ?? Number.NEGATIVE_INFINITY, ...looks);
}
