import { inTurn } from '../../grouped.ts';

/** Characters that a terminal obeys or hides and that `JSON.stringify` leaves as they are. */
const UNSEEN = /[\u007F-\u009F\p{Cf}\p{Default_Ignorable_Code_Point}\p{Zl}\p{Zp}]/gu;

/** Data as JSON text with a line end: what a terminal might obey stands in it as `\uXXXX`, which means the same. */
export function jsonText(data: unknown): string {
  return `${JSON.stringify(data, null, 2).replace(UNSEEN, escaped)}\n`;
}

/** What stands around the items of a list that is all of an object, but for the list's name. */
const [BEFORE, BEHIND] = ['{\n  "": [', '\n  ]\n}\n'];

/**
 * The JSON text of an object of which one list is too long to stand in memory as text: some of its items at a time.
 *
 * @param list the name of that list, which is empty in `data`
 */
export function* jsonParts(
  data: Record<string, unknown>,
  list: string,
  items: Iterable<unknown>,
): Generator<string> {
  const whole = jsonText(data);
  // A line of its own two blanks from the margin: no text and nothing further inside can look like it.
  const name = `\n  "${list}": [`;
  const open = whole.indexOf(`${name}]`) + name.length;
  let sign = whole.slice(0, open);
  let close = '';
  for (const part of inTurn(items)) {
    yield sign + jsonText({ [list]: part }).slice(BEFORE.length + list.length, -BEHIND.length);
    sign = ',';
    close = '\n  ';
  }
  yield (close === '' ? sign : close) + whole.slice(open);
}

function escaped(character: string): string {
  return character
    .split('')
    .map((unit) => `\\u${unit.charCodeAt(0).toString(16).padStart(4, '0')}`)
    .join('');
}
