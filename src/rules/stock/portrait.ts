import type { Day } from '../../days.ts';
import { keptIn } from '../../grouped.ts';
import { type Bird, clutchId } from '../../room/model.ts';
import { meanOf } from '../../statistics/sums.ts';
import { type LifeEvent, lifeEvents } from './events.ts';
import type { Contribution } from './groups.ts';
import { ancestorsInCommon, kinOf } from './kin.ts';
import type { Ancestor } from './lineage.ts';
import type { Stock, StockBird } from './stock.ts';

/** One mate of a bird, and the young they had. */
export interface Mate {
  /** Null where it is not known who it was. */
  id: string | null;
  /** Each time that they were together. */
  times: { pair: string; from: Day; to: Day | null }[];
  young: StockBird[];
}

/** How many ancestors of a generation are known, of how many there are: 2 parents, 4 grandparents … */
export interface Known {
  known: number;
  of: number;
}

/** All that the record tells of one bird: what somebody who takes it would want to know. */
export interface Portrait {
  one: StockBird;
  /** Where it hatched, `LW-1/2`, its egg where that is known, and who else fed it. */
  origin: { clutch: string; egg: string | null; rearedBy: string[] } | null;
  /** The ancestors that both parents go back to, with each one’s part of F. */
  through: Contribution[];
  /** What its parents are to each other, `uncle and niece`; null where they are not related or not known. */
  kin: string | null;
  /** Parents, grandparents, great-grandparents and theirs. */
  known: [Known, Known, Known, Known];
  /** The mean of the mean kinships of its species; null where it is not here. */
  speciesMean: number | null;
  mates: Mate[];
  life: LifeEvent[];
}

/** Gathers what is known of a bird. */
export function portraitOf(one: StockBird, stock: Stock): Portrait {
  const { bird, ancestor, inbreeding } = one;
  const { sire, dam } = ancestor;
  return {
    one,
    origin: originOf(bird),
    through: sire === null || dam === null ? [] : ancestorsInCommon(stock.lineage, sire, dam),
    kin: sire === null || dam === null || inbreeding === null ? null : kinOf(sire, dam, inbreeding),
    known: [1, 2, 3, 4].map((generation) => knownIn(ancestor, generation)) as Portrait['known'],
    speciesMean: speciesMean(one, stock),
    mates: matesOf(one, stock),
    life: lifeEvents(one),
  };
}

function originOf({ clutch, egg, stays }: Bird): Portrait['origin'] {
  if (clutch === null) return null;
  const fedBy = stays.flatMap(({ nest }) => (nest === null || nest === clutch.pair ? [] : [nest.id]));
  return { clutch: clutchId(clutch), egg: egg?.ref ?? null, rearedBy: [...new Set(fedBy)] };
}

function knownIn(one: Ancestor, generation: number): Known {
  let level: (Ancestor | null)[] = [one];
  for (let back = 0; back < generation; back++) {
    level = level.flatMap((ancestor) => [ancestor?.sire ?? null, ancestor?.dam ?? null]);
  }
  return { known: level.filter((ancestor) => ancestor !== null).length, of: level.length };
}

function speciesMean({ status, bird }: StockBird, { birds }: Stock): number | null {
  if (status !== 'here') return null;
  const means = birds.flatMap((other) =>
    other.bird.species === bird.species ? (other.meanKinship ?? []) : [],
  );
  return meanOf(means);
}

/** By mate, in the order in which they came together; young with a mate nobody knows come last. */
function matesOf(one: StockBird, stock: Stock): Mate[] {
  const mates = new Map<string | null, Mate>();
  const mate = (id: string | null): Mate => keptIn(mates, id, () => ({ id, times: [], young: [] }));
  for (const { pair, cock, hen, from, to } of one.mateships) {
    const names = cock.some((name) => stock.find(name) === one.bird) ? hen : cock;
    const [name, ...others] = names.map((each) => stock.find(each)?.id ?? each);
    mate(others.length === 0 ? (name ?? null) : null).times.push({ pair: pair.id, from, to });
  }
  for (const young of stock.birds) {
    const { sire, dam } = young.parents;
    if (sire.bird === one.bird) mate(dam.id).young.push(young);
    else if (dam.bird === one.bird) mate(sire.id).young.push(young);
  }
  return [...mates.values()].sort((a, b) => Number(a.id === null) - Number(b.id === null));
}
