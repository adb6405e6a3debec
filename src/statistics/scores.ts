/**
 * How good a forecast was, once it is known what happened. All scores are in the unit of what was forecast (days),
 * and smaller is better.
 *
 * Source of the formulas: Gneiting & Raftery 2007, Journal of the American Statistical Association 102:359–378,
 * who print the first with the opposite sign.
 */
import type { DayDistribution } from './delay.ts';
import { normalCdf, normalDensity } from './normal.ts';

const ONE_OVER_SQRT_PI = 1 / Math.sqrt(Math.PI);

/** Continuous ranked probability score of a normal forecast: its squared distance from what happened. */
export function crpsNormal(mean: number, deviation: number, happened: number): number {
  const z = (happened - mean) / deviation;
  return deviation * (z * (2 * normalCdf(z) - 1) + 2 * normalDensity(z) - ONE_OVER_SQRT_PI);
}

/** The same score of a forecast that gives each day a probability. */
export function crpsDays(forecast: DayDistribution, happened: number): number {
  const { first, probabilities } = forecast;
  const end = first + probabilities.length;
  let cumulative = 0;
  let score = 0;
  for (let day = Math.min(first, happened); day < Math.max(end, happened); day++) {
    cumulative += probabilities[day - first] ?? 0;
    score += (cumulative - (day >= happened ? 1 : 0)) ** 2;
  }
  return score;
}

/** Pinball score of a quantile that was forecast at level q. */
export function pinball(quantile: number, q: number, happened: number): number {
  return happened >= quantile ? q * (happened - quantile) : (1 - q) * (quantile - happened);
}

/** Score of a central interval that claims to hold the share 1 − alpha: its width, and a fine for what it missed. */
export function intervalScore(low: number, high: number, alpha: number, happened: number): number {
  const missed = Math.max(0, low - happened) + Math.max(0, happened - high);
  return high - low + (2 / alpha) * missed;
}

/** Share of what happened that lay within its interval, edges included; null without any. */
export function coverage(
  forecasts: readonly { low: number; high: number; happened: number }[],
): number | null {
  if (forecasts.length === 0) return null;
  const inside = forecasts.filter(({ low, high, happened }) => low <= happened && happened <= high);
  return inside.length / forecasts.length;
}
