import type { Day } from '../../days.ts';
import type { Place } from '../../findings/finding.ts';
import type { Located } from '../../journal/grammar/values.ts';
import type { RoomRecord } from '../../journal/record.ts';
import { understandRoom } from '../../room/fold.ts';
import type { About, Bird, Clutch, Egg, Pair } from '../../room/model.ts';
import type { Sighting } from '../../room/sightings.ts';
import { birdPartsOf, each, foods, type Part, partsOf } from './parts.ts';

/** One statement of one observation, with what it turned out to mean. */
export interface EventEntry extends Part {
  day: Day;
  /** Minutes since midnight, or null. */
  time: number | null;
  /** The day after which it happened, where the keeper said so. */
  after: Day | null;
  /** Whose journal says it; both null in the room's own log. */
  pair: Pair | null;
  bird: Bird | null;
  /** The clutch that it is about: named, or that of its eggs or young where they are of one. */
  clutch: Clutch | null;
  site: string | null;
  /** What was observed; `note` for an entry that has nothing but a note. */
  key: string;
  /** The eggs and birds that it is about, as the record is understood; null where it is about nobody. */
  found: readonly (Egg | Bird)[] | null;
  note: string | null;
  at: Place;
  /** Which statement of those that stand at that place, from 1. */
  part: number;
}

type Circumstances = Omit<EventEntry, keyof Part | 'part' | 'found'>;

/** Everything that was written down up to the day stood on, in the order in which it happened. */
export function eventsOf(record: RoomRecord, clock: { day: Day; today: Day }): EventEntry[] {
  const told: Told[] = [];
  const room = understandRoom(record, clock, (sighting, meant) => told.push({ sighting, ...meant }));
  const pairs = new Map(room.pairs.map((pair) => [pair.at, pair]));
  const listed = new Map(room.birds.flatMap((bird) => (bird.listed === null ? [] : [[bird.listed, bird]])));
  const journals = record.pairs.filter(({ pair }) => pairs.has(pair.at));
  const birds = record.birds.filter((one) => listed.has(one));
  const seen = told.flatMap(({ sighting, clutch, about }) => {
    if (sighting.of === 'pair') {
      return pairRows(sighting, pairs.get(sighting.journal.pair.at) as Pair, clutch, about);
    }
    const bird = listed.get(sighting.record);
    if (bird === undefined) return [];
    const parts = birdPartsOf(sighting.observation);
    return rows({ ...circumstances(sighting), bird }, parts, []).map((row) => ({ ...row, found: [bird] }));
  });
  const notes = [
    ...journals.flatMap(({ entries, pair }) =>
      bareNotes(entries).map((entry) => ({ ...entry, pair: pairs.get(pair.at) ?? null })),
    ),
    ...birds.flatMap((one) =>
      bareNotes(one.log).map((entry) => ({ ...entry, bird: listed.get(one) ?? null })),
    ),
  ];
  const others = [...notes.flatMap((note) => rows(note, [nobody], [])), ...roomRows(record)];
  return [...seen, ...others.filter(({ day }) => day <= room.day)].sort(
    (a, b) => a.day - b.day || (a.time ?? -1) - (b.time ?? -1),
  );
}

/** One observation, and what it turned out to mean. */
interface Told {
  sighting: Sighting;
  clutch: Clutch | null;
  about: readonly About[];
}

const nobody: Part = { what: null, who: null, count: null, amount: null, unit: null, details: null };

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
  pair: Pair,
  clutch: Clutch | null,
  about: readonly About[],
): EventEntry[] {
  const { entry, observation } = sighting;
  const sat =
    observation.key !== 'sitting'
      ? null
      : pair.clutches.find(({ sittings }) =>
          sittings.some(
            ({ day, time, by }) => day === entry.date && time === entry.time && by === observation.value,
          ),
        );
  const said = {
    ...circumstances(sighting),
    pair,
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
    if (said.length === 0) return entry.note === null ? [] : rows(written(entry), [nobody], []);
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
