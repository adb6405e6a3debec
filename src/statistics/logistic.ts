/** A quantity that grows from near nothing to its asymptote, fastest half-way. */
export interface Logistic {
  /** What it comes to in the end. */
  asymptote: number;
  /** K, per unit of time. */
  rate: number;
  /** The time at which half the asymptote is reached. */
  midpoint: number;
}

/**
 * The curve that has `start` at time 0 and half its asymptote at `midpoint`.
 *
 * @param start more than 0 and less than half of `asymptote`
 */
export function logisticThrough(start: number, asymptote: number, midpoint: number): Logistic {
  return { asymptote, midpoint, rate: Math.log(asymptote / start - 1) / midpoint };
}

/** W = A / (1 + exp(−K (t − tᵢ))): Ricklefs 1967, Ecology 48:978–983 (from memory). */
export function logisticAt({ asymptote, rate, midpoint }: Logistic, time: number): number {
  return asymptote / (1 + Math.exp(-rate * (time - midpoint)));
}
