let collator: Intl.Collator | undefined;

/** Texts by the natural order of the trade's ids: `LW-2` before `LW-10`. For sorting. */
export function naturally(a: string, b: string): number {
  if (a === b) return 0;
  const plain = plainly(a, b);
  if (plain !== null) return plain;
  // Made once, and only where there is something to compare: it takes milliseconds.
  collator ??= new Intl.Collator('en', { numeric: true });
  return collator.compare(a, b);
}

/** So many digits are still a number without loss. */
const MOST_DIGITS = 15;

/**
 * The order of two texts that first differ in numbers, plain letters or the end of one, as those of most rooms do: the
 * collator's own, without making one. Null where it takes the rules of a language.
 */
function plainly(a: string, b: string): number | null {
  let at = 0;
  while (at < a.length && a[at] === b[at]) at++;
  let start = at;
  while (start > 0 && DIGIT.test(a[start - 1] as string)) start--;
  const [one, other] = [numberAt(a, start), numberAt(b, start)];
  if (one !== '' && other !== '')
    return one.length > MOST_DIGITS || other.length > MOST_DIGITS
      ? null
      : Number(one) - Number(other) || null;
  const [sign, second] = [a.charAt(at).toLowerCase(), b.charAt(at).toLowerCase()];
  return PLAIN.test(sign) && PLAIN.test(second) ? bySign(sign) - bySign(second) || null : null;
}

/** The end of a text comes before digits and these before letters, in Unicode's order of collation as in that of signs. */
function bySign(sign: string): number {
  return sign === '' ? 0 : sign.charCodeAt(0);
}

const DIGIT = /\d/;
const PLAIN = /^[a-z\d]?$/;
const NUMBER = /\d*/y;

function numberAt(text: string, start: number): string {
  NUMBER.lastIndex = start;
  return NUMBER.exec(text)?.[0] ?? '';
}

/** The same where a name may not be known: those come last. */
export function naturallyNamed(a: string | null, b: string | null): number {
  if (a === null || b === null) return Number(a === null) - Number(b === null);
  return naturally(a, b);
}
