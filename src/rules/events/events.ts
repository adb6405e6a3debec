import type { Day } from '../../days.ts';
import type { Place } from '../../findings/finding.ts';
import type { Located } from '../../journal/grammar/values.ts';
import type { RoomRecord } from '../../journal/record.ts';
import { type Room, type Told, understanding } from '../../room/fold.ts';
import type { About, Bird, Clutch, Egg, Pair } from '../../room/model.ts';
import type { Sighting } from '../../room/sightings.ts';
import { birdPartsOf, each, foods, nothing, type Part, partsOf } from './parts.ts';

/** One statement of one observation, with what it turned out to mean. */
export interface EventEntry extends Part {
  day: Day;
  /** Minutes since midnight, or null. */
  time: number | null;
  /** The day after which it happened, where the keeper said so. */
  after: Day | null;
  /** Whose journal says it; both null in the room's own log. */
  pair: Named | null;
  bird: Named | null;
  /** The clutch that it is about: named, or that of its eggs or young where they are of one. */
  clutch: Clutch | null;
  site: string | null;
  /** What was observed; `note` for an entry that has nothing but a note. */
  key: string;
  /** The eggs and birds that it is about, as the record is understood; null where it is about nobody. */
  found: readonly (Egg | Pick<Bird, 'id'>)[] | null;
  note: string | null;
  at: Place;
  /** Which statement of those that stand at that place, from 1. */
  part: number;
}

type Named = Pick<Pair & Bird, 'id' | 'species'>;

type Circumstances = Omit<EventEntry, keyof Part | 'part' | 'found'>;

/**
 * Everything that was written down up to the day stood on, in the order in which it happened. It is understood anew at each
 * walk, a day at a time, so that a lifetime's statements need not stand in memory.
 */
export function eventsOf(record: RoomRecord, room: Room): Iterable<EventEntry> {
  // Of the room no more than this is kept.
  const { day, today, notMeant } = room;
  const names = namesIn(room);
  return {
    [Symbol.iterator]: () =>
      byTime(merged(seenIn(record, { day, today, notMeant }, names), othersIn(record, day, names))),
  };
}

/** What pairs and listed birds are called, by the head of the journal and the item of the list. */
interface Names {
  pairs: ReadonlyMap<unknown, Named>;
  listed: ReadonlyMap<unknown, Named>;
}

function namesIn({ pairs, birds }: Room): Names {
  const named = ({ id, species }: Named): Named => ({ id, species });
  return {
    pairs: new Map(pairs.map((pair) => [pair.at, named(pair)])),
    listed: new Map(birds.flatMap((bird) => (bird.listed === null ? [] : [[bird.listed, named(bird)]]))),
  };
}

/** What was observed, as it is taken in. */
function* seenIn(
  record: RoomRecord,
  { notMeant, ...clock }: Pick<Room, 'day' | 'today' | 'notMeant'>,
  { pairs, listed }: Names,
): Generator<EventEntry> {
  for (const told of understanding(record, clock, notMeant)) {
    const { sighting, pair } = told;
    if (sighting.of === 'pair') {
      yield* pairRows(sighting, told, pairs.get(pair?.at) ?? null);
      continue;
    }
    const bird = listed.get(sighting.record);
    if (bird === undefined) continue;
    const parts = birdPartsOf(sighting.observation);
    for (const row of rows({ ...circumstances(sighting), bird }, parts, [])) yield { ...row, found: [bird] };
  }
}

/** Notes by themselves, and what is told of the whole room; by day. */
function othersIn(record: RoomRecord, day: Day, { pairs, listed }: Names): EventEntry[] {
  const notes = [
    ...record.pairs.flatMap(({ entries, pair: { at } }) => {
      const pair = pairs.get(at);
      return pair === undefined ? [] : bareNotes(entries).map((entry) => ({ ...entry, pair }));
    }),
    ...record.birds.flatMap((one) => {
      const bird = listed.get(one);
      return bird === undefined ? [] : bareNotes(one.log).map((entry) => ({ ...entry, bird }));
    }),
  ];
  return [...notes.flatMap((note) => rows(note, [nothing], [])), ...roomRows(record)]
    .filter((row) => row.day <= day)
    .sort((a, b) => a.day - b.day);
}

