import type { Day, Span } from '../days.ts';
import type { FindingCode } from '../findings/codes.ts';
import type { Finding, FindingArgs, Place } from '../findings/finding.ts';
import { nearest } from '../findings/nearest.ts';
import { grouped } from '../grouped.ts';
import type { Entry } from '../journal/entry.ts';
import type { ObservationKey } from '../journal/observations/index.ts';
import type { Profile } from '../species/profile.ts';
import type { Housings } from './housings.ts';
import {
  type About,
  type Bird,
  type Chick,
  type Clutch,
  type Egg,
  type Event,
  type Pair,
  refIn,
  sameSite,
} from './model.ts';
import type { NestDown } from './nests-down.ts';
import type { RingLate } from './rings-late.ts';
import type { PairSighting, Sighting } from './sightings.ts';

/** All that the fold builds up while it walks through the record. */
export interface Fold {
  pairs: Map<string, Pair>;
  birds: Map<string, Bird>;
  /** Chicks by `PAIR/CLUTCH/cN`. */
  byRef: Map<string, Chick>;
  byRing: Map<string, Bird>;
  /** Names of the bird list by the chick that they name with `is:`. */
  aliases: Map<string, string>;
  housings: Housings;
  /** Nests taken out or cleaned, with whoever the journal knew to be in them that day. */
  nestsDown: NestDown[];
  /** Rings put on birds too old for a closed one. */
  ringsLate: RingLate[];
  /** The room's own species profiles. */
  own: readonly Profile[];
  /** Days that a new bird stays apart. */
  quarantineDays: number;
  findings: Finding[];
  /** Where something was found that is said once an entry, however many observations of it would say it. */
  saidOnce: Set<Place>;
  /** What was told of somebody by a count that might have meant others. */
  guessed: Set<string>;
  /** Ends that no count can have meant: whoever it was, a later line names it. */
  notMeant: Set<string>;
  today: Today;
}

/** The day that the fold has come to. */
export interface Today {
  /** All that is told of it, in order. */
  seen: readonly Sighting[];
  /** What is told of the pairs, by pair and observation, once somebody asks for it. */
  told: Map<string, PairSighting[]> | null;
  /** The pairs to which the journals of others give eggs or young on it, once somebody asks for them. */
  given: Set<string> | null;
  /** What was observed on it without a word of a clutch or a nest. */
  events: Map<string, Event>;
  /** The pairs of which something was told with its time. */
  timed: Set<Pair>;
  /** The pairs, and their clutches, whose looks of the day were to be taken before their turn. */
  asked: Set<string>;
  /** The entries whose looks were taken before their turn. */
  looked: Set<Entry>;
  /** The entries whose partings are taken in already. */
  parted: Set<Entry>;
  /** Who is there because one of a higher number was named, and at which word; whoever is named or counted as well goes out again. */
  passed: Map<Egg | Chick, { scene: Scene; at: Place }>;
}

export function beginDay(seen: readonly Sighting[]): Today {
  return {
    seen,
    told: null,
    given: null,
    events: new Map(),
    timed: new Set(),
    asked: new Set(),
    looked: new Set(),
    parted: new Set(),
    passed: new Map(),
  };
}

/** What the journal of a pair tells of this day by an observation, in order. */
export function toldToday({ today }: Fold, pair: Pair, key: ObservationKey): readonly PairSighting[] {
  const nameOf = (id: string, what: ObservationKey) => `${what} ${id}`;
  today.told ??= grouped(
    today.seen.filter((one) => one.of === 'pair'),
    ({ journal, observation }) => nameOf(journal.pair.text, observation.key),
  );
  return today.told.get(nameOf(pair.id, key)) ?? [];
}

/** One observation being taken in: whose journal, which visit, which stretch of days it speaks of. */
export interface Scene {
  fold: Fold;
  pair: Pair;
  entry: Entry;
  day: Day;
  /** What is reported happened on one of these days. */
  since: Span;
  /** The clutch that the entry is pinned to, where the pair has it, or once the entry has begun it. */
  pinned: Clutch | null;
  /** Whom its words turn out to be about; filled while it is taken in. */
  about: About[];
}

/** Notes that something in the record cannot be or may not be what was meant. */
export function report(scene: Scene, at: Place, code: FindingCode, args: FindingArgs = {}): void {
  scene.fold.findings.push({ code, at, args });
}

