import type { Bird, BirdFate } from '../../room/model.ts';
import type { Discreet } from '../discretion/discretion.ts';
import { housingKind } from '../discretion/housing-kind.ts';
import { lifeOf } from './events.ts';
import type { Portrait } from './portrait.ts';

/**
 * A bird's portrait as whoever takes the bird may have it. Its own life, its health, its relatives and their rings go
 * with it; where it lived, from whom it came and who owns it do not, nor what the keeper marked private.
 */
export function handedOver(portrait: Portrait, discreet: Discreet): Portrait {
  const { one } = portrait;
  const { housing } = one;
  const own = {
    ...one,
    bird: discreetBird(one.bird, discreet),
    housing: housing === null ? null : housingKind(housing),
  };
  return { ...portrait, one: own, life: lifeOf(own) };
}

function discreetBird(bird: Bird, discreet: Discreet): Bird {
  const { listed, stays, unwell, treated, fate } = bird;
  const told = (seen: Bird['unwell']) =>
    seen.flatMap(({ day, text }) => {
      const said = discreet(text);
      return said === null ? [] : [{ day, text: said }];
    });
  return {
    ...bird,
    stays: stays.map((stay) => ({
      ...stay,
      housing: stay.housing === null ? null : stay.housing === 'hand' ? 'hand' : housingKind(stay.housing),
    })),
    unwell: told(unwell),
    treated: told(treated),
    fate: fate === null ? null : discreetFate(fate, discreet),
    listed: listed === null ? null : { ...listed, origin: null, owner: null },
  };
}

function discreetFate(fate: BirdFate, discreet: Discreet): BirdFate {
  if (fate.kind === 'gone' || fate.cause === null) return fate;
  return { ...fate, cause: discreet(fate.cause) };
}
