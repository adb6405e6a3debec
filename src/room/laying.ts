import type { Day, Span } from '../days.ts';
import { addEgg, incubation, layingInterval, takesEggs, usualClutch } from './lives.ts';
import type { Clutch, Egg } from './model.ts';
import { lastLook, type Scene } from './scene.ts';

/**
 * Whether so many eggs found on a day still belong to the clutch. Of no more than the species lays, the first came some
 * days before the last.
 */
export function growsBy(clutch: Clutch, count: number, day: Day): boolean {
  const { profile } = clutch.pair;
  const asUsual = clutch.eggs.length + count <= usualClutch(profile).high;
  return takesEggs(clutch, asUsual ? day - (count - 1) * layingInterval(profile) : day);
}

/** The egg on which a hen was seen sitting, of a clutch of which nobody has seen an egg; null where somebody has. */
export function eggNobodySaw({ counted, eggs }: Clutch): Egg | null {
  const [first] = eggs;
  if (counted || first === undefined || eggs.length > 1) return null;
  const { assumed, fate, lamp, weights, size, places } = first;
  const wasInHand = lamp.length > 0 || weights.length > 0 || size !== null || places.length > 1;
  return assumed && fate === null && !wasInHand ? first : null;
}

/**
 * Adds the new eggs of one look, each with the days on which it can have been laid. The one on which the hen was seen sitting
 * is among those that are found first.
 */
export function addLaid(scene: Scene, clutch: Clutch, count: number, assumed = false): Egg[] {
  const unseen = assumed ? null : eggNobodySaw(clutch);
  const interval = layingInterval(clutch.pair.profile);
  const bound = earliestLaying(scene, clutch, count, interval);
  const last = lastLaying(scene, clutch);
  const latest = (i: number): Day => last - (count - 1 - i) * interval;
  if (clutch.counted) noOlder(clutch.eggs, bound, interval);
  return Array.from({ length: count }, (_, i) => {
    const span: Span = { from: Math.min(bound + i * interval, latest(i)), to: latest(i) };
    return i === 0 && unseen !== null ? found(unseen, span) : addEgg(clutch, span, assumed);
  });
}

/** An egg that nobody had seen, found by a look which says when it can have been laid. */
function found(egg: Egg, { from, to: latest }: Span): Egg {
  const to = Math.min(egg.laid.to, latest);
  egg.laid = { from: Math.min(Math.max(egg.laid.from, from), to), to };
  egg.assumed = false;
  return egg;
}

/**
 * A hen that lays on has not laid for long: eggs that may have been as old as a sitting when they were first seen are no
 * older than it took her to lay them, a gap included. After a longer pause the next says nothing of them, nor of those out
 * of which young came.
 */
function noOlder(eggs: readonly Egg[], next: Day, interval: number): void {
  const last = eggs.at(-1);
  if (last === undefined || next - last.laid.to > interval + GAP) return;
  for (const [index, egg] of eggs.entries()) {
    const { from, to } = egg.laid;
    if (egg.fate?.kind === 'hatched') continue;
    const earliest = Math.min(to, next - (eggs.length - index) * interval - GAP);
    if (earliest > from) egg.laid = { from: earliest, to };
  }
}

/** The last day on which they can have been laid: of a clutch told of after the next by its number, before that one. */
function lastLaying({ pair, day }: Scene, { number, eggs }: Clutch): Day {
  if (eggs.length > 0) return day;
  const next = pair.clutches.find((clutch) => clutch.number > number)?.eggs[0];
  return next === undefined ? day : Math.min(day, next.laid.from - 1);
}

/**
 * The earliest day on which the first of these eggs can have been laid. A look of late that saw fewer eggs bounds it, and
 * so does the pairing; one egg at a first look is taken as that day's, several, or some that nobody counted, may be as old as
 * a long sitting.
 */
function earliestLaying(scene: Scene, clutch: Clutch, count: number, interval: number): Day {
  const { pair, entry } = scene;
  if (entry.after !== null) return scene.since.from;
  const day = lastLaying(scene, clutch);
  // Whoever looked at the clutch after it did not see this one.
  const look = day < scene.day ? null : lastLook(pair, entry.site?.text ?? clutch.site, day);
  const last = clutch.eggs.at(-1);
  if (last !== undefined && clutch.counted) {
    return Math.max(last.laid.from + interval, look === null ? last.laid.to : look + 1);
  }
  const first = day - (count - 1) * interval;
  const oldest = first - incubation(pair.profile).high;
  if (look !== null && look >= oldest)
    return Math.min(first, Math.max(look + 1, first - stillLaying(clutch, count)));
  if (count === 1 && clutch.counted && day === scene.day) return day;
  const together = pair.partings.at(-1)?.day ?? Number.NEGATIVE_INFINITY;
  const before = pair.clutches.findLast(({ number }) => number < clutch.number)?.eggs.at(-1)?.laid.to;
  return Math.min(first, Math.max(oldest, together, before ?? Number.NEGATIVE_INFINITY));
}

/** Days that a laying hen may leave out in a clutch (canary keepers: gaps of one to three days). */
const GAP = 3;

/**
 * How many days before their usual ones the eggs of a nest not looked into for a while can have been laid. Fewer than the
 * species lays are fresh, for the next would be there too; of a full clutch nothing is known, nor of one that nobody
 * counted.
 */
function stillLaying({ pair, counted }: Clutch, count: number): number {
  return counted && count < (pair.profile?.clutch?.value.low ?? 0) ? GAP : Number.POSITIVE_INFINITY;
}
