import type { Room } from '../../room/fold.ts';
import type { Brood } from '../brood.ts';
import type { Course } from './courses.ts';
import { type Leaving, leavingPairs } from './housing/leaving.ts';
import { emptyHousings, type Occupancy, occupancies } from './housing/occupancy.ts';
import { type WeanedPlace, weanedPlace } from './housing/weaned-place.ts';
import type { Week } from './weeks.ts';

export interface Housing {
  place: WeanedPlace | null;
  leaving: Leaving[];
  /** Every housing with birds that feed themselves, in natural order. */
  occupied: Occupancy[];
  /** Housings that the record names and where nobody lives today. */
  empty: string[];
}

/** Who will have to live where. The journals know no capacity: what a housing held before is all there is to compare. */
export function housingAhead(
  room: Room,
  courses: readonly Course[],
  { broods, weeks, draws }: { broods: readonly Brood[]; weeks: readonly Week[]; draws: number },
): Housing {
  const ever = occupancies(room);
  const occupied = ever.filter(({ now }) => now > 0);
  return {
    place: weanedPlace(room, courses, { ever, weeks, draws }),
    leaving: leavingPairs(room, courses, { broods, until: weeks.at(-1)?.to ?? room.day, draws }),
    occupied,
    empty: emptyHousings(room, new Set(occupied.map(({ housing }) => housing))),
  };
}
