import type { Day } from '../../../days.ts';
import { naturally } from '../../../findings/naturally.ts';
import { keptIn } from '../../../grouped.ts';
import type { Room } from '../../../room/fold.ts';
import { OF_EVERY_ROOM } from '../../../room/housings.ts';
import { housingOf } from '../../../room/lives.ts';
import type { Bird } from '../../../room/model.ts';
import { type Housed, timesHoused } from '../../housed.ts';
import { fedUntil, statusOf } from '../../stock/life.ts';

/** How many birds that feed themselves live in a housing today, and the most that ever did. */
export interface Occupancy {
  housing: string;
  now: number;
  /** The most at once, and the first day of it; today's figure where it never was more. */
  most: number;
  mostOn: Day;
}

/** Housing by housing, those that only ever held birds included. */
export function occupancies({ birds, day }: Room): Occupancy[] {
  // In each housing, by how many each day changes the number of birds.
  const changes = new Map<string, Map<Day, number>>();
  for (const { housing, from, to } of birds.flatMap((bird) => ownStays(bird, day))) {
    const days = keptIn(changes, housing, () => new Map<Day, number>());
    days.set(from, (days.get(from) ?? 0) + 1);
    days.set(to, (days.get(to) ?? 0) - 1);
  }
  return [...changes]
    .map(([housing, days]) => ({ housing, ...mostOf(days, day) }))
    .sort((a, b) => naturally(a.housing, b.housing));
}

/** @param changes by how many each day changes the number of birds */
function mostOf(changes: ReadonlyMap<Day, number>, day: Day): Omit<Occupancy, 'housing'> {
  const running: { on: Day; there: number }[] = [];
  let there = 0;
  for (const [on, change] of [...changes].sort(([a], [b]) => a - b)) {
    there += change;
    running.push({ on, there });
  }
  const now = running.findLast(({ on }) => on <= day)?.there ?? 0;
  let [most, mostOn] = [now, day];
  for (const one of running) {
    if (Number.isFinite(one.on) && one.there > most) [most, mostOn] = [one.there, one.on];
  }
  return { now, most, mostOn };
}

/** Where a bird lived while it fed itself and was in the room: while it is lent or missing the housing is free for others. */
function ownStays(bird: Bird, day: Day): Housed[] {
  if (bird.placeholder) return [];
  const end = bird.fate?.day ?? day + 1;
  const since = feedsItselfFrom(bird, day);
  return timesHoused(bird, end)
    .map((one) => ({ ...one, from: Math.max(one.from, since) }))
    .filter(({ from, to }) => from < to);
}

/** From when it fed itself: as was seen, else by its age; a bird from outside always did, one that nobody knows to be here never. */
export function feedsItselfFrom(bird: Bird, day: Day): Day {
  if (bird.ref === null) return Number.NEGATIVE_INFINITY;
  if (bird.independent !== null) return bird.independent.day;
  const profile = bird.clutch?.pair.profile ?? null;
  const isHere = statusOf(bird, day, { profile, paired: false }) === 'here';
  return bird.hatched !== null && isHere ? fedUntil(bird.hatched.to, profile) : Number.POSITIVE_INFINITY;
}

/** Housings that the record names and where nobody is housed today, eggs and young included; in natural order. */
export function emptyHousings({ pairs, birds }: Room, lived: ReadonlySet<string>): string[] {
  const named = new Set([
    ...pairs.flatMap(({ housing }) => housing ?? []),
    ...birds.flatMap(({ stays }) => stays.flatMap(({ housing }) => housing ?? [])),
  ]);
  const sitting = pairs.filter(({ here }) => here.eggs.size > 0);
  const fed = pairs.flatMap(({ here }) => [...here.young].flatMap((bird) => housingOf(bird) ?? []));
  const taken = new Set([
    ...lived,
    ...fed,
    ...OF_EVERY_ROOM,
    ...sitting.flatMap(({ housing }) => housing ?? []),
  ]);
  return [...named].filter((housing) => !taken.has(housing)).sort(naturally);
}
