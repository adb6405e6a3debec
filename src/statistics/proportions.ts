import { normalQuantile } from './normal.ts';
import { sumBy } from './sums.ts';

/** From where to where something lies with the confidence asked for. */
export interface Interval {
  low: number;
  high: number;
}

/** So many of so many; after a correction for clusters not necessarily whole. */
export interface Proportion {
  k: number;
  n: number;
}

/** All of these together, as if they were one. */
export function pooled(all: readonly Proportion[]): Proportion {
  return { k: sumBy(all, ({ k }) => k), n: sumBy(all, ({ n }) => n) };
}

/** Those of which there is anything to judge from. */
export function filled<P extends Proportion>(all: readonly P[]): P[] {
  return all.filter(({ n }) => n > 0);
}

/** z that leaves half of what the confidence does not cover on either side. */
function zOf(confidence: number): number {
  return normalQuantile(0.5 + confidence / 2);
}

/**
 * Score interval of a proportion; null where there is nothing to judge from (n = 0).
 * Source: Wilson 1927, as in Newcombe 1998, Statistics in Medicine 17:857–872, method 3.
 */
export function wilson({ k, n }: Proportion, confidence = 0.95): Interval | null {
  if (n <= 0) return null;
  const z = zOf(confidence);
  const p = k / n;
  const middle = 2 * n * p + z * z;
  const half = z * Math.sqrt(z * z + 4 * n * p * (1 - p));
  const below = 2 * (n + z * z);
  return {
    low: k <= 0 ? 0 : Math.max(0, (middle - half) / below),
    high: k >= n ? 1 : Math.min(1, (middle + half) / below),
  };
}

/** How far one proportion lies above another, with its interval. */
export interface Difference extends Interval {
  difference: number;
}

/**
 * Difference a − b of two independent proportions with its hybrid score interval; null where either has n = 0.
 * Source: Newcombe 1998, Statistics in Medicine 17:873–890, method 10.
 */
export function differenceOf(a: Proportion, b: Proportion, confidence = 0.95): Difference | null {
  const one = wilson(a, confidence);
  const other = wilson(b, confidence);
  if (one === null || other === null) return null;
  const p = a.k / a.n;
  const q = b.k / b.n;
  return {
    difference: p - q,
    low: p - q - Math.hypot(p - one.low, other.high - q),
    high: p - q + Math.hypot(one.high - p, q - other.low),
  };
}
