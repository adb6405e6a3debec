import type { Day } from '../../days.ts';
import { type Chick, type Clutch, type Egg, lastPlace, type Pair } from '../../room/model.ts';

/** Who had the care of an egg or chick when something became of it. */
export interface Care {
  /** The clutch that it was laid in. */
  origin: Clutch;
  /** The pair to be credited; null in an incubator, in store or fed by hand. */
  pair: Pair | null;
  /** The clutch of that pair with which it lived, where there was one. */
  clutch: Clutch | null;
  housing: string | null;
}

/** Of those who laid: laying and fertility are credited to them, and all of a clutch that stayed with them. */
export function ownCare(origin: Clutch): Care {
  return { origin, pair: origin.pair, clutch: origin, housing: origin.housing };
}

/** Hatching is credited to whoever sat on it last. */
export function sitterOf(egg: Egg): Care {
  const { place } = lastPlace(egg);
  if (place.kind !== 'nest') {
    return { origin: egg.clutch, pair: null, clutch: null, housing: place.kind };
  }
  const { pair, clutch } = place;
  return { origin: egg.clutch, pair, clutch, housing: clutch?.housing ?? pair.housing };
}

/** Fledging is credited to whoever fed it until then; of one that did not fledge, until its end or today. */
export function nestFeederOf(bird: Chick, day: Day): Care {
  return feederOn(bird, bird.fledged?.day ?? bird.fate?.day ?? day);
}

/** Independence is credited to whoever fed it last. */
export function lastFeederOf(bird: Chick, day: Day): Care {
  return feederOn(bird, bird.independent?.day ?? bird.fate?.day ?? day);
}

function feederOn(bird: Chick, day: Day): Care {
  const { clutch: origin, independent } = bird;
  const stays = bird.stays.filter(({ from }) => from <= day);
  // Wherever it went on the day on which it fed itself, it was fed where it came from.
  const fed = stays.filter(({ from }) => from < day || independent?.day !== day);
  const stay = fed.at(-1) ?? stays[0];
  const seen = bird.fedBy.findLast((one) => one.day <= day);
  // A feeder that it was brought to since is credited, though nobody saw it fed there.
  const brought = fed[1 + fed.findLastIndex(({ nest }) => nest !== stay?.nest)];
  const byHand = seen?.by === 'hand' && seen.day >= (brought?.from ?? seen.day);
  const pair = byHand ? null : (stay?.nest ?? null);
  return {
    origin,
    pair,
    clutch: pair === null ? null : (stay?.clutch ?? null),
    housing: stay?.housing ?? origin.housing,
  };
}
