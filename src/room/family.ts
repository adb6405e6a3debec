import type { Day } from '../days.ts';
import type { Place } from '../findings/finding.ts';
import type { Who } from '../journal/grammar/who.ts';
import { walksOff } from '../species/walks-off.ts';
import { mustHaveLeft } from './left-behind.ts';
import { feederOf, housingOf, livesAway, whyNotAlive, youngInReach } from './lives.ts';
import type { Bird, Chick, Pair } from './model.ts';
import { parentsOf } from './names.ts';
import { refuse, type Scene } from './scene.ts';

/** Whom words about health mean where nobody is named: a count the young that are fed, `all` their parents as well. */
export function familyOf(scene: Scene, who: Who): Bird[] {
  return [...(who.kind === 'all' ? parentsLeft(scene) : []), ...youngInReach(scene.pair)];
}

/** The two, or the one that is left of them. */
export function parentsLeft(scene: Scene): Bird[] {
  return parentsOf(scene, 'both').filter((bird) => whyNotAlive(bird) === null);
}

/** The parents that something is told of, as far as they are alive and here; of one that is not, a finding says so. */
export function livingParents(
  scene: Scene,
  parent: 'cock' | 'hen' | 'both',
  { at, did }: { at: Place; did: string },
): Bird[] {
  return parentsOf(scene, parent).filter((bird) => {
    const away = whyNotAlive(bird);
    if (away !== null) refuse(scene, at, away, { who: bird.id, did });
    return away === null;
  });
}

/** The young that go where the pair goes: those that it feeds, less those that were taken to another place before. */
export function youngAtHome({ here }: Pair): Chick[] {
  return [...here.young].filter((bird) => !livesAway(bird));
}

/** Everyone who hatched of this pair's eggs or was ever fed in its nests, whatever became of them; its own first. */
export function everReared({ clutches, guests }: Pair): Chick[] {
  return [...clutches.flatMap(({ chicks }) => chicks), ...guests];
}

/** The young, guests included, that left the nest and were given no place of their own yet. */
export function stillAtHome(pair: Pair, day: Day): Chick[] {
  return everReared(pair).filter((bird) => bird.fate === null && isOut(bird, day) && livesWith(pair, bird));
}

/** It was seen to leave the nest, its kind is in none, or it is too old for one. */
function isOut(bird: Chick, day: Day): boolean {
  return bird.fledged !== null || walksOff(bird.clutch.pair.profile) || mustHaveLeft(bird, day);
}

/** Fed here, or weaned and never moved since, with the pair or where it was reared by hand. */
function livesWith(pair: Pair, bird: Chick): boolean {
  const housing = housingOf(bird);
  if (housing !== pair.housing && housing !== 'hand' && housing !== 'incubator') return false;
  const { independent } = bird;
  if (independent !== null) return bird.stays.every(({ from }) => from <= independent.day);
  return (feederOf(bird) ?? bird.clutch.pair) === pair;
}
