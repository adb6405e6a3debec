import type { Day, Span } from '../days.ts';
import type { Place } from '../findings/finding.ts';
import type { BirdRecord } from '../journal/birds.ts';
import type { ObservationKey } from '../journal/observations/index.ts';
import type { lossCauses, takenCauses } from '../journal/observations/lost.ts';
import type { Profile } from '../species/profile.ts';

/** Where an egg can be: under a pair, in the cool store, in an incubator, or with its keeper. */
export type EggPlace =
  | { kind: 'nest'; pair: Pair; clutch: Clutch | null }
  | { kind: 'store' | 'incubator' | 'hand' };

/** Where an egg was from a day on. */
export interface Placed {
  readonly from: Day;
  readonly place: EggPlace;
}

export type LossCause = keyof typeof lossCauses;
export type TakenHow = keyof typeof takenCauses;
export type Lamp = 'fertile' | 'clear' | 'dead' | 'unsure';

/** How an egg ended. Candling is knowledge, never a fate. */
export type EggFate =
  | { kind: 'hatched'; span: Span; day: Day; bird: Chick }
  | { kind: 'lost'; span: Span; day: Day; cause: LossCause | null }
  | { kind: 'taken'; span: Span; day: Day; cause: TakenHow };

/** What the scales showed, and where that is written. */
export interface Weight {
  day: Day;
  grams: number;
  at: Place;
}

/** One egg, from the day it was laid to its end. */
export interface Egg {
  /** `e1`, `e2` … in laying order in its clutch. */
  ref: string;
  number: number;
  clutch: Clutch;
  /** The day on which it was laid, as far as the looks can tell. */
  laid: Span;
  /** Nobody wrote that it was laid: something later shows that it must have been. */
  assumed: boolean;
  /** Where it was from which day on; first the nest that it was laid in. */
  places: readonly [Placed, ...Placed[]];
  lamp: readonly { day: Day; saw: Lamp }[];
  /** The last time that the lamp told how many days along it was. */
  aged: { day: Day; days: number } | null;
  pipped: Day | null;
  fate: EggFate | null;
  weights: readonly Weight[];
  /** mm. */
  size: { length: number; breadth: number; at: Place } | null;
}

/** How a bird left the room's care. */
export type BirdFate =
  | { kind: 'died'; day: Day; span: Span; cause: string | null }
  | { kind: 'gone'; day: Day; how: string | null };

/** Where a bird lived from a day on; `nest` names the pair that sits on it or feeds it. */
export interface Stay {
  readonly from: Day;
  readonly housing: string | null;
  readonly nest: Pair | null;
  readonly clutch: Clutch | null;
}

/** Something that was seen on a day, and happened on one of these. */
export interface Seen {
  readonly span: Span;
  readonly day: Day;
}

/** A time in which a bird was thought dead or was out of the room, from the day of that end until it was here again. */
export interface Absence {
  fate: BirdFate;
  until: Day;
}

/** One bird, whether a chick of this room, a young bird or an adult that came from outside. */
export interface Bird {
  /** The keeper's own id, else `PAIR/CLUTCH/cN`. */
  id: string;
  /** `c1`, `c2` … in hatching order in its clutch; null for birds from outside. */
  ref: string | null;
  ring: string | null;
  species: string | null;
  sex: 'cock' | 'hen' | null;
  /** The clutch it hatched in, and its egg where that is known. */
  clutch: Clutch | null;
  egg: Egg | null;
  hatched: Span | null;
  /** The first day on which somebody saw it. */
  firstSeen: Day | null;
  /** Parents' names as the record has them; several = one of these. */
  sire: readonly string[];
  dam: readonly string[];
  stays: readonly Stay[];
  fledged: Seen | null;
  independent: Seen | null;
  fate: BirdFate | null;
  /** Ends that were none, in order. */
  absences: readonly Absence[];
  /** It stands for young that were heard or seen but not counted. */
  placeholder: boolean;
  /** The first day on which it came from outside; a return is an absence. */
  arrived: Day | null;
  quarantine: { from: Day; until: Day } | null;
  /** Out of the quarantine that it was in last; null while it is in one. */
  released: Day | null;
  /** Each day on which it was let out of one. */
  releases: readonly Day[];
  weights: readonly Weight[];
  crops: readonly { day: Day; crop: 'full' | 'thin' | 'empty' }[];
  fedBy: readonly { day: Day; by: 'cock' | 'hen' | 'hand' }[];
  roosting: readonly { night: Day; where: 'nest' | 'out' }[];
  unwell: readonly { day: Day; text: string }[];
  treated: readonly { day: Day; text: string }[];
  moult: readonly { day: Day; state: 'started' | 'done' }[];
  ringed: Day | null;
  aged: { day: Day; days: number } | null;
  /** The item of the bird list, where it has one. */
  listed: BirdRecord | null;
}

