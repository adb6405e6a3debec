/** Adds items at the end of a list, however many: as arguments of one call they would have to fit on the stack. */
export function append<T>(list: T[], items: readonly T[]): void {
  for (const item of items) list.push(item);
}
