import type { Range } from '../species/profile.ts';
import { bookDuration, type Duration } from './forecast/duration.ts';

/**
 * How long sitting and the nest take in this room, by species. The book alone for now; what the room's own
 * clutches teach comes in here.
 */
export interface Durations {
  incubation(species: string, range: Range): Duration;
  fledging(species: string, range: Range): Duration;
}

/** The profiles' word, unchanged. */
export const bookDurations: Durations = {
  incubation: (_species, range) => bookDuration(range),
  fledging: (_species, range) => bookDuration(range),
};
