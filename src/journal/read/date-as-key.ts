import { parseDay } from '../../days.ts';
import { countIn } from '../../findings/as-written.ts';
import type { ObservationDefinition } from '../grammar/observation.ts';
import { Empty, Fields, type Node, Text } from '../nodes.ts';
import { lineOf } from '../print.ts';

type Observations = Readonly<Record<string, ObservationDefinition>>;
type Pairs = Fields['pairs'];

/** A date, and what is said behind it. */
const DATED = /^\s*(\d{4}-\d{2}-\d{2})[\s:,;]*(.*)$/s;
/** `laid 1`, `sitting: hen`. */
const OBSERVED = /^([a-z]+)[\s:=]+(.+)$/s;

/**
 * The line that was meant by an entry whose date stands where its key should, or before plain words:
 * `2026-03-04: {laid: 1}`, `2026-03-04: paired`, `2026-03-04 laid 1`. What is no observation is a note. Null where no date
 * stands so.
 */
export function dateAsKey(entry: Node, observations: Observations): string | null {
  if (entry instanceof Text) {
    const [, date = '', said = ''] = DATED.exec(entry.text) ?? [];
    return dated(date, said === '' ? [] : seen(new Text(said, entry.at), observations), entry);
  }
  if (!(entry instanceof Fields)) return null;
  const date = entry.pairs.find(([{ text }]) => parseDay(text.trim()) !== null)?.[0];
  if (date === undefined) return null;
  const meant = entry.pairs.flatMap(
    ([key, value]): Pairs => (key === date ? seen(value, observations) : [[key, value]]),
  );
  return dated(date.text.trim(), meant, entry);
}

function dated(date: string, meant: Pairs, { at }: Node): string | null {
  if (parseDay(date) === null) return null;
  return lineOf(new Fields([[new Text('date', at), new Text(date, at)], ...meant], at));
}

function seen(value: Node, observations: Observations): Pairs {
  if (value instanceof Fields) return value.pairs;
  if (!(value instanceof Text)) return [];
  const { text, at } = value;
  if (takes(observations, text, new Empty(at))) return [[value, new Empty(at)]];
  const [, key = '', said = ''] = OBSERVED.exec(text) ?? [];
  const behind = new Text(String(countIn(said) ?? said), at);
  if (takes(observations, key, behind)) return [[new Text(key, at), behind]];
  return [[new Text('note', at), value]];
}

function takes(observations: Observations, key: string, value: Node): boolean {
  return Object.hasOwn(observations, key) && observations[key]?.value.safeParse(value).success === true;
}
