import type { Day } from '../days.ts';
import { naturally } from '../findings/naturally.ts';
import type { BirdEntry, BirdObservation, BirdRecord } from '../journal/birds.ts';
import { dayAt, entryAt } from '../journal/entries.ts';
import type { Entry, PairJournal } from '../journal/entry.ts';
import type { Observation } from '../journal/observations/index.ts';
import { ofOneDay, type Standing } from './of-one-day.ts';

/** One observation of one visit, ready to be put in order with all others of the room. */
export type Sighting =
  | PairSighting
  | { of: 'bird'; record: BirdRecord; entry: BirdEntry; observation: BirdObservation };

/** Of a pair's journal. */
export interface PairSighting {
  of: 'pair';
  journal: PairJournal;
  entry: Entry;
  observation: Observation;
}

/**
 * Everything seen up to a day, day by day and in the order in which it happened: by date, then time, then the order of the trade
 * within a day. Lines may stand in any order in their files; what is left open is settled by what they say. The entries
 * of a day are made when its turn comes, and can be forgotten behind it: a room may have millions.
 */
export function* dayByDay(
  pairs: readonly PairJournal[],
  birds: readonly BirdRecord[],
  until: Day,
): Generator<readonly Sighting[]> {
  const logs = ranked([...pairs.map(ofPair), ...birds.map(ofBird)]);
  for (const visits of byDay(logs, until)) {
    const seen: Standing[] = [];
    for (const [{ rank, at }, index] of visits)
      for (const sighting of at(index)) seen.push({ rank, sighting });
    yield ofOneDay(seen).map(({ sighting }) => sighting);
  }
}

/** The same, one after the other. */
export function* inOrder(
  pairs: readonly PairJournal[],
  birds: readonly BirdRecord[],
  until: Day,
): Generator<Sighting> {
  for (const seen of dayByDay(pairs, birds, until)) yield* seen;
}

/** The log of a pair or a bird. */
interface Log {
  name: string;
  length: number;
  day(index: number): Day;
  /** What one of its entries says. */
  at(index: number): Sighting[];
}

/** A log, and where its name stands among the names of all; the same number for names that are alike. */
type Ranked = Log & { rank: number };

function ofPair(journal: PairJournal): Log {
  const { entries } = journal;
  return {
    name: journal.pair.text,
    length: entries.length,
    day: (index) => dayAt(entries, index),
    at: (index) => {
      const entry = entryAt(entries, index);
      return entry.saw.map((observation) => ({ of: 'pair', journal, entry, observation }));
    },
  };
}

function ofBird(record: BirdRecord): Log {
  const { log } = record;
  return {
    name: record.id.text,
    length: log.length,
    day: (index) => (log[index] as BirdEntry).date,
    at: (index) => {
      const entry = log[index] as BirdEntry;
      return entry.saw.map((observation) => ({ of: 'bird', record, entry, observation }));
    },
  };
}

function ranked(logs: readonly Log[]): Ranked[] {
  const sorted = logs.filter(({ length }) => length > 0).sort((a, b) => naturally(a.name, b.name));
  let rank = 0;
  return sorted.map((log, i) => {
    const before = sorted[i - 1];
    if (before !== undefined && naturally(before.name, log.name) !== 0) rank = i;
    return { ...log, rank };
  });
}

/** The entries of each day, as a log and the entry's number in it; days in order. */
function* byDay(logs: readonly Ranked[], until: Day): Generator<[log: Ranked, index: number][]> {
  const counts = new Map<Day, number>();
  const each = (visit: (log: number, index: number, day: Day) => void) => {
    logs.forEach((log, which) => {
      for (let index = 0; index < log.length; index++) {
        const day = log.day(index);
        if (day <= until) visit(which, index, day);
      }
    });
  };
  each((_log, _index, day) => counts.set(day, (counts.get(day) ?? 0) + 1));
  const days = [...counts.keys()].sort((a, b) => a - b);
  const next = new Map<Day, number>();
  let total = 0;
  for (const day of days) {
    next.set(day, total);
    total += counts.get(day) as number;
  }
  const from = new Uint32Array(total);
  const which = new Uint32Array(total);
  each((log, index, day) => {
    const at = next.get(day) as number;
    from[at] = log;
    which[at] = index;
    next.set(day, at + 1);
  });
  let at = 0;
  for (const day of days) {
    const visits: [Ranked, number][] = [];
    for (const end = next.get(day) as number; at < end; at++)
      visits.push([logs[from[at] as number] as Ranked, which[at] as number]);
    yield visits;
  }
}
