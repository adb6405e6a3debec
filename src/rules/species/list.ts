import { naturally } from '../../findings/naturally.ts';
import type { Room } from '../../room/fold.ts';
import { comparable, namesOf } from '../../species/names.ts';
import type { Profile, Range } from '../../species/profile.ts';
import { allShipped } from '../../species/shipped.ts';
import { learnedDurations } from '../durations.ts';
import { usualRange } from '../forecast/duration.ts';
import type { DurationKind } from '../forecast/own-durations.ts';

/** How the list of species may be narrowed. */
export interface SpeciesFilter {
  /** Only species that this room has pairs of. */
  kept: boolean;
  liveFood: string | null;
  /** Part of any of its names. */
  named: string | null;
}

/** All species there is a profile of, own ones in place of the shipped, by common name. */
export function speciesList(room: Room, own: readonly Profile[], filter: SpeciesFilter): Profile[] {
  const kept = new Set(room.pairs.map((pair) => pair.profile?.species));
  const mine = new Set(own.map(({ id }) => id));
  const wanted = filter.named === null ? null : comparable(filter.named);
  return [...own, ...allShipped().filter(({ id }) => !mine.has(id))]
    .filter((profile) => !filter.kept || kept.has(profile.species))
    .filter((profile) => filter.liveFood === null || profile.liveFood?.value === filter.liveFood)
    .filter(
      (profile) => wanted === null || namesOf(profile).some((name) => comparable(name).includes(wanted)),
    )
    .sort((a, b) => naturally(a.species, b.species));
}

/** A species of this room, and what its own clutches made of the book. */
export interface KeptSpecies {
  profile: Profile;
  /** Clutches of known length, and the days that forecasts use; null where the profile gives no range. */
  now: Record<DurationKind, { n: number; range: Range } | null>;
}

/** What forecasts now use for each of these species. */
export function keptSpecies(room: Room, profiles: readonly Profile[]): KeptSpecies[] {
  const durations = learnedDurations(room);
  const now = (kind: DurationKind, profile: Profile) => {
    const book = profile[kind]?.value;
    if (book === undefined) return null;
    const duration = durations(kind, profile.species, book);
    return { n: duration.n, range: usualRange(duration) };
  };
  return profiles.map((profile) => ({
    profile,
    now: { incubation: now('incubation', profile), fledging: now('fledging', profile) },
  }));
}
