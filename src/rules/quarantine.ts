import { type Day, without } from '../days.ts';
import { keptIn } from '../grouped.ts';
import type { Room } from '../room/fold.ts';
import { enteredOn } from '../room/lives.ts';
import type { Bird } from '../room/model.ts';
import { few, listed } from '../words.ts';
import { GIVEN_UP } from './agenda/state.ts';
import { type Housed, timesHoused } from './housed.ts';
import { type Illness, illnessesOf } from './illness.ts';
import { type Mateship, mateshipsByBird } from './stock/mateships.ts';
import { birdsByName, type FindBird } from './stock/names.ts';

/** A bird that a bird in quarantine was put together with, though the two did not come together. */
export interface Meeting {
  bird: Bird;
  since: Day;
  /** The day on which they were parted; null while they are together. */
  to: Day | null;
}

/** The days for which a bird stays apart, as they are to be counted now. */
export interface Quarantine {
  /** Its arrival or return, or the day on which the last bird joined it or died beside it. */
  from: Day;
  /** The first day on which its days are over. */
  until: Day;
  /** The first day on which it may come out: its days are over, and it and its company are well. */
  out: Day;
  /** Who joined it on the day on which the days began anew; nobody where they run as they were begun. */
  joined: Bird[];
  /** Who died beside it on that day. */
  died: Bird[];
  /** When it, or its company, was unwell. */
  ill: Illness[];
  meetings: Meeting[];
}

/** One that spent a time in a housing; `to` is the day on which it left, or the day after its death there. */
interface Presence extends Housed {
  bird: Bird;
}

/** So many birds are named, and the others counted. */
const NAMED = 4;

/** Birds by name; of a full flight the first few. */
export function fewNames(birds: readonly Bird[]): string {
  return listed(
    few(
      birds.map(({ id }) => id),
      NAMED,
      'others',
    ),
  );
}

const STILL = Number.POSITIVE_INFINITY;

/**
 * The quarantine of a bird that is here and was not let out yet, or null. The days begin anew with each bird that joins it
 * before they are over (common practice), also where the two were parted again since; and with each death in its
 * housing but that of a nestling in its nest, as nobody knows yet what it died of. While it or its company is unwell it stays in.
 */
export function quarantineOf(room: Room, bird: Bird): Quarantine | null {
  if (!isApart(bird)) return null;
  const find = keptIn(known, room.birds, () => companyIn(room));
  let { until } = bird.quarantine;
  // Days begun anew may see others join.
  while (true) {
    const quarantine = begunAnew(bird, find(bird, until));
    if (quarantine.until <= until) return quarantine;
    until = quarantine.until;
  }
}

/** How the days run, where this is all that may have been carried to it. */
function begunAnew(bird: InQuarantine, { meetings, deaths, illnesses }: Company): Quarantine {
  const { from: begun, until: end } = bird.quarantine;
  const quarantine = { from: begun, until: end, joined: [] as Bird[], died: [] as Bird[] };
  const causes = [
    ...meetings.map(({ bird: other, since: day }) => ({ other, day, what: 'joined' as const })),
    ...deaths.map(({ bird: other, day }) => ({ other, day, what: 'died' as const })),
  ].sort((a, b) => a.day - b.day);
  for (const { other, day, what } of causes) {
    const { until } = quarantine;
    if (day <= begun || day > until + GIVEN_UP) continue;
    if (day > quarantine.from) Object.assign(quarantine, { joined: [], died: [] });
    quarantine.from = day;
    quarantine.until = day + end - begun;
    quarantine[what].push(other);
  }
  const { until } = quarantine;
  const ill = illnesses.filter(({ since }) => since <= until + GIVEN_UP);
  return { ...quarantine, out: Math.max(until, ...ill.map(({ over }) => over)), ill, meetings };
}

/** A room's birds are looked through once, whoever asks. */
const known = new WeakMap<readonly Bird[], FindCompany>();

/** Whom a bird in quarantine was together with, and what may have been carried to it. */
interface Company {
  /** With birds that did not come with it, before that day, in the order in which they joined. */
  meetings: Meeting[];
  /** Of those that were with it when they died, or when they fell ill of what they died of. */
  deaths: { bird: Bird; day: Day }[];
  /** Its own illnesses, and those of birds that were with it while they were unwell. */
  illnesses: Illness[];
}

type FindCompany = (bird: InQuarantine, before: Day) => Company;

type InQuarantine = Bird & { quarantine: NonNullable<Bird['quarantine']> };

function isApart(bird: Bird): bird is InQuarantine {
  return bird.quarantine !== null && bird.released === null && bird.fate === null;
}

/** Finds the company of a bird since its quarantine began, wherever it was kept before a day. */
function companyIn({ birds, pairs }: Room): FindCompany {
  const find = birdsByName(birds);
  const mateships = mateshipsByBird(pairs, find);
  const there = presentIn(birds, new Set(birds.filter(isApart).flatMap(housingsOf)));
  return (bird, before) => {
    const own = mateships.get(bird) ?? [];
    const met = [...metInHousing(bird, there, before), ...metInPair(bird, own, find)].sort(
      (a, b) => a.since - b.since,
    );
    const strange = met.filter(
      ({ bird: other, since }) => since < before && isStranger(bird, other, since, own),
    );
    return {
      deaths: [...new Map(met.flatMap(deathBeside).map((one) => [one.bird, one])).values()],
      illnesses: [...illnessesOf(bird), ...met.flatMap(illBeside)],
      meetings: withoutBreaks(strange),
    };
  };
}

