/** As many as stand in memory as text, or in one table, at a time: a lifetime has hundred thousands of eggs. */
const AT_A_TIME = 1000;

/** Some at a time, in their order; of nothing, nothing. */
export function* inTurn<T>(all: Iterable<T>): Generator<T[]> {
  let part: T[] = [];
  for (const one of all) {
    part.push(one);
    if (part.length < AT_A_TIME) continue;
    yield part;
    part = [];
  }
  if (part.length > 0) yield part;
}

/** Something for each of some names, by that name. */
export function byName<K extends string, T>(names: readonly K[], of: (name: K) => T): Record<K, T> {
  return Object.fromEntries(names.map((name) => [name, of(name)])) as Record<K, T>;
}

/** Things by what they have in common, both in the order in which they come. */
export function grouped<T, K>(all: Iterable<T>, keyOf: (one: T) => K): Map<K, [T, ...T[]]> {
  const groups = new Map<K, [T, ...T[]]>();
  for (const one of all) {
    const key = keyOf(one);
    const alike = groups.get(key);
    if (alike === undefined) groups.set(key, [one]);
    else alike.push(one);
  }
  return groups;
}

/** What is kept by a key; where nothing is yet, it is made, and kept from then on. */
export function keptIn<K, V extends {}>(
  all: { get(key: K): V | undefined; set(key: K, value: V): unknown },
  key: K,
  make: () => V,
): V {
  const known = all.get(key);
  if (known !== undefined) return known;
  const made = make();
  all.set(key, made);
  return made;
}
