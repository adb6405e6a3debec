import type { Day } from '../days.ts';
import { alikeName } from '../findings/alike.ts';
import { byPlace, type Finding } from '../findings/finding.ts';
import { naturally } from '../findings/naturally.ts';
import type { Entry, PairJournal } from '../journal/entry.ts';
import type { ObservationDefinition } from '../journal/grammar/observation.ts';
import { type Observation, observations } from '../journal/observations/index.ts';
import type { RoomRecord } from '../journal/record.ts';
import type { RoomSettings } from '../journal/settings.ts';
import { append } from '../journal/text/append.ts';
import { findSpecies, suggestSpecies } from '../species/find.ts';
import type { Profile } from '../species/profile.ts';
import { inWholeDays } from '../species/whole-days.ts';
import { applyBirdObservation, listBirds } from './birds.ts';
import { checkRoom } from './checks.ts';
import { housingCalled, noHousings } from './housings.ts';
import { joined } from './lists.ts';
import { becomeIndependent, isDependent, settle } from './lives.ts';
import type { About, Bird, Clutch, Event, Pair } from './model.ts';
import { birdOrNew } from './names.ts';
import { applications } from './observations/index.ts';
import { onePerPair } from './pair-twice.ts';
import { beginDay, type Fold, reportedDays, reportOnce, type Scene, siteOf } from './scene.ts';
import { dayByDay, type Sighting } from './sightings.ts';
import { tellPassed } from './whoever-named.ts';

/** The room as known on one day. */
export interface Room {
  /** The day stood on: nothing dated later is in here. */
  day: Day;
  today: Day;
  settings: RoomSettings;
  /** Its own species profiles, which go before the shipped ones. */
  own: readonly Profile[];
  pairs: Pair[];
  /** Every bird the record knows of, the dead and gone included. */
  birds: Bird[];
  /** Ends that no count can have meant, see {@link understandRoom}. */
  notMeant: ReadonlySet<string>;
  /** What reading found, and what cannot or may not be true of all journals together; in order of place. */
  findings: Finding[];
}

/** One observation, and what it turned out to mean. */
export interface Told {
  sighting: Sighting;
  /** Whose journal says it; null in the log of a bird. */
  pair: Pair | null;
  /** The clutch that its entry names. */
  clutch: Clutch | null;
  /** Whom its words are about. */
  about: readonly About[];
}

/**
 * Understands a room: walks through everything recorded up to the day, in the order in which it happened, and
 * keeps what became of every egg and bird. Pure; never throws for what a keeper wrote.
 *
 * Of a count nobody is named, so that a later line may name one that was taken for dead: then another was meant, and the
 * record is walked through anew with that in mind.
 */
export function understandRoom(record: RoomRecord, clock: { day: Day; today: Day }): Room {
  let room = walked(record, clock, new Set());
  for (let before = 0, anew = 0; room.notMeant.size > before && anew < ANEW; anew++) {
    before = room.notMeant.size;
    room = walked(record, clock, room.notMeant);
  }
  return room;
}

/** Who is put in the place of another may be named later, too; no record worth reading is guessed at more often. */
const ANEW = 8;

function walked(record: RoomRecord, clock: { day: Day; today: Day }, notMeant: ReadonlySet<string>): Room {
  const walk = understanding(record, clock, notMeant);
  let step = walk.next();
  while (!step.done) step = walk.next();
  return step.value;
}

/** The same, observation by observation as each is taken in: what was told can be forgotten behind it. */
export function* understanding(
  record: RoomRecord,
  clock: { day: Day; today: Day },
  notMeant: ReadonlySet<string>,
): Generator<Told, Room, void> {
  const fold: Fold = {
    pairs: new Map(),
    birds: new Map(),
    byRef: new Map(),
    byRing: new Map(),
    aliases: new Map(),
    housings: noHousings(),
    nestsDown: [],
    ringsLate: [],
    own: record.ownSpecies.map(inWholeDays),
    quarantineDays: record.settings.limits.quarantine,
    findings: [...record.findings],
    saidOnce: new Set(),
    guessed: new Set(),
    notMeant: new Set(notMeant),
    today: beginDay([]),
  };
  listBirds(fold, record.birds, clock.day);
  const { kept: journals, findings } = onePerPair(record.pairs);
  append(fold.findings, findings);
  for (const journal of journals) addPair(fold, journal);
  for (const seen of dayByDay(journals, record.birds, clock.day)) {
    fold.today = beginDay(seen);
    for (const sighting of seen) {
      if (sighting.of === 'pair') yield applyPairObservation(fold, sighting);
      else {
        applyBirdObservation(fold, sighting);
        yield { sighting, pair: null, clutch: null, about: [] };
      }
    }
    tellPassed(fold.today);
  }
  checkRoom(fold, record, clock);
  const pairs = [...fold.pairs.values()].sort((a, b) => naturally(a.id, b.id));
  return {
    ...clock,
    settings: record.settings,
    own: fold.own,
    pairs,
    birds: [...new Set(fold.birds.values())],
    notMeant: fold.notMeant,
    findings: fold.findings.sort(byPlace),
  };
}