/** Both by day; of one day what was observed first. */
function* merged(seen: Iterable<EventEntry>, others: readonly EventEntry[]): Generator<EventEntry> {
  let next = 0;
  for (const row of seen) {
    for (; (others[next]?.day ?? Number.POSITIVE_INFINITY) < row.day; next++)
      yield others[next] as EventEntry;
    yield row;
  }
  yield* others.slice(next);
}

/** What is in order of days, in that of the time of day as well; what has none comes first. */
function* byTime(all: Iterable<EventEntry>): Generator<EventEntry> {
  const time = (row: EventEntry) => row.time ?? -1;
  let ofDay: EventEntry[] = [];
  for (const row of all) {
    if (ofDay[0] !== undefined && ofDay[0].day !== row.day) {
      yield* ofDay.sort((a, b) => time(a) - time(b));
      ofDay = [];
    }
    ofDay.push(row);
  }
  yield* ofDay.sort((a, b) => time(a) - time(b));
}

/** Of an observation: when, what, and where it stands. */
function circumstances({ entry, observation }: Sighting): Circumstances {
  return { ...written(entry), key: observation.key, at: observation.at };
}

interface Written {
  at: Place;
  date: Day;
  time?: number | null;
  note: Located | null;
}

function written({ at, date, time = null, note }: Written): Circumstances {
  return {
    day: date,
    time,
    after: null,
    pair: null,
    bird: null,
    clutch: null,
    site: null,
    key: 'note',
    note: note?.text ?? null,
    at,
  };
}

function bareNotes(entries: Iterable<Written & { saw: readonly unknown[] }>): Circumstances[] {
  return [...entries].filter(({ saw, note }) => saw.length === 0 && note !== null).map(written);
}

function pairRows(
  sighting: Extract<Sighting, { of: 'pair' }>,
  { pair, clutch, about }: Told,
  named: Named | null,
): EventEntry[] {
  const { entry, observation } = sighting;
  const sat =
    observation.key !== 'sitting'
      ? null
      : pair?.clutches.find(({ sittings }) =>
          sittings.some(
            ({ day, time, by }) => day === entry.date && time === entry.time && by === observation.value,
          ),
        );
  const said = {
    ...circumstances(sighting),
    pair: named,
    clutch: clutch ?? sat ?? null,
    after: entry.after?.day ?? null,
    site: entry.site?.text ?? null,
  };
  return rows(said, partsOf(observation), about);
}

function roomRows({ settings }: RoomRecord): EventEntry[] {
  return settings.log.flatMap((entry) => {
    const said = [
      ...each(entry.done).map((part) => ({ key: 'done', ...part })),
      ...foods(entry.food ?? []).map((part) => ({ key: 'food', ...part })),
    ];
    if (said.length === 0) return entry.note === null ? [] : rows(written(entry), [nothing], []);
    return said.map((part, index) => ({ ...written(entry), ...part, found: null, part: index + 1 }));
  });
}

function rows(said: Circumstances, parts: readonly Part[], about: readonly About[]): EventEntry[] {
  return parts.map((part, index) => {
    const { who } = part;
    const found = who === null ? null : about.filter(({ at }) => at === who.at).flatMap((one) => one.who);
    return {
      ...said,
      ...part,
      found,
      clutch: said.clutch ?? clutchOf(found ?? [], said.day),
      part: index + 1,
    };
  });
}

/** The one clutch that these eggs and young came of; of grown birds it is nobody's matter. */
function clutchOf(found: readonly (Egg | Bird)[], day: Day): Clutch | null {
  const clutches = new Set(
    found.map((one) => {
      if ('laid' in one) return one.clutch;
      return one.independent === null || day <= one.independent.day ? one.clutch : null;
    }),
  );
  return clutches.size === 1 ? ([...clutches][0] ?? null) : null;
}
