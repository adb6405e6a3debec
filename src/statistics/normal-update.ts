/** What is believed of a mean, or one measurement of it: a value and the variance of its error. */
export interface Estimate {
  mean: number;
  variance: number;
}

/**
 * What is believed of a mean after measuring it: the normal–normal update with known variances.
 *
 * Precisions (1 / variance) add up, and the new mean is the average weighted by them. Without a measurement the
 * belief is handed back as it is. Source: Gelman et al., Bayesian Data Analysis, section 2.5 (from memory).
 */
export function normalUpdate(belief: Estimate, measurements: readonly Estimate[]): Estimate {
  if (measurements.length === 0) return { mean: belief.mean, variance: belief.variance };
  let precision = 1 / belief.variance;
  let weighted = belief.mean / belief.variance;
  for (const measurement of measurements) {
    precision += 1 / measurement.variance;
    weighted += measurement.mean / measurement.variance;
  }
  return { mean: weighted / precision, variance: 1 / precision };
}
