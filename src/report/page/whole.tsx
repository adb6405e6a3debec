/**
 * Tags, and what holds no text to be set in lines; a keeper's `<` and `"` are escaped in both. Else a word, with the
 * hyphens and strokes inside it.
 */
const PARTS = /<(?<closed>svg|style|title)\b[\s\S]*?<\/\k<closed>>|<(?:[^<>"]|"[^"]*")*>|[\p{L}\p{N}/-]+/gu;

/** No ring has more; longer words are broken wherever a line ends. */
const LONGEST = 40;

/**
 * A page's markup in which no code is broken at its hyphens, as browsers break any word that has one: `LW-24-01`,
 * `SF-2/1/c3` and `2026-05-17` stay in one line where they fit. The letters stay as the keeper wrote them, so that a code
 * can be searched for and copied; hyphens that do not break would be other letters.
 */
export function codesWhole(markup: string): string {
  return markup.replace(PARTS, (part) => (isCode(part) ? `<span class="whole">${part}</span>` : part));
}

/** A ring's code, which may hold blanks and stays in one line all the same. */
export function Ring({ code }: { code: string }) {
  return <span class={code.length > LONGEST ? undefined : 'whole'}>{code}</span>;
}

function isCode(part: string): boolean {
  return !part.startsWith('<') && part.length <= LONGEST && part.includes('-') && /\d/.test(part);
}

/** A table on a narrow screen is pushed aside with a finger; elsewhere a code that is wider than its line is broken. */
export const WHOLE_STYLE = `
.whole { display: inline-block; max-width: 100%; }
@media screen { .table .whole { white-space: nowrap; } }
`;