/** A bird that hatched in this room: of it all of this is known. */
export interface Chick extends Bird {
  ref: string;
  clutch: Clutch;
  egg: Egg;
  hatched: Span;
  firstSeen: Day;
}

/** One clutch of one pair: the eggs of one laying, and the chicks that came of them wherever they grew up. */
export interface Clutch {
  pair: Pair;
  number: number;
  /** Which nest, where the pair has two. */
  site: string | null;
  opened: Day;
  /** Whether it is known how many eggs there were. */
  counted: boolean;
  /** Whether it is known how many chicks hatched. */
  chicksCounted: boolean;
  eggs: readonly Egg[];
  chicks: readonly Chick[];
  cock: readonly string[];
  hen: readonly string[];
  housing: string | null;
  /** `time` in minutes since midnight, null where nobody wrote it. */
  sittings: readonly { day: Day; time: number | null; by: 'seen' | 'hen' | 'cock' | 'both' | 'off' }[];
  skipped: readonly { task: string; day: Day }[];
  /** Counts of a look that do not agree with what the journal knows. */
  mismatches: readonly { day: Day; what: 'eggs' | 'chicks'; known: number; seen: number }[];
}

/** Something a journal's entry said, kept for the conditions of tasks: which key, when, about which clutch. */
export interface Event {
  readonly day: Day;
  readonly key: ObservationKey;
  readonly site: string | null;
  readonly clutch: Clutch | null;
}

/** Eggs or birds, and the place of the words that mean them. */
export interface About {
  at: Place;
  who: readonly (Egg | Bird)[];
}

/** One pair and its nest, as known on the day stood on. */
export interface Pair {
  id: string;
  at: Place;
  species: string | null;
  profile: Profile | null;
  nestLooks: 'freely' | 'sparingly' | 'never';
  cock: readonly string[];
  hen: readonly string[];
  /** Whom the journal's head names: the two with whom it began, whoever took a place since. */
  first: { readonly cock: readonly string[]; readonly hen: readonly string[] };
  housing: string | null;
  /** When they were put together or separated, in order. */
  partings: {
    day: Day;
    what: 'paired' | 'reunited' | 'parted';
    cock: readonly string[];
    hen: readonly string[];
  }[];
  clutches: Clutch[];
  /** Everyone alive who is in this nest or is fed from it today, guests included. */
  here: { eggs: Set<Egg>; young: Set<Chick> };
  /** Its own clutches of which anything was ever cared for without a pair, in an incubator or by hand. */
  elsewhere: Set<Clutch>;
  /** Young of other pairs that were ever brought here. */
  guests: Set<Chick>;
  looks: { day: Day; site: string | null }[];
  nestStates: { day: Day; site: string | null; state: string }[];
  food: { day: Day; kinds: { kind: string; grams: number | null }[] }[];
  chasing: { day: Day; by: string | null; at: string | null; level: 'mild' | 'hard' | 'fierce' | null }[];
  done: { day: Day; name: string }[];
  events: Event[];
}

/**
 * Since when the two are in one housing, as far as the journal tells: since they were put together last, else since its
 * first entry. Null where they were separated, or are no pair yet.
 */
export function pairedSince({ partings, events }: Pair): Day | null {
  const last = partings.at(-1);
  if (last === undefined) return events[0]?.day ?? null;
  return last.what === 'parted' ? null : last.day;
}

/** Whether the two are in one housing as far as the journal tells. */
export function together(pair: Pair): boolean {
  return pairedSince(pair) !== null;
}

/** What a bird died of, or how it left, in the keeper's words; null where nobody wrote it, and of one that is here. */
export function howEnded(fate: BirdFate | null): string | null {
  if (fate === null) return null;
  return fate.kind === 'died' ? fate.cause : fate.how;
}

/** `LW-1/2`: a clutch by its pair and number. */
export function clutchId(clutch: Clutch): string {
  return `${clutch.pair.id}/${clutch.number}`;
}

/** `LW-1/2/e3`: an egg or chick by its full name. */
export function fullRef(young: Egg | Bird): string {
  const { clutch, ref } = young;
  return clutch === null || ref === null ? (young as Bird).id : `${clutchId(clutch)}/${ref}`;
}

/** How the journal of the pair that it is about names an egg or bird: `c1`, or in full for a guest. */
export function refIn({ pair }: { pair: Pair }, one: Egg | Bird): string {
  return one.clutch?.pair === pair && one.ref !== null ? one.ref : fullRef(one);
}

/** Where an egg is, or was at its end, and since when. */
export function lastPlace({ places }: Egg): Placed {
  return places.at(-1) ?? places[0];
}

/** What names no site can be any nest of the pair. */
export function sameSite(one: string | null, other: string | null): boolean {
  return one === null || other === null || one === other;
}

/** How many hatched; null where young were heard or seen that nobody counted. */
export function hatchedFrom({ chicks }: Clutch): number | null {
  return chicks.some(({ placeholder }) => placeholder) ? null : chicks.length;
}
