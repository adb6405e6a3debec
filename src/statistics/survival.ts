import { normalQuantile } from './normal.ts';
import type { Interval } from './proportions.ts';

/** One life as far as it was followed. */
export interface Life {
  /** The time from which it was under observation: it counts for deaths later than that. */
  entry: number;
  /** When it died or was last known alive. */
  time: number;
  died: boolean;
}

/** One time of death. Expected numbers need not be whole. */
export interface SurvivalStep {
  time: number;
  atRisk: number;
  died: number;
  /** Share that survives this time. */
  surviving: number;
  /** Greenwood's standard error. */
  se: number;
  /** Log-log limits; null where nobody survived, for they are not defined there. */
  low: number | null;
  high: number | null;
}

/**
 * Kaplan and Meier's estimate of survival: one step for each time of death. Whoever was last seen alive at a time of
 * death was still at risk then. Sources: Kaplan & Meier 1958; Greenwood 1926; late entry as in Klein & Moeschberger
 * 2003, Survival Analysis, section 4.6.
 */
export function kaplanMeier(lives: readonly Life[]): SurvivalStep[] {
  const times = [...new Set(lives.filter(counted).map(({ time }) => time))].sort((a, b) => a - b);
  return curveOf(
    times.map((time) => ({
      time,
      atRisk: lives.filter((life) => life.entry < time && life.time >= time).length,
      died: lives.filter((life) => counted(life) && life.time === time).length,
    })),
  );
}

function counted({ died, entry, time }: Life): boolean {
  return died && entry < time;
}

/** The curve that numbers at risk and dead make, in order of time, with Greenwood's error and log-log limits. */
export function curveOf(rows: readonly { time: number; atRisk: number; died: number }[]): SurvivalStep[] {
  let surviving = 1;
  let greenwood = 0;
  return rows.map(({ time, atRisk, died }) => {
    const left = Math.max(0, atRisk - died);
    surviving *= left / atRisk;
    greenwood += died / (atRisk * left);
    if (surviving <= 0) return { time, atRisk, died, surviving: 0, se: 0, low: null, high: null };
    const se = surviving * Math.sqrt(greenwood);
    return { time, atRisk, died, surviving, se, ...logLogLimits(surviving, greenwood) };
  });
}

/** Leaves 2.5 % on either side. */
const Z = normalQuantile(0.975);

/** Limits that stay between 0 and 1, even with few lives: normal on the scale of log(−log S). */
function logLogLimits(surviving: number, greenwood: number): Interval {
  if (surviving >= 1) return { low: 1, high: 1 };
  const reach = (Z * Math.sqrt(greenwood)) / Math.abs(Math.log(surviving));
  return { low: surviving ** Math.exp(reach), high: surviving ** Math.exp(-reach) };
}
