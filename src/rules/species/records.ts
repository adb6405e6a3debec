import { naturally } from '../../findings/naturally.ts';
import type { Room } from '../../room/fold.ts';
import type { DurationKind } from '../forecast/own-durations.ts';
import { pastForecasts, type TrackRecord, trackRecord } from '../forecast/track-record.ts';

/** How good the forecasts of one kind were in this room: species by species, and all of them together. */
export interface KindRecord {
  kind: DurationKind;
  /** By common name; species without a clutch of known length are left out. */
  species: { species: string; record: TrackRecord }[];
  /** Null without any clutch. */
  all: TrackRecord | null;
}

/** The past forecasts of the whole room, scored. */
export function roomRecords(room: Room): KindRecord[] {
  const past = pastForecasts(room);
  return (['incubation', 'fledging'] as const).map((kind) => {
    const ofKind = past.filter((one) => one.kind === kind);
    const names = [...new Set(ofKind.map(({ species }) => species))];
    const species = names.sort(naturally).flatMap((name) => {
      const record = trackRecord(ofKind.filter((one) => one.species === name));
      return record === null ? [] : [{ species: name, record }];
    });
    return { kind, species, all: trackRecord(ofKind) };
  });
}
