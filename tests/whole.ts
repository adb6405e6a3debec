/** A text that is written a part at a time, as one. */
export function whole(parts: Iterable<string>): string {
  return [...parts].join('');
}
