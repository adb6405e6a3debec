import { type Day, formatDay, type Span } from '../days.ts';
import type { Profile, Range } from '../species/profile.ts';
import { joined, likeLast, none } from './lists.ts';
import type { Bird, BirdFate, Chick, Clutch, Egg, EggFate, EggPlace, Pair, Seen, Stay } from './model.ts';
import { fullRef, howEnded, lastPlace } from './model.ts';
import { birdOrNew, newBird } from './names.ts';
import type { Fold, Refusal, Scene, Why } from './scene.ts';

/** Incubation to reckon with where the species has no profile: the widest of the small cage birds, in days. */
const UNKNOWN_INCUBATION: Range = { low: 10, high: 25 };
/** The same for fledging age. */
const UNKNOWN_FLEDGING: Range = { low: 14, high: 40 };
/** The same for the age at which the young feed themselves. */
const UNKNOWN_INDEPENDENCE: Range = { low: 30, high: 60 };
/** Eggs of a clutch where the profile does not say: the usual of small finches (common practice). */
const UNKNOWN_CLUTCH: Range = { low: 3, high: 6 };

/** Days between eggs; one a day where the profile does not say. */
export function layingInterval(profile: Profile | null): number {
  return profile?.layingInterval?.value.high ?? 1;
}

/** Shortest and longest incubation, in days. */
export function incubation(profile: Profile | null): Range {
  return profile?.incubation?.value ?? UNKNOWN_INCUBATION;
}

/** Youngest and oldest usual fledging age, in days. */
export function fledging(profile: Profile | null): Range {
  return profile?.fledging?.value ?? UNKNOWN_FLEDGING;
}

/** Youngest and oldest usual age at which the young feed themselves, in days. */
export function independence(profile: Profile | null): Range {
  return profile?.independence?.value ?? UNKNOWN_INDEPENDENCE;
}

/** Fewest and most eggs of a usual clutch. */
export function usualClutch(profile: Profile | null): Range {
  return profile?.clutch?.value ?? UNKNOWN_CLUTCH;
}

/** Days from the first egg of a usual clutch to its last, at the most; its chicks hatch no further apart. */
export function layingTakes(profile: Profile | null): number {
  return (usualClutch(profile).high - 1) * layingInterval(profile);
}

/** Days without a new egg after which a clutch takes no more. */
export function layingEndsAfter(profile: Profile | null): number {
  return Math.max(6, 4 * layingInterval(profile));
}

/**
 * Begins a clutch of the pair, with the number that the entry is pinned to where the pair has no such clutch yet; it
 * lives in the housing and with the parents of that day.
 */
export function openClutch(scene: Scene, options: { counted: boolean }): Clutch {
  const { pair, entry } = scene;
  const clutch: Clutch = {
    pair,
    number: entry.clutch?.number ?? (pair.clutches.at(-1)?.number ?? 0) + 1,
    site: entry.site?.text ?? null,
    opened: scene.day,
    counted: options.counted,
    chicksCounted: options.counted,
    eggs: none,
    chicks: none,
    cock: pair.cock,
    hen: pair.hen,
    housing: pair.housing,
    sittings: none,
    skipped: none,
    mismatches: none,
  };
  pair.clutches.push(clutch);
  pair.clutches.sort((a, b) => a.number - b.number);
  if (entry.clutch !== null) scene.pinned ??= clutch;
  return clutch;
}

/** Whether one more egg on this day would still belong to the clutch. */
export function takesEggs(clutch: Clutch, day: Day): boolean {
  if (clutch.eggs.length === 0) return day - clutch.opened <= layingEndsAfter(clutch.pair.profile);
  if (clutch.chicks.length > 0 || clutch.eggs.every((egg) => egg.fate !== null)) return false;
  const last = Math.max(...clutch.eggs.map((egg) => egg.laid.to));
  return day - last <= layingEndsAfter(clutch.pair.profile);
}

/** Puts one more egg into the clutch and its pair's nest. */
export function addEgg(clutch: Clutch, laid: Span, assumed: boolean): Egg {
  const number = (clutch.eggs.at(-1)?.number ?? 0) + 1;
  const egg: Egg = {
    ref: shortRef('e', number),
    number,
    clutch,
    laid,
    assumed,
    places: [{ from: laid.to, place: clutch.eggs[0]?.places[0].place ?? ownNest(clutch) }],
    lamp: none,
    aged: null,
    pipped: null,
    fate: null,
    weights: none,
    size: null,
  };
  clutch.eggs = joined(clutch.eggs, egg);
  clutch.pair.here.eggs.add(egg);
  return egg;
}

