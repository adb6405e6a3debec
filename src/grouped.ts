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
