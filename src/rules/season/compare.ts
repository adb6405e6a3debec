import { clusteredProportion, effective } from '../../statistics/design-effect.ts';
import { type LogRank, logRank } from '../../statistics/log-rank.ts';
import { type Difference, differenceOf } from '../../statistics/proportions.ts';
import type { Block } from './block.ts';
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
  /** The probability of chance, times the number of comparisons on the page. */
  adjusted: number;
  shown: boolean;
}

export interface Comparison {
  rates: RateComparison[];
  survival: SurvivalComparison[];
}

const RISK = 0.05;

/**
 * Each group beside all others together. With many groups some would stand out by chance, so that the risk of one such
 * sentence is shared among all comparisons (Bonferroni). Two groups are one comparison.
 */
export function compareGroups(blocks: readonly Block[]): Comparison {
  const groups = blocks.length === 2 ? blocks.slice(0, 1) : blocks;
  const pairs = groups.map((block) => ({ block, others: blocks.filter((other) => other !== block) }));
  return comparisonOf(blocks.length < 2 ? [] : pairs);
}

/** One block beside another, as this season beside those before. */
export function compareWith(block: Block, before: Block): Comparison {
  return comparisonOf([{ block, others: [before] }]);
}

function comparisonOf(pairs: readonly { block: Block; others: Block[] }[]): Comparison {
  const possible = pairs.flatMap(({ block, others }) =>
    measureNames.flatMap((measure) => {
      const own = block.rates[measure];
      const rest = clusteredProportion(others.flatMap(({ rates }) => rates[measure].clusters));
      return own.rate === null || rest.rate === null ? [] : [{ measure, block, own, rest }];
    }),
  );
  const tests = pairs.flatMap(({ block, others }) => {
    const test = logRank(
      block.lives.map(byDay),
      others.flatMap(({ lives }) => lives.map(byDay)),
    );
    return test === null ? [] : [{ group: block.name, test }];
  });
  const confidence = 1 - RISK / Math.max(1, possible.length + tests.length);
  return {
    rates: possible.flatMap(({ measure, block, own, rest }) => {
      const found = differenceOf(effective(own), effective(rest), confidence);
      if (found === null) return [];
      const shown = found.low > 0 || found.high < 0;
      const [rate, other] = [own.rate ?? 0, rest.rate ?? 0];
      return [{ measure, group: block.name, rate, other, ...found, confidence, shown }];
    }),
    survival: tests.map(({ group, test }) => {
      const adjusted = Math.min(1, test.p * (possible.length + tests.length));
      return { group, ...test, adjusted, shown: adjusted < RISK };
    }),
  };
}
