import type { Place } from '../findings/finding.ts';
import type { Count, Ref, Who } from '../journal/grammar/who.ts';
import { feederOf, hostClutch, nestOf, rearedElsewhere } from './lives.ts';
import { type Bird, type Clutch, clutchId, type Egg, refIn } from './model.ts';
import { isNotMeant, noteGuess, noteNotMeant } from './not-meant.ts';
import { birdsCalled, eggsCalled } from './refs.ts';
import { meansNone, refuse, report, type Scene, youngestMeant } from './scene.ts';
import { noteGrown, uncountedEgg } from './unseen.ts';
import { candidatesOf, isPast, owner, type Wanted } from './wanted.ts';

const TOLD = 'the same look already says something else of it';

/** In what order the parts of an observation are told, so that `{full: all, thin: c3}` means all but c3 with `all`. */
const PRECISION = { refs: 0, count: 1, all: 2 } satisfies Record<Who['kind'], number>;

/** What an observation says of several, those that it names first, then numbers, and whoever is left last. */
export function namedFirst<P extends readonly { who: Who | null }[]>(parts: P): P[number][] {
  const rank = ({ who }: P[number]) => (who === null ? 0 : PRECISION[who.kind]);
  return [...parts].sort((a, b) => rank(a) - rank(b));
}

/** The eggs that an observation is about. */
export function chooseEggs(scene: Scene, who: Who, asked: Wanted<Egg>): Egg[] {
  const wanted = asked.another === undefined ? { ...asked, ...uncountedThere(scene) } : asked;
  return noted(
    scene,
    who,
    choose(scene, who, wanted, { is: isEgg, resolve: (ref) => eggsCalled(scene, ref, wanted) }),
    wanted,
  );
}

/** Of eggs that are sat on and that nobody counted there are as many as somebody tells something of. */
function uncountedThere({ pair, day }: Scene): Pick<Wanted<Egg>, 'mayHoldMore' | 'another'> {
  return {
    mayHoldMore: ({ counted, eggs }) => !counted && eggs.some((egg) => pair.here.eggs.has(egg)),
    another: (clutch) => uncountedEgg(clutch, day),
  };
}

/** The chicks, fledglings or birds that an observation is about. */
export function chooseBirds(scene: Scene, who: Who, wanted: Wanted<Bird>): Bird[] {
  return noted(
    scene,
    who,
    choose(scene, who, wanted, { is: isBird, resolve: (ref) => birdsCalled(scene, ref, wanted) }),
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
