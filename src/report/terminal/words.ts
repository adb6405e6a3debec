/** `1 error`, `2 errors`: a number with its noun. */
export function count(number: number, noun: string, plural = `${noun}s`): string {
  return `${number} ${number === 1 ? noun : plural}`;
}

/** Texts by the natural order of the trade's ids: `LW-2` before `LW-10`. */
export const naturally = new Intl.Collator('en', { numeric: true }).compare;