/** Shared by the eggs of a clutch: each begins here. */
function ownNest(clutch: Clutch): EggPlace {
  return { kind: 'nest', pair: clutch.pair, clutch };
}

const refs = { e: [] as string[], c: [] as string[] };

/** `e1`, `c2`: one text for all clutches of a room. */
function shortRef(letter: 'e' | 'c', number: number): string {
  refs[letter][number] ??= `${letter}${number}`;
  return refs[letter][number];
}

/** The clutch of the nest that it lives with: its own, or the one it was given to. */
export function hostClutch(one: Egg | Bird): Clutch | null {
  if (!('laid' in one)) return one.stays.at(-1)?.clutch ?? null;
  const { place } = lastPlace(one);
  return place.kind === 'nest' ? place.clutch : one.clutch;
}

/** The pair whose nest an egg is in now, or null. */
export function nestOf(egg: Egg): Pair | null {
  const { place } = lastPlace(egg);
  return place.kind === 'nest' ? place.pair : null;
}

/** Takes an egg to another place from this day on. */
export function placeEgg(egg: Egg, day: Day, place: EggPlace): void {
  nestOf(egg)?.here.eggs.delete(egg);
  egg.places = joined(egg.places, { from: day, place });
  if (place.kind !== 'nest') egg.clutch.pair.elsewhere.add(egg.clutch);
  else place.pair.here.eggs.add(egg);
}

/** Ends an egg. */
export function endEgg(egg: Egg, fate: EggFate): void {
  egg.fate = fate;
  nestOf(egg)?.here.eggs.delete(egg);
}

/** The earliest day on which anybody can have begun to sit on it: as laid, or as set where it waited in store first. */
export function begun(egg: Egg): { day: Day; what: 'laid' | 'set' } {
  const [first, next, then] = egg.places;
  const waited = next?.place.kind === 'store' && next.from - first.from <= 1;
  return waited && then !== undefined
    ? { day: then.from, what: 'set' }
    : { day: egg.laid.from, what: 'laid' };
}

/** The day before which it cannot have hatched: no egg does in less than half the shortest incubation. */
function earliestHatch(egg: Egg): Day {
  return begun(egg).day + Math.ceil(incubation(egg.clutch.pair.profile).low / 2);
}

/** Whether it can have hatched by a day, however early. */
export function canHatchBy(egg: Egg, day: Day): boolean {
  return day >= earliestHatch(egg);
}

/** Whether it is old enough to hatch, even if it was laid on the last day on which it can have been. */
export function isDue(egg: Egg, day: Day): boolean {
  return day - egg.laid.to >= incubation(egg.clutch.pair.profile).low - 1;
}

/** Brood mates mostly share where they live and when they left. */
const alikeStay = likeLast<Stay>();
const alikeSpan = likeLast<Span>();
const alikeHatch = likeLast<Span>();
const alikeFact = likeLast<Seen>();

/** By count nobody means an egg that has lain for months; by its ref it may still be named. */
export function longPast(egg: Egg, day: Day): boolean {
  return day - egg.laid.to > 2 * incubation(egg.clutch.pair.profile).high + 14;
}

/**
 * A chick comes out of an egg, in the nest where the egg is; out of anybody's nest it is fed by hand from that hour.
 *
 * @param seen the days of which the journal tells; of these it hatched on none before it can have
 */
