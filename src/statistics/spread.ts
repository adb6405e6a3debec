import { sumBy } from './sums.ts';
/** A value that was measured, how unsure the measuring itself left it, and how many came out just so. */
export interface Measured {
  value: number;
  /** Variance of the error of measurement, known; 0 where it was measured exactly. */
  error: number;
  times: number;
}

/** A variance, and how many degrees of freedom it is worth. */
export interface Spread {
  variance: number;
  degrees: number;
}

const ENOUGH = 1e-12;
const ROUNDS = 1000;

/**
 * How far true values differ, when each was measured with an error of its own: what was believed of their variance
 * (worth so many degrees of freedom) and what the measurements show, together.
 *
 * A measurement that is mostly error says next to nothing of the spread, however far off it lies. Its part k is the
 * share of the spread in its own variance, spread / (spread + error): 1 when exact. Then
 *
 *     variance = (degrees believed × variance believed + Σ k² (value − mean)²) / degrees,
 *     degrees = degrees believed + Σ k − Σ k² / Σ k,
 *
 * with the mean weighted by k, repeated until it stands. Without errors of measurement these are the squares about
 * the mean and n − 1. It is the mode of the restricted likelihood of a random-effects model with known errors
 * (Harville 1977, Journal of the American Statistical Association 72:320–338; the case of known errors: Viechtbauer
 * 2005, Journal of Educational and Behavioral Statistics 30:261–293; both from memory), the belief taken as so
 * many exact measurements more. With no belief (0 degrees) it is that estimate itself; where the measurements are worth no
 * degree of freedom either, as a single one is not, the variance stays what it was.
 */
export function spreadBeyondError(believed: Spread, measured: readonly Measured[]): Spread {
  let spread = believed;
  for (let round = 0; round < ROUNDS; round++) {
    const next = nextSpread(believed, measured, spread.variance);
    const change = Math.abs(next.variance - spread.variance);
    spread = next;
    if (change <= ENOUGH * spread.variance) break;
  }
  return spread;
}

function nextSpread(believed: Spread, measured: readonly Measured[], variance: number): Spread {
  const parts = measured.map(({ value, error, times }) => ({
    value,
    times,
    k: error === 0 ? 1 : variance / (variance + error),
  }));
  const sum = (of: (part: { value: number; k: number }) => number) =>
    sumBy(parts, (part) => part.times * of(part));
  const weight = sum(({ k }) => k);
  const degrees = believed.degrees + weight - sum(({ k }) => k ** 2) / weight;
  // Rounding must not make something of a single measurement's degrees, which are none.
  if (weight === 0 || degrees <= ENOUGH * weight) return { variance, degrees: believed.degrees };
  const mean = sum(({ k, value }) => k * value) / weight;
  const squares = sum(({ k, value }) => k ** 2 * (value - mean) ** 2);
  return { variance: (believed.degrees * believed.variance + squares) / degrees, degrees };
}
