import * as z from 'zod';
import type { Place } from '../../findings/finding.ts';
import { nearest } from '../../findings/nearest.ts';
import { byName } from '../../grouped.ts';
import { Empty, Fields, List, type Node, Text } from '../nodes.ts';
import { flowText } from '../print.ts';
import { refuse } from './issue.ts';
import { isNamed, isWhom, turnedRound } from './turned-round.ts';
import { probablyMeant, type Vocabulary, wordsOf } from './vocabulary.ts';

/** A word or sentence and where it stands. */
export interface Located {
  text: string;
  at: Place;
}

/** Free text; control characters stay, the report makes them visible. */
export const text = z
  .instanceof(Text)
  .transform((node, context): Located => {
    if (node.text.trim() === '') return refuse(context, node.at, 'empty-text');
    return { text: node.text.trim(), at: node.at };
  })
  .meta({ shape: 'text', description: 'text' });

/** What a text says that only answers a question, as a box that was ticked does; null where it says more. */
export function yesOrNo(said: string): 'yes' | 'no' | null {
  const [, yes, no] = /^(?:(yes|true)|(no|false))$/i.exec(said) ?? [];
  return yes === undefined ? (no === undefined ? null : 'no') : 'yes';
}

/** Nothing behind the key. */
export const empty = z
  .instanceof(Empty)
  .transform(() => null)
  .meta({ shape: 'empty', description: 'nothing' });

/** One of a few words. A near miss is refused with the word that was probably meant. */
export function word<const W extends string>(...words: readonly W[]) {
  return wordOf<W>(byName(words, () => ({})));
}

/** As {@link word}, where keepers have other words for some of them. */
export function wordOf<W extends string>(vocabulary: Vocabulary<W>) {
  const words = wordsOf(vocabulary);
  return z
    .instanceof(Text)
    .transform((node, context): W => {
      const said = node.text.trim();
      if ((words as readonly string[]).includes(said)) return said as W;
      const suggestion = probablyMeant(said, vocabulary) ?? '';
      return refuse(context, node.at, 'unknown-word', { word: said, words: words.join(', '), suggestion });
    })
    .meta({ shape: 'word', words, description: words.join(', ') });
}

/** So long that a spreadsheet's decimals are read, so short that no reckoning with it runs out of numbers. */
const NUMBER = /^\d{1,6}(?:\.\d{1,15})?$/;

/** A number in the unit named: a positive one, or from 0 on. */
export function number(unit: string, least?: 0) {
  return z
    .instanceof(Text)
    .transform((node, context): number => {
      const said = node.text.trim();
      if (NUMBER.test(said) && (Number(said) > 0 || least === 0)) return Number(said);
      return refuse(context, node.at, 'not-a-number', { text: said, unit });
    })
    .meta({ shape: 'number', unit, least, description: `a number of ${unit}` });
}

/** A whole number, digits only, of at least the one given; in the unit named, where it has one. */
export function wholeNumber(least: 0 | 1, unit = '') {
  return z
    .instanceof(Text)
    .transform((node, context): number => {
      const said = node.text.trim();
      if (/^\d{1,6}$/.test(said) && Number(said) >= least) return Number(said);
      return refuse(context, node.at, 'not-whole', { text: said, least, unit });
    })
    .meta({ shape: 'whole-number', least, description: 'a whole number' });
}

/** One value or a list of them; always a list afterwards. */
export function oneOrMore<S extends z.ZodType>(item: S) {
  return z
    .union([
      z.instanceof(List).transform((list, context): Node[] => {
        if (list.items.length === 0) return refuse(context, list.at, 'empty-list');
        return [...list.items];
      }),
      z.instanceof(Text).transform((one): Node[] => [one]),
    ])
    .pipe(z.array(item) as unknown as z.ZodType<z.output<S>[], Node[]>)
    .meta({ shape: 'one-or-more', item });
}

/**
 * A map from one kind of value to another, as `{e1: 1.1}` or `{clear: 2}`: pairs in the order they stand. A key
 * without a value is what is left of a list that lost its brackets, or of a decimal comma; behind free text it is the
 * rest of that text, which is read with it (the reader of the entry says so).
 */
export function map<K extends z.ZodType, V extends z.ZodType>(key: K, value: V) {
  return z
    .instanceof(Fields)
    .transform((fields, context): Fields['pairs'] => {
      const pairs = (value as z.ZodType) === text ? withRests(fields.pairs, key) : fields.pairs;
      for (const [name, under] of pairs) {
        if (under instanceof Empty) return refuse(context, name.at, 'comma-in-map', { key: name.text });
      }
      if (pairs.length === 0) return refuse(context, fields.at, 'empty-map');
      const meant = turnedRound(pairs, key, value);
      if (meant !== null) return refuse(context, fields.at, 'turned-round', { meant: flowText(meant) });
      return pairs;
    })
    .pipe(
      z.array(z.tuple([key, value])) as unknown as z.ZodType<[z.output<K>, z.output<V>][], Fields['pairs']>,
    )
    .meta({ shape: 'map', key, value });
}

/**
 * Keys without a value are the rest of the text before them, where there is one. Where the keys say whom it is about, one more of
 * them is no such rest: nothing is known of it, and the others count.
 */
function withRests(pairs: Fields['pairs'], whom: z.ZodType): Fields['pairs'] {
  const joined: (readonly [Text, Node])[] = [];
  for (const [name, under] of pairs) {
    const [key, before] = joined.at(-1) ?? [];
    if (!(under instanceof Empty)) joined.push([name, under]);
    else if (isWhom(whom) && isNamed(name)) continue;
    else if (key === undefined || !(before instanceof Text)) joined.push([name, under]);
    else joined[joined.length - 1] = [key, new Text(`${before.text}, ${name.text}`, before.at)];
  }
  return joined.length === 0 ? pairs : joined;
}

type Shape = Record<string, z.ZodType>;
type FieldsOf<S extends Shape> = { [K in keyof S]: z.output<S[K]> | null };

/** A map with known keys, each optional: `{state: lined, height: 180}`. What is not said is null. */
export function fields<S extends Shape>(shape: S) {
  return z
    .instanceof(Fields)
    .transform((node, context): FieldsOf<S> => {
      const result: Record<string, unknown> = Object.fromEntries(
        Object.keys(shape).map((key) => [key, null]),
      );
      for (const [index, [name, under]] of node.pairs.entries()) {
        const schema = Object.hasOwn(shape, name.text) ? shape[name.text] : undefined;
        if (schema === undefined) {
          const keys = Object.keys(shape);
          const suggestion = nearest(name.text, keys) ?? '';
          const code = under instanceof Empty && suggestion === '' ? 'comma-in-map' : 'unknown-key';
          refuse(context, name.at, code, { key: name.text, keys: keys.join(', '), suggestion });
          continue;
        }
        if (under instanceof Empty) {
          refuse(context, name.at, 'comma-in-map', { key: name.text });
          continue;
        }
        const parsed = schema.safeParse(under);
        if (parsed.success) result[name.text] = parsed.data;
        else
          context.issues.push(
            ...(parsed.error.issues.map((issue) => ({
              ...issue,
              path: [index, 1, ...issue.path],
              input: under,
            })) as never[]),
          );
      }
      if (node.pairs.length === 0) refuse(context, node.at, 'empty-map');
      return result as FieldsOf<S>;
    })
    .meta({ shape: 'fields', fields: shape });
}
