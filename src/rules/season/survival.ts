import { type IntervalLife, turnbullCurve } from '../../statistics/interval-censored.ts';
import { sumBy } from '../../statistics/sums.ts';
import { kaplanMeier, type Life, type SurvivalStep } from '../../statistics/survival.ts';

/** How chicks survived by age; one row for each age at which any died. */
export interface ChickSurvival {
  rows: SurvivalRow[];
  /** Some deaths lay between looks more than a day apart, so that their ages are estimated. */
  estimated: boolean;
  /** How many chicks were followed. */
  followed: number;
  /** The days of age to watch. */
  danger: Danger | null;
}

export interface SurvivalRow extends SurvivalStep {
  /** The first age at which these deaths can have fallen; `time` is the last. */
  from: number;
}

/** Kaplan and Meier's curve where each death is known to the day, else Turnbull's. */
export function survivalOf(lives: readonly IntervalLife[]): ChickSurvival {
  const estimated = lives.some(({ left, right }) => Number.isFinite(right) && right - left > 1);
  const rows = estimated
    ? turnbullCurve(lives).map((step) => ({ ...step, from: step.from + 1 }))
    : kaplanMeier(lives.map(byDay)).map((step) => ({ ...step, from: step.time }));
  return { rows, estimated, followed: lives.length, danger: dangerIn(rows) };
}

/** The life with its death on the last day on which it can have been. */
export function byDay({ entry, left, right }: IntervalLife): Life {
  const died = Number.isFinite(right);
  return { entry, time: died ? right : left, died };
}

/** A stretch of ages in which many of the deaths fell. */
export interface Danger {
  from: number;
  to: number;
  died: number;
  /** All deaths, and how many were alive when the stretch began. */
  of: number;
  atRisk: number;
}

/** Fewer deaths than this make no pattern. */
const PATTERN = 5;
/** A longer stretch than this is no warning. */
const LONGEST = 7;

/** The shortest stretch of ages in which at least half of the deaths fell; null where there is none worth naming. */
function dangerIn(rows: readonly SurvivalRow[]): Danger | null {
  const of = sumBy(rows, ({ died }) => died);
  if (Math.round(of) < PATTERN) return null;
  let best: Danger | null = null;
  rows.forEach((first, i) => {
    let died = 0;
    for (const row of rows.slice(i)) {
      died += row.died;
      const length = row.time - first.from;
      if (died < of / 2 || length >= LONGEST) continue;
      if (best !== null && length > best.to - best.from) break;
      if (best === null || length < best.to - best.from || died > best.died) {
        best = { from: first.from, to: row.time, died, of, atRisk: first.atRisk };
      }
      break;
    }
  });
  return best;
}
