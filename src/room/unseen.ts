import type { Day, Span } from '../days.ts';
import type { Place } from '../findings/finding.ts';
import {
  addEgg,
  fledging,
  incubation,
  layingEndsAfter,
  layingInterval,
  longPast,
  usualClutch,
} from './lives.ts';
import type { Clutch, Egg } from './model.ts';
import { nestFreeSince } from './nest-free.ts';
import { lastLook, report, type Scene, siteOf } from './scene.ts';

/**
 * An egg that must have been there though nobody wrote it down.
 *
 * @param age days that its chick may have been in the nest already
 */
export function addUnseenEgg(clutch: Clutch, day: Day, age = 0): Egg {
  return addEgg(clutch, unseenLaying(clutch, day, age), true);
}

/** When nobody saw an egg laid that was there by a day: no longer before than an incubation can last, nor beside the brood before it. */
export function unseenLaying(clutch: Clutch, day: Day, age = 0): Span {
  const oldest = day - incubation(clutch.pair.profile).high - age;
  const earliest = Math.max(oldest, nestFreeSince(clutch) ?? oldest);
  return { from: Math.min(day, earliest), to: day };
}

/** One more egg that a count speaks of, as {@link addUnseenEgg}; null where it is known how many were laid. */
export function uncountedEgg(clutch: Clutch, day: Day, age = 0): Egg | null {
  return clutch.counted ? null : addUnseenEgg(clutch, day, age);
}

/**
 * How many days old young can be that are found in a nest of which nobody wrote that they hatched: no older than the last
 * look, and where there was none, or long ago, as old as one that is about to leave it.
 */
export function ageWhenFound(scene: Scene): number {
  const { pair, day, since, entry } = scene;
  const longest = Math.round(fledging(pair.profile).high);
  const looked = entry.after !== null || lastLook(pair, siteOf(scene), day) !== null;
  return looked ? Math.min(longest, day - since.from) : longest;
}

/** What is asked of the eggs out of which more young came than are known. */
export interface UnseenEggs {
  /** Whether there may be more of a clutch than were told. */
  grows: (clutch: Clutch) => boolean;
  /** One more; null where all are known, the hen lays no more, or it could not have hatched. */
  another: (clutch: Clutch) => Egg | null;
}

/**
 * The eggs that nobody saw and that had hatched by a day: of clutches that were never counted, and of those to which eggs may
 * have come after the last look.
 */
export function unseenEggs(scene: Scene, hatched: Day, age = 0): UnseenEggs {
  const known = new Map<Clutch, boolean>();
  const grows = (clutch: Clutch) => {
    // As it was before the first was added.
    const isSo = known.get(clutch) ?? mayHaveGrown(scene, clutch);
    known.set(clutch, isSo);
    return isSo;
  };
  return {
    grows,
    another: (clutch) =>
      uncountedEgg(clutch, hatched, age) ?? (grows(clutch) ? grownEgg(scene, clutch, hatched) : null),
  };
}

/**
 * Whether eggs may have come to a clutch after the last look into it: the pair is better left alone, fewer were told than it
 * lays, and nobody looked again once the next could have been there.
 */
function mayHaveGrown(scene: Scene, clutch: Clutch): boolean {
  const { pair, eggs, chicks, counted } = clutch;
  const last = eggs.at(-1);
  if (!counted || last === undefined || pair.nestLooks === 'freely') return false;
  if (eggs.length >= usualClutch(pair.profile).low || longPast(last, scene.day)) return false;
  // Taken elsewhere, it was seen as a whole.
  const isHere =
    eggs.some((egg) => pair.here.eggs.has(egg)) || chicks.some((young) => pair.here.young.has(young));
  return isHere && lastSeen(scene, clutch, last) - last.laid.to <= layingInterval(pair.profile);
}

/** One more egg of a clutch that may have grown. */
function grownEgg(scene: Scene, clutch: Clutch, hatched: Day): Egg | null {
  const { profile } = clutch.pair;
  const last = clutch.eggs.at(-1);
  if (last === undefined || clutch.eggs.length >= usualClutch(profile).high) return null;
  const from = Math.max(lastSeen(scene, clutch, last) + 1, last.laid.from + layingInterval(profile));
  const latest = hatched - Math.ceil(incubation(profile).low / 2);
  const to = Math.max(from, Math.min(latest, last.laid.from + layingEndsAfter(profile)));
  return from > latest ? null : addEgg(clutch, { from, to }, true);
}

/** Says how many eggs came to a clutch since so many were told; from then on nobody knows how many there were. */
export function noteGrown(scene: Scene, at: Place, clutch: Clutch, told: number): void {
  const count = clutch.eggs.length - told;
  if (!clutch.counted || count === 0) return;
  clutch.counted = false;
  report(scene, at, 'counted-as-laid', { count, clutch: clutch.number });
}

/** The last day on which somebody looked into the nest, or since which an entry tells. */
function lastSeen({ day, entry }: Scene, { pair, site }: Clutch, last: Egg): Day {
  return Math.max(lastLook(pair, site, day) ?? last.laid.to, entry.after?.day ?? Number.NEGATIVE_INFINITY);
}
