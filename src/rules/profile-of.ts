import type { Room } from '../room/fold.ts';
import type { Bird } from '../room/model.ts';
import { findSpecies } from '../species/find.ts';
import type { Profile } from '../species/profile.ts';

/** Of its own clutch; for a bird from outside, the room's own of its species, or the shipped one. */
export function profileOf({ own }: Pick<Room, 'own'>, { clutch, species }: Bird): Profile | null {
  if (clutch !== null) return clutch.pair.profile;
  return species === null ? null : findSpecies(species, own);
}
