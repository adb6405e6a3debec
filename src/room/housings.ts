import { alikeName, numbersIn } from '../findings/alike.ts';
import type { Located } from '../journal/grammar/values.ts';
import type { Fold } from './scene.ts';

/** What the room calls its housings. */
export interface Housings {
  /** Each as it was spelt first, by its key. */
  names: Map<string, string>;
  /** The same by the numbers in them: only those with the same numbers can be slips of each other. */
  byNumbers: Map<string, string[]>;
}

/** Places that every room has, under these names: young are kept there while they are fed, but no bird is housed. */
export const OF_EVERY_ROOM: readonly string[] = ['hand', 'incubator'];

/** So many names with the same numbers, or without any, are codes: what is one letter away is meant so. */
const CODES = 200;

/** The housings of a room of which nothing is told yet. */
export function noHousings(): Housings {
  return {
    names: new Map(OF_EVERY_ROOM.map((name) => [name, name])),
    byNumbers: new Map([['', [...OF_EVERY_ROOM]]]),
  };
}

/** One housing has one key, however it is spelt: neither capitals nor blanks make another of it. */
export function housingKey(name: string): string {
  return name.normalize('NFC').trim().replace(/\s+/g, ' ').toLowerCase();
}

/**
 * The name of a housing as it was spelt first. Whatever the room keeps of a housing goes through here, so that all who ask
 * who lives together can compare names as they are. One that is new and spelt almost as another is doubted.
 */
export function housingCalled({ housings, findings }: Fold, { text, at }: Located): string {
  const key = housingKey(text);
  const name = housings.names.get(key);
  if (name !== undefined) return name;
  const spelt = text.trim();
  const numbers = numbersIn(key);
  const others = housings.byNumbers.get(numbers) ?? [];
  const suggestion = others.length > CODES ? null : alikeName(spelt, others);
  if (suggestion !== null) findings.push({ code: 'housing-alike', at, args: { housing: spelt, suggestion } });
  housings.names.set(key, spelt);
  others.push(spelt);
  housings.byNumbers.set(numbers, others);
  return spelt;
}
