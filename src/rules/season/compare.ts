import { clusteredProportion, commonDesignEffect, effective } from '../../statistics/design-effect.ts';
import { chanceOf, type LogRank, logRank } from '../../statistics/log-rank.ts';
import { type Difference, differenceOf, filled, type Proportion } from '../../statistics/proportions.ts';
import type { Block } from './block.ts';
import type { ChickLife } from './lives.ts';
import { type MeasureName, measureNames } from './measures/index.ts';
import { byDay } from './survival.ts';

/** One rate of a group beside that of the others. */
export interface RateComparison extends Difference {
  measure: MeasureName;
  group: string | null;
  rate: number;
  other: number;
  /** How sure each interval has to be, so that all of the page are right 19 times in 20. */
  confidence: number;
  /** Whether the numbers can show a difference at all: the interval does not contain 0. */
  shown: boolean;
}

/** How the chicks of a group survived beside those of the others. */
export interface SurvivalComparison extends LogRank {
  group: string | null;
  /** How much less chicks of one clutch tell than as many strangers; the probability allows for it. */
  designEffect: number;
  /** The probability of chance, times the number of comparisons on the page. */
  adjusted: number;
  shown: boolean;
}

export interface Comparison {
  rates: RateComparison[];
  survival: SurvivalComparison[];
}

const RISK = 0.05;
/** Fewer clutches than this tell too little of how far clutches differ by themselves. */
const FEWEST_CLUTCHES = 3;

/**
 * Each group beside all others together. With many groups some would stand out by chance, so that the risk of one such
 * sentence is shared among all comparisons (Bonferroni). Two groups are one comparison.
 */
export function compareGroups(blocks: readonly Block[]): Comparison {
  const groups = blocks.length === 2 ? blocks.slice(0, 1) : blocks;
  const sides = groups.map((block) => ({ block, others: blocks.filter((other) => other !== block) }));
  return comparisonOf(sides);
}

/** One block beside another, as this season beside those before. */
export function compareWith(block: Block, before: Block): Comparison {
  return comparisonOf([{ block, others: [before] }]);
}

interface Sides {
  block: Block;
  others: Block[];
}

function comparisonOf(sides: readonly Sides[]): Comparison {
  const ratios = sides.flatMap((side) => measureNames.flatMap((measure) => ratesBeside(side, measure) ?? []));
  const tests = sides.flatMap((side) => survivalBeside(side) ?? []);
  const number = Math.max(1, ratios.length + tests.length);
  const confidence = 1 - RISK / number;
  return {
    rates: ratios.flatMap(({ measure, group, own, rest, effect }) => {
      const found = differenceOf(effective(own, effect), effective(rest, effect), confidence);
      if (found === null || own.rate === null || rest.rate === null) return [];
      const shown = found.low > 0 || found.high < 0;
      return [{ measure, group, rate: own.rate, other: rest.rate, ...found, confidence, shown }];
    }),
    survival: tests.map((test) => {
      const adjusted = Math.min(1, test.p * number);
      return { ...test, adjusted, shown: adjusted < RISK };
    }),
  };
}

function ratesBeside({ block, others }: Sides, measure: MeasureName) {
  const own = block.rates[measure];
  const clusters = tooFew(own.clusters) ? [] : others.flatMap(({ rates }) => rates[measure].clusters);
  if (tooFew(clusters)) return null;
  const effect = commonDesignEffect([own.clusters, clusters]);
  return { measure, group: block.name, own, rest: clusteredProportion(clusters), effect };
}

function survivalBeside({ block, others }: Sides): Omit<SurvivalComparison, 'adjusted' | 'shown'> | null {
  const own = deathsByClutch(block.lives);
  const lives = tooFew(own) ? [] : others.flatMap((other) => other.lives);
  const rest = deathsByClutch(lives);
  const test = tooFew(rest) ? null : logRank(block.lives.map(byDay), lives.map(byDay));
  if (test === null) return null;
  const designEffect = commonDesignEffect([own, rest]);
  return { group: block.name, ...test, designEffect, p: chanceOf(test.chiSquare / designEffect) };
}

function deathsByClutch(lives: readonly ChickLife[]): Proportion[] {
  const clutches = new Map<unknown, Proportion>();
  for (const { bird, right } of lives) {
    const clutch = clutches.get(bird.clutch) ?? { k: 0, n: 0 };
    clutches.set(bird.clutch, { k: clutch.k + (Number.isFinite(right) ? 1 : 0), n: clutch.n + 1 });
  }
  return [...clutches.values()];
}

function tooFew(clusters: readonly Proportion[]): boolean {
  return filled(clusters).length < FEWEST_CLUTCHES;
}
