import type { Day } from '../days.ts';
import { isPlace, type Place } from '../findings/finding.ts';
import type { Entries, Entry } from './entry.ts';
import type { Repeat } from './text/repeats.ts';

/** What an entry says apart from its day, its line and its note. Many entries of a room say the same. */
type Form = Pick<Entry, 'dateAt' | 'time' | 'after' | 'clutch' | 'site' | 'saw'> & { column: number };

/** A form as JSON, and ready to be filled in once several entries have it. */
interface Shared {
  json: string;
  uses: number;
  form: Form | null;
}

/** Forms by their JSON. */
export type Ready = Map<string, Shared>;

/** What is kept of packed entries in a file. */
interface Plain {
  forms: string[];
  numbers: string;
  texts: string[];
  notes: Entry['note'][];
}

/** Numbers of an entry, in this order. */
const [DAY, LINE, LENGTH, FORM, TEXT, NOTE] = [0, 1, 2, 3, 4, 5];
/** How many there are. */
const EACH = 6;

/** The only key of a place in a form: lines below the entry's first, column, length. */
const PLACE = '@';
/** The same of a text with its place. The text itself differs from entry to entry, as the codes of rings do. */
const SAID = '@text';

/**
 * The entries of one journal in a tenth of the memory: each is made when it is asked for, and lives no longer than it is
 * held. What it says is kept once for all entries that say it at the same columns of their lines.
 */
export class PackedEntries implements Iterable<Entry> {
  readonly #file: string;
  readonly #forms: readonly Shared[];
  readonly #numbers: Int32Array;
  /** Texts of entries one after the other, each in the order of its form. */
  readonly #texts: readonly string[];
  readonly #notes: readonly Entry['note'][];

