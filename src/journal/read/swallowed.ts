import type { Finding } from '../../findings/finding.ts';
import type { ObservationDefinition } from '../grammar/observation.ts';
import { Empty, Text, type UnquotedNote } from '../nodes.ts';
import { readValue } from './value.ts';

/** A word behind a comma, and whether a colon follows or nothing does. */
const KEY_BEHIND_COMMA = /,[ \t]*([a-z]+)(?:(:)(?=[ \t]|$)|(?=[ \t]*(?:,|$)))/g;

/**
 * Makes the hint at an unquoted note an error where the note took in what was observed: a key of the log behind a
 * comma. Its fix puts that before the note.
 */
export function nameSwallowed(
  note: UnquotedNote,
  observations: Readonly<Record<string, ObservationDefinition>>,
): void {
  const { text, hint, before, behind } = note;
  const keys: string[] = [];
  const swallowed: string[] = [];
  let words = '';
  let rest = 0;
  KEY_BEHIND_COMMA.lastIndex = 0;
  for (let match = KEY_BEHIND_COMMA.exec(text); match !== null; match = KEY_BEHIND_COMMA.exec(text)) {
    const [, key = '', colon] = match;
    const definition = Object.hasOwn(observations, key) ? observations[key] : undefined;
    if (definition === undefined || (colon === undefined && !mayStandAlone(definition, note))) continue;
    const to = valueEnd(text, match.index + 1);
    keys.push(`\`${key}\``);
    swallowed.push(text.slice(match.index + 1, to).trim());
    words += text.slice(rest, match.index);
    rest = to;
    KEY_BEHIND_COMMA.lastIndex = to;
  }
  if (keys.length === 0) return;
  const start = before.slice(0, before.lastIndexOf('note')).replace(/["']$/, '');
  const between = before.includes('{') ? ', ' : '\n';
  const quoted = `note: ${JSON.stringify(words + text.slice(rest))}`;
  const line = `${start}${[...swallowed, quoted].join(between)}${behind}`.trim();
  hint.code = 'note-swallows';
  hint.args = { keys: keys.join(', '), line };
}

function mayStandAlone(definition: ObservationDefinition, { text, at }: UnquotedNote): boolean {
  const findings: Finding[] = [];
  return readValue(definition, new Text(text, at), new Empty(at), findings) !== undefined;
}

/** The next comma outside of brackets, or the end. */
function valueEnd(text: string, from: number): number {
  let depth = 0;
  for (let at = from; at < text.length; at++) {
    const sign = text[at] as string;
    if ('{['.includes(sign)) depth++;
    else if ('}]'.includes(sign)) depth--;
    else if (sign === ',' && depth <= 0) return at;
  }
  return text.length;
}
