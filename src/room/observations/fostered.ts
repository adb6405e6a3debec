import type { Day } from '../../days.ts';
import type { Who } from '../../journal/grammar/who.ts';
import { chooseBirds, chooseEggs, namedFirst } from '../choose.ts';
import { isLeftBehind } from '../left-behind.ts';
import {
  eggsInReach,
  feederOf,
  housingOf,
  isDependent,
  isFedByHand,
  nestOf,
  placeEgg,
  settle,
  whyNotAlive,
  whyNotOpen,
  youngInReach,
} from '../lives.ts';
import { takeLookBefore } from '../look-before.ts';
import { type Bird, type Egg, type EggPlace, lastPlace, type Pair } from '../model.ts';
import { report, type Scene } from '../scene.ts';
import type { Wanted } from '../wanted.ts';
import { notFledged, owner, whoeverRears, whyNotFed } from '../wanted.ts';
import { broughtOn, notBroughtToday, placeNamed } from '../where.ts';
import type { Apply } from './apply.ts';

export const fostered: Apply<'fostered'> = (scene, value) => {
  takeLookBefore(scene, value, 'any');
  for (const { place, who } of namedFirst(value)) {
    const to = placeNamed(scene, place);
    if (to === null) continue;
    const isHome = to.kind === 'nest' && to.pair === scene.pair && who.kind !== 'refs';
    const reach = isHome ? elsewhere(scene) : around(scene, to);
    const isEggs = who.kind === 'refs' ? who.refs.every((ref) => ref.form === 'egg') : reach.meansEggs;
    if (isHome && reach.eggs.length + reach.young.length === 0)
      report(scene, place.at, 'fostered-to-itself', { pair: scene.pair.id });
    else if (isEggs) moveEggs(scene, who, to, reach);
    else moveYoung(scene, who, to, reach);
  }
};

/** Among whom a count and `all` are looked for, and how. */
interface Reach {
  eggs: readonly Egg[];
  young: readonly Bird[];
  /** A count means eggs. */
  meansEggs: boolean;
  wanted: Pick<Wanted<Egg | Bird>, 'clutchOf' | 'past' | 'before'>;
  last: (bird: Bird) => boolean;
}

/**
 * Those of the nest, and young in the hand: a count means the eggs while these are all the young there are, and none of them
 * came out of an incubator these days. Where there is nobody else, the eggs in the incubator.
 */
function around(scene: Scene, to: EggPlace): Reach {
  const { pair, day } = scene;
  const young = youngInReach(pair);
  const nest = [...pair.here.eggs];
  const eggs = nest.length + young.length > 0 ? nest : warmedFor(pair, to);
  return {
    eggs: notBroughtToday(scene, eggs),
    young: notBroughtToday(scene, young),
    meansEggs:
      young.every((bird) => isFedByHand(bird) && !awaitsParents(bird, day)) &&
      (eggs.length > 0 || young.length === 0),
    // A pair may be given those from the nest as well as those from the hand.
    wanted: {
      before: notFledged,
      ...(to.kind !== 'hand' && { past: (one) => 'laid' in one && isLeftBehind(one, scene.day) }),
    },
    last: isFedByHand,
  };
}

/** Days in which a chick out of an incubator is put under foster parents, if it is at all (common practice). */
const TAKEN_ON = 5;

/** Whether one in the hand hatched of late in nobody's nest, and nobody wrote since where it is. */
function awaitsParents({ hatched, stays }: Bird, day: Day): boolean {
  return stays.length === 1 && hatched !== null && day - hatched.to <= TAKEN_ON;
}

/** Its eggs that are kept warm without a pair, in another place than the one that they go to. */
function warmedFor(pair: Pair, to: EggPlace): Egg[] {
  return eggsInReach(pair).filter((egg) => lastPlace(egg).place.kind !== to.kind);
}

/**
 * Those of the pair that are with another, in the hand or in an incubator, found by the clutch in whose record they stand.
 * Where some came home on this day, the other pair's journal having told it, it is those that are meant.
 */
function elsewhere({ pair, day }: Scene): Reach {
  const cameHome = (one: Egg | Bird) => isFor(pair, one) && broughtOn(one) === day;
  const canCome = (one: Egg | Bird) => !isFor(pair, one) || cameHome(one);
  const eggs = pair.clutches
    .flatMap((clutch) => clutch.eggs)
    .filter((egg) => egg.fate === null && lastPlace(egg).place.kind !== 'store' && canCome(egg));
  const young = pair.clutches
    .flatMap(({ chicks }) => chicks)
    .filter((bird) => isDependent(bird) && canCome(bird));
  const isTold = [...eggs, ...young].some(cameHome);
  return {
    eggs,
    young,
    meansEggs: young.length === 0,
    wanted: { clutchOf: ({ clutch }) => clutch, past: (one) => isTold && !cameHome(one) },
    // Of those with another pair it is that one's journal that tells as a rule.
    last: (bird) => !isFedByHand(bird),
  };
}

/** Whether the pair sits on it or feeds it. */
function isFor(pair: Pair, one: Egg | Bird): boolean {
  return ('laid' in one ? nestOf(one) : feederOf(one)) === pair;
}

function moveEggs(scene: Scene, who: Who, to: EggPlace, { eggs, wanted }: Reach): void {
  const moved = chooseEggs(scene, who, {
    did: 'fostered',
    among: eggs,
    ...wanted,
    impossible: (egg) => whyNotOpen(egg),
    likely: (egg) => goesAway(egg, to),
    kind: (egg) => `${owner(egg)} ${nestOf(egg)?.id}`,
  });
  for (const egg of moved) {
    if (to.kind !== 'nest' || nestOf(egg) !== to.pair) placeEgg(egg, scene.day, homeIfOwn(egg.clutch, to));
  }
}

function moveYoung(scene: Scene, who: Who, to: EggPlace, { young, wanted, last }: Reach): void {
  const moved = chooseBirds(scene, who, {
    did: 'fostered',
    among: young,
    ...wanted,
    impossible: (bird) => whyNotAlive(bird) ?? whyNotFed(bird),
    last,
    likely: (bird) => 2 * goesAway(bird, to) + whoeverRears.likely(bird),
    kind: (bird) => `${whoeverRears.kind(bird)} ${feederOf(bird)?.id}`,
  });
  for (const bird of moved) {
    const place = bird.clutch === null ? to : homeIfOwn(bird.clutch, to);
    const [nest, clutch] = place.kind === 'nest' ? [place.pair, place.clutch] : [null, bird.clutch];
    const housing = place.kind === 'nest' ? place.pair.housing : place.kind;
    if (feederOf(bird) !== nest || housingOf(bird) !== housing)
      settle(bird, scene.day, housing, nest, clutch);
  }
}

/** Guests that come home go before all others. */
function goesAway({ clutch }: Egg | Bird, to: EggPlace): 0 | 1 {
  return to.kind === 'nest' && to.pair === clutch?.pair ? 0 : 1;
}

/** Whoever comes home lives with its own clutch again. */
function homeIfOwn(clutch: NonNullable<Scene['pinned']>, to: EggPlace): EggPlace {
  return to.kind === 'nest' && to.pair === clutch.pair ? { ...to, clutch } : to;
}
