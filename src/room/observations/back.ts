import { type Day, formatDay } from '../../days.ts';
import { chooseBirds, chooseEggs } from '../choose.ts';
import { everReared } from '../family.ts';
import { mayBeg } from '../left-behind.ts';
import { comeBack, housingOf, isFedByHand, placeEgg, settle } from '../lives.ts';
import { type Bird, type Egg, lastPlace, type Pair } from '../model.ts';
import type { Fold, Refusal } from '../scene.ts';
import { owner } from '../wanted.ts';
import type { Apply } from './apply.ts';

/** Whoever was lost, missing, out of the nest or away is here again. */
export const back: Apply<'back'> = (scene, who) => {
  const { pair, day } = scene;
  if (who.kind === 'refs' && who.refs.every((ref) => ref.form === 'egg')) {
    const eggs = chooseEggs(scene, who, { did: 'back', among: [], impossible: notMissingEgg });
    for (const egg of eggs) returnEgg(egg, day);
    return;
  }
  const birds = chooseBirds(scene, who, {
    did: 'back',
    among: ofThisNest(pair).filter(mayBeCounted),
    impossible: notAway,
    // Missing or out of the nest since so long that it would feed itself by now.
    past: (bird) => !mayBeg(bird, day),
    rank: ({ fate }) => (fate === null ? 0 : 1),
    kind: owner,
  });
  for (const bird of birds) returnBird(scene.fold, bird, pair, day);
};

/** The young, guests included, that were fed from this nest last. */
function ofThisNest(pair: Pair): Bird[] {
  return everReared(pair).filter((bird) => lastNest(bird)?.nest === pair);
}

function lastNest({ stays }: Bird): Bird['stays'][number] | undefined {
  return stays.findLast(({ nest }) => nest !== null);
}

/** A count means one that fell out of the nest or was missing; who was found dead or left the room is named. */
function mayBeCounted({ fate }: Bird): boolean {
  if (fate === null) return true;
  return fate.kind === 'died' && (fate.cause === null || fate.cause === 'missing');
}

function notMissingEgg(egg: Egg): string | null {
  if (egg.fate?.kind === 'lost') return null;
  return egg.fate === null ? 'it is in the nest as far as the journal knows' : 'it is not lost';
}

function notAway(bird: Bird): Refusal | null {
  if (bird.fate !== null) return null;
  if (isFedByHand(bird) && bird.fledged === null) {
    return {
      code: 'back-from-hand',
      why: () => `it has been fed by hand since ${formatDay(inHandSince(bird))}`,
    };
  }
  return bird.fledged !== null && bird.independent === null ? null : 'it is here as far as the journal knows';
}

function inHandSince({ stays }: Bird): number {
  return (stays[stays.findLastIndex(({ nest }) => nest !== null) + 1] as Bird['stays'][number]).from;
}

/** An egg lies again where it lay when it was lost, be it a foster's nest. */
function returnEgg(egg: Egg, day: Day): void {
  const { place } = lastPlace(egg);
  egg.fate = null;
  placeEgg(egg, day, place);
}

/**
 * Who was missing or away lives where it did and is fed by whoever fed it; who had been moved away is with its parents,
 * and who only left its nest, or the box in which it was fed by hand, is put back into it.
 */
function returnBird(fold: Fold, bird: Bird, pair: Pair, day: Day): void {
  const wasHere = bird.fate === null;
  const home = (wasHere ? lastNest(bird) : undefined) ?? bird.stays.at(-1);
  const housing = (wasHere ? home?.nest?.housing : null) ?? home?.housing ?? pair.housing;
  comeBack(fold, bird, day);
  if (wasHere && housingOf(bird) === housing) bird.fledged = null;
  settle(bird, day, housing, home?.nest ?? null, home?.clutch ?? null);
}
