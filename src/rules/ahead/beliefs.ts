import { byName, keptIn } from '../../grouped.ts';
import type { Room } from '../../room/fold.ts';
import { type Beta, betaUpdate } from '../../statistics/beta.ts';
import { commonDesignEffect } from '../../statistics/design-effect.ts';
import { filled, type Proportion, pooled } from '../../statistics/proportions.ts';
import { spreadOf } from '../../statistics/shrinkage.ts';
import { sumBy } from '../../statistics/sums.ts';
import { groupings } from '../season/groupings.ts';
import { type Rate, type Rates, ratesOf } from '../season/rates.ts';

/** The steps from an egg to a bird that feeds itself, by the names of the season's rates. */
export const steps = ['fertility', 'hatchOfFertile', 'fledge', 'independence'] as const;
export type Step = (typeof steps)[number];

/** What is believed of one step of one species in this room. */
export interface Belief {
  /** Of the share that comes through, over all clutches to come. */
  share: Beta;
  /** How alike the members of one clutch fare, 0 (strangers) to 1 (all or none): the intraclass correlation. */
  likeness: number;
  /** The species' own figures in this room, as they stand in the season's book. */
  own: Proportion & { clutches: number };
}

export type Beliefs = Record<Step, Belief>;

/**
 * What is believed before the first clutch, worth so many eggs or chicks. From memory: a guess at cage and aviary
 * finches, made to be outweighed by the first clutch. Beside it, wild great tits in 102 boxes: 504 of 696 eggs hatched
 * and 442 of 504 chicks fledged (Womack et al. 2022, data under MIT).
 */
const FIRST_GUESS: Record<Step, number> = {
  fertility: 0.8,
  hatchOfFertile: 0.8,
  fledge: 0.8,
  independence: 0.9,
};
/** How many eggs or chicks that is worth. */
export const GUESS_WEIGHT = 2;

/** The most that all other species of the room together are worth, in eggs or chicks: a neighbour's clutch or three. */
const NEIGHBOURS = 12;

/**
 * How alike clutch mates fare before the room's own clutches tell, and the clutches that this is worth. From memory;
 * lower than in the wild, where whole nests are taken (great tits as above: 0.36 for hatching, 0.73 for fledging).
 */
const LIKENESS_GUESS = 0.2;
const LIKENESS_WEIGHT = 10;
/** Neither are clutch mates ever strangers, nor is a clutch ever one bird. */
const LIKENESS = { least: 0.02, most: 0.9 };

/** What is believed of each step, for any species of the room and for one it never bred. */
export function beliefsOf(room: Room): (species: string | null) => Beliefs {
  const clutches = room.pairs.flatMap((pair) => pair.clutches);
  const rates = ratesOf({ clutches, day: room.day, settings: room.settings }, groupings.species);
  const likeness = byName(steps, (step) => likenessOf([...rates.values()], step));
  const known = new Map<string | null, Beliefs>();
  return (species) => keptIn(known, species, () => believed(species, rates, likeness));
}

function believed(
  species: string | null,
  rates: Map<string | null, Rates>,
  likeness: Record<Step, number>,
): Beliefs {
  const one = (step: Step): Belief => {
    const own = rates.get(species)?.[step] ?? null;
    const others = [...rates].flatMap(([name, all]) => (name === species ? [] : [all[step]]));
    const guess = FIRST_GUESS[step];
    const first = { a: guess * GUESS_WEIGHT, b: (1 - guess) * GUESS_WEIGHT };
    const neighbours = betaUpdate(first, ofOthers(others, own, likeness[step]));
    return {
      share: betaUpdate(neighbours, worthOf(own, likeness[step])),
      likeness: likeness[step],
      own: { k: own?.k ?? 0, n: own?.n ?? 0, clutches: filled(own?.clusters ?? []).length },
    };
  };
  return byName(steps, one);
}

/**
 * What the other species tell: their clutches, discounted to the weight that the spread between species leaves them.
 * After the power prior of Ibrahim & Chen 2000, Statistical Science 15:46–60 (from memory).
 */
function ofOthers(others: readonly Rate[], own: Rate | null, likeness: number): Proportion {
  const worth = others.map((rate) => worthOf(rate, likeness));
  const { k, n } = pooled(worth);
  const spread = spreadOf([...worth, worthOf(own, likeness)]);
  const most = Math.min(NEIGHBOURS, spread === null ? NEIGHBOURS : spread.a + spread.b);
  const discount = Math.min(1, most / Math.max(n, 1));
  return { k: k * discount, n: n * discount };
}

/** A rate's counts, as so many strangers as its clutch mates are worth: n / (1 + (m − 1) · likeness). */
function worthOf(rate: Rate | null, likeness: number): Proportion {
  if (rate === null) return { k: 0, n: 0 };
  const effect = 1 + (clutchSize(rate.clusters) - 1) * likeness;
  return { k: rate.k / effect, n: rate.n / effect };
}

/** The size of the clutch that an egg or chick is in on average: Σn² / Σn. */
function clutchSize(clusters: readonly Proportion[]): number {
  const { n } = pooled(clusters);
  return n === 0 ? 1 : sumBy(clusters, (one) => one.n ** 2) / n;
}

/** From the design effect that all species' clutches have in common, (effect − 1) / (m − 1), averaged with the guess. */
function likenessOf(rates: readonly Rates[], step: Step): number {
  const groups = rates.map((all) => filled(all[step].clusters));
  const size = clutchSize(groups.flat());
  const freedom = sumBy(groups, (group) => Math.max(0, group.length - 1));
  const seen = size > 1 ? (commonDesignEffect(groups) - 1) / (size - 1) : LIKENESS_GUESS;
  const mean = (LIKENESS_GUESS * LIKENESS_WEIGHT + seen * freedom) / (LIKENESS_WEIGHT + freedom);
  return Math.min(LIKENESS.most, Math.max(LIKENESS.least, mean));
}
