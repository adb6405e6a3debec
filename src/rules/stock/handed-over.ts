import type { Bird, BirdFate } from '../../room/model.ts';
import type { Discreet } from '../discretion/discretion.ts';
import { housingKind } from '../discretion/housing-kind.ts';
import { lifeEvents } from './events.ts';
import type { Portrait } from './portrait.ts';
import type { StockBird } from './stock.ts';

/**
 * A bird's portrait as whoever takes the bird may have it. Its own life, its health, its relatives and their rings go
 * with it; where it lived, from whom it came and who owns it do not, nor what the keeper marked private.
 */
export function handedOver(portrait: Portrait, discreet: Discreet): Portrait {
  const { one } = portrait;
  const { housing } = one;
  const own: StockBird = {
    ...one,
    bird: discreetBird(one.bird, discreet),
    housing: housing === null ? null : kindOf(housing),
    // How dear it is to the stock it leaves is that stock's own affair.
    meanKinship: null,
  };
  return { ...portrait, one: own, life: lifeEvents(own) };
}

/** `a flight`, `an aviary`; null where its name does not say which kind it is. `hand` is nobody’s address. */
function kindOf(housing: string): string | null {
  if (housing === 'hand') return housing;
  const kind = housingKind(housing);
  return kind === null ? null : `${/^[aeiou]/.test(kind) ? 'an' : 'a'} ${kind}`;
}

function discreetBird(bird: Bird, discreet: Discreet): Bird {
  const { listed, stays, unwell, treated, fate, absences } = bird;
  const told = (seen: Bird['unwell']) =>
    seen.flatMap(({ day, text }) => {
      const said = discreet(text);
      return said === null ? [] : [{ day, text: said }];
    });
  return {
    ...bird,
    stays: stays.map((stay) => ({
      ...stay,
      housing: stay.housing === null ? null : kindOf(stay.housing),
    })),
    unwell: told(unwell),
    treated: told(treated),
    fate: fate === null ? null : discreetFate(fate, discreet),
    absences: absences.map((absence) => ({ ...absence, fate: discreetFate(absence.fate, discreet) })),
    listed: listed === null ? null : { ...listed, origin: null, owner: null },
  };
}

function discreetFate(fate: BirdFate, discreet: Discreet): BirdFate {
  if (fate.kind === 'gone' || fate.cause === null) return fate;
  return { ...fate, cause: discreet(fate.cause) };
}
