import { normalCdf, normalDensity } from '../../src/statistics/normal.ts';

const ONE_OVER_SQRT_PI = 1 / Math.sqrt(Math.PI);

/** Continuous ranked probability score of a normal forecast, in closed form: what the score by days is held against. */
export function crpsNormal(mean: number, deviation: number, happened: number): number {
  const z = (happened - mean) / deviation;
  return deviation * (z * (2 * normalCdf(z) - 1) + 2 * normalDensity(z) - ONE_OVER_SQRT_PI);
}
