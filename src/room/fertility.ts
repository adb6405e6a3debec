import type { Day } from '../days.ts';
import { eggClock } from './clock.ts';
import type { Egg, Lamp } from './model.ts';

/**
 * For a count that hatched or pipped by a day: eggs seen pipped or fertile come first, then those that nothing is known of,
 * then those not yet sat on for long enough, as of guests that came later; clear ones last.
 */
export function hatchRank(egg: Egg, day: Day): number {
  if (egg.pipped !== null) return 0;
  const saw = lampSays(egg);
  if (saw === 'clear') return 5;
  if (saw === 'dead') return 4;
  if (!isRipe(egg, day)) return 3;
  return saw === 'fertile' ? 1 : 2;
}

/** For sorting eggs of which some hatched by a day that nobody told: the likeliest first. */
export function likeliestToHatch(day: Day): (a: Egg, b: Egg) => number {
  return (a, b) => hatchRank(a, day) - hatchRank(b, day) || a.number - b.number;
}

/** Whether it can have been sat on for the shortest usual time, or a day less. */
function isRipe(egg: Egg, day: Day): boolean {
  const low = egg.clutch.pair.profile?.incubation?.value.low;
  const start = eggClock(egg, day)?.start.from;
  return low === undefined || (start !== undefined && day - start >= Math.floor(low) - 1);
}

/** What the latest look with the lamp is worth: called clear before its candling day, an egg is as unsure as before. */
export function lampSays(egg: Egg): Lamp | null {
  const last = egg.lamp.at(-1);
  if (last === undefined) return null;
  return last.saw === 'clear' && !tellsClear(egg, last.day) ? 'unsure' : last.saw;
}

function tellsClear(egg: Egg, day: Day): boolean {
  const from = candlingDay(egg, day);
  return from !== null && day >= from;
}

/** Day of sitting from which the lamp tells clear from fertile, where the species has no profile. */
const UNKNOWN_CANDLING = 5;

/**
 * The day from which the lamp can tell of this egg, taking it for as young as it can be; null while nobody has sat on
 * it. As things stood on `day`: what happened to the egg later does not move it.
 */
export function candlingDay(egg: Egg, day: Day): Day | null {
  const until = { ...egg, places: egg.places.filter(({ from }) => from <= day) };
  const start = eggClock(until, day)?.start.to ?? null;
  const from = egg.clutch.pair.profile?.candling?.value.low ?? UNKNOWN_CANDLING;
  return start === null ? null : start + Math.floor(from);
}

/**
 * What is known of an egg's fertility; null is unknown. Hatching beats every lamp, then comes what it was lost to, then
 * the latest look that told anything. Before the egg's own candling day the lamp cannot tell clear from too young.
 */
export function fertilityOf(egg: Egg): 'fertile' | 'clear' | null {
  const { fate } = egg;
  if (fate?.kind === 'hatched' || egg.pipped !== null) return 'fertile';
  if (fate?.kind === 'lost' && fate.cause === 'clear') return 'clear';
  if (fate?.kind === 'lost' && fate.cause === 'dead-in-shell') return 'fertile';
  const told = egg.lamp.findLast(({ saw, day }) =>
    saw === 'clear' ? tellsClear(egg, day) : saw !== 'unsure',
  );
  if (told === undefined) return null;
  return told.saw === 'clear' ? 'clear' : 'fertile';
}
