import { type Day, formatDay, type Span } from '../days.ts';
import type { Finding, Place } from '../findings/finding.ts';
import { hatchedOn } from './clock.ts';
import type { Bird } from './model.ts';
import type { Fold } from './scene.ts';

/** A ring put on when the bird was older than a closed ring takes. */
export interface RingLate {
  bird: Bird;
  day: Day;
  at: Place;
}

/** Days past the usual age in which the ring may still pass the toes of a slow chick (common practice). */
const SLOW = 2;

/** The day before which it must have hatched for a closed ring to be too late, and the days on which one goes on. */
function closedRing({ clutch }: Bird, hatched: Span): { least: number; fits: Span } | null {
  const usual = clutch?.pair.profile?.ringAge?.value;
  if (usual === undefined) return null;
  return {
    least: usual.high + SLOW + 1,
    fits: { from: hatched.from + Math.floor(usual.low), to: hatched.to + Math.ceil(usual.high) },
  };
}

/** Whether a bird is too old on this day for a closed ring, whenever it can have hatched. */
export function isTooOldForRing(bird: Bird, day: Day): boolean {
  const hatched = hatchedOn(bird);
  const ring = hatched === null ? null : closedRing(bird, hatched);
  return hatched !== null && ring !== null && day - hatched.to >= ring.least;
}

/** Closed rings that cannot have gone on; where the clutch is to get none, an open or split ring is meant. */
export function lateRings({ ringsLate }: Fold): Finding[] {
  return ringsLate.flatMap(({ bird, day, at }): Finding[] => {
    const hatched = hatchedOn(bird);
    const ring = hatched === null ? null : closedRing(bird, hatched);
    if (hatched === null || ring === null || !isTooOldForRing(bird, day)) return [];
    if (bird.clutch?.skipped.some(({ task }) => task === 'ring')) return [];
    const args = {
      who: bird.ref ?? bird.id,
      age: day - hatched.to,
      from: formatDay(ring.fits.from),
      to: formatDay(ring.fits.to),
    };
    return [{ code: 'ringed-late', at, args }];
  });
}
