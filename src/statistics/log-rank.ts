import { normalCdf } from './normal.ts';
import type { Life } from './survival.ts';

/** Whether deaths in two groups came as if they were one. */
export interface LogRank {
  /** Deaths of the first group: seen, and expected if both were alike. */
  observed: number;
  expected: number;
  variance: number;
  chiSquare: number;
  /** Probability of such a difference, or a greater one, if both were alike. */
  p: number;
}

/**
 * The log-rank test of two groups; null where the numbers at risk leave nothing to compare.
 * Source: Mantel 1966; Klein & Moeschberger 2003, Survival Analysis, section 7.3.
 */
export function logRank(group: readonly Life[], others: readonly Life[]): LogRank | null {
  const all = [...group, ...others];
  const times = new Set(all.filter(({ died, entry, time }) => died && entry < time).map(({ time }) => time));
  let observed = 0;
  let expected = 0;
  let variance = 0;
  for (const time of times) {
    const mine = at(group, time);
    const theirs = at(others, time);
    const risk = mine.risk + theirs.risk;
    const died = mine.died + theirs.died;
    observed += mine.died;
    expected += (died * mine.risk) / risk;
    if (risk > 1) variance += (died * mine.risk * theirs.risk * (risk - died)) / (risk * risk * (risk - 1));
  }
  if (variance <= 0) return null;
  const chiSquare = (observed - expected) ** 2 / variance;
  return { observed, expected, variance, chiSquare, p: chanceOf(chiSquare) };
}

/** Probability of such a χ² with one degree of freedom, or a greater one. */
export function chanceOf(chiSquare: number): number {
  return 2 * normalCdf(-Math.sqrt(chiSquare));
}

function at(lives: readonly Life[], now: number): { risk: number; died: number } {
  let risk = 0;
  let died = 0;
  for (const life of lives) {
    if (life.entry >= now || life.time < now) continue;
    risk += 1;
    if (life.died && life.time === now) died += 1;
  }
  return { risk, died };
}
