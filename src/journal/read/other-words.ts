import type { Finding } from '../../findings/finding.ts';
import { plainWord } from '../../findings/nearest.ts';
import type { ObservationDefinition } from '../grammar/observation.ts';
import { yesOrNo } from '../grammar/values.ts';
import { calledSo } from '../grammar/vocabulary.ts';
import { Fields, type Node, Text } from '../nodes.ts';
import { pairText } from '../print.ts';
import { isItsValue, readValue } from './value.ts';

/** A longer value is not worth printing again; an example says more. */
const LONGEST = 40;

/**
 * What was probably meant by a word that others use for an observation: each one that goes by it, as it would be
 * written with this value where it can be, and what it means. Empty where nobody calls any so.
 *
 * @example `weaned: all` // '`independent: all` (cracks seed and no longer begs)'
 */
export function otherWords(
  key: Text,
  value: Node,
  observations: Readonly<Record<string, ObservationDefinition>>,
): string {
  const said = plainWord(key.text);
  return calledSo(key.text, observations)
    .map((name) => {
      const definition = observations[name] as ObservationDefinition;
      const [, example] = definition.example.split(/: (.*)/);
      // `eggs: 3` is `checked: {eggs: 3}`.
      const under = example?.includes(`${said}: `) ? within(said, value) : value;
      if (isItsValue(said, definition)) return `\`${name}: ${said}${alsoNoted(value)}\` (${definition.doc})`;
      return `\`${written(name, definition, under)}\` (${definition.doc})`;
    })
    .join(' or ');
}

/** What else was said of it: `, note: "to a friend"`. */
export function alsoNoted(value: Node): string {
  return value instanceof Text && yesOrNo(value.text) === null
    ? `, ${pairText(new Text('note', value.at), value)}`
    : '';
}

function within(word: string, value: Node): Node {
  return new Fields([[new Text(word, value.at), value]], value.at);
}

function written(name: string, definition: ObservationDefinition, value: Node): string {
  const key = new Text(name, value.at);
  const wrong: Finding[] = [];
  if (readValue(definition, key, value, wrong) === undefined) return definition.example;
  const text = pairText(key, value);
  return text.length > LONGEST ? definition.example : text;
}