/** A pair's journal joins the room. */
function addPair(fold: Fold, journal: PairJournal): void {
  const { pair: id, species } = journal;
  const profile = species === null ? null : findSpecies(species.text, fold.own);
  if (species !== null && profile === null) {
    const suggestion = suggestSpecies(species.text, fold.own) ?? '';
    fold.findings.push({ code: 'unknown-species', at: species.at, args: { name: species.text, suggestion } });
  }
  const cock = journal.cock.map(({ text }) => text);
  const hen = journal.hen.map(({ text }) => text);
  fold.pairs.set(id.text, {
    id: id.text,
    at: id.at,
    species: profile?.species ?? species?.text ?? null,
    profile,
    nestLooks: journal.nestLooks ?? profile?.nestLooks?.value ?? 'freely',
    cock,
    hen,
    first: { cock, hen },
    housing: journal.housing === null ? null : housingCalled(fold, journal.housing),
    partings: [],
    clutches: [],
    here: { eggs: new Set(), young: new Set() },
    elsewhere: new Set(),
    guests: new Set(),
    looks: [],
    nestStates: [],
    food: [],
    chasing: [],
    done: [],
    events: [],
  });
}

/** Takes one observation into the pair's nest. */
function applyPairObservation(fold: Fold, sighting: Extract<Sighting, { of: 'pair' }>): Told {
  const { journal, entry, observation } = sighting;
  const pair = fold.pairs.get(journal.pair.text) as Pair;
  if (entry.time !== null) fold.today.timed.add(pair);
  const number = entry.clutch?.number ?? null;
  const pinnedBefore = clutchNumbered(pair, number);
  const scene: Scene = {
    fold,
    pair,
    entry,
    day: entry.date,
    since: reportedDays(pair, entry, siteOf({ entry, pinned: pinnedBefore })),
    pinned: pinnedBefore,
    about: [],
  };
  meetParents(scene);
  doubtSite(scene);
  const apply = applications[observation.key] as (
    scene: Scene,
    value: unknown,
    at: Observation['at'],
  ) => void;
  apply(scene, observation.value, observation.at);
  // What it says may have opened the clutch.
  const pinned = clutchNumbered(pair, number);
  if (pinned === null && entry.clutch !== null) {
    // Of another clutch it is no news, and no task of theirs is done by it.
    reportNoClutch(scene, entry.clutch);
    return { sighting, pair, clutch: null, about: scene.about };
  }
  const site = siteOf({ entry, pinned });
  const event = eventOf(fold, { day: entry.date, key: observation.key, site, clutch: pinned });
  pair.events.push(event);
  const { look } = observations[observation.key] as ObservationDefinition;
  if (typeof look === 'function' ? look(observation.value) : look) pair.looks.push(event);
  return { sighting, pair, clutch: pinned, about: scene.about };
}

function clutchNumbered({ clutches }: Pair, number: number | null): Clutch | null {
  return number === null ? null : (clutches.find((clutch) => clutch.number === number) ?? null);
}

/** Most events say no more than a key and a day: those of one day are one object for all pairs. */
function eventOf(fold: Fold, event: Event): Event {
  const { key, site, clutch } = event;
  if (site !== null || clutch !== null) return event;
  const same = fold.today.events.get(key) ?? event;
  fold.today.events.set(key, same);
  return same;
}

/** A nest that nobody named before, and that is spelt almost as one that was; said once an entry. */
function doubtSite(scene: Scene): void {
  const {
    pair,
    entry: { site },
  } = scene;
  if (site === null) return;
  const isNamed = (one: { site: string | null }) => one.site === site.text;
  if (pair.clutches.some(isNamed) || pair.nestStates.some(isNamed)) return;
  const known = new Set([...pair.clutches, ...pair.nestStates].flatMap((one) => one.site ?? []));
  const suggestion = alikeName(site.text, known);
  if (suggestion !== null)
    reportOnce(scene, site.at, 'site-alike', { site: site.text, pair: pair.id, suggestion });
}

/** An entry pinned to a clutch that the pair does not have; said once an entry. */
function reportNoClutch(scene: Scene, { number, at }: NonNullable<Entry['clutch']>): void {
  const { pair, entry } = scene;
  const have = pair.clutches.map((clutch) => clutch.number).join(', ');
  const found = entry.saw.some(({ key }) => key === 'lost') ? 'eggs' : '';
  reportOnce(scene, at, 'no-such-clutch', { pair: pair.id, number, have, found });
}

/** The parents are in the room from the pair's first entry; what the bird list leaves out is as the journal says. */
function meetParents({ fold, pair, day }: Scene): void {
  if (pair.events.length > 0) return;
  for (const [sex, names] of [
    ['cock', pair.cock],
    ['hen', pair.hen],
  ] as const) {
    for (const name of names) {
      const bird = birdOrNew(fold, name, pair.species);
      bird.sex ??= sex;
      bird.species ??= pair.species;
      bird.firstSeen ??= day;
      if (bird.stays.length === 0)
        bird.stays = joined(bird.stays, { from: day, housing: pair.housing, nest: null, clutch: null });
      // Bred here and not seen independent: whoever is a parent feeds itself.
      else if (isDependent(bird) && names.length === 1) {
        becomeIndependent(bird, { from: bird.fledged?.day ?? day, to: day });
        settle(bird, day, pair.housing, null, null);
      }
    }
  }
}
