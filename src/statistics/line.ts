import { sumBy } from './sums.ts';
/** A measurement and the standard deviation of its error. */
export interface Measured {
  x: number;
  y: number;
  deviation: number;
}

/** y = intercept + slope · x, with what is unknown of both. */
export interface Line {
  intercept: number;
  slope: number;
  interceptVariance: number;
  slopeVariance: number;
  covariance: number;
}

/**
 * The straight line of weighted least squares, each point weighted by 1 / its variance. Where the points scatter more
 * than their deviations say, all variances are enlarged by the ratio (χ² over its degrees of freedom).
 * Source: Press et al., Numerical Recipes, section 15.2 (from memory).
 *
 * @returns null where all points have one x
 */
export function lineThrough(points: readonly Measured[]): Line | null {
  if (points.every(({ x }) => x === points[0]?.x)) return null;
  const weighted = points.map(({ x, y, deviation }) => ({ x, y, w: 1 / deviation ** 2 }));
  const sum = (of: (point: (typeof weighted)[number]) => number) =>
    sumBy(weighted, (point) => point.w * of(point));
  const total = sum(() => 1);
  const middle = sum(({ x }) => x) / total;
  const spread = sum(({ x }) => (x - middle) ** 2);
  const slope = sum(({ x, y }) => (x - middle) * y) / spread;
  const intercept = sum(({ y }) => y) / total - slope * middle;
  const scatter = sum(({ x, y }) => (y - intercept - slope * x) ** 2) / Math.max(1, points.length - 2);
  const more = Math.max(1, scatter);
  return {
    intercept,
    slope,
    interceptVariance: more * (1 / total + middle ** 2 / spread),
    slopeVariance: more / spread,
    covariance: (more * -middle) / spread,
  };
}
