import type { Room } from '../../room/fold.ts';
import type { DurationKind } from '../forecast/own-durations.ts';
import { type PastForecast, pastForecasts, type TrackRecord, trackRecord } from '../forecast/track-record.ts';

/** How good the forecasts of one kind were in this room: species by species, and all of them together. */
export interface KindRecord {
  kind: DurationKind;
  species: { species: string; record: TrackRecord }[];
  all: TrackRecord | null;
}

/** The past forecasts of the whole room, scored. */
export function roomRecords(room: Room): KindRecord[] {
  const past = pastForecasts(room);
  return (['incubation', 'fledging'] as const).map((kind) => {
    const ofKind = past.filter((one) => one.kind === kind);
    const bySpecies = Map.groupBy(ofKind, ({ species }) => species);
    return { kind, species: [...bySpecies].flatMap(recordOf).sort(bySpeciesName), all: trackRecord(ofKind) };
  });
}