/** The times in which a bird was unwell while the two were together, whether or not they were parted then. */
function illWhileTogether({ bird, since, to }: Meeting): Illness[] {
  return illnessesOf(bird).filter((illness) => illness.since <= (to ?? STILL) && illness.over > since);
}

/** Of a bird that died since, its death is what counts. */
function illBeside(met: Meeting): Illness[] {
  return met.bird.fate?.kind === 'died' ? [] : illWhileTogether(met);
}

/** The death of a bird that died beside another, or was taken away ill and died of it. */
function deathBeside(met: Meeting): Company['deaths'] {
  const { bird, since, to } = met;
  if (bird.fate?.kind !== 'died' || bird.fate.day < since || isNestLoss(bird)) return [];
  const { day } = bird.fate;
  const together = day <= (to ?? STILL) || illWhileTogether(met).some(({ over }) => over > day);
  return together ? [{ bird, day }] : [];
}

/**
 * Most broods lose nestlings to cold, hunger and the parents, which says nothing of what the old birds carry (common practice);
 * days begun anew with each would never end for a pair that breeds. One that was seen unwell is another matter.
 */
function isNestLoss({ ref, fledged, independent, unwell }: Bird): boolean {
  return ref !== null && fledged === null && independent === null && unwell.length === 0;
}

/** Who lives with it already does not join it again by becoming its mate, nor by moving on with it. */
function withoutBreaks(met: readonly Meeting[]): Meeting[] {
  const last = new Map<Bird, Meeting>();
  return met.flatMap((one) => {
    const before = last.get(one.bird);
    if (before !== undefined && one.since <= (before.to ?? STILL)) {
      before.to = before.to === null || one.to === null ? null : Math.max(before.to, one.to);
      return [];
    }
    last.set(one.bird, one);
    return [one];
  });
}

function metInHousing(
  bird: InQuarantine,
  there: ReadonlyMap<string, readonly Presence[]>,
  before: Day,
): Meeting[] {
  const begun = bird.quarantine.from;
  // Where it lived once it was over is no matter, and mostly a full flight.
  const apart = presencesOf(bird).filter(({ from, to }) => from < before && to > begun);
  return apart.flatMap(({ housing, from, to }) =>
    (there.get(housing) ?? []).flatMap((other) => {
      const since = Math.max(from, other.from, begun);
      const until = Math.min(to, other.to);
      return other.bird === bird || since >= until ? [] : [meeting(other.bird, since, until)];
    }),
  );
}

function metInPair(bird: InQuarantine, mateships: readonly Mateship[], find: FindBird): Meeting[] {
  return mateships.flatMap(({ cock, hen, from, to }) => {
    const since = Math.max(from, bird.quarantine.from);
    const until = to ?? STILL;
    if (since >= until) return [];
    return [...cock, ...hen].flatMap((name) => {
      const mate = find(name);
      if (mate === null || mate === bird) return [];
      const together = movedSince(bird, mate, from).reduce(
        (times, gap) => times.flatMap((time) => without(time, gap)),
        [{ from: since, to: until }],
      );
      return together.map((time) => meeting(mate, time.from, time.to));
    });
  });
}

/** When two lived where one of them was moved after they were put together: their housings say then whether they met. */
function movedSince(bird: Bird, mate: Bird, paired: Day): { from: Day; to: Day }[] {
  return presencesOf(bird).flatMap((one) =>
    presencesOf(mate).flatMap((other) => {
      const from = Math.max(one.from, other.from);
      const to = Math.min(one.to, other.to);
      return from <= paired || from >= to ? [] : [{ from, to }];
    }),
  );
}

function meeting(bird: Bird, since: Day, until: Day): Meeting {
  return { bird, since, to: until === STILL ? null : until };
}

/** Neither came with it, nor hatched to it or beside it. */
function isStranger(bird: InQuarantine, other: Bird, since: Day, mateships: readonly Mateship[]): boolean {
  if (mateships.some(({ pair }) => other.clutch?.pair === pair)) return false;
  if (other.ref !== null && other.stays[0]?.from === since) return false;
  const { quarantine, released } = other;
  const apart = quarantine !== null && (released === null || released > since);
  return !apart || (quarantine.from !== bird.quarantine.from && enteredOn(other) !== enteredOn(bird));
}

/** All housings that a bird lived in. */
function housingsOf({ stays }: Bird): string[] {
  return stays.flatMap(({ housing }) => housing ?? []);
}

/** Who was ever in these housings, whoever is nobody in particular left out. */
function presentIn(birds: readonly Bird[], housings: ReadonlySet<string>): Map<string, Presence[]> {
  const there = new Map<string, Presence[]>([...housings].map((housing) => [housing, []]));
  for (const bird of birds) {
    if (bird.placeholder || !housingsOf(bird).some((housing) => housings.has(housing))) continue;
    for (const presence of presencesOf(bird)) there.get(presence.housing)?.push({ bird, ...presence });
  }
  return there;
}

/** Where a bird was and from when to when; one that was missing may have been in its housing all the time. */
function presencesOf(bird: Bird): Housed[] {
  const left = bird.absences.filter(({ fate }) => fate.kind === 'gone');
  return timesHoused(bird, goneBy(bird), left);
}

/** Who dies was there on that day, be it the day on which it came. */
function goneBy({ fate }: Bird): Day {
  if (fate === null) return STILL;
  return fate.kind === 'died' ? fate.day + 1 : fate.day;
}
