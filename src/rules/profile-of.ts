import type { Room } from '../room/fold.ts';
import type { Bird } from '../room/model.ts';
import { findSpecies } from '../species/find.ts';
import type { Profile } from '../species/profile.ts';

/** Of its own clutch; for a bird from outside, of a pair of its species, which knows the room's own profiles, or shipped. */
export function profileOf(room: Room, { clutch, species }: Bird): Profile | null {
  if (clutch !== null) return clutch.pair.profile;
  if (species === null) return null;
  return room.pairs.find((pair) => pair.species === species)?.profile ?? findSpecies(species);
}
