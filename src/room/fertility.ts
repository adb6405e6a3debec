import type { Day, Span } from '../days.ts';
import type { Range } from '../species/profile.ts';
import { eggClock } from './clock.ts';
import type { Egg, Lamp } from './model.ts';

/**
 * For a count that hatched or pipped on one of these days: eggs seen pipped come first, then those that are due, those that
 * may be so soon, those whose time was over before, and those not yet sat on for long enough, as of guests that came later;
 * of each the ones seen fertile before those that nothing is known of. Dead and clear ones last.
 */
export function hatchRank(egg: Egg, on: Span): number {
  if (egg.pipped !== null) return 0;
  const saw = lampSays(egg);
  if (saw === 'clear') return 9;
  if (saw === 'dead') return 8;
  return RIPENESS[ripeness(egg, on)] + Number(saw !== 'fertile');
}

/** For sorting eggs of which some hatched on days that nobody told: the likeliest first. */
export function likeliestToHatch(on: Span): (a: Egg, b: Egg) => number {
  return (a, b) =>
    hatchRank(a, on) - hatchRank(b, on) ||
    daysToHatch(a, on.to) - daysToHatch(b, on.to) ||
    a.number - b.number;
}

/** Days until it is likeliest to hatch, below 0 once they are over; 0 where nothing tells. */
export function daysToHatch(egg: Egg, day: Day): number {
  const start = eggClock(egg, day)?.start ?? null;
  const incubation = egg.clutch.pair.profile?.incubation?.value;
  return incubation === undefined || start === null ? 0 : dueOn(incubation, start) - day;
}

/** Rank of a fertile egg by how far it is; that of one of which nothing is known is one more. */
const RIPENESS = { due: 1, soon: 3, past: 5, unripe: 7 };

/** Days around its own on which an egg that is due mostly hatches. */
const ABOUT = { before: 1, after: 4 };

/** How far it is on these days; without a profile every egg may be due. */
function ripeness(egg: Egg, { from, to }: Span): keyof typeof RIPENESS {
  const incubation = egg.clutch.pair.profile?.incubation?.value;
  if (incubation === undefined) return 'due';
  const start = eggClock(egg, to)?.start ?? null;
  // The shortest usual time, or a day less.
  if (start === null || to - start.from < Math.floor(incubation.low) - 1) return 'unripe';
  const due = dueOn(incubation, start);
  if (to < due - ABOUT.before) return 'soon';
  return from > due + ABOUT.after ? 'past' : 'due';
}

/** The middle of the days on which an egg sat on since then usually hatches. */
function dueOn({ low, high }: Range, start: Span): number {
  return (start.from + start.to + low + high) / 2;
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
  const places = egg.places.filter(({ from }) => from <= day);
  const start = eggClock(egg, day, places)?.start.to ?? null;
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
