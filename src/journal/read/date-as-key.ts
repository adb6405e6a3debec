import { parseDay } from '../../days.ts';
import { Empty, Fields, type Node, Text } from '../nodes.ts';
import { lineOf } from '../print.ts';

/**
 * The line that was meant by an entry whose date stands where its key should: `2026-03-04: {laid: 1}`, or
 * `2026-03-04: paired`. What is no observation by itself is a note. Null where no key is a date.
 */
export function dateAsKey(pairs: Fields['pairs'], observations: object): string | null {
  const date = pairs.find(([{ text }]) => parseDay(text.trim()) !== null)?.[0];
  if (date === undefined) return null;
  const meant = pairs.flatMap(([key, value]): Fields['pairs'] =>
    key === date ? seen(value, observations) : [[key, value]],
  );
  return lineOf(
    new Fields([[new Text('date', date.at), new Text(date.text.trim(), date.at)], ...meant], date.at),
  );
}

function seen(value: Node, observations: object): Fields['pairs'] {
  if (value instanceof Fields) return value.pairs;
  if (!(value instanceof Text)) return [];
  if (Object.hasOwn(observations, value.text)) return [[value, new Empty(value.at)]];
  return [[new Text('note', value.at), value]];
}
