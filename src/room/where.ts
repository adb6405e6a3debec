import type { Span } from '../days.ts';
import type { Located } from '../journal/grammar/values.ts';
import { feederOf, hostClutch, isDependent, nestOf, takesEggs } from './lives.ts';
import { type Bird, type Clutch, type Egg, type EggPlace, lastPlace, type Pair } from './model.ts';
import { lastLook, reportNoPair, type Scene, siteOf } from './scene.ts';

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

/** The clutch of the pair that guests live with: the youngest that has eggs or young in the nest, its own or other guests. */
function guestClutch(pair: Pair, scene: Scene): Clutch | null {
  const there = new Set([...pair.here.eggs, ...pair.here.young].map(hostClutch));
  return (
    pair.clutches.findLast(
      (clutch) =>
        there.has(clutch) ||
        clutch.eggs.some((egg) => egg.fate === null) ||
        clutch.chicks.some(isDependent) ||
        takesEggs(clutch, scene.day),
    ) ?? null
  );
}

/**
 * Whom a count or `all` means that are taken out of a nest by hand: nobody brings them there and takes them away again on
 * one day, as when pairs exchange their eggs, at whatever time. Where all came that day, everyone.
 */
export function notBroughtToday<T extends Egg | Bird>({ day }: Scene, all: readonly T[]): readonly T[] {
  const before = all.filter((one) => broughtOn(one) !== day);
  return before.length === 0 ? all : before;
}

/**
 * The days on which what an entry reports of this one can have happened: after the last look into the nest in which it is,
 * whoever's journal tells it, and not before it came there. Who brought it there saw that nest, though no look was written.
 */
export function reportedOf(scene: Scene, one: Egg | Bird): Span {
  const { pair, entry, since } = scene;
  const { to } = since;
  const nest = 'laid' in one ? nestOf(one) : feederOf(one);
  const site = hostClutch(one)?.site ?? (nest === pair ? siteOf(scene) : null);
  const last = nest === null || entry.after !== null ? since.from - 1 : lastLook(nest, site, to);
  const unseen = last === null ? null : last + 1;
  const brought = broughtOn(one);
  const from = Math.max(unseen ?? brought ?? to, brought ?? unseen ?? to);
  return { from: Math.min(to, from), to };
}

/** The day on which it came to the nest in which it is; null where it has been there from its beginning. */
export function broughtOn(one: Egg | Bird): number | null {
  if ('laid' in one) return one.places.length > 1 ? lastPlace(one).from : null;
  const { stays } = one;
  const moved = stays.findLastIndex(({ nest }, i) => i > 0 && nest !== stays[i - 1]?.nest);
  return stays[moved]?.from ?? null;
}
