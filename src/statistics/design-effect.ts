import { filled, type Interval, type Proportion, pooled, wilson } from './proportions.ts';
import { sumBy } from './sums.ts';

/**
 * How much less members of clusters tell than as many strangers would: the variance of the ratio Σk / Σn over
 * clusters, divided by that of a simple proportion. At least 1; 1 where all or none did, or with one cluster only.
 *
 * Source: Rao & Scott 1992, Biometrics 48:577–585: v = m/(m−1) · Σ(kᵢ − p nᵢ)² / n², effect = n·v / (p(1−p)) (from memory).
 */
export function designEffect(clusters: readonly Proportion[]): number {
  const told = filled(clusters);
  const { k, n } = pooled(told);
  const m = told.length;
  if (m < 2 || k === 0 || k === n) return 1;
  const p = k / n;
  const squares = sumBy(told, (cluster) => (cluster.k - p * cluster.n) ** 2);
  const variance = ((m / (m - 1)) * squares) / n ** 2;
  return Math.max(1, (n * variance) / (p * (1 - p)));
}

/** A proportion over clusters; all figures but the counts are null where n = 0. */
export interface ClusteredProportion extends Proportion {
  rate: number | null;
  low: number | null;
  high: number | null;
  designEffect: number | null;
}

/** The proportion over all clusters, with Wilson's interval on the effective sample size. */
export function clusteredProportion(clusters: readonly Proportion[]): ClusteredProportion {
  const { k, n } = pooled(clusters);
  if (n === 0) return { k, n, rate: null, low: null, high: null, designEffect: null };
  const effect = designEffect(clusters);
  const { low, high } = wilson({ k: k / effect, n: n / effect }) as Interval;
  return { k, n, rate: k / n, low, high, designEffect: effect };
}

/** What a proportion is worth once its clusters are allowed for, by this design effect at the least. */
export function effective({ k, n, designEffect: own }: ClusteredProportion, atLeast = 1): Proportion {
  const effect = Math.max(own ?? 1, atLeast);
  return { k: k / effect, n: n / effect };
}

/**
 * The design effect that several groups of clusters have in common, each about its own proportion: a group of one or
 * two clusters cannot tell it by itself. The same ratio as above, with a degree of freedom less for each group.
 */
export function commonDesignEffect(groups: readonly (readonly Proportion[])[]): number {
  let squares = 0;
  let simple = 0;
  let freedom = 0;
  let clusters = 0;
  for (const group of groups) {
    const told = filled(group);
    const { k, n } = pooled(told);
    if (n === 0) continue;
    squares += sumBy(told, (one) => (one.k - (k / n) * one.n) ** 2);
    simple += (k * (n - k)) / n;
    freedom += told.length - 1;
    clusters += told.length;
  }
  return freedom > 0 && simple > 0 ? Math.max(1, ((clusters / freedom) * squares) / simple) : 1;
}
