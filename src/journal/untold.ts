import { isPlace } from '../findings/finding.ts';
import { isPrivate } from './private.ts';
import type { RoomRecord } from './record.ts';

/** What stands where a keeper wrote something for themselves alone. */
const UNTOLD = 'not told';

/**
 * The record as a page may show it. A text marked private is taken out where it was read, so that nothing that is made
 * of the record can tell it: a note is none, and any other, such as a cause, a site or a kind of food, is `not told`.
 * What were different things stay different: the second is `not told 2`.
 */
export function untold(record: RoomRecord): RoomRecord {
  const names = new Map<string, string>();
  const nameOf = (text: string): string => {
    const name = names.get(text) ?? (names.size === 0 ? UNTOLD : `${UNTOLD} ${names.size + 1}`);
    names.set(text, name);
    return name;
  };
  const { settings, pairs, birds, findings } = record;
  const told = <T>(value: T): T => without(value, nameOf) as T;
  return {
    ...record,
    settings: told(settings),
    pairs: pairs.map((pair) => told({ ...pair, entries: [...pair.entries] })),
    birds: told(birds),
    findings: told(findings),
  };
}

/** The same value where it holds nothing private. */
function without(value: unknown, nameOf: (text: string) => string): unknown {
  if (typeof value === 'string') return isPrivate(value) ? nameOf(value) : value;
  if (typeof value !== 'object' || value === null || isPlace(value)) return value;
  if (Array.isArray(value)) return value.map((one) => without(one, nameOf));
  return Object.fromEntries(
    Object.entries(value).map(([key, inner]) => [
      key,
      isPrivateNote(key, inner) ? null : without(inner, nameOf),
    ]),
  );
}

function isPrivateNote(key: string, value: unknown): boolean {
  if (key !== 'note' || typeof value !== 'object' || value === null || !('text' in value)) return false;
  return typeof value.text === 'string' && isPrivate(value.text);
}
