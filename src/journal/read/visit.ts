import type { Day } from '../../days.ts';
import type { Finding, Place } from '../../findings/finding.ts';
import type { Visit } from '../entry.ts';
import { readDate } from '../grammar/date-text.ts';
import type { KeyDefinition, KeyTable } from '../grammar/key.ts';
import { type Moment, moment, time } from '../grammar/moment.ts';
import type { ObservationDefinition } from '../grammar/observation.ts';
import { isNamed } from '../grammar/turned-round.ts';
import { type Located, text, wholeNumber, yesOrNo } from '../grammar/values.ts';
import { Empty, Fields, List, NOWHERE, type Node, Refused, Text, UnquotedNote } from '../nodes.ts';
import { append } from '../text/append.ts';
import { withWholeLines } from './comma-rest.ts';
import { dateAsKey } from './date-as-key.ts';
import { unknownKey } from './keys.ts';
import { otherWords } from './other-words.ts';
import { nameSwallowed } from './swallowed.ts';
import { readValue } from './value.ts';

/** What an entry says besides what was seen. */
export const circumstances = {
  time: { value: time, example: 'time: 07:30', takes: 'a time of day' },
  after: {
    value: moment,
    example: 'after: 2026-02-28 18:00',
    takes: 'a date, a date with a time, or a time of the same day',
  },
  clutch: {
    value: wholeNumber(1),
    example: 'clutch: 2',
    takes: 'the number of one of the pair’s own clutches',
  },
  site: { value: text, example: 'site: gorse bundle', takes: 'which nest' },
  note: { value: text, example: 'note: "hen sat well"', takes: 'text' },
} as const satisfies KeyTable;

type Circumstance = keyof typeof circumstances;

/** What entries of one kind of log may say. */
export interface VisitGrammar {
  observations: Readonly<Record<string, ObservationDefinition>>;
  circumstances: readonly Circumstance[];
  /** Observations that belong into another file, and where they do. */
  elsewhere?: { observations: object; where: string };
}

/**
 * Reads one entry. Without a date that can be, the entry is a finding and null; an observation that cannot be read is a
 * finding, and the others count.
 *
 * @param near the year of other entries, for the fix of a date without one
 */
export function readVisit<O>(
  item: Node,
  grammar: VisitGrammar,
  near: number | null,
  findings: Finding[],
): Visit<O> | null {
  const found: Finding[] = [];
  const visit = readOnce<O>(item, grammar, near, found);
  if (found.length === 0) return visit;
  const reread = (fields: Fields) => {
    const again: Finding[] = [];
    readOnce<O>(fields, grammar, near, again);
    return again;
  };
  append(findings, item instanceof Fields ? withWholeLines(item, found, reread) : found);
  return visit;
}

function readOnce<O>(
  item: Node,
  grammar: VisitGrammar,
  near: number | null,
  findings: Finding[],
): Visit<O> | null {
  if (!(item instanceof Fields)) {
    const line = dateAsKey(item, grammar.observations);
    findings.push(
      line === null || item instanceof List
        ? { code: 'not-an-entry', at: item.at, args: { line: line ?? '' } }
        : { code: 'date-as-key', at: item.at, args: { line } },
    );
    return null;
  }
  const date = dateOf(item, grammar, near, findings);
  if (date === null) return null;
  const visit: Visit<O> = {
    at: item.at,
    ...date,
    time: null,
    after: null,
    clutch: null,
    site: null,
    note: null,
    saw: [],
  };
  for (const [key, node] of item.pairs) {
    if (key.text === 'date' || node instanceof Refused) continue;
    if (node instanceof UnquotedNote) nameSwallowed(node, grammar.observations);
    if (isCircumstance(key.text, grammar))
      readCircumstance(visit as Visit<unknown>, key, key.text, node, findings);
    else readObservation(visit as Visit<unknown>, key, node, grammar, findings);
  }
  // A list that has grown keeps room for a dozen more, which a lifetime of entries would pay for.
  visit.saw = visit.saw.slice();
  dropLaterAfter(visit as Visit<unknown>, item, findings);
  if (
    item.pairs.every(([{ text: key }]) => key === 'date' || (key !== 'note' && isCircumstance(key, grammar)))
  ) {
    findings.push({ code: 'empty-entry', at: item.at, args: {} });
  }
  return visit;
}

