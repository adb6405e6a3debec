import { formatDay } from '../../days.ts';
import type { Place } from '../../findings/finding.ts';
import type { Who } from '../../journal/grammar/who.ts';
import { chooseEggs, isUncounted } from '../choose.ts';
import { daysToHatch, hatchRank, lampSays } from '../fertility.ts';
import { hasClutchInCourse, hasFlown, isLeftBehind, isStillNestling } from '../left-behind.ts';
import {
  begun,
  canHatchBy,
  eggsInReach,
  hatch,
  hostClutch,
  nestOf,
  openClutch,
  whyNotOpen,
} from '../lives.ts';
import type { Egg } from '../model.ts';
import { clutchesThere, means, type Refusal, report, type Scene } from '../scene.ts';
import { unseenEggs } from '../unseen.ts';
import { owner } from '../wanted.ts';
import { reportedOf } from '../where.ts';
import type { Apply } from './apply.ts';

export const hatched: Apply<'hatched'> = (scene, who, at) => {
  const reach = eggsInReach(scene.pair).filter((egg) => !isLeftBehind(egg, scene.day));
  if (
    !reach.some((egg) => means(scene, hostClutch(egg))) &&
    scene.pinned === null &&
    who.kind === 'count' &&
    !hasClutchInCourse(clutchesThere(scene), scene.day)
  ) {
    openClutch(scene, { counted: false });
  }
  const left = takePlaceholders(scene, who);
  if (left === null) return;
  const unseen = unseenEggs(scene, scene.day);
  const eggs = chooseEggs(scene, left, {
    did: 'hatched',
    among: reach,
    impossible: (egg) => cannotHatch(egg) ?? tooSoon(scene, egg),
    rank: (egg) => hatchRank(egg, scene.since),
    // Whoever hatches in the nest has to be fed there, and nobody but the journal tells it.
    likely: (egg) => daysToHatch(egg, scene.day) + (nestOf(egg) === null ? LATER : 0),
    kind: (egg) => `${owner(egg)} ${lampSays(egg)} ${nestOf(egg) === null ? 'incubator' : 'nest'}`,
    mayHoldMore: (clutch) => (isUncounted(clutch) && !hasFlown(clutch, scene.day)) || unseen.grows(clutch),
    another: unseen.another,
  });
  for (const egg of eggs) hatchOne(scene, egg, at);
  if (who.kind === 'count' && who.exact !== 'exactly') {
    for (const egg of eggs) (hostClutch(egg) ?? egg.clutch).chicksCounted = false;
  }
};

/** Days by which those in the incubator are put behind those in the nest. */
const LATER = 1000;

function hatchOne(scene: Scene, egg: Egg, at: Place): void {
  if (lampSays(egg) === 'clear') report(scene, at, 'hatched-though-clear', { who: egg.ref });
  hatch(scene.fold, egg, reportedOf(scene, egg), scene.day);
}

/**
 * Young that were only heard are the first of those now counted; what is left of the count hatched besides. Null
 * when nothing is left.
 */
function takePlaceholders(scene: Scene, who: Who): Who | null {
  if (who.kind !== 'count') return who;
  const heard = [...scene.pair.here.young]
    .filter(
      (young) => young.placeholder && isStillNestling(young, scene.day) && means(scene, hostClutch(young)),
    )
    .slice(0, who.count);
  for (const young of heard) young.placeholder = false;
  scene.about.push({ at: who.at, who: heard.map((young) => young.egg) });
  const left = who.count - heard.length;
  return left === 0 ? null : { ...who, count: left };
}

/** Why this egg cannot have hatched by the day, for want of time; null where it can. */
export function tooSoon(scene: Scene, egg: Egg): Refusal | null {
  if (canHatchBy(egg, scene.day)) return null;
  const { day, what } = begun(egg);
  return {
    code: 'hatched-too-soon',
    why: `it was ${what} on ${formatDay(day)}, only ${scene.day - day} d before`,
  };
}

function cannotHatch(egg: Egg): Refusal | null {
  const why = whyNotOpen(egg);
  return why !== null && egg.fate?.kind === 'hatched' ? { code: 'hatched-twice', why } : why;
}
