import type { Day } from '../../days.ts';
import type { TaskState } from './item.ts';

/** Days after its last day for which a task goes on asking: long enough to be seen, not long enough to nag through a winter. */
export const GIVEN_UP = 60;

/** The state of a task on a day, or null when it is no longer shown. */
export function stateOn(
  day: Day,
  { from, to }: { from: Day; to: Day | null },
  lapses: Day | null,
): TaskState | null {
  if (lapses !== null && day > lapses) return null;
  if (day < from) return 'coming';
  return to === null || day <= to ? 'now' : 'late';
}

/** Days in store after which eggs are set back (common practice). */
export const SET_BACK = { from: 4, to: 5 };

/** Days past the hatch window in which it is looked what became of the eggs: late is not overdue. */
export const LOOK_AFTER = { from: 2, to: 4 };

/** Days before the usual age from which rings are tried on: it is looked rather than counted. */
export const RINGS_TRIED = 1;
