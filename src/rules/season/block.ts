import type { Day } from '../../days.ts';
import { grouped, keptIn } from '../../grouped.ts';
import type { Clutch, Egg, Pair } from '../../room/model.ts';
import { lastFeederOf, nestFeederOf, ownCare, sitterOf } from './care.ts';
import { type ChickCounts, countChicks, countEggs, type EggCounts } from './counts.ts';
import { youngFateOf } from './fates.ts';
import { type Grouping, inGroupOrder, whole } from './groupings.ts';
import { type ChickLife, chickLife } from './lives.ts';
import { type Counting, emptyRates, type Rates, ratesOf } from './rates.ts';
import { type Stage, stagesOf } from './stages.ts';
import { type ChickSurvival, survivalOf } from './survival.ts';

/** Everything that is said of one group of clutches: the whole room, a species, a pair. */
export interface Block {
  /** Null where the group is not written down. */
  name: string | null;
  pairs: number;
  /** Those that the group laid. */
  clutches: Clutch[];
  eggs: EggCounts;
  chicks: ChickCounts;
  /** Credited to whoever laid, sat or fed. */
  rates: Rates;
  lives: ChickLife[];
  survival: ChickSurvival;
  stages: Stage[];
}

/** What a pair reared, whoever laid it. */
export interface Reared {
  /** Eggs and young of other pairs that were given to it. */
  taken: number;
  hatched: number;
  fledged: number;
  independent: number;
  died: number;
}

/** What blocks are made of: the clutches, and the lives of their chicks, which every division shares. */
export interface Told extends Counting {
  lives: readonly ChickLife[];
}

/** The clutches with the lives of their chicks up to the day. */
export function toldOf(counting: Counting): Told {
  const { clutches, day } = counting;
  return {
    ...counting,
    lives: clutches.flatMap(({ chicks }) => chicks.flatMap((bird) => chickLife(bird, day) ?? [])),
  };
}

/** A block for each group, in order. */
export function blocksOf(told: Told, grouping: Grouping): Block[] {
  const { clutches, day, settings } = told;
  const rates = ratesOf(told, grouping);
  const laid = grouped(clutches, (clutch) => grouping.of(ownCare(clutch), settings));
  const lives = grouped(told.lives, ({ bird }) => grouping.of(lastFeederOf(bird, day), settings));
  const names = [...new Set([...laid.keys(), ...rates.keys()])].sort(inGroupOrder(grouping.name));
  return names.map((name) => {
    const [own, followed] = [laid.get(name) ?? [], lives.get(name) ?? []];
    return blockOf(name, { clutches: own, lives: followed, rates: rates.get(name) ?? emptyRates(), day });
  });
}

/** All of them as one block; an empty one where there are no clutches. */
export function wholeBlock(told: Told): Block {
  return blocksOf(told, whole)[0] ?? emptyBlock(told.day);
}

/** The block of a group that has nothing. */
export function emptyBlock(day: Day): Block {
  return blockOf(null, { clutches: [], lives: [], rates: emptyRates(), day });
}

type Parts = Pick<Block, 'clutches' | 'lives' | 'rates'> & { day: Day };

function blockOf(name: string | null, { clutches, lives, rates, day }: Parts): Block {
  return {
    name,
    pairs: new Set(clutches.map(({ pair }) => pair)).size,
    clutches,
    eggs: countEggs(eachOf(clutches, 'eggs')),
    chicks: countChicks(eachOf(clutches, 'chicks')),
    rates,
    lives,
    survival: survivalOf(lives),
    stages: stagesOf(clutches, day),
  };
}

/** Every egg or chick of some clutches, without a list that holds them all. */
function* eachOf<K extends 'eggs' | 'chicks'>(
  clutches: readonly Clutch[],
  which: K,
): Generator<Clutch[K][number]> {
  for (const clutch of clutches) yield* clutch[which] as Iterable<Clutch[K][number]>;
}

/** What each pair reared of these clutches, its own and others', by the pair's id. */
export function rearedByPair(clutches: readonly Clutch[], day: Day): Map<string, Reared> {
  const all = new Map<string, Reared>();
  // What nobody is credited with is counted on a sheet that is thrown away.
  const by = (pair: Pair | null): Reared => (pair ? keptIn(all, pair.id, nothingReared) : nothingReared());
  for (const egg of eachOf(clutches, 'eggs')) {
    if (egg.fate?.kind === 'hatched') by(sitterOf(egg).pair).hatched += 1;
    for (const pair of carersOf(egg)) if (pair !== egg.clutch.pair) by(pair).taken += 1;
  }
  for (const bird of eachOf(clutches, 'chicks')) {
    if (bird.fledged !== null) by(nestFeederOf(bird, day).pair).fledged += 1;
    const fate = youngFateOf(bird);
    if (fate === 'independent') by(lastFeederOf(bird, day).pair).independent += 1;
    if (fate === 'died') by(lastFeederOf(bird, day).pair).died += 1;
  }
  return all;
}

/** Everybody who ever sat on the egg or fed what came of it. */
function carersOf({ places, fate }: Egg): Set<Pair> {
  const sat = places.flatMap(({ place }) => (place.kind === 'nest' ? [place.pair] : []));
  const fed = fate?.kind === 'hatched' ? fate.bird.stays.flatMap(({ nest }) => nest ?? []) : [];
  return new Set([...sat, ...fed]);
}

export function nothingReared(): Reared {
  return { taken: 0, hatched: 0, fledged: 0, independent: 0, died: 0 };
}