export function hatch(fold: Fold, egg: Egg, seen: Span, day: Day): Chick {
  const { clutch } = egg;
  const span = alikeHatch({ from: Math.min(seen.to, Math.max(seen.from, earliestHatch(egg))), to: seen.to });
  const ref = shortRef('c', clutch.chicks.length + 1);
  const full = `${clutch.pair.id}/${clutch.number}/${ref}`;
  const alias = fold.aliases.get(full);
  const known =
    alias === undefined ? newBird(full, clutch.pair.species) : birdOrNew(fold, alias, clutch.pair.species);
  const { place } = lastPlace(egg);
  const nest = nestOf(egg);
  const bird: Chick = Object.assign(known, {
    ref,
    clutch,
    egg,
    hatched: span,
    firstSeen: day,
    species: clutch.pair.species,
    sire: clutch.cock,
    dam: clutch.hen,
  } satisfies Partial<Chick>);
  const stay = alikeStay({
    from: day,
    housing: nest === null ? 'hand' : nest.housing,
    nest,
    clutch: place.kind === 'nest' ? place.clutch : clutch,
  });
  bird.stays = joined(bird.stays, stay);
  fold.birds.set(bird.id, bird);
  fold.byRef.set(full, bird);
  clutch.chicks = joined(clutch.chicks, bird);
  endEgg(egg, { kind: 'hatched', span, day, bird });
  // By its own log it may be dead or gone already: then the log is wrong, and it is in no nest.
  if (isDependent(bird)) nest?.here.young.add(bird);
  if (nest !== null && nest !== clutch.pair) nest.guests.add(bird);
  return bird;
}

/** The pair that feeds it now, or null once it feeds itself, is fed by hand or has left. */
export function feederOf(bird: Bird): Pair | null {
  return bird.stays.at(-1)?.nest ?? null;
}

/** A bird that has a nest: it hatched in this room, as only those are fed in one. */
const fedIn = (bird: Bird) => bird as Chick;

/** A bird lives elsewhere from this day on; `nest` is who feeds it where it depends on somebody, null where nobody does. */
export function settle(
  bird: Bird,
  day: Day,
  housing: string | null,
  nest: Pair | null,
  clutch: Clutch | null,
): void {
  leaveNest(bird);
  bird.stays = joined(bird.stays, alikeStay({ from: day, housing, nest, clutch }));
  if (nest === null) {
    bird.clutch?.pair.elsewhere.add(bird.clutch);
    return;
  }
  const young = fedIn(bird);
  nest.here.young.add(young);
  if (young.clutch.pair !== nest) nest.guests.add(young);
}

/** A bird lives in another housing from this day on; one that is still fed goes on being fed by the same pair. */
export function rehouse(bird: Bird, day: Day, housing: string | null): void {
  const last = isDependent(bird) ? bird.stays.at(-1) : undefined;
  settle(bird, day, housing, last?.nest ?? null, last?.clutch ?? null);
}

/** A young bird feeds itself, seen on the span's last day; it lives on where it did. */
export function becomeIndependent(bird: Bird, span: Span): void {
  leaveNest(bird);
  bird.independent = alikeFact({ span: alikeSpan(span), day: span.to });
  const stay = alikeStay({ from: span.to, housing: housingOf(bird), nest: null, clutch: null });
  bird.stays = joined(bird.stays, stay);
}

/** Whether it is alive, in the room and not yet feeding itself. */
export function isDependent(bird: Bird): bird is Chick {
  return bird.ref !== null && bird.fate === null && bird.independent === null;
}

/** Whether it is in nobody's nest and not yet feeding itself, wherever it is kept. */
export function isFedByHand(bird: Bird): bird is Chick {
  return isDependent(bird) && feederOf(bird) === null;
}

/** Whether it was ever fed by hand: it lived for a time in nobody's nest before it fed itself. */
export function wasFedByHand({ ref, stays, independent }: Bird): boolean {
  if (ref === null) return false;
  return stays.some(
    ({ nest, from }) => nest === null && from < (independent?.day ?? Number.POSITIVE_INFINITY),
  );
}

/** A bird no longer belongs to the nest: dead, gone or independent. */
function leaveNest(bird: Bird): void {
  feederOf(bird)?.here.young.delete(fedIn(bird));
}

/** Dead or gone; told once more it only adds the cause that was missing. */
export function endLife(bird: Bird, fate: BirdFate): void {
  if (bird.fate === null) {
    bird.fate = fate;
    leaveNest(bird);
  } else if (bird.fate.kind === 'died' && fate.kind === 'died') {
    bird.fate.cause ??= fate.cause;
  } else if (bird.fate.kind === 'gone' && fate.kind === 'gone') {
    bird.fate.how ??= fate.how;
  }
}

/** Whether this end of a bird is known already, as when the journals of two pairs both tell of their one cock. */
export function endKnown(bird: Bird, kind: BirdFate['kind'], day: Day, why: string | null): boolean {
  const { fate } = bird;
  if (fate === null || fate.kind !== kind || fate.day !== day) return false;
  const known = howEnded(fate);
  return known === null || why === null || known === why;
}

