import { type Day, formatDay } from '../../days.ts';
import { formatTime } from '../../journal/grammar/time-text.ts';
import { Empty, Fields, List, NOWHERE, type Node, Text } from '../../journal/nodes.ts';
import { type ObservationKey, observations } from '../../journal/observations/index.ts';
import { type DateOrder, dateForm, type SerialSystem } from './date-forms.ts';
import { resolveDate } from './date-order.ts';
import type { EntryTemplate } from './mapping.ts';
import type { RowProblems } from './problem.ts';
import {
  type CellReader,
  type DateTemplate,
  dateTemplates,
  filled,
  filledLoosely,
  holesOf,
  sumOf,
  sumValue,
  templateOf,
  wholeNumber,
} from './template.ts';

/** An entry of a journal-to-be. */
export interface DraftEntry {
  date: Day;
  fields: Fields;
  /** Whether its date was counted from another one. */
  assumed: boolean;
}

/** How dates are read in this table. */
export interface DateReader {
  order: DateOrder | null;
  serials: SerialSystem | null;
}

/** What one row was made into by one entry of the mapping. */
export interface EntryReading {
  entry: DraftEntry | null;
  /** Observations that were left out because the table says 0. */
  zeros: string[];
}

const textNode = (text: string) => new Text(text, NOWHERE);

/** `2.40E+05`: the code of a ring, of which a spreadsheet made a number. */
const SHORTENED = /^\d(?:[.,]\d+)?E\+\d+$/i;

/** Observations that may say that there was nothing. */
const ZERO_SAYS: readonly string[] = ['candled', 'checked'] satisfies ObservationKey[];

/**
 * An entry with the cells of a row in it. Observations whose cells are empty, and counts of 0, are left out, and with
 * the last of them the entry. Something seen on no known day is a problem.
 */
export function readEntry(
  { fields }: EntryTemplate,
  cell: CellReader,
  dates: DateReader,
  problems: RowProblems,
): EntryReading {
  const filler = new Filler(cell, problems);
  const about: [Text, Node][] = [];
  const seen: [Text, Node][] = [];
  let note: string | null = null;
  for (const [key, value] of fields.pairs) {
    if (key.text === 'date' || key.text === 'after') continue;
    if (key.text === 'note')
      note = value instanceof Text ? filledLoosely(templateOf(value.text), cell) : null;
    else {
      const node = filler.fill(value, ZERO_SAYS.includes(key.text));
      if (node === null) {
        if (filler.takeZero()) filler.zeros.push(key.text);
      } else if (Object.hasOwn(observations, key.text)) seen.push([key, node]);
      else about.push([key, node]);
    }
  }
  const nothing = { entry: null, zeros: filler.zeros };
  if (seen.length === 0 && note === null) return nothing;
  const said = dateOf(fields, 'date', cell, dates, problems);
  if (said === 'wrong') return nothing;
  if (said === null) {
    const told = seen.filter(([, node]) => !(node instanceof Empty)).map(([key]) => key.text);
    missDate(fields, note === null ? told : [...told, note], problems);
    return nothing;
  }
  const after = dateOf(fields, 'after', cell, dates, problems);
  if (after === 'wrong') return nothing;
  return { entry: draft(said, after, [...about, ...seen], note), zeros: filler.zeros };
}

