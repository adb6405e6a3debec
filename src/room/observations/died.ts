import type { Day } from '../../days.ts';
import { chooseBirds, namedFirst } from '../choose.ts';
import { hatchedOn } from '../clock.ts';
import { mayBeg } from '../left-behind.ts';
import {
  addEgg,
  endKnown,
  endLife,
  feederOf,
  hatch,
  isDependent,
  isFedByHand,
  livesAway,
  whyNotAlive,
  youngInReach,
} from '../lives.ts';
import type { Bird, Chick } from '../model.ts';
import type { Fold } from '../scene.ts';
import { notFledged, whoeverRears } from '../wanted.ts';
import { reportedOf } from '../where.ts';
import type { Apply } from './apply.ts';

/** Words alone; what has a digit was to be somebody: a ring, an id. */
const WORDS = /^\p{L}[\p{L} -]*$/u;

export const died: Apply<'died'> = (scene, value) => {
  const { day, fold } = scene;
  const told = new Set<Bird>();
  for (const { cause, who } of namedFirst(value)) {
    const birds = chooseBirds(scene, who, {
      did: 'died',
      among: youngInReach(scene.pair),
      impossible: (bird) => (endKnown(bird, 'died', day, cause?.text ?? null) ? null : whyNotAlive(bird)),
      told,
      // A brood that is found dead lay in the nest.
      before: (bird) => notFledged(bird) && !isFedByHand(bird),
      cause: (said) => (WORDS.test(said) ? said : null),
      // Most that die do so in the nest, and it is there that the pair's journal looks.
      ...whoeverRears,
      // Who was ringed or weighed on that day was alive; of the others one that was badly off dies sooner.
      likely: (bird) =>
        4 * whoeverRears.likely(bird) + 2 * Number(wasInHand(bird, day)) - Number(wasBadlyOff(bird)),
      // Young that would feed themselves by now are the keeper's to name, though nobody wrote that they do.
      last: (bird) => isFedByHand(bird) || livesAway(bird) || !mayBeg(bird, day),
    });
    for (const bird of birds) {
      if (who.kind !== 'all' && isPlaceholder(bird)) leaveOthers(fold, bird);
      bird.placeholder = false;
      const { from } = reportedOf(scene, bird);
      const earliest = Math.max(from, seenAlive(bird) ?? hatchedOn(bird)?.from ?? from);
      endLife(bird, {
        kind: 'died',
        day,
        span: { from: bird.ref === null ? day : Math.min(earliest, day), to: day },
        cause: cause?.text ?? null,
      });
    }
  }
};

/** Only young of this room are heard before anybody counts them. */
const isPlaceholder = (bird: Bird): bird is Chick => bird.placeholder;

/** Whether it was ringed, weighed or its crop looked at on a day. */
function wasInHand({ ringed, weights, crops }: Bird, on: Day): boolean {
  return ringed === on || weights.at(-1)?.day === on || crops.at(-1)?.day === on;
}

/** Whether its crop was found empty or thin when somebody looked last. */
function wasBadlyOff({ crops }: Bird): boolean {
  const last = crops.at(-1);
  return last !== undefined && last.crop !== 'full';
}

/** The last day on which it was seen or handled by itself, in whichever nest; null where it never was. */
function seenAlive(bird: Bird): Day | null {
  const { fledged, stays, crops, weights, fedBy, unwell, treated, ringed } = bird;
  const out = fledged === null ? [] : [fledged.span.from];
  // Where it hatched it was found on a day of the nest's, not of its own.
  const moved = stays.slice(1).map(({ from }) => from);
  const told = [...crops, ...weights, ...fedBy, ...unwell, ...treated].map((one) => one.day);
  const days = [...out, ...moved, ...told, ...(ringed === null ? [] : [ringed])];
  return days.length === 0 ? null : Math.max(...days);
}

/**
 * One of a nest that nobody ever counted was found dead: who was heard there need not have been it. Where neither a brother
 * of it nor an egg is left that could stand for them, another stands for those who may be there still.
 */
function leaveOthers(fold: Fold, dead: Chick): void {
  const { clutch, egg, hatched, firstSeen } = dead;
  if (clutch.counted || feederOf(dead) !== clutch.pair) return;
  if (clutch.eggs.some(({ fate }) => fate === null)) return;
  const brother = clutch.chicks.find(
    (chick) => chick !== dead && isDependent(chick) && feederOf(chick) === clutch.pair,
  );
  if (brother !== undefined) {
    brother.placeholder = true;
    return;
  }
  const other = hatch(fold, addEgg(clutch, egg.laid, true), hatched, firstSeen);
  other.placeholder = true;
}
