import type * as z from 'zod';
import type { KeyDefinition } from './key.ts';

/** A method's type, so that definitions of all kinds can be held in one table. */
type Asked<V, A> = { ask(value: V): A }['ask'];

/** All that there is to say about one kind of observation, once. */
export interface ObservationDefinition<S extends z.ZodType = z.ZodType> extends KeyDefinition<S> {
  /** Place in the day: of two observations of one day without a time, the lower number happened first. */
  order: number;
  /** The same where it depends on what was written. */
  orderOf?: Asked<z.output<S>, number>;
  /** The places, mostly pairs, to which it brings eggs or young. */
  brings?: Asked<z.output<S>, readonly string[]>;
  /**
   * Whether whoever wrote this looked into the nest, so that what is not mentioned was not there yet. Where that depends
   * on what was written, a question to the value.
   */
  look: boolean | Asked<z.output<S>, boolean>;
  /** What it means, one line, for the grammar reference and the editor. */
  doc: string;
}

/** Keeps the schema's own type while checking the rest. */
export function observation<S extends z.ZodType>(
  definition: ObservationDefinition<S>,
): ObservationDefinition<S> {
  return definition;
}
