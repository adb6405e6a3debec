import { sumOf } from './sums.ts';
/** What is expected of a number, and the range that holds it eight times in ten. */
export interface Estimate {
  mean: number;
  /** At most this in one of ten cases, and at most `high` in nine of ten. */
  low: number;
  high: number;
}

/** The mean and the 10–90 % range of draws of a whole number, of which there is at least one. */
export function estimateOf(draws: ArrayLike<number>): Estimate {
  const sorted = Int32Array.from(draws).sort();
  const mean = sumOf(sorted) / sorted.length;
  return { mean, low: quantileOf(sorted, 0.1), high: quantileOf(sorted, 0.9) };
}

/** The least of the draws (in ascending order, at least one) up to which at least the share q of them lies. */
export function quantileOf(sorted: ArrayLike<number>, q: number): number {
  // A count that is whole but for rounding is whole: 0.1 × 4,000 must not ask for the 401st.
  const place = Math.ceil(q * sorted.length - 1e-9);
  return sorted[Math.max(1, place) - 1] as number;
}
