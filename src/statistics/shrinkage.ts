import { type Beta, betaInterval, betaMean, betaUpdate } from './beta.ts';
import { filled, type Interval, type Proportion, pooled } from './proportions.ts';
import { sumBy } from './sums.ts';

/** A group's proportion, drawn towards that of all groups as far as its own few figures call for. */
export interface Shrunk extends Interval {
  mean: number;
}

/**
 * The spread of groups about their common proportion, as a beta distribution; null without two groups that have
 * figures, or where all or none did.
 *
 * Moments after Kleinman 1973, Journal of the American Statistical Association 68:46–54, with the factor (groups − 3)
 * by which James and Stein's estimate beats the raw proportions (Efron & Morris 1975, ibid. 70:311–319); with fewer
 * than four groups it is (groups − 1). It weighs at most as much as all figures together: groups that look alike may
 * still differ.
 */
export function spreadOf(groups: readonly Proportion[]): Beta | null {
  const told = filled(groups);
  const { k, n } = pooled(told);
  if (told.length < 2 || k <= 0 || k >= n) return null;
  const p = k / n;
  const scatter = sumBy(told, (group) => group.n * (group.k / group.n - p) ** 2);
  const chance = p * (1 - p) * (told.length > 3 ? told.length - 3 : told.length - 1);
  const squares = sumBy(told, (group) => group.n ** 2);
  const usual = (n - squares / n) / (told.length - 1);
  const weight = scatter > chance ? Math.min(n, (usual * chance) / (scatter - chance)) : n;
  return { a: p * weight, b: (1 - p) * weight };
}

/** Each group's proportion under that spread, in the order of the groups. */
export function shrink(groups: readonly Proportion[], spread: Beta): Shrunk[] {
  return groups.map((group) => {
    const belief = betaUpdate(spread, group);
    return { mean: betaMean(belief), ...betaInterval(belief) };
  });
}
