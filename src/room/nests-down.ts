import type { Day } from '../days.ts';
import type { Finding, Place } from '../findings/finding.ts';
import { isLeftBehind, isStillNestling } from './left-behind.ts';
import { hostClutch, incubation } from './lives.ts';
import { type Bird, type Egg, lastPlace, type Pair, sameSite } from './model.ts';
import type { Fold } from './scene.ts';

/** A nest that was taken out or cleaned while the journal knew of somebody in it. */
export interface NestDown {
  pair: Pair;
  day: Day;
  state: 'removed' | 'cleaned';
  at: Place;
  over: readonly (Egg | Bird)[];
}

/** So many days after the longest sitting on an egg laid last, nobody waits for it: the usual eggs left over by a brood. */
const WAITED = 14;

/** Who is in a pair's nest as far as the journal knows, of two nests in the one named; those past their time are nobody. */
export function inNest({ here }: Pair, site: string | null, day: Day): (Egg | Bird)[] {
  const all = [
    ...[...here.eggs].filter((egg) => !isPastTime(egg, day) && !isLeftBehind(egg, day)),
    ...[...here.young].filter((young) => isStillNestling(young, day)),
  ];
  return all.filter((one) => sameSite(site, hostClutch(one)?.site ?? null));
}

/** Nests that came down over eggs or nestlings of which the same day, or the next look, tells nothing else. */
export function nestsOverBroods({ nestsDown }: Fold): Finding[] {
  return nestsDown.flatMap(({ pair, day, state, at, over }) => {
    const left = over.filter((one) =>
      'laid' in one ? isEggLeft(one, pair, day) : isNestling(one, pair, day),
    );
    if (left.length === 0) return [];
    const eggs = left.filter((one) => 'laid' in one).length;
    return [
      { code: 'nest-over-brood', at, args: { pair: pair.id, state, eggs, chicks: left.length - eggs } },
    ];
  });
}

/** Whether a nest in that state was emptied. */
export function isDown(state: string): state is NestDown['state'] {
  return state === 'removed' || state === 'cleaned';
}

/**
 * Whether the nest in which an egg lay was taken out or cleaned before that day, whatever became of the egg. Where eggs
 * were laid to it or sat on since, the nest was put back.
 */
export function isNestGone(egg: Egg, day: Day): boolean {
  const { from, place } = lastPlace(egg);
  if (place.kind !== 'nest') return false;
  const { eggs, sittings } = egg.clutch;
  const seen = Math.max(
    ...eggs.map(({ laid }) => laid.to),
    ...sittings.flatMap(({ by, day: on }) => (by === 'off' ? [] : [on])),
  );
  return place.pair.nestStates.some(
    (nest) =>
      isDown(nest.state) &&
      nest.day >= Math.max(from, seen) &&
      nest.day < day &&
      sameSite(nest.site, place.clutch?.site ?? null),
  );
}

function isPastTime({ clutch, laid }: Egg, day: Day): boolean {
  return day - laid.to > incubation(clutch.pair.profile).high + WAITED;
}

/** An egg found gone later may have been gone by then; out of one that hatched on that day a chick lay there. */
function isEggLeft({ fate, places }: Egg, pair: Pair, day: Day): boolean {
  if (fate !== null && (fate.kind === 'hatched' ? fate.day : fate.span.from) <= day)
    return fate.kind === 'hatched' && isNestling(fate.bird, pair, day);
  const { place } = places.findLast(({ from }) => from <= day) ?? places[0];
  return place.kind === 'nest' && place.pair === pair;
}

function isNestling({ fate, fledged, stays }: Bird, pair: Pair, day: Day): boolean {
  if (fledged !== null && fledged.span.from <= day) return false;
  if (fate !== null && (fate.kind === 'died' ? fate.span.from : fate.day) <= day) return false;
  return stays.findLast(({ from }) => from <= day)?.nest === pair;
}
