import { normalQuantile } from './normal.ts';

/** How a stage was survived, a day and as a whole; figures are null where nobody was watched, or nothing is left. */
export interface StageSurvival {
  /** Days on which one nest was known to be in course, added up over nests. */
  exposure: number;
  losses: number;
  /** Share that survives a day. */
  daily: number | null;
  se: number | null;
  /** Share that survives the whole stage, with its 95 % limits. */
  period: number | null;
  low: number | null;
  high: number | null;
}

/**
 * Survival by days of exposure, so that nests found late do not flatter the figure, and of a stage of so many days.
 *
 * Sources: Mayfield 1961, Wilson Bulletin 73:255–261, and 1975, Wilson Bulletin 87:456–466; standard error
 * Johnson 1979, Auk 96:651–661. Of the recipes for a period's limits this is the one that is normal on the logit of
 * the period's survival; where nothing was lost, the exact binomial one: 0.025^(days / exposure).
 */
export function stageSurvival(losses: number, exposure: number, days: number): StageSurvival {
  const nothing = { exposure, losses, daily: null, se: null, period: null, low: null, high: null };
  if (exposure <= 0) return nothing;
  const daily = 1 - losses / exposure;
  if (daily <= 0) return nothing;
  const se = Math.sqrt((daily * (1 - daily)) / exposure);
  const period = daily ** days;
  if (losses === 0) return { exposure, losses, daily, se, period, low: 0.025 ** (days / exposure), high: 1 };
  if (period <= 0 || period >= 1) return { exposure, losses, daily, se, period, low: period, high: period };
  const error = days * daily ** (days - 1) * se;
  const reach = (normalQuantile(0.975) * error) / (period * (1 - period));
  const logit = Math.log(period / (1 - period));
  return { exposure, losses, daily, se, period, low: expit(logit - reach), high: expit(logit + reach) };
}

function expit(x: number): number {
  return 1 / (1 + Math.exp(-x));
}
