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
    const isSo = known.get(clutch) ?? mayHaveGrown(scene, clutch, latestOfHatched(clutch, hatched));
    known.set(clutch, isSo);
    return isSo;
  };
  return {
    grows,
    another: (clutch) =>
      uncountedEgg(clutch, hatched, age) ??
      (grows(clutch) ? grownEgg(scene, clutch, latestOfHatched(clutch, hatched)) : null),
  };
}

/**
 * Whether eggs may have come to a clutch by a day, after the last look into it: the pair is better left alone, fewer were told
 * than it lays, and nobody looked again once the next could have been there.
 */
function mayHaveGrown(scene: Scene, clutch: Clutch, latest: Day): boolean {
  const { pair, eggs, counted } = clutch;
  const last = eggs.at(-1);
  if (!counted || last === undefined || pair.nestLooks === 'freely') return false;
  if (eggs.length >= usualClutch(pair.profile).low || longPast(last, scene.day)) return false;
  if (nextLaying(scene, clutch, last) > latest) return false;
  return isHere(clutch) && lastSeen(scene, clutch, last) - last.laid.to <= layingInterval(pair.profile);
}

/** Whether any of a clutch lives in its own nest; taken elsewhere, it was seen as a whole. */
function isHere({ pair: { here }, eggs, chicks }: Clutch): boolean {
  return eggs.some((egg) => here.eggs.has(egg)) || chicks.some((young) => here.young.has(young));
}

/**
 * So many more eggs of a clutch than are known, which a look counts beside those or beside the young that came of them: laid
 * while nobody looked, however long ago that is, where the hen was still laying at the last look. Nothing where she was
 * not, or they are more than her kind lays.
 */
export function addLaidUnseen(scene: Scene, at: Place, clutch: Clutch, count: number): void {
  const { pair, eggs, chicks, counted } = clutch;
  const { profile } = pair;
  const last = eggs.at(-1);
  if (!counted || last === undefined || !isHere(clutch) || longPast(last, scene.day)) return;
  if (eggs.length + count > usualClutch(profile).high) return;
  const found = Math.min(scene.day, ...chicks.map(({ firstSeen }) => firstSeen));
  // Whoever looked again since the first chick was found would have seen them then.
  if ((lastLook(pair, clutch.site, scene.day) ?? found) > found) return;
  const before = { ...scene, day: found };
  if (lastSeen(before, clutch, last) - last.laid.to > layingInterval(profile)) return;
  const told = eggs.length;
  for (let i = 0; i < count; i++) grownEgg(before, clutch, scene.day);
  noteGrown(scene, at, clutch, told);
}

/** The last day on which an egg can have been laid that had hatched by a day. */
function latestOfHatched({ pair }: Clutch, hatched: Day): Day {
  return hatched - Math.ceil(incubation(pair.profile).low / 2);
}

/** One more egg of a clutch that may have grown, laid by a day; null where none can have been. */
function grownEgg(scene: Scene, clutch: Clutch, latest: Day): Egg | null {
  const { profile } = clutch.pair;
  const last = clutch.eggs.at(-1);
  if (last === undefined || clutch.eggs.length >= usualClutch(profile).high) return null;
  const from = nextLaying(scene, clutch, last);
  const to = Math.max(from, Math.min(latest, last.laid.from + layingEndsAfter(profile)));
  return from > latest ? null : addEgg(clutch, { from, to }, true);
}

/** The first day on which an egg can have come after the last that is known. */
function nextLaying(scene: Scene, clutch: Clutch, last: Egg): Day {
  return Math.max(lastSeen(scene, clutch, last) + 1, last.laid.from + layingInterval(clutch.pair.profile));
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
