import { type Interval, type Proportion, wilson } from './proportions.ts';

/**
 * How much less members of clusters tell than as many strangers would: the variance of the ratio Σk / Σn over
 * clusters, divided by that of a simple proportion. At least 1; 1 where all or none did, or with one cluster only.
 *
 * Source: Rao & Scott 1992, Biometrics 48:577–585: v = m/(m−1) · Σ(kᵢ − p nᵢ)² / n², effect = n·v / (p(1−p)) (from memory).
 */
export function designEffect(clusters: readonly Proportion[]): number {
  const filled = clusters.filter(({ n }) => n > 0);
  const { k, n } = sum(filled);
  const m = filled.length;
  if (m < 2 || k === 0 || k === n) return 1;
  const p = k / n;
  const squares = filled.reduce((total, cluster) => total + (cluster.k - p * cluster.n) ** 2, 0);
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
  const { k, n } = sum(clusters);
  if (n === 0) return { k, n, rate: null, low: null, high: null, designEffect: null };
  const effect = designEffect(clusters);
  const { low, high } = wilson({ k: k / effect, n: n / effect }) as Interval;
  return { k, n, rate: k / n, low, high, designEffect: effect };
}

/** What a proportion is worth once its clusters are allowed for: as many of as many strangers. */
export function effective({ k, n, designEffect: effect }: ClusteredProportion): Proportion {
  return { k: k / (effect ?? 1), n: n / (effect ?? 1) };
}

function sum(clusters: readonly Proportion[]): Proportion {
  let k = 0;
  let n = 0;
  for (const cluster of clusters) {
    k += cluster.k;
    n += cluster.n;
  }
  return { k, n };
}
