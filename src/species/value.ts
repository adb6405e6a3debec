import { figuresMeant } from '../findings/figures-meant.ts';
import type { Grade, Range, Sourced } from './profile.ts';
import type { Trait } from './traits.ts';

export type ProblemCode =
  | 'not-a-mapping'
  | 'profile-not-a-name'
  | 'profile-unknown-key'
  | 'profile-unknown-word'
  | 'profile-not-a-number'
  | 'profile-not-positive'
  | 'profile-reversed'
  | 'profile-missing'
  | 'profile-alike'
  | 'profile-absurd'
  | 'profile-doubtful';

/** Something wrong in a profile file. `path` holds the keys that lead to it, outermost first. */
export interface Problem {
  path: string[];
  code: ProblemCode;
  /** `key`, and by code: `text` as written, `words` allowed, `unit`, `low`, `high`, `reason`. */
  args: Record<string, string | number>;
}

/** How far a source can be trusted, the best first. */
export const grades: readonly Grade[] = ['open data', 'read', 'common practice', 'from memory'];
/** What the long form of a value may say. */
export const fieldNames = ['range', 'value', 'source', 'grade', 'note'];

/** The ways in which the open data sets write that nothing is known; a keeper may say `unknown`. */
export const absent = new Set(['', '-999', 'NA', 'NAV', 'unknown']);

const NUMBERS = /^(-?\d{1,6}(?:\.\d{1,6})?)(?:\s*(?:-|–|to)\s*(-?\d{1,6}(?:\.\d{1,6})?))?$/;

interface ReadValue {
  /** Null where nothing is said, or where it cannot be read. */
  sourced: Sourced<unknown> | null;
  problems: Problem[];
}

/**
 * Reads the value of one key: `12-14`, one number or word, or the long form with source and grade.
 *
 * @example readValue('12-14', traits.incubation).sourced?.value // { low: 12, high: 14 }
 */
export function readValue(data: unknown, trait: Trait): ReadValue {
  if (data === null || typeof data === 'string') {
    const { value, problems } = readScalar(data ?? '', [trait.name], trait);
    return {
      sourced: value === null ? null : { value, source: 'own profile', grade: 'common practice' },
      problems,
    };
  }
  const fields = typeof data === 'object' && !Array.isArray(data) ? (data as Record<string, unknown>) : null;
  if (fields === null)
    return { sourced: null, problems: [unreadable(JSON.stringify(data), [trait.name], trait)] };
  return readLongForm(fields, trait);
}

function readLongForm(fields: Record<string, unknown>, trait: Trait): ReadValue {
  const problems: Problem[] = Object.keys(fields)
    .filter((field) => !fieldNames.includes(field))
    .map((field) => ({ path: [trait.name, field], code: 'profile-unknown-key', args: { key: field } }));
  const place = fields.range === undefined ? 'value' : 'range';
  const { value, problems: wrong } = readScalar(textOf(fields[place]), [trait.name, place], trait);
  problems.push(...wrong);

  const written = textOf(fields.grade);
  const grade = written === '' ? 'common practice' : grades.find((known) => known === written);
  if (grade === undefined) {
    const args = { key: 'grade', text: written, words: grades.join(', ') };
    problems.push({ path: [trait.name, 'grade'], code: 'profile-unknown-word', args });
  }
  if (value === null) return { sourced: null, problems };
  const note = textOf(fields.note);
  const sourced: Sourced<unknown> = {
    value,
    source: textOf(fields.source) || 'own profile',
    grade: grade ?? 'from memory',
    ...(note === '' ? {} : { note }),
  };
  return { sourced, problems };
}

function readScalar(written: string, path: string[], trait: Trait): { value: unknown; problems: Problem[] } {
  const text = written.trim();
  if (absent.has(text)) return { value: null, problems: [] };
  if (trait.words?.includes(text)) return { value: text, problems: [] };
  if (!trait.numbers) return { value: null, problems: [unreadable(text, path, trait)] };
  return readRange(text, path, trait);
}

function readRange(text: string, path: string[], trait: Trait): { value: Range | null; problems: Problem[] } {
  const [, first, second] = NUMBERS.exec(text) ?? [];
  if (first === undefined) return { value: null, problems: [unreadable(text, path, trait)] };
  const low = Number(first);
  const high = second === undefined ? low : Number(second);
  const args = { key: trait.name, text, unit: trait.unit, low, high };
  const impossible = trait.sign === 'positive' ? low <= 0 : trait.sign === 'zero or more' && low < 0;
  if (impossible) return { value: null, problems: [{ path, code: 'profile-not-positive', args }] };
  if (low > high) return { value: null, problems: [{ path, code: 'profile-reversed', args }] };
  return { value: { low, high }, problems: [] };
}

function unreadable(text: string, path: string[], trait: Trait): Problem {
  const { name: key, unit, words, example } = trait;
  if (trait.numbers) {
    const suggestion =
      words?.find((word) => text.toLowerCase().startsWith(`${word} `)) ?? figuresMeant(text, unit);
    return { path, code: 'profile-not-a-number', args: { key, text, unit, suggestion, example } };
  }
  return { path, code: 'profile-unknown-word', args: { key, text, words: (words ?? []).join(', ') } };
}

function textOf(data: unknown): string {
  return typeof data === 'string' ? data.trim() : '';
}

/** A range as a profile writes it: `12-14`, or one number. */
export function rangeText({ low, high }: Range): string {
  return low === high ? String(low) : `${low}-${high}`;
}
