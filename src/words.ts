/** The words that every sentence needs. Pure text: what a sentence says stands where it is known. */

/** `1 error`, `2 errors`: a number with its noun; give the plural where it is not made with an s. */
export function count(number: number, noun: string, plural = `${noun}s`): string {
  return `${number} ${number === 1 ? noun : plural}`;
}

/** `it` of one, `them` of several. */
export function them(number: number): string {
  return number === 1 ? 'it' : 'them';
}

/** `c1`, `c1 and c2`, `c1, c2 and c3`. */
export function listed(names: readonly string[]): string {
  if (names.length < 2) return names.join('');
  return `${names.slice(0, -1).join(', ')} and ${names.at(-1)}`;
}

/** The first so many of some names, and how many are left: `c1`, `c2`, `7 more`. */
export function few(names: readonly string[], most: number, left = 'more'): string[] {
  return names.length > most ? [...names.slice(0, most), `${names.length - most} ${left}`] : [...names];
}

/** `4–9`, or `4` where both ends are one. */
export function fromTo(low: number | string, high: number | string): string {
  return low === high ? `${low}` : `${low}–${high}`;
}

/** `11–13 d`. */
export function daysRange({ low, high }: { low: number; high: number }): string {
  return `${fromTo(low, high)} d`;
}

/** Those of some parts that there are: `4 Mar 2026 · the long shed`. */
export function stated(parts: readonly (string | null)[], between = ' · '): string {
  return parts.filter((part) => part !== null).join(between);
}

/** `LW-19-04`, or `LW-19-04 or LW-19-05` of a bird that is one of these; null where nobody is named. */
export function either(names: readonly string[]): string | null {
  return names.length === 0 ? null : names.join(' or ');
}

/** A sentence begins with a capital. */
export function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

/** Where so many code points of a text are past, in UTF-16 units from its beginning; its length when it has fewer. */
export function offsetAfter(text: string, codePoints: number, from = 0): number {
  let offset = from;
  for (let passed = 0; passed < codePoints && offset < text.length; passed += 1) {
    offset += (text.codePointAt(offset) as number) > 0xffff ? 2 : 1;
  }
  return offset;
}

/** The name of a species, or that nobody wrote which it is. */
export function speciesName(species: string | null): string {
  return species ?? 'species not recorded';
}