  private constructor(
    file: string,
    forms: readonly string[],
    numbers: Int32Array,
    texts: readonly string[],
    notes: readonly Entry['note'][],
    ready: Ready,
  ) {
    this.#forms = forms.map((json) => sharedIn(ready, json));
    this.#file = file;
    this.#numbers = numbers;
    this.#texts = texts;
    this.#notes = notes;
    for (let at = FORM; at < numbers.length; at += EACH)
      (this.#forms[numbers[at] as number] as Shared).uses++;
  }

  /**
   * @param file the journal in which all of them stand
   * @param repeats lines that say on other days what some of these say; sorted, as these are
   */
  static of(file: string, entries: Entries, repeats: readonly Repeat[] = []): PackedEntries {
    if (entries instanceof PackedEntries) return entries;
    const forms = new Map<string, number>();
    const texts: string[] = [];
    const notes: Entry['note'][] = [];
    const numbers = new Int32Array((entries.length + repeats.length) * EACH);
    const rows = new Map<number, number>();
    let at = 0;
    let next = 0;
    /** The repeats that stand above a line. */
    const repeatUpTo = (end: number) => {
      for (let repeat = repeats[next]; repeat !== undefined && repeat.line < end; repeat = repeats[++next]) {
        const row = rows.get(repeat.of) as number;
        numbers.copyWithin(at, row, row + EACH);
        numbers[at + DAY] = repeat.date;
        numbers[at + LINE] = repeat.line;
        const note = notes[numbers[at + NOTE] as number];
        if (note != null) {
          numbers[at + NOTE] = notes.length;
          notes.push({ ...note, at: { ...note.at, line: repeat.line } });
        }
        at += EACH;
      }
    };
    for (const { date, note, at: place, dateAt, time, after, clutch, site, saw } of entries) {
      const { line, column, length } = place;
      repeatUpTo(line);
      rows.set(line, at);
      const before = texts.length;
      const said = { column, dateAt, time, after, clutch, site, saw } satisfies Form;
      const json = JSON.stringify(packed(said, { file, line, texts }));
      const form = forms.get(json) ?? forms.size;
      forms.set(json, form);
      numbers.set([date, line, length, form, before, note === null ? -1 : notes.length], at);
      if (note !== null) notes.push(note);
      at += EACH;
    }
    repeatUpTo(Number.POSITIVE_INFINITY);
    return new PackedEntries(file, [...forms.keys()], numbers, texts, notes, new Map());
  }

  /** As kept by {@link toJSON}. */
  static from(file: string, { forms, numbers, texts, notes }: Plain): PackedEntries {
    const { buffer, byteOffset, byteLength } = Buffer.from(numbers, 'base64');
    const own = buffer.slice(byteOffset, byteOffset + byteLength);
    return new PackedEntries(file, forms, new Int32Array(own), texts, notes, new Map());
  }

  /** The same entries, which make use of what others of the room have ready. */
  sharing(ready: Ready): PackedEntries {
    const forms = this.#forms.map(({ json }) => json);
    return new PackedEntries(this.#file, forms, this.#numbers, this.#texts, this.#notes, ready);
  }

  toJSON(): Plain {
    const { buffer, byteOffset, byteLength } = this.#numbers;
    const numbers = Buffer.from(buffer, byteOffset, byteLength).toString('base64');
    return {
      forms: this.#forms.map(({ json }) => json),
      numbers,
      texts: [...this.#texts],
      notes: [...this.#notes],
    };
  }

  get length(): number {
    return this.#numbers.length / EACH;
  }

  dayOf(index: number): Day {
    return this.#number(index, DAY);
  }

  entry(index: number): Entry {
    const line = this.#number(index, LINE);
    const form = this.#form(this.#number(index, FORM));
    const note = this.#number(index, NOTE);
    // Named one by one: to copy what is left of an object takes ten times as long.
    const { column, dateAt, time, after, clutch, site, saw } = filled(form, {
      file: this.#file,
      line,
      texts: this.#texts,
      next: this.#number(index, TEXT),
    }) as Form;
    return {
      at: { file: this.#file, line, column, length: this.#number(index, LENGTH) },
      date: this.#number(index, DAY),
      dateAt,
      time,
      after,
      clutch,
      site,
      saw,
      note: note < 0 ? null : (this.#notes[note] as Entry['note']),
    };
  }

  *[Symbol.iterator](): Generator<Entry> {
    for (let index = 0; index < this.length; index++) yield this.entry(index);
  }

  /** At least the entries in which something of one of these keys was observed. */
  *mentioning(keys: readonly string[]): Generator<Entry> {
    const texts = keys.map((key) => `"key":"${key}"`);
    const says = (form: string) => texts.some((text) => form.includes(text));
    const forms = new Set(this.#forms.flatMap((form, index) => (says(form.json) ? [index] : [])));
    if (forms.size === 0) return;
    for (let index = 0; index < this.length; index++) {
      if (forms.has(this.#number(index, FORM))) yield this.entry(index);
    }
  }

  #number(index: number, which: number): number {
    return this.#numbers[index * EACH + which] as number;
  }

  /** One that stands in a single entry is not worth being held ready. */
  #form(index: number): Form {
    const shared = this.#forms[index] as Shared;
    if (shared.form !== null) return shared.form;
    const form = unpacked(JSON.parse(shared.json)) as Form;
    if (shared.uses > 1) shared.form = form;
    return form;
  }
}

function sharedIn(ready: Ready, json: string): Shared {
  const known = ready.get(json) ?? { json, uses: 0, form: null };
  ready.set(json, known);
  return known;
}

/** A place on a line of an entry, and whether a text stands there that is not the same in all. */
class Spot {
  readonly below: number;
  readonly column: number;
  readonly length: number;
  readonly says: boolean;
  constructor([below, column, length]: [number, number, number], says: boolean) {
    this.below = below;
    this.column = column;
    this.length = length;
    this.says = says;
  }
}

function isSaid(value: object): value is { text: string; at: Place } {
  return Object.keys(value).length === 2 && 'text' in value && 'at' in value && isPlace(value.at);
}

/** Without what differs between entries that say the same on other lines; texts are put aside. */
function packed(value: unknown, entry: { file: string; line: number; texts: string[] }): unknown {
  if (typeof value !== 'object' || value === null) return value;
  if (Array.isArray(value)) return value.map((inner) => packed(inner, entry));
  const spot = ({ line, column, length }: Place) => [line - entry.line, column, length];
  if (isPlace(value)) return { [PLACE]: spot(value) };
  if (isSaid(value)) {
    entry.texts.push(value.text);
    return { [SAID]: spot(value.at) };
  }
  const copy: Record<string, unknown> = {};
  for (const [key, inner] of Object.entries(value)) copy[key] = packed(inner, entry);
  return copy;
}

/** A form as it is filled in: its places are {@link Spot}s. */
function unpacked(value: unknown): unknown {
  if (typeof value !== 'object' || value === null) return value;
  if (Array.isArray(value)) return value.map(unpacked);
  if (PLACE in value) return new Spot(value[PLACE] as [number, number, number], false);
  if (SAID in value) return new Spot(value[SAID] as [number, number, number], true);
  return Object.fromEntries(Object.entries(value).map(([key, inner]) => [key, unpacked(inner)]));
}

/** The form for one entry: on its line, with its texts from `next` on. */
function filled(
  value: unknown,
  entry: { file: string; line: number; texts: readonly string[]; next: number },
): unknown {
  if (typeof value !== 'object' || value === null) return value;
  if (value instanceof Spot) {
    const { below, column, length } = value;
    const at: Place = { file: entry.file, line: entry.line + below, column, length };
    return value.says ? { text: entry.texts[entry.next++], at } : at;
  }
  if (Array.isArray(value)) return value.map((inner) => filled(inner, entry));
  const copy: Record<string, unknown> = {};
  for (const key in value) copy[key] = filled((value as Record<string, unknown>)[key], entry);
  return copy;
}
