/*
 * A room keeps hundreds of thousands of short lists and small facts. Lists that grow in place hold room for a dozen more,
 * every empty one is one of its own, and what is told of a whole brood is told of each in it: so nothing here changes
 * in place, and what is alike can be one.
 */

/** A list and one more. */
export function joined<T>(list: readonly [T, ...T[]], one: T): readonly [T, ...T[]];
export function joined<T>(list: readonly T[], one: T): readonly T[];
export function joined<T>(list: readonly T[], one: T): readonly T[] {
  return list.concat([one]);
}

/** The list that all share which have nothing in it. */
export const none: readonly never[] = Object.freeze([]);

/** Adds one and the same to a list of each of these. */
export function tellAll<K extends string, T extends { [key in K]: readonly unknown[] }>(
  all: readonly T[],
  key: K,
  one: T[K][number],
): void {
  const only = [one];
  for (const each of all) each[key] = (each[key].length === 0 ? only : joined(each[key], one)) as T[K];
}

/** Gives what was given last where the next is like it in every field, as with facts of one brood. */
export function likeLast<T extends object>(): (one: T) => T {
  let last: T | null = null;
  return (one) => {
    for (const key in one) {
      if (last === null || last[key] !== one[key]) {
        last = one;
        break;
      }
    }
    return last as T;
  };
}
