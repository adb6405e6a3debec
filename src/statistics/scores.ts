/**
 * How good a forecast was, once it is known what happened. The score is in the unit of what was forecast (days), and
 * smaller is better.
 *
 * Source of the formula: Gneiting & Raftery 2007, Journal of the American Statistical Association 102:359–378,
 * who print it with the opposite sign.
 */
import type { DayDistribution } from './delay.ts';

/** Continuous ranked probability score of a forecast that gives each day a probability: its squared distance from what happened. */
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
