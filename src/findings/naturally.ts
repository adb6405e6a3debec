let collator: Intl.Collator | undefined;

/** Texts by the natural order of the trade's ids: `LW-2` before `LW-10`. For sorting. */
export function naturally(a: string, b: string): number {
  if (a === b) return 0;
  // Made once, and only where there is something to compare: it takes milliseconds.
  collator ??= new Intl.Collator('en', { numeric: true });
  return collator.compare(a, b);
}

/** The same where a name may not be known: those come last. */
export function naturallyNamed(a: string | null, b: string | null): number {
  if (a === null || b === null) return Number(a === null) - Number(b === null);
  return naturally(a, b);
}
