import type * as z from 'zod';

/** All that there is to say about one key of a file or an entry, once. */
export interface KeyDefinition<S extends z.ZodType = z.ZodType> {
  /** What may stand behind the key. */
  value: S;
  /** The key with a value, as a keeper would type it. */
  example: string;
  /** What may stand behind the key, in words. */
  takes: string;
  /** Other words that keepers use for it, in small letters, their parts parted by blanks (common practice). */
  alsoSaid?: readonly string[];
}

export type KeyTable = Readonly<Record<string, KeyDefinition>>;
