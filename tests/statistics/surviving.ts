import type { SurvivalStep } from '../../src/statistics/survival.ts';

/** The share that survives the time; 1 before the first death. */
export function survivingAt(steps: readonly SurvivalStep[], time: number): number {
  return steps.findLast((step) => step.time <= time)?.surviving ?? 1;
}
