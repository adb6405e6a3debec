import { fertilityOf } from '../../room/fertility.ts';
import type { Room } from '../../room/fold.ts';
import type { Egg } from '../../room/model.ts';
import { betaMean } from '../../statistics/beta.ts';
import { beliefsOf } from '../ahead/beliefs.ts';

/** The chance that an egg in the nest becomes a chick, from 0 to 1. */
export type HatchChance = (egg: Egg) => number;

/**
 * The mean of what is believed of the egg's species in this room, as in the weeks ahead: an egg known to be fertile has
 * only to hatch, any other has to be fertile as well.
 */
export function hatchChances(room: Room): HatchChance {
  const beliefs = beliefsOf(room);
  return (egg) => {
    const { fertility, hatchOfFertile } = beliefs(egg.clutch.pair.species);
    const hatches = betaMean(hatchOfFertile.share);
    return fertilityOf(egg) === 'fertile' ? hatches : hatches * betaMean(fertility.share);
  };
}
