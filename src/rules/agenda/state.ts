import type { Day } from '../../days.ts';
import type { TaskState } from './item.ts';

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
