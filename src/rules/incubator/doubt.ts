import type { Egg } from '../../room/model.ts';
import type { Profile, Range } from '../../species/profile.ts';
import { HATCH_SHARE } from '../growth/curve.ts';
import { isSlip } from '../growth/slip.ts';
import { freshMass } from './egg-size.ts';

/** A chick hatches with about so much of the fresh egg's mass (common practice; so it is in the shipped profiles). */
const HATCHES_WITH = 0.7;

/** What a fresh egg of the species weighs about, g, by its chick and by its hen; null where no mass is known. */
function usualEgg(profile: Profile | null): Range | null {
  const hatch = profile?.hatchMass?.value;
  const adult = profile?.adultMass?.value;
  const share = HATCH_SHARE / HATCHES_WITH;
  const known = [
    ...(hatch === undefined ? [] : [hatch.low / HATCHES_WITH, hatch.high / HATCHES_WITH]),
    ...(adult === undefined ? [] : [adult.low * share, adult.high * share]),
  ];
  return known.length === 0 ? null : { low: Math.min(...known), high: Math.max(...known) };
}

/**
 * What an egg of the species weighs, where a weight of this egg cannot be right; null where it can, or nobody knows.
 *
 * @param weight one of its weights, or null for its length and breadth
 */
export function eggDoubt(egg: Egg, weight: { grams: number } | null): Range | null {
  const usual = usualEgg(egg.clutch.pair.profile);
  const grams = weight === null ? (egg.size === null ? null : freshMass(egg.size)) : weight.grams;
  if (usual === null || grams === null) return null;
  return isSlip(grams, usual) ? usual : null;
}
