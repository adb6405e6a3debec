import type { Located } from '../journal/grammar/values.ts';
import { isDependent, takesEggs } from './lives.ts';
import type { Clutch, EggPlace, Pair } from './model.ts';
import { reportNoPair, type Scene } from './scene.ts';

/** The place that `set` or `fostered` names: a pair, `incubator` or `hand`; null (and a finding) for neither. */
export function placeNamed(scene: Scene, name: Located): EggPlace | null {
  if (name.text === 'incubator' || name.text === 'hand') return { kind: name.text };
  const pair = scene.fold.pairs.get(name.text);
  if (pair === undefined) {
    reportNoPair(scene, name.at, name.text, ['incubator', 'hand']);
    return null;
  }
  return { kind: 'nest', pair, clutch: guestClutch(pair, scene) };
}

/** The clutch of the pair that guests live with: the youngest that has eggs or young of its own in the nest. */
function guestClutch(pair: Pair, scene: Scene): Clutch | null {
  return (
    pair.clutches.findLast(
      (clutch) =>
        clutch.eggs.some((egg) => egg.fate === null) ||
        clutch.chicks.some(isDependent) ||
        takesEggs(clutch, scene.day),
    ) ?? null
  );
}
