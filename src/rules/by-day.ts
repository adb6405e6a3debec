import type { Day } from '../days.ts';
import { grouped } from '../grouped.ts';

/** Everything seen on one day. */
export interface SeenOn<T> {
  day: Day;
  all: T[];
}

/**
 * Looks gathered by day, oldest first. Two helpers may write of one day, and not the same: whoever judges a day has
 * both before them.
 */
export function byDay<T extends { day: Day }>(seen: readonly T[]): SeenOn<T>[] {
  const days = grouped(seen, ({ day }) => day);
  return [...days].map(([day, all]) => ({ day, all })).sort((a, b) => a.day - b.day);
}
