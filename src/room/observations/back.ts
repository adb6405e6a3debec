import { chooseBirds, chooseEggs } from '../choose.ts';
import { joined } from '../lists.ts';
import { settle, startQuarantine } from '../lives.ts';
import type { Bird, Clutch, Egg, Pair } from '../model.ts';
import type { Fold } from '../scene.ts';
import type { Apply } from './apply.ts';

/** Whoever was lost, missing, out of the nest or away is here again. */
export const back: Apply<'back'> = (scene, who) => {
  const { pair, day } = scene;
  if (who.kind === 'refs' && who.refs.every((ref) => ref.form === 'egg')) {
    const eggs = chooseEggs(scene, who, { did: 'back', among: [], impossible: notMissingEgg });
    for (const egg of eggs) {
      egg.fate = null;
      egg.places = joined(egg.places, { from: day, place: { kind: 'nest', pair, clutch: egg.clutch } });
      pair.here.eggs.add(egg);
    }
    return;
  }
  const young = pair.clutches.flatMap((clutch: Clutch) => clutch.chicks);
  const wanted = { did: 'back', among: young, impossible: notAway, rank: seldomBack, kind: wayOut };
  for (const bird of chooseBirds(scene, who, wanted)) returnBird(scene.fold, bird, pair, day);
};

/** By count: rather one that left the nest too early than one that was missing or away, and last one found dead. */
function seldomBack({ fate }: Bird): number {
  if (fate === null) return 0;
  return fate.kind === 'gone' || fate.cause === null || fate.cause === 'missing' ? 1 : 2;
}

function wayOut({ fate }: Bird): string {
  return fate?.kind ?? 'fledged';
}

function notMissingEgg(egg: Egg): string | null {
  if (egg.fate?.kind === 'lost') return null;
  return egg.fate === null ? 'it is in the nest as far as the journal knows' : 'it is not lost';
}

function notAway(bird: Bird): string | null {
  if (bird.fate !== null) return null;
  return bird.fledged !== null && bird.independent === null ? null : 'it is here as far as the journal knows';
}

function returnBird(fold: Fold, bird: Bird, pair: Pair, day: number): void {
  const away = bird.fate;
  bird.fate = null;
  if (away?.kind === 'gone') {
    bird.arrived = day;
    startQuarantine(fold, bird, day);
  } else if (away === null) {
    bird.fledged = null;
  }
  const young = bird.clutch !== null && bird.independent === null;
  settle(
    bird,
    day,
    bird.stays.at(-1)?.housing ?? pair.housing,
    young ? pair : null,
    young ? bird.clutch : null,
  );
}
