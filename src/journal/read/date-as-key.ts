import { parseDay } from '../../days.ts';
import { countIn, refsIn } from '../../findings/as-written.ts';
import type { ObservationDefinition } from '../grammar/observation.ts';
import { Empty, Fields, List, type Node, Text } from '../nodes.ts';
import { lineOf } from '../print.ts';

type Observations = Readonly<Record<string, ObservationDefinition>>;
type Pairs = Fields['pairs'];

/** A date, and what is said behind it. */
const DATED = /^\s*(?:date[\s:=]+)?(\d{4}-\d{2}-\d{2})[\s:,;]*(.*)$/s;
/** What a keeper calls the day of an entry. */
const DAY_WORDS = ['date', 'day', 'on', 'when'];
/** `laid 1`, `sitting: hen`, `hatched; 2`. */
const OBSERVED = /^([a-z]+)(?:[\s:=]+|;\s*(?=[ec]?\d|all\b|some\b))(.+)$/s;
/** Between the observations of `laid 1, sitting`. */
const BETWEEN = /[,;+&]| and /;

/**
 * The line that was meant by an entry whose date stands where its key should, or before plain words:
 * `2026-03-04: {laid: 1}`, `2026-03-04: paired`, `2026-03-04 laid 1, sitting`; or in the wrong brackets, or with what was
 * seen behind the wrong sign: `{date: 2026-03-04; laid: 1}`. What tells of no observation is a note.
 * Null where no date stands so; empty where it does, but what stands behind it could be lost in a line of ours.
 */
export function dateAsKey(entry: Node, observations: Observations): string | null {
  const pairs = pairsOf(entry);
  const first = pairs.find(isDated);
  if (first === undefined) return null;
  const [, date = '', said = ''] = DATED.exec(dateIn(first)) ?? [];
  const meant = together(
    pairs.map(([key, value]): Pairs | null => {
      if (key === first[0])
        return behind(new Text(said, key.at), isDay(first) ? new Empty(key.at) : value, observations);
      return value instanceof Empty ? inWords(key, observations) : [[key, value]];
    }),
  );
  return dated(date, meant, entry);
}

/** What an entry says, also where it is no more than words. */
function pairsOf(entry: Node): Pairs {
  if (entry instanceof Fields) return entry.pairs;
  if (entry instanceof List) return entry.items.flatMap(pairsOf);
  return entry instanceof Text ? [[entry, new Empty(entry.at)]] : [];
}

/** `day: 2026-03-04`: the date stands behind a key that is not ours. */
function isDay([key, value]: Pairs[number]): boolean {
  return DAY_WORDS.includes(key.text.toLowerCase()) && value instanceof Text;
}

function dateIn(pair: Pairs[number]): string {
  const [key, value] = pair;
  return isDay(pair) && value instanceof Text ? value.text : key.text;
}

function isDated(pair: Pairs[number]): boolean {
  return DATED.test(dateIn(pair));
}

function dated(date: string, meant: Pairs | null, { at }: Node): string | null {
  if (parseDay(date) === null) return null;
  const pairs: Pairs = [[new Text('date', at), new Text(date, at)], ...(meant ?? [])];
  const keys = new Set(pairs.map(([{ text }]) => text));
  return meant === null || keys.size < pairs.length ? '' : lineOf(new Fields(pairs, at));
}

/** What stands behind a date: words, a value, or words that begin as one key and its value, as `laid 1, sitting: hen` does. */
function behind(words: Text, value: Node, observations: Observations): Pairs | null {
  const { text, at } = words;
  if (text === '') return seen(value, observations);
  if (value instanceof Empty) return inWords(words, observations);
  if (value instanceof Text) return inWords(new Text(`${text}: ${value.text}`, at), observations);
  return takes(observations, text, value) ? [[words, value]] : null;
}

/** What stands behind a date alone, as keys and values; null where that is not sure. */
function seen(value: Node, observations: Observations): Pairs | null {
  if (value instanceof Empty) return [];
  if (value instanceof Fields) return value.pairs;
  if (value instanceof List) return together(value.items.map((item) => seen(item, observations)));
  return value instanceof Text ? inWords(value, observations) : null;
}

function together(parts: readonly (Pairs | null)[]): Pairs | null {
  return parts.includes(null) ? null : parts.flatMap((part) => part ?? []);
}

/** Words in which an observation is named, but not as one could be written, are no note: it would not be counted. */
function inWords(words: Text, observations: Observations): Pairs | null {
  const { text, at } = words;
  const observed = (part: string) => observation(new Text(part.trim(), at), observations);
  const found = observed(text) ?? together(text.split(BETWEEN).map(observed));
  const names = text.split(/[^a-z]+/).some((word) => Object.hasOwn(observations, word));
  return found ?? (names ? null : [[new Text('note', at), words]]);
}

/** `paired`, `laid one egg`, `hatched e1 and e2`; null for any other words. */
function observation({ text, at }: Text, observations: Observations): Pairs | null {
  const [key, value] = [new Text(text, at), new Empty(at)];
  if (takes(observations, text, value)) return [[key, value]];
  const [, word = '', said = ''] = OBSERVED.exec(text) ?? [];
  const meant = valueIn(said, at);
  return meant !== null && takes(observations, word, meant) ? [[new Text(word, at), meant]] : null;
}

function valueIn(said: string, at: Node['at']): Node | null {
  const count = countIn(said);
  if (count !== null) return new Text(String(count), at);
  const refs = refsIn(said)?.map((ref) => new Text(ref, at)) ?? [];
  if (refs.length > 1) return new List(refs, at);
  return refs[0] ?? (BETWEEN.test(said) ? null : new Text(said, at));
}

function takes(observations: Observations, key: string, value: Node): boolean {
  return Object.hasOwn(observations, key) && observations[key]?.value.safeParse(value).success === true;
}