/** Why nothing can be told of this bird any more, or null while it is alive and here. */
export function whyNotAlive(bird: Bird): Refusal | null {
  if (bird.fate === null) return null;
  const { kind, day } = bird.fate;
  return {
    code: 'dead-bird',
    why: () => (kind === 'died' ? `it died on ${formatDay(day)}` : `it left on ${formatDay(day)}`),
  };
}

/** Why nothing new can happen to this egg, in words, or null while it is open. */
export function whyNotOpen({ fate }: Egg): Why | null {
  return fate === null ? null : () => ended(fate);
}

function ended(fate: EggFate): string {
  const on = formatDay(fate.day);
  if (fate.kind === 'hatched') return `it hatched on ${on} as ${fullRef(fate.bird)}`;
  if (fate.kind === 'taken') return `it was ${fate.cause} on ${on}`;
  return `it was lost (${fate.cause ?? 'no cause given'}) on ${on}`;
}

/** Where eggs are kept warm without a pair. */
const IN_CARE: readonly EggPlace['kind'][] = ['incubator', 'hand'];
/** Where else than in its nest a pair's eggs can be, the cool store included. */
export const ELSEWHERE: readonly EggPlace['kind'][] = ['store', ...IN_CARE];

/** The eggs that the pair's journal speaks of: those in its nest, and its own in these other places. */
export function eggsInReach(pair: Pair, kinds = IN_CARE): Egg[] {
  const isIn = (egg: Egg) => egg.fate === null && kinds.includes(lastPlace(egg).place.kind);
  return [...pair.here.eggs, ...clutchesElsewhere(pair).flatMap(({ eggs }) => eggs.filter(isIn))];
}

/** The dependent young that it speaks of: those of its nest, and its own that are fed by hand. */
export function youngInReach(pair: Pair): Chick[] {
  const chicks = clutchesElsewhere(pair).flatMap((clutch) => clutch.chicks);
  return [...pair.here.young, ...chicks.filter(isFedByHand)];
}

/**
 * The clutches of which an egg or chick was ever taken out of the nest. Most pairs have none, so that a long life of
 * clutches is not gone through at every entry.
 */
function clutchesElsewhere({ clutches, elsewhere }: Pair): Clutch[] {
  return elsewhere.size === 0 ? [] : clutches.filter((clutch) => elsewhere.has(clutch));
}

/** Eggs and young of this pair that are in the nests of others. */
export function rearedElsewhere(pair: Pair): (Egg | Bird)[] {
  const isElsewhere = (nest: Pair | null) => nest !== null && nest !== pair;
  return pair.clutches.flatMap(({ eggs, chicks }) => [
    ...eggs.filter((egg) => egg.fate === null && isElsewhere(nestOf(egg))),
    ...chicks.filter((chick) => isDependent(chick) && isElsewhere(feederOf(chick))),
  ]);
}

/** Where a bird lives now, or null where nobody wrote it. */
export function housingOf(bird: Bird): string | null {
  return bird.stays.at(-1)?.housing ?? null;
}

/** Whether it lives in another housing than the pair that feeds it. */
export function livesAway(bird: Bird): boolean {
  const feeder = feederOf(bird);
  return feeder !== null && housingOf(bird) !== feeder.housing;
}

/** A bird is here again: its absence is kept, and who was out of the room stays apart as one that is new. */
export function comeBack(fold: Fold, bird: Bird, day: Day): void {
  const { fate } = bird;
  if (fate === null) return;
  bird.absences = joined(bird.absences, { fate, until: day });
  bird.fate = null;
  feederOf(bird)?.here.young.add(fedIn(bird));
  if (fate.kind === 'gone') startQuarantine(fold, bird, day);
}

/** The last day on which it came into the room from outside, for the first time or home again; null where it never did. */
export function enteredOn({ absences, arrived }: Bird): Day | null {
  return absences.findLast(({ fate }) => fate.kind === 'gone')?.until ?? arrived;
}

/** A bird that came, or came home, stays apart for the room's usual days from this day on. */
export function startQuarantine(fold: Fold, bird: Bird, day: Day): void {
  bird.quarantine = { from: day, until: day + fold.quarantineDays };
  bird.released = null;
}
