import type { Place } from '../findings/finding.ts';
import { naturally } from '../findings/naturally.ts';
import type { Count, Ref, Who } from '../journal/grammar/who.ts';
import { feederOf, isDependent, isFedByHand, longPast, nestOf, rearedElsewhere } from './lives.ts';
import { type Bird, type Clutch, clutchId, type Egg, fullRef, refIn } from './model.ts';
import { birdNamed, parentsOf } from './names.ts';
import { isNotMeant, noteGuess, noteNotMeant } from './not-meant.ts';
import {
  isInNest,
  means,
  meansNone,
  type Refusal,
  refuse,
  report,
  reportNoPair,
  type Scene,
  youngestMeant,
} from './scene.ts';
import { noteGrown } from './unseen.ts';

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
  /** Makes one more where the nest may hold more than is known; null where it can hold no more. */
  another?: (clutch: Clutch) => T | null;
  /** Whether a clutch may hold more than is known; where nothing is said, one that was never counted. */
  mayHoldMore?: (clutch: Clutch) => boolean;
}

/** The clutch of the nest that it lives with: its own, or the one it was given to. */
export function hostClutch(one: Egg | Bird): Clutch | null {
  if (!('laid' in one)) return one.stays.at(-1)?.clutch ?? null;
  const place = one.places.at(-1)?.place;
  return place?.kind === 'nest' ? place.clutch : one.clutch;
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

/** A look into a nest is of those that lie in it, and not of young that fly. */
export const notFledged = (one: Egg | Bird) => 'laid' in one || one.fledged === null;

/** Who rears it where: a rate of a pair, or of none. */
function care(bird: Bird): string {
  if (isFedByHand(bird)) return 'in the hand';
  return bird.fledged === null ? 'in the nest' : 'fledged';
}

const TOLD = 'the same look already says something else of it';

/** In what order the parts of an observation are told, so that `{full: all, thin: c3}` means all but c3 with `all`. */
const PRECISION = { refs: 0, count: 1, all: 2 } satisfies Record<Who['kind'], number>;

/** What an observation says of several, those that it names first, then numbers, and whoever is left last. */
export function namedFirst<P extends readonly { who: Who | null }[]>(parts: P): P[number][] {
  const rank = ({ who }: P[number]) => (who === null ? 0 : PRECISION[who.kind]);
  return [...parts].sort((a, b) => rank(a) - rank(b));
}

/** The eggs that an observation is about. */
export function chooseEggs(scene: Scene, who: Who, wanted: Wanted<Egg>): Egg[] {
  return noted(
    scene,
    who,
    choose(scene, who, wanted, { is: isEgg, resolve: (ref) => eggOf(scene, ref, wanted) }),
    wanted,
  );
}

/** The chicks, fledglings or birds that an observation is about. */
export function chooseBirds(scene: Scene, who: Who, wanted: Wanted<Bird>): Bird[] {
  return noted(
    scene,
    who,
    choose(scene, who, wanted, { is: isBird, resolve: (ref) => birdsOf(scene, ref, wanted) }),
    wanted,
  );
}

/** Which of eggs and birds are wanted, and whom a ref names of them. */
interface Kind<T extends Egg | Bird> {
  is: (one: Egg | Bird) => one is T;
  resolve: (ref: Ref) => T[];
}

const isEgg = (one: Egg | Bird): one is Egg => 'laid' in one;
const isBird = (one: Egg | Bird): one is Bird => !isEgg(one);

/** Keeps whom the words turned out to mean. */
function noted<T extends Egg | Bird>({ about }: Scene, { at }: Who, who: T[], { told }: Wanted<T>): T[] {
  about.push({ at, who });
  for (const one of who) told?.add(one);
  return who;
}

function choose<T extends Egg | Bird>(scene: Scene, who: Who, wanted: Wanted<T>, kind: Kind<T>): T[] {
  if (who.kind === 'refs') {
    const named = new Set<T>();
    const said = new Set<string>();
    for (const ref of who.refs) {
      if (said.has(ref.text)) {
        // Mostly another one was meant, and would be lost without a word.
        report(scene, ref.at, 'duplicate-key', { key: ref.text, listed: 'yes' });
        continue;
      }
      said.add(ref.text);
      for (const one of kind.resolve(ref)) {
        const why = wanted.impossible(one) ?? (wanted.told?.has(one) ? TOLD : null);
        if (why !== null) {
          noteNotMeant(scene, one, wanted.did);
          refuse(scene, ref.at, why, { who: ref.text, did: wanted.did, others: sisters(scene, one, wanted) });
        } else named.add(one);
      }
    }
    return [...named];
  }
  // That there is no such clutch is said once an entry.
  if (meansNone(scene)) return [];
  const candidates = candidatesOf(scene, wanted);
  if (who.kind === 'all') {
    if (candidates.length === 0) report(scene, who.at, 'nobody-possible', nobodyArgs(scene, wanted, kind));
    return everyone(scene, who.at, candidates, wanted);
  }
  return who.count === 0 ? [] : byCount(scene, who, candidates, wanted, kind);
}

/** Which others of its pair's are here for whom it is possible, where it is one that was bred here. */
function sisters<T extends Egg | Bird>(scene: Scene, one: T, wanted: Wanted<T>): string {
  if (one.clutch === null) return '';
  const others = candidatesOf(scene, wanted).filter((other) => owner(other) === owner(one));
  return others.map((other) => refIn(scene, other)).join(', ');
}

/** Whom `all` means of those for whom it is possible. */
function everyone<T extends Egg | Bird>(scene: Scene, at: Place, candidates: T[], wanted: Wanted<T>): T[] {
  const there = wanted.before === undefined ? [] : candidates.filter(wanted.before);
  if (there.length === 0) return candidates;
  const left = candidates.filter((one) => !there.includes(one));
  if (wanted.kind !== undefined) hintGuess(scene, at, there, left, wanted);
  return there;
}

/**
 * Everyone for whom it is possible, in the order in which a count takes them: who is named by no later line before who is,
 * what is in course before what is long past its time, those to be taken last behind them, then the oldest clutch first.
 */
function candidatesOf<T extends Egg | Bird>(scene: Scene, wanted: Wanted<T>): T[] {
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

function isPast<T extends Egg | Bird>(scene: Scene, { past }: Wanted<T>, one: T): boolean {
  return past?.(one) ?? ('laid' in one ? longPast(one, scene.day) : isFedByHand(one));
}

function byCount<T extends Egg | Bird>(
  scene: Scene,
  who: Count,
  candidates: T[],
  wanted: Wanted<T>,
  kind: Kind<T>,
): T[] {
  const chosen = candidates.slice(0, who.count);
  const left = candidates.slice(who.count).filter((one) => !isNotMeant(scene, one, wanted.did));
  if (candidates.length > chosen.length) noteGuess(scene, chosen, wanted.did);
  const past = (one: T) => isPast(scene, wanted, one);
  hintGuess(scene, who.at, chosen, chosen.some(past) ? left : left.filter((one) => !past(one)), wanted);
  if (chosen.length < who.count) chosen.push(...others(scene, who, who.count - chosen.length, wanted));
  if (chosen.length < who.count && who.exact === 'exactly') {
    const args = { count: who.count, possible: chosen.length, ...nobodyArgs(scene, wanted, kind) };
    report(scene, who.at, 'too-many', args);
  } else if (chosen.length === 0) {
    report(scene, who.at, 'nobody-possible', nobodyArgs(scene, wanted, kind));
  }
  return chosen;
}

/** What is said where too few are meant: in whose nests this pair's eggs and young are now, and which of them it can be about. */
function nobodyArgs<T extends Egg | Bird>({ pair }: Scene, { did, impossible }: Wanted<T>, { is }: Kind<T>) {
  const away = rearedElsewhere(pair);
  const hosts = away.flatMap((one) => (isEgg(one) ? nestOf(one) : feederOf(one)) ?? []);
  const named = away.filter(is).filter((one) => impossible(one) === null);
  return {
    did,
    pair: pair.id,
    hosts: [...new Set(hosts)].map(({ id }) => id).join(', '),
    named: named.map((one) => refIn({ pair }, one)).join(', '),
  };
}

/** So many more, in the youngest clutch that may hold more than is known. Where eggs were told, it is said how many came to them. */
function others<T extends Egg | Bird>(scene: Scene, { at }: Who, count: number, wanted: Wanted<T>): T[] {
  const { another = () => null, mayHoldMore = isUncounted } = wanted;
  const clutch = youngestMeant(scene, mayHoldMore);
  if (clutch === null) return [];
  const told = clutch.eggs.length;
  const more: T[] = [];
  while (more.length < count) {
    const one = another(clutch);
    if (one === null) break;
    more.push(one);
  }
  noteGrown(scene, at, clutch, told);
  return more;
}

/** Whether nobody knows how many eggs or chicks there were. */
export function isUncounted({ counted, chicksCounted }: Clutch): boolean {
  return !(counted && chicksCounted);
}

/** Says so when a count had to guess between ones that are not alike. */
function hintGuess<T extends Egg | Bird>(
  scene: Scene,
  at: Place,
  chosen: T[],
  left: T[],
  wanted: Wanted<T>,
): void {
  if (chosen.length === 0 || left.length === 0) return;
  const { clutchOf = hostClutch, rank, kind } = wanted;
  const clutches = new Set([...chosen, ...left].map(clutchOf));
  const names = (some: T[]) => some.map((one) => refIn(scene, one)).join(', ');
  const args = { did: wanted.did, taken: names(chosen), others: names(left) };
  if (clutches.size > 1) {
    hintClutch(scene, at, args, [...clutches]);
    return;
  }
  if (kind === undefined) return;
  const worst = chosen.at(-1) as T;
  const asWell = (one: T) => rank === undefined || rank(one) === rank(worst);
  const rivals = left.filter(asWell);
  const kinds = new Set([...chosen.filter(asWell), ...rivals].map(kind));
  if (rivals.length > 0 && kinds.size > 1) report(scene, at, 'guessed', args);
}

/** Says which clutch a count was taken to mean, the first, and which not. */
function hintClutch(
  scene: Scene,
  at: Place,
  args: { did: string; taken: string; others: string },
  [older = null, younger = null]: readonly (Clutch | null)[],
): void {
  const own = [older, younger].find((clutch) => clutch?.pair === scene.pair) ?? null;
  if (own === null) {
    // The number of another pair's clutch would say nothing here.
    report(scene, at, 'guessed', args);
    return;
  }
  const isOnePair = [older, younger].every((clutch) => (clutch?.pair ?? scene.pair) === scene.pair);
  const name = (clutch: Clutch | null) => {
    if (clutch === null) return 'the guests';
    return isOnePair ? `clutch ${clutch.number}` : clutchId(clutch);
  };
  const which = { taken: name(older), others: name(younger), number: own.number };
  report(scene, at, 'which-clutch', { did: args.did, ...which });
}

/** The clutches of the pair that a ref without a pair can mean, youngest first. */
function clutchesFor(scene: Scene, ref: Extract<Ref, { form: 'egg' | 'chick' }>): Clutch[] | null {
  const pair = ref.pair === null ? scene.pair : scene.fold.pairs.get(ref.pair);
  if (pair === undefined) {
    reportNoPair(scene, ref.at, ref.pair ?? '');
    return null;
  }
  if (ref.clutch !== null) return pair.clutches.filter((clutch) => clutch.number === ref.clutch);
  if (pair === scene.pair && scene.entry.clutch !== null) return scene.pinned === null ? [] : [scene.pinned];
  const all = [...pair.clutches].reverse();
  const there = all.filter((clutch) => pair === scene.pair && isInNest(scene, clutch));
  return there.length === 0 ? all : there;
}

/** Of several with one number, the one for which it is possible; of several possible, the one in the nest, else the youngest. */
function pick<T extends Egg | Bird>(scene: Scene, ref: Ref, found: T[], wanted: Wanted<T>): T[] {
  const all = found.filter((one) => wanted.impossible(one) === null);
  const inCourse = all.filter((one) => ('laid' in one ? one.fate === null : isDependent(one)));
  const possible = inCourse.length === 1 ? inCourse : all;
  if (possible.length > 1) {
    const [taken, other] = [possible[0] as T, possible[1] as T];
    report(scene, ref.at, 'which-clutch', {
      did: wanted.did,
      taken: clutchId(taken.clutch as Clutch),
      others: clutchId(other.clutch as Clutch),
      number: taken.clutch?.number ?? 1,
    });
  }
  const one = possible[0] ?? found[0];
  return one === undefined ? [] : [one];
}

/** How to write a cause that stands where somebody is to be named, of one that can be meant; nothing without such a one. */
function instead<T extends Egg | Bird>(scene: Scene, { text }: Ref, wanted: Wanted<T>): string {
  const cause = wanted.cause?.(text) ?? null;
  const one = cause === null ? undefined : candidatesOf(scene, wanted)[0];
  return one === undefined ? '' : `${wanted.did}: {${cause}: ${refIn(scene, one)}}`;
}

function eggOf(scene: Scene, ref: Ref, wanted: Wanted<Egg>): Egg[] {
  if (ref.form !== 'egg') {
    report(scene, ref.at, 'not-an-egg', { who: ref.text, instead: instead(scene, ref, wanted) });
    return [];
  }
  const clutches = clutchesFor(scene, ref);
  if (clutches === null) return [];
  const found: Egg[] = [];
  for (const { eggs } of clutches) {
    const egg = eggs[ref.number - 1];
    if (egg !== undefined) found.push(egg);
  }
  if (found.length === 0) report(scene, ref.at, 'no-such-egg', known(scene, ref, clutches, 'eggs'));
  return pick(scene, ref, found, wanted);
}

function birdsOf(scene: Scene, ref: Ref, wanted: Wanted<Bird>): Bird[] {
  if (ref.form === 'parent') {
    const parents = parentsOf(scene, ref.parent);
    if (parents.length === 0)
      report(scene, ref.at, 'parent-unknown', { parent: ref.parent, pair: scene.pair.id });
    return parents;
  }
  if (ref.form === 'ring' || ref.form === 'name') {
    const bird = birdNamed(scene.fold, ref.form === 'ring' ? ref.ring : ref.name, ref.form === 'ring');
    if (bird === null) {
      const args = { who: ref.text, did: wanted.did, instead: instead(scene, ref, wanted) };
      report(scene, ref.at, 'no-such-bird', args);
    }
    return bird === null ? [] : [bird];
  }
  const clutches = clutchesFor(scene, ref);
  if (clutches === null) return [];
  const found: Bird[] = [];
  for (const { chicks } of clutches) {
    const chick =
      ref.form === 'chick' ? chicks[ref.number - 1] : chicks.find(({ egg }) => egg?.number === ref.number);
    if (chick !== undefined) found.push(chick);
  }
  if (found.length === 0) {
    const code = ref.form === 'chick' ? 'no-such-chick' : 'egg-not-hatched';
    report(scene, ref.at, code, { ...known(scene, ref, clutches, 'chicks'), did: wanted.did });
  }
  return pick(scene, ref, found, wanted);
}

function known(scene: Scene, ref: Ref, clutches: Clutch[], what: 'eggs' | 'chicks') {
  const clutch = clutches[0];
  const have = clutch === undefined ? [] : clutch[what].map((one) => one.ref);
  const where = clutch === undefined ? `${scene.pair.id} has no such clutch` : `clutch ${clutch.number}`;
  return { who: ref.text, where, have: have.join(', ') };
}
