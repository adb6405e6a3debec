import { naturally } from '../findings/naturally.ts';
import { birdObservations } from '../journal/bird-observations/index.ts';
import type { BirdEntry, BirdObservation, BirdRecord } from '../journal/birds.ts';
import type { Entry, PairJournal } from '../journal/entry.ts';
import { type Observation, observations } from '../journal/observations/index.ts';

/** One observation of one visit, ready to be put in order with all others of the room. */
export type Sighting =
  | { of: 'pair'; journal: PairJournal; entry: Entry; observation: Observation }
  | { of: 'bird'; record: BirdRecord; entry: BirdEntry; observation: BirdObservation };

/**
 * Everything seen up to a day, in the order in which it happened: by date, then time, then the order of the trade
 * within a day. Lines may stand in any order in their files; what is left open is settled by what they say.
 */
export function inOrder(
  pairs: readonly PairJournal[],
  birds: readonly BirdRecord[],
  until: number,
): Sighting[] {
  const sightings: Sighting[] = [];
  for (const journal of pairs) {
    for (const entry of journal.entries) {
      if (entry.date > until) continue;
      for (const observation of entry.saw) sightings.push({ of: 'pair', journal, entry, observation });
    }
  }
  for (const record of birds) {
    for (const entry of record.log) {
      if (entry.date > until) continue;
      for (const observation of entry.saw) sightings.push({ of: 'bird', record, entry, observation });
    }
  }
  return sightings.sort(byTime);
}

function byTime(a: Sighting, b: Sighting): number {
  return (
    a.entry.date - b.entry.date ||
    (a.entry.time ?? -1) - (b.entry.time ?? -1) ||
    orderOf(a) - orderOf(b) ||
    naturally(nameOf(a), nameOf(b)) ||
    said(a).localeCompare(said(b))
  );
}

function orderOf(sighting: Sighting): number {
  return sighting.of === 'pair'
    ? observations[sighting.observation.key].order
    : birdObservations[sighting.observation.key].order;
}

function nameOf(sighting: Sighting): string {
  return sighting.of === 'pair' ? sighting.journal.pair.text : sighting.record.id.text;
}

/** What was said, without where it stands: of two alike it does not matter which comes first. */
function said(sighting: Sighting): string {
  const { key, value } = sighting.observation;
  const text = JSON.stringify(value, (name, inner) => (name === 'at' && isPlace(inner) ? undefined : inner));
  if (sighting.of === 'bird') return `${key} ${text}`;
  const { clutch, site, after } = sighting.entry;
  return [key, clutch?.number ?? '', site?.text ?? '', after?.day ?? '', after?.time ?? '', text].join(' ');
}

/** `at` also says whom a bird chases. */
function isPlace(inner: unknown): boolean {
  return typeof inner === 'object' && inner !== null && 'file' in inner;
}
