import { civilDate } from '../../days.ts';
import type { Finding } from '../../findings/finding.ts';
import type { Visit } from '../entry.ts';
import { readDate } from '../grammar/date-text.ts';
import type { Vocabulary } from '../grammar/vocabulary.ts';
import { Empty, Fields, List, type Node, Refused, Text } from '../nodes.ts';
import { lineOf, sameText } from '../print.ts';
import { append } from '../text/append.ts';
import { dateAsKey } from './date-as-key.ts';
import { asOurs, isPlainlyWritten } from './spelling.ts';
import { readVisit, type VisitGrammar } from './visit.ts';

/** Years that one keeper writes journals for. */
const LIFETIME = 80;

/** The key above the entries. */
export const logKey = {
  alsoSaid: ['logs', 'logbook', 'entries', 'events', 'journal', 'diary', 'record', 'records'],
};

/**
 * Reads the logs of one file: hints that need to be given once a file are given by the reader that saw the first reason.
 */
export class LogReader<O> {
  readonly #grammar: VisitGrammar;
  readonly #findings: Finding[];
  readonly #words: Vocabulary;
  readonly #spelt = new Set<unknown>();
  #block = false;

  constructor(grammar: VisitGrammar, findings: Finding[]) {
    this.#grammar = grammar;
    this.#words = spellingsOf(grammar);
    this.#findings = findings;
  }

  /** The entries of a log in the order of the file, identical ones once. */
  read(log: Node): Visit<O>[] {
    if (log instanceof Empty || log instanceof Refused) return [];
    if (!(log instanceof List)) {
      const first = log instanceof Fields ? new Fields(log.pairs.slice(0, 1), log.at) : log;
      const isEntry = log instanceof Fields && log.pairs.some(([key]) => key.text === 'date');
      const line = isEntry ? lineOf(log) : dateAsKey(first, this.#grammar.observations);
      this.#findings.push({ code: 'log-no-list', at: log.at, args: { line: line ?? '' } });
      return [];
    }
    const visits: Visit<O>[] = [];
    const known = new Map<string, number>();
    let year = firstYear(log);
    for (const written of log.items) {
      if (written instanceof Refused) continue;
      const item = this.#spelled(written);
      const same = sameText(item);
      const first = known.get(same);
      if (first !== undefined && item instanceof Fields) {
        this.#findings.push({ code: 'same-entry', at: item.at, args: { line: first } });
        continue;
      }
      known.set(same, item.at.line);
      const visit = readVisit<O>(item, this.#grammar, year, this.#findings);
      if (visit === null) continue;
      this.#hintAtBlock(item);
      visits.push(visit);
      const its = civilDate(visit.date).year;
      // A year so far ahead of the others is itself a slip, and no help for those behind it.
      if (year === null || its < year + LIFETIME) year = its;
    }
    return visits;
  }

  /** An entry with its keys spelt as ours are; how one is spelt is said once a file. */
  #spelled(item: Node): Node {
    if (!(item instanceof Fields) || isPlainlyWritten(item)) return item;
    const found: Finding[] = [];
    const ours = asOurs(item, this.#words, found);
    const unsaid = found.filter(({ args }) => !this.#spelt.has(args.key));
    for (const { args } of unsaid) this.#spelt.add(args.key);
    append(this.#findings, inOne(unsaid));
    return ours;
  }

  #hintAtBlock(item: Node): void {
    if (this.#block || !(item instanceof Fields) || item.style === 'flow') return;
    this.#block = true;
    this.#findings.push({ code: 'block-style', at: item.at, args: { line: lineOf(item) } });
  }
}

/** Of an entry in which several keys are spelt otherwise, one hint that names them all. */
function inOne(findings: readonly Finding[]): readonly Finding[] {
  const spelt = findings.filter(({ code }) => code === 'read-as');
  const [first] = spelt;
  if (first === undefined || spelt.length === 1) return findings;
  const all = (name: 'key' | 'meant') => spelt.map(({ args }) => args[name]).join('`, `');
  const one = { ...first, args: { key: all('key'), meant: all('meant'), several: 'yes' } };
  return [one, ...findings.filter((finding) => !spelt.includes(finding))];
}

/** The year of the first date that can be read, for dates without a year that stand before it. */
function firstYear({ items }: List): number | null {
  for (const item of items) {
    if (!(item instanceof Fields)) continue;
    const date = item.pairs.find(([key]) => key.text === 'date')?.[1];
    const read = date instanceof Text ? readDate(date.text) : null;
    if (read !== null && 'day' in read) return civilDate(read.day).year;
  }
  return null;
}

/** The keys of an entry, as they are spelt. What others call an observation is not read, as it may mean more than one. */
function spellingsOf({ circumstances: allowed, observations, elsewhere }: VisitGrammar): Vocabulary {
  const keys = [
    'date',
    ...allowed,
    ...Object.keys(observations),
    ...Object.keys(elsewhere?.observations ?? {}),
  ];
  return Object.fromEntries(keys.map((key) => [key, {}]));
}
