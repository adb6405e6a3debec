import { extent, mean } from 'd3-array';
import type { Room } from '../../room/fold.ts';
import type { Profile, Range } from '../../species/profile.ts';
import { durationsFrom } from '../durations.ts';
import { basisOf, type Duration, usualRange } from '../forecast/duration.ts';
import { type DurationKind, type OwnDuration, ownDurations } from '../forecast/own-durations.ts';
import { type PastForecast, pastForecasts, type TrackRecord, trackRecord } from '../forecast/track-record.ts';

/** What this room saw of one kind of duration, and what its forecasts make of it. */
export interface OwnExperience {
  /** Clutches of known length. */
  n: number;
  /** Days; null without any. */
  observed: { mean: number; low: number; high: number } | null;
  /** What forecasts now use: the book sharpened by the above. */
  duration: Duration;
  /** The days of nine in ten such eggs or chicks. */
  usual: Range;
  /** The same in words: what the forecasts rest on. */
  basis: string;
  past: PastForecast[];
  record: TrackRecord | null;
}

/** One species: the profile and, beside it, this room. */
export interface SpeciesView {
  profile: Profile;
  /** Pairs of it in this room. */
  pairs: string[];
  own: Record<DurationKind, OwnExperience | null>;
}

/** A species as this room knows it. */
export function speciesView(room: Room, profile: Profile): SpeciesView {
  const durations = ownDurations(room).filter(({ species }) => species === profile.species);
  return {
    profile,
    pairs: room.pairs.filter((pair) => pair.profile?.species === profile.species).map(({ id }) => id),
    own: {
      incubation: experience(room, 'incubation', profile, durations),
      fledging: experience(room, 'fledging', profile, durations),
    },
  };
}

function experience(
  room: Room,
  kind: DurationKind,
  profile: Profile,
  all: readonly OwnDuration[],
): OwnExperience | null {
  const range = profile[kind]?.value;
  if (range === undefined) return null;
  const own = all.filter((one) => one.kind === kind);
  const past = pastForecasts(room, own);
  const duration = durationsFrom(own)(kind, profile.species, range);
  return {
    n: own.length,
    observed: observedIn(own),
    duration,
    usual: usualRange(duration),
    basis: basisOf(range, duration.n),
    past,
    record: trackRecord(past),
  };
}

function observedIn(own: readonly OwnDuration[]): (Range & { mean: number }) | null {
  const [low, high] = extent(own, ({ days }) => days);
  return low === undefined ? null : { mean: mean(own, ({ days }) => days) as number, low, high };
}
