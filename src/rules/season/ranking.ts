import { commonDesignEffect, effective } from '../../statistics/design-effect.ts';
import { type Shrunk, shrink, spreadOf } from '../../statistics/shrinkage.ts';
import type { Block } from './block.ts';
import type { MeasureName } from './measures/index.ts';

/** One pair (or other group) in the order of what its clutches make one expect of the next. */
export interface Ranked extends Shrunk {
  name: string | null;
  k: number;
  n: number;
}

export interface Ranking {
  measure: MeasureName;
  rows: Ranked[];
}

/** What groups are ranked by: independent young of eggs laid, else the best rate of which two groups have figures. */
const ORDER: readonly MeasureName[] = ['overall', 'hatchOfLaid', 'fertility'];

/**
 * The groups in order, each drawn towards all as far as its own few clutches call for: one good clutch does not lead.
 * Null where fewer than two have figures, or all or none did. Eggs of one clutch share their fate, so that each group
 * weighs by the design effect that all have in common.
 */
export function rankingOf(blocks: readonly Block[]): Ranking | null {
  for (const measure of ORDER) {
    const filled = blocks.filter(({ rates }) => rates[measure].n > 0);
    const effect = commonDesignEffect(filled.map(({ rates }) => rates[measure].clusters));
    const groups = filled.map(({ rates }) => effective({ ...rates[measure], designEffect: effect }));
    const spread = spreadOf(groups);
    if (spread === null) continue;
    const shrunk = shrink(groups, spread);
    const rows = filled.map(({ name, rates }, i) => {
      const { k, n } = rates[measure];
      return { name, k, n, ...(shrunk[i] as Shrunk) };
    });
    return { measure, rows: rows.sort((a, b) => b.mean - a.mean) };
  }
  return null;
}