/** The same where each observation of an entry would say it, at a place that the whole entry has: once. */
export function reportOnce(scene: Scene, at: Place, code: FindingCode, args: FindingArgs): void {
  if (scene.fold.saidOnce.has(at)) return;
  scene.fold.saidOnce.add(at);
  report(scene, at, code, args);
}

/**
 * The days in which what an entry reports can have happened: after the last look of an earlier day at that nest,
 * or after what the entry itself gives as `after`, and by its date.
 */
export function reportedDays(pair: Pair, entry: Entry, site: string | null): Span {
  const to = entry.date;
  if (entry.after !== null) {
    const { day, time } = entry.after;
    return { from: Math.min(to, time === null ? day + 1 : day), to };
  }
  const last = lastLook(pair, site, to);
  return { from: last === null ? to : Math.min(to, last + 1), to };
}

/** The last day before `day` on which somebody looked into this nest of the pair, or null. */
export function lastLook(pair: Pair, site: string | null, day: Day): Day | null {
  for (let i = pair.looks.length - 1; i >= 0; i--) {
    const look = pair.looks[i] as { day: Day; site: string | null };
    if (look.day < day && sameSite(site, look.site)) return look.day;
  }
  return null;
}

/** Whether the entry speaks of this clutch: the pinned one, else any of the nest that it names. Guests by themselves are in any. */
export function means(scene: Scene, clutch: Clutch | null): boolean {
  if (meansNone(scene)) return false;
  return scene.pinned === null ? isInNest(scene, clutch) : clutch === scene.pinned;
}

/** Whether the entry is pinned to a clutch that the pair does not have: what it says is of no other. */
export function meansNone({ entry, pinned }: Scene): boolean {
  return entry.clutch !== null && pinned === null;
}

/** Whether a clutch is in the nest that the entry is about: the one it names, else that of the pinned clutch, else any. */
export function isInNest(scene: Scene, clutch: Clutch | null): boolean {
  return sameSite(siteOf(scene), clutch?.site ?? null);
}

/** The youngest clutch that the entry can be about and that is so. */
export function youngestMeant(scene: Scene, isSo: (clutch: Clutch) => boolean = () => true): Clutch | null {
  return scene.pair.clutches.findLast((clutch) => means(scene, clutch) && isSo(clutch)) ?? null;
}

/** The pair's clutches of that nest. */
export function clutchesThere(scene: Scene): Clutch[] {
  return scene.pair.clutches.filter((clutch) => isInNest(scene, clutch));
}

/** Which nest the entry is about, where the pair has two; null where it does not say. */
export function siteOf({ entry, pinned }: Pick<Scene, 'entry' | 'pinned'>): string | null {
  return entry.site?.text ?? pinned?.site ?? null;
}

/** Why an observation cannot be about this egg or bird: words, with a code of their own where a fix differs. */
export type Refusal = Why | { code: FindingCode; why: Why };

/** Words, or how to find them: mostly nobody is told, as another egg or bird was meant. */
export type Why = string | (() => string);

export function wordsOf(why: Why): string {
  return typeof why === 'string' ? why : why();
}

/** Reports that an observation cannot be about someone. */
export function refuse(
  scene: Scene,
  at: Place,
  refusal: Refusal,
  about: { who: string; did: string; others?: string },
): void {
  const { code, why } = typeof refusal === 'object' ? refusal : { code: 'impossible' as const, why: refusal };
  report(scene, at, code, { ...about, pair: scene.pair.id, why: wordsOf(why) });
}

/** Says which eggs a count of young was taken to mean hatched, beyond those of which it was told; nothing where there are none. */
export function noteHatched(scene: Scene, at: Place, eggs: readonly Egg[]): void {
  if (eggs.length === 0) return;
  const who = eggs.map((egg) => refIn(scene, egg)).join(', ');
  report(scene, at, 'counted-as-hatched', { who, count: eggs.length });
}

/** Reports that no journal has the pair that was named. */
export function reportNoPair(scene: Scene, at: Place, pair: string, others: readonly string[] = []): void {
  const suggestion = nearest(pair, [...scene.fold.pairs.keys(), ...others]) ?? '';
  report(scene, at, 'no-such-pair', { pair, suggestion });
}
