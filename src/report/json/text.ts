/** Characters that a terminal obeys or hides and that `JSON.stringify` leaves as they are. */
const UNSEEN = /[\u007F-\u009F\p{Cf}\p{Default_Ignorable_Code_Point}\p{Zl}\p{Zp}]/gu;

/** Data as JSON text with a line end: what a terminal might obey stands in it as `\uXXXX`, which means the same. */
export function jsonText(data: unknown): string {
  return `${JSON.stringify(data, null, 2).replace(UNSEEN, escaped)}\n`;
}

function escaped(character: string): string {
  return character
    .split('')
    .map((unit) => `\\u${unit.charCodeAt(0).toString(16).padStart(4, '0')}`)
    .join('');
}