function dateOf(
  entry: Fields,
  { observations }: VisitGrammar,
  near: number | null,
  findings: Finding[],
): { date: Day; dateAt: Place } | null {
  const { at, pairs } = entry;
  const [key, node] = pairs.find(([{ text }]) => text === 'date') ?? [];
  if (key === undefined || node === undefined || node instanceof Empty) {
    const joined = pairs.find(([{ text }]) => text.startsWith('date:'))?.[0];
    const line = key === undefined ? dateAsKey(entry, observations) : null;
    findings.push(
      joined !== undefined
        ? unknownKey(joined, ['date'])
        : line !== null
          ? { code: 'date-as-key', at, args: { line } }
          : { code: 'no-date', at: key?.at ?? at, args: {} },
    );
    return null;
  }
  if (!(node instanceof Text)) {
    findings.push({
      code: 'wrong-value',
      at: node.at,
      args: { key: 'date', takes: 'a date', example: 'date: 2026-03-01' },
    });
    return null;
  }
  const read = readDate(node.text, near);
  if ('day' in read) return { date: read.day, dateAt: node.at };
  // Behind the day stands what was seen, parted from it by the wrong sign.
  const line = read.args.suggestion === '' ? dateAsKey(entry, observations) : null;
  findings.push({ code: read.code, at: node.at, args: { ...read.args, line: line ?? '' } });
  return null;
}

function isCircumstance(key: string, { circumstances: allowed }: VisitGrammar): key is Circumstance {
  return (allowed as readonly string[]).includes(key);
}

function readCircumstance(
  visit: Visit<unknown>,
  key: Text,
  name: Circumstance,
  node: Node,
  findings: Finding[],
): void {
  if (node instanceof Empty) return;
  const definition: KeyDefinition = circumstances[name];
  const value = readValue(definition, key, node, findings);
  if (value === undefined) return;
  if (name === 'time') visit.time = value as number;
  else if (name === 'clutch') visit.clutch = { number: value as number, at: node.at };
  else if (name === 'after') visit.after = { ...(value as Moment), day: (value as Moment).day ?? visit.date };
  else visit[name] = value as Located;
}

/** The moment after which something happened cannot lie behind the entry's own. */
function dropLaterAfter(visit: Visit<unknown>, { pairs }: Fields, findings: Finding[]): void {
  const { after, date, time } = visit;
  if (after === null || after.day < date) return;
  if (after.day === date && (after.time === null || time === null || after.time <= time)) return;
  visit.after = null;
  const at = pairs.find(([{ text: key }]) => key === 'after')?.[1].at ?? visit.at;
  findings.push({ code: 'after-later', at, args: {} });
}

/** As {@link readValue}; who ticks a box with `yes` says no more than the key, and `no` is what nobody need write. */
function readAnswer(definition: ObservationDefinition, key: Text, node: Node, findings: Finding[]): unknown {
  const answer = node instanceof Text ? yesOrNo(node.text) : null;
  if (answer === 'no') {
    findings.push({ code: 'said-no', at: key.at, args: { key: key.text } });
    return undefined;
  }
  const nothing = answer === null ? null : definition.value.safeParse(new Empty(node.at));
  if (nothing?.success !== true) return readValue(definition, key, node, findings);
  findings.push({ code: 'said-yes', at: node.at, args: { key: key.text } });
  return nothing.data;
}

function readObservation(
  visit: Visit<unknown>,
  key: Text,
  node: Node,
  grammar: VisitGrammar,
  findings: Finding[],
): void {
  const { observations, elsewhere } = grammar;
  const definition = Object.hasOwn(observations, key.text) ? observations[key.text] : undefined;
  if (definition !== undefined) {
    const value = readAnswer(definition, key, node, findings);
    if (value === undefined) return;
    visit.saw.push({ key: key.text, at: key.at, value });
    // Of a sick bird what can be read counts, beside the error.
    for (const [rest, under] of node instanceof Fields ? node.pairs : []) {
      if (!(under instanceof Empty)) continue;
      const args = { key: rest.text, joined: isNamed(rest) ? '' : 'yes' };
      findings.push({ code: 'comma-in-map', at: rest.at, args });
    }
    return;
  }
  if (elsewhere !== undefined && Object.hasOwn(elsewhere.observations, key.text)) {
    const args = { key: key.text, where: elsewhere.where };
    findings.push({ code: 'unknown-key', at: key.at, args: { ...args, suggestion: '', keys: '' } });
    return;
  }
  const others = otherWords(key, node, observations);
  if (others !== '') {
    findings.push({ code: 'unknown-key', at: key.at, args: { key: key.text, others } });
    return;
  }
  const together = key.text.split(' ');
  if (together.length > 1 && together.every((name) => mayStandAlone(name, observations))) {
    findings.push({
      code: 'unknown-key',
      at: key.at,
      args: { key: key.text, suggestion: together.join(', ') },
    });
    return;
  }
  const finding = unknownKey(key, ['date', ...grammar.circumstances, ...Object.keys(observations)]);
  const alone = node instanceof Empty && finding.args.suggestion === '';
  findings.push(alone ? { code: 'comma-in-map', at: key.at, args: { key: key.text } } : finding);
}

/** `checked`, `sitting`: nothing need stand behind it. */
function mayStandAlone(name: string, observations: VisitGrammar['observations']): boolean {
  return (
    Object.hasOwn(observations, name) &&
    observations[name]?.value.safeParse(new Empty(NOWHERE)).success === true
  );
}
