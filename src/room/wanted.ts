import { naturally } from '../findings/naturally.ts';
import { isLeftBehind } from './left-behind.ts';
import { hostClutch, isFedByHand } from './lives.ts';
import { type Bird, type Clutch, type Egg, fullRef } from './model.ts';
import { isNotMeant } from './not-meant.ts';
import { means, type Refusal, type Scene } from './scene.ts';

/** What an observation asks of the eggs or birds that it can be about. */
export interface Wanted<T extends Egg | Bird> {
  /** What it says they did, for the sentence of a finding: `hatched`, `fledged`. */
  did: string;
  /** Whom counts and `all` range over. */
  among: Iterable<T>;
  /** The clutch by which its words find it; that of the nest it lives with where nothing is said. */
  clutchOf?: (one: T) => Clutch | null;
  /** Why it cannot be this one, in words, or null where it can. */
  impossible: (one: T) => Refusal | null;
  /** Of whom the same words said something else already: a count and `all` mean the others. Whoever is chosen is added. */
  told?: Set<T>;
  /**
   * By count nobody means this one while another is there; where nothing is said, an egg that has lain for months, or a
   * chick in the hand while others are in the nest.
   */
  past?: (one: T) => boolean;
  /** Whom `all` means where there is such a one; the others are named. */
  before?: (one: T) => boolean;
  /** How badly this one agrees with what is known; lower is better. */
  rank?: (one: T) => number;
  /** By count it is taken after all others, of whichever clutch; unlike one that is past, it is asked about. */
  last?: (one: T) => boolean;
  /** Whom it means as a rule where what is known does not tell, a guess all the same; lower is likelier. */
  likely?: (one: T) => number;
  /** What sets it apart for the rates; a guess between unlike ones is worth a hint. */
  kind?: (one: T) => string;
  /** The cause that was probably meant by a word which names no egg or bird; null where none can have been. */
  cause?: (said: string) => string | null;
  /** Whoever is named was in the hand: it is there, though nobody may have written of it before. */
  inHand?: boolean;
  /** Makes one more where the nest may hold more than is known; null where it can hold no more. */
  another?: (clutch: Clutch) => T | null;
  /** Whether a clutch may hold more than is known; where nothing is said, one that was never counted. */
  mayHoldMore?: (clutch: Clutch) => boolean;
}

/** In whose record it stands, wherever it is: a rate of that pair. */
export function owner(one: Egg | Bird): string {
  return one.clutch?.pair.id ?? '';
}

/** For what young in the nest, out of it and in the hand can all do: it is asked about which of them are meant. */
export const whoeverRears = {
  past: () => false,
  last: isFedByHand,
  likely: ({ fledged }: Bird) => Number(fledged !== null),
  kind: (bird: Bird) => `${owner(bird)} ${care(bird)}`,
} satisfies Partial<Wanted<Bird>>;

/** Why what only young do that are still fed cannot be told of it, or null where it is one. */
export function whyNotFed(bird: Bird): string | null {
  if (bird.ref === null) return 'it is no chick';
  return bird.independent === null ? null : 'it feeds itself';
}

/** A look into a nest is of those that lie in it, and not of young that fly. */
export const notFledged = (one: Egg | Bird) => 'laid' in one || one.fledged === null;

/** Who rears it where: a rate of a pair, or of none. */
function care(bird: Bird): string {
  if (isFedByHand(bird)) return 'in the hand';
  return bird.fledged === null ? 'in the nest' : 'fledged';
}

/**
 * Everyone for whom it is possible, in the order in which a count takes them: who is named by no later line before who is,
 * what is in course before what is long past its time, those to be taken last behind them, then the oldest clutch first.
 */
export function candidatesOf<T extends Egg | Bird>(scene: Scene, wanted: Wanted<T>): T[] {
  const { clutchOf = hostClutch, rank = () => 0, likely = () => 0, last = () => false, did } = wanted;
  return [...wanted.among]
    .filter((one) => wanted.impossible(one) === null && !wanted.told?.has(one))
    .filter((one) => means(scene, clutchOf(one)))
    .sort(
      (a, b) =>
        Number(isNotMeant(scene, a, did)) - Number(isNotMeant(scene, b, did)) ||
        Number(isPast(scene, wanted, a)) - Number(isPast(scene, wanted, b)) ||
        Number(last(a)) - Number(last(b)) ||
        (clutchOf(a)?.opened ?? 0) - (clutchOf(b)?.opened ?? 0) ||
        rank(a) - rank(b) ||
        likely(a) - likely(b) ||
        Number(a.clutch?.pair !== scene.pair) - Number(b.clutch?.pair !== scene.pair) ||
        naturally(fullRef(a), fullRef(b)),
    );
}

export function isPast<T extends Egg | Bird>(scene: Scene, { past }: Wanted<T>, one: T): boolean {
  return past?.(one) ?? ('laid' in one ? isLeftBehind(one, scene.day) : isFedByHand(one));
}
