import type { Day } from '../../days.ts';
import type { Clutch } from '../../room/model.ts';
import { lastFeederOf, nestFeederOf, sitterOf } from './care.ts';
import { type ChickCounts, countChicks, countEggs, type EggCounts } from './counts.ts';
import { youngFateOf } from './fates.ts';
import { inGroupOrder } from './groupings.ts';
import { type ChickLife, lifeOf } from './lives.ts';
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

/** A block for each group, in order. */
export function blocksOf(counting: Counting): Block[] {
  const { clutches, day, grouping, start } = counting;
  const rates = ratesOf(counting);
  const laid = new Map<string | null, Clutch[]>();
  for (const clutch of clutches) {
    const own = { origin: clutch, pair: clutch.pair, clutch, housing: clutch.housing };
    add(laid, grouping.of(own, start), clutch);
  }
  const lives = new Map<string | null, ChickLife[]>();
  for (const origin of clutches) {
    const own = { origin, pair: origin.pair, clutch: origin, housing: origin.housing };
    for (const bird of origin.chicks) {
      const life = lifeOf(bird, day);
      if (life !== null) add(lives, grouping.of(lastFeederOf(bird, day) ?? own, start), life);
    }
  }
  const names = [...new Set([...laid.keys(), ...rates.keys()])].sort(inGroupOrder(grouping.name));
  return names.map((name) => {
    const [own, followed] = [laid.get(name) ?? [], lives.get(name) ?? []];
    return blockOf(name, { clutches: own, lives: followed, rates: rates.get(name) ?? emptyRates(), day });
  });
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
    eggs: countEggs(clutches.flatMap(({ eggs }) => eggs)),
    chicks: countChicks(clutches.flatMap(({ chicks }) => chicks)),
    rates,
    lives,
    survival: survivalOf(lives),
    stages: stagesOf(clutches, day),
  };
}

function add<K, T>(groups: Map<K, T[]>, key: K, one: T): void {
  const known = groups.get(key);
  if (known === undefined) groups.set(key, [one]);
  else known.push(one);
}

/** What a pair reared of these clutches, its own and others'. */
export function rearedBy(pair: string, clutches: readonly Clutch[], day: Day): Reared {
  const eggs = clutches.flatMap((clutch) => clutch.eggs);
  const chicks = clutches.flatMap((clutch) => clutch.chicks);
  const last = chicks.filter((bird) => lastFeederOf(bird, day)?.pair?.id === pair);
  const guests = eggs.filter(({ clutch, places, fate }) => {
    if (clutch.pair.id === pair) return false;
    if (places.some(({ place }) => place.kind === 'nest' && place.pair.id === pair)) return true;
    return fate?.kind === 'hatched' && fate.bird.stays.some(({ nest }) => nest?.id === pair);
  });
  return {
    taken: guests.length,
    hatched: eggs.filter((egg) => egg.fate?.kind === 'hatched' && sitterOf(egg).pair?.id === pair).length,
    fledged: chicks.filter((bird) => bird.fledged !== null && nestFeederOf(bird, day)?.pair?.id === pair)
      .length,
    independent: last.filter((bird) => youngFateOf(bird) === 'independent').length,
    died: last.filter((bird) => youngFateOf(bird) === 'died').length,
  };
}
