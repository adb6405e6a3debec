import type * as z from 'zod';
import type { Finding } from '../../findings/finding.ts';
import { nearest } from '../../findings/nearest.ts';
import type { KeyTable } from '../grammar/key.ts';
import { Empty, type Fields, Refused, type Text } from '../nodes.ts';
import { append } from '../text/append.ts';
import { WITHOUT_COLON, withWholeLines } from './comma-rest.ts';
import { readValue } from './value.ts';

/** What was read for each key of a table; null where the key is missing, empty or wrong. */
export type KeyValues<T extends KeyTable> = { [K in keyof T]: z.output<T[K]['value']> | null };

/**
 * Reads the keys of a mapping by a table. Each unknown, doubled or wrong one is a finding; the rest counts.
 *
 * @param elsewhere keys that the caller reads itself
 */
export function readKeys<T extends KeyTable>(
  fields: Fields,
  table: T,
  elsewhere: readonly string[],
  findings: Finding[],
): KeyValues<T> {
  const found: Finding[] = [];
  const values = readOnce(fields, table, elsewhere, found);
  const reread = (joined: Fields) => {
    const again: Finding[] = [];
    readOnce(joined, table, elsewhere, again);
    return again;
  };
  append(findings, withWholeLines(fields, found, reread));
  return values;
}

function readOnce<T extends KeyTable>(
  { pairs }: Fields,
  table: T,
  elsewhere: readonly string[],
  findings: Finding[],
): KeyValues<T> {
  const values = Object.fromEntries(Object.keys(table).map((key) => [key, null])) as Record<string, unknown>;
  const seen = new Set<string>();
  for (const [key, node] of pairs) {
    if (elsewhere.includes(key.text) || node instanceof Refused) continue;
    const definition = Object.hasOwn(table, key.text) ? table[key.text] : undefined;
    if (definition === undefined)
      findings.push(unknownKey(key, [...Object.keys(table), ...elsewhere], exampleWith(key, table)));
    else if (seen.has(key.text))
      findings.push({ code: 'duplicate-key', at: key.at, args: { key: key.text } });
    else if (!(node instanceof Empty)) values[key.text] = readValue(definition, key, node, findings) ?? null;
    seen.add(key.text);
  }
  return values as KeyValues<T>;
}

/** The example of the key under which such a one stands: `limits: {quarantine: 30, …}` for `quarantine`. */
function exampleWith({ text }: Text, table: KeyTable): string | undefined {
  return Object.values(table).find(({ example }) =>
    example.split(/[{,] ?/).some((part) => part.startsWith(`${text}: `)),
  )?.example;
}

/**
 * The finding for a key that is none: probably misspelt, or joined to its value for want of a blank.
 *
 * @param instead what was probably meant where no key is near
 */
export function unknownKey(key: Text, known: readonly string[], instead = ''): Finding {
  const [, name = '', value = ''] = /^([\w-]+):(\S.*)$/.exec(key.text) ?? [];
  if (known.includes(name)) return { code: 'colon-without-blank', at: key.at, args: { key: name, value } };
  const [, word = '', sign = '', behind = ''] = WITHOUT_COLON.exec(key.text) ?? [];
  const colon = sign.includes(';') && known.includes(behind) ? ',' : ':';
  const suggestion = known.includes(word)
    ? `${word}${colon} ${behind.replace(/^(?:in)?to /, '')}`
    : (nearest(key.text, known) ?? instead);
  return { code: 'unknown-key', at: key.at, args: { key: key.text, suggestion, keys: known.join(', ') } };
}
