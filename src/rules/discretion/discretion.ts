import { isPrivate } from '../../journal/private.ts';
import type { RoomRecord } from '../../journal/record.ts';
import type { Room } from '../../room/fold.ts';
import { housingKind } from './housing-kind.ts';
import { type Name, type NameKind, namesIn } from './names.ts';
import type { Tellable } from './tellable.ts';

/** Which words let a kind of name through. */
const TOLD_BY: Record<NameKind, Tellable | null> = {
  pair: 'names',
  bird: 'names',
  ring: 'rings',
  housing: 'places',
  room: 'places',
  owner: null,
};

/**
 * Takes out of a keeper's text what is not to be handed over: every name of the room is replaced by what it is of,
 * `[ring]`, however it is spelt, spaced or cased. A text marked private is null. What another keeper is called where
 * no list says so is not known here and stays.
 */
export type Discreet = (text: string) => string | null;

/** The discretion of a room whose keeper lets these be told. Other keepers are never named. */
export function discretionOf(record: RoomRecord, room: Room, told: ReadonlySet<Tellable>): Discreet {
  const withheld = namesIn(record, room)
    .filter(({ kind }) => {
      const by = TOLD_BY[kind];
      return by === null || !told.has(by);
    })
    .flatMap((name) => patternOf(name) ?? [])
    .sort((a, b) => b.length - a.length);
  const places = told.has('places');
  return (text) => {
    if (isPrivate(text)) return null;
    const said = struck(text, withheld);
    return places ? said : said.replace(NUMBERED, (_, kind: string) => `[${housingKind(kind)}]`);
  };
}

/** A housing with its number, whether or not anybody ever lived there; a cage 3 m long is none. */
const NUMBERED =
  /\b((?:cage|flight|pen|enclosure)s?|aviary|aviaries)\s*(?:no\.?\s*|number\s*|#\s*)?\d+(?!\d|[.,]\d)(?!\s*(?:cm|mm|m|x|×|by)\b|\s*×)/giu;

interface Pattern {
  /** Where one of these is not in the text, the name is not. */
  needles: string[];
  source: string;
  length: number;
  put: string;
}

function struck(text: string, withheld: readonly Pattern[]): string {
  const plain = text.normalize('NFKC').replace(UNSEEN, '');
  const folded = plain.toLowerCase();
  const near = withheld.filter(({ needles }) => needles.every((needle) => folded.includes(needle)));
  if (near.length === 0) return text;
  const any = new RegExp(near.map(({ source }) => `(${source})`).join('|'), 'giu');
  const clean = plain.replace(
    any,
    (...found) => near[found.slice(1).findIndex((one) => one !== undefined)]?.put ?? '',
  );
  return clean === plain ? text : clean;
}

/** Joiners and marks that could stand inside a name and hide it. */
const UNSEEN = /[\p{Cf}\p{Default_Ignorable_Code_Point}]/gu;
const SPECIAL = /[\\^$.*+?()[\]{}|/]/g;
const PIECES = /\p{N}+|[\p{L}\p{M}]+/gu;

/**
 * A name's letters and digits with anything short between them, so that `LW 26 01` is also `lw26-01`. With letters and
 * digits both it is found inside longer words too; a number is never found inside a longer number. An article before
 * it counts for nothing; a chick's or egg's full name goes with its pair's.
 */
function patternOf({ kind, text }: Name): Pattern | null {
  const name = text
    .normalize('NFKC')
    .replace(UNSEEN, '')
    .replace(/^(?:the|an?)\s+(?=\S)/i, '');
  const pieces = name.match(PIECES) ?? [];
  const put =
    kind === 'housing' ? `[${housingKind(text) ?? 'housing'}]` : kind === 'owner' ? '[keeper]' : `[${kind}]`;
  if (name === '') return null;
  if (pieces.length === 0) {
    const source = name.replace(SPECIAL, '\\$&');
    return { needles: [name.toLowerCase()], source, length: name.length, put };
  }
  const [first = ''] = pieces;
  const last = pieces.at(-1) ?? '';
  const digits = (piece: string) => /^\p{N}/u.test(piece);
  const telling = pieces.some(digits) && !pieces.every(digits) && pieces.join('').length > 2;
  const before = digits(first) ? '(?<!\\p{N})' : telling ? '' : '(?<!\\p{L})';
  const after = digits(last) ? '(?!\\p{N})' : telling ? '' : '(?=s?(?!\\p{L}))';
  const young = kind === 'pair' ? '(?:/\\d+(?:/[ec]\\d+)?)?' : '';
  return {
    needles: pieces.map((piece) => piece.toLowerCase()),
    source: `${before}${pieces.map(pieceSource).join('[^\\p{L}\\p{N}]{0,3}')}${after}${young}`,
    length: name.length,
    put,
  };
}

/** `flights 2 and 4` speak of flight 2 as well. */
function pieceSource(piece: string, index: number, all: readonly string[]): string {
  return index < all.length - 1 && /^\p{L}/u.test(piece) ? `${piece}s?` : piece;
}