/** Says that there is no date for what was seen; where nothing was, none is missed. */
function missDate(fields: Fields, told: readonly string[], problems: RowProblems): void {
  if (told.length === 0) return;
  const text = `no date for ${told.map((one) => `\`${one}\``).join(', ')}`;
  problems.add(headingOf(fields), text, 'fill in the date, or empty the cells that need it');
}

/** The entry in the order in which entries are written; what was counted instead of read is added to its note. */
function draft(
  said: ReadDate,
  after: ReadDate | null,
  told: readonly [Text, Node][],
  note: string | null,
): DraftEntry {
  const words = [
    note ?? [],
    said.assumed === null ? [] : `date assumed: ${said.assumed}`,
    after === null || after.assumed === null ? [] : `last look assumed: ${after.assumed}`,
  ]
    .flat()
    .join('; ');
  const pairs: [Text, Node][] = [[textNode('date'), textNode(formatDay(said.day))]];
  if (said.time !== null) pairs.push([textNode('time'), textNode(formatTime(said.time))]);
  if (after !== null) pairs.push([textNode('after'), textNode(formatDay(after.day))]);
  pairs.push(...told);
  if (words !== '') pairs.push([textNode('note'), textNode(words)]);
  return { date: said.day, fields: new Fields(pairs, NOWHERE), assumed: said.assumed !== null };
}

interface ReadDate {
  day: Day;
  time: number | null;
  /** How it was counted from another date, or null. */
  assumed: string | null;
}

/** The first way to come by the date for which the row has something; null where it has for none. */
function dateOf(
  { pairs }: Fields,
  key: 'date' | 'after',
  cell: CellReader,
  { order, serials }: DateReader,
  problems: RowProblems,
): ReadDate | null | 'wrong' {
  for (const way of waysOf(pairs, key)) {
    const text = filled(way.base, cell);
    const days = way.offset === null ? 0 : sumValue(way.offset, cell);
    if (text === null || days === null) continue;
    const column = holesOf(way.base)[0]?.heading ?? null;
    if (typeof days !== 'number') {
      problems.add(column, `\`${days.notANumber}\` is no number of days (${way.source})`);
      return 'wrong';
    }
    const read = resolveDate({ text, form: dateForm(text) }, order, serials);
    if ('wrong' in read) {
      problems.add(column, read.wrong, read.hint);
      return 'wrong';
    }
    if (way.offset === null) return { ...read, assumed: null };
    const assumed = `${column ?? text} ${days < 0 ? '−' : '+'} ${Math.abs(days)} d`;
    return { day: read.day + days, time: null, assumed };
  }
  return null;
}

/** The ways in which an entry of the mapping comes by its date, or by the day of the look before it. */
export function waysOf(pairs: Fields['pairs'], key: 'date' | 'after'): DateTemplate[] {
  const value = pairs.find(([name]) => name.text === key)?.[1];
  return value instanceof Text ? dateTemplates(value.text) : [];
}

function headingOf({ pairs }: Fields): string | null {
  return waysOf(pairs, 'date').flatMap(({ base }) => holesOf(base))[0]?.heading ?? null;
}

/** Puts cells into values of the mapping. */
class Filler {
  readonly zeros: string[] = [];
  readonly #cell: CellReader;
  readonly #problems: RowProblems;
  #zero = false;

  constructor(cell: CellReader, problems: RowProblems) {
    this.#cell = cell;
    this.#problems = problems;
  }

  /** Whether a 0 was left out since this was last asked. */
  takeZero(): boolean {
    const zero = this.#zero;
    this.#zero = false;
    return zero;
  }

  /** The value with its cells; null where they say nothing. */
  fill(node: Node, zeroSays: boolean): Node | null {
    if (node instanceof Text) return this.#text(node, zeroSays);
    if (node instanceof List) {
      const items = node.items.flatMap((item) => this.fill(item, zeroSays) ?? []);
      return items.length === 0 ? null : new List(items, node.at);
    }
    if (!(node instanceof Fields)) return node;
    const pairs = node.pairs.flatMap(([key, value]): [Text, Node][] => {
      const name = filled(templateOf(key.text), this.#cell);
      const under = this.fill(value, zeroSays);
      return name === null || under === null ? [] : [[textNode(name), under]];
    });
    return pairs.length === 0 ? null : new Fields(pairs, node.at);
  }

  #text(node: Text, zeroSays: boolean): Text | null {
    const template = templateOf(node.text);
    const holes = holesOf(template);
    if (holes.length === 0) return node;
    const sum = sumOf(node.text);
    if (sum === null) {
      const text = filled(template, this.#cell);
      if (text === null) return null;
      if (!SHORTENED.test(text)) return this.#unlessZero(text, zeroSays);
      const said = `\`${text}\` is how spreadsheets shorten a long number; its figures are lost`;
      const hint = 'give the column the format "text", write the number again, and save';
      this.#problems.add(holes[0]?.heading ?? null, said, hint);
      return null;
    }
    const value = sumValue(sum, this.#cell);
    if (value === null) return null;
    const column = holes[0]?.heading ?? null;
    if (typeof value !== 'number') this.#problems.add(column, `\`${value.notANumber}\` is no number`);
    else if (value < 0) this.#problems.add(column, `${node.text} is ${value}`, 'is one of the counts wrong?');
    else return this.#unlessZero(String(value), zeroSays);
    return null;
  }

  #unlessZero(text: string, zeroSays: boolean): Text | null {
    const said = wholeNumber(text) ?? text;
    if (zeroSays || !/^0+$/.test(said)) return textNode(said);
    this.#zero = true;
    return null;
  }
}
