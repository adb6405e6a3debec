/**
 * A list and one more. A room keeps hundreds of thousands of short lists: those that grow in place hold room for a dozen
 * more, and every empty one is one of its own.
 */
export function joined<T>(list: readonly T[], one: T): readonly T[] {
  return list.concat([one]);
}

/** The list that all share which have nothing in it. */
export const none: readonly never[] = Object.freeze([]);
