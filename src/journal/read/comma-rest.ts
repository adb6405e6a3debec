import type { Finding, Place } from '../../findings/finding.ts';
import { isNamed } from '../grammar/turned-round.ts';
import { Empty, Fields, holdsRefused, List, type Node, Text } from '../nodes.ts';
import { lineOf, pairText } from '../print.ts';

type Pairs = Fields['pairs'];

/** A part of a clutch has fewer. */
const MOST = 20;
/** Columns from a cut-off value to its rest. */
const NEAR = 12;

/** A key and its value with another sign between them, or none: `laid 1`, `laid = 1`, `hatched; 2`. */
export const WITHOUT_COLON = /^([a-z-]+)( ?[=;] ?| )(\S.*)$/;

/**
 * The findings of a mapping, those at words that stand alone behind a comma with the whole line that was meant: what is
 * left of a list without brackets, of a decimal comma, of a text with a comma, or of a colon. Which of them it is says the
 * grammar: the first by which the mapping then reads.
 *
 * @param reread what would be found in such a mapping
 */
export function withWholeLines(
  written: Fields,
  found: readonly Finding[],
  reread: (fields: Fields) => Finding[],
): readonly Finding[] {
  if (found.length === 0 || holdsRefused(written)) return found;
  const mended: Mended = { fields: written, found, rests: [] };
  for (let tried = 0; tried < MOST; tried++) {
    const [rest] = restsIn(mended.fields, mended.found);
    if (rest === undefined || !mend(mended, rest, reread)) break;
  }
  return found.map((finding) => {
    const rest = mended.rests.find(({ text }) => isWrongFor(finding, text, mended.found));
    if (rest === undefined || (rest.way === 'colon' && finding.code === 'unknown-key')) return finding;
    const { text: key, at } = rest.text;
    const { joined = '' } = finding.args;
    return { code: 'comma-in-map', at, args: { key, joined, line: lineAt(mended.fields, at) } };
  });
}

/** Whether a finding is of this rest: at it, or at the value before it of which it was cut off. */
function isWrongFor({ at }: Finding, rest: Text, left: readonly Finding[]): boolean {
  if (isAt(at, rest.at)) return true;
  const near = at.line === rest.at.line && at.column < rest.at.column;
  return near && rest.at.column - at.column <= NEAR && !left.some((finding) => isAt(finding.at, at));
}

interface Mended {
  fields: Fields;
  found: readonly Finding[];
  /** How each rest was put back. */
  rests: { text: Text; way: string }[];
}

/** Puts one rest back where that makes the mapping read better and nothing worse. */
function mend(mended: Mended, rest: Text, reread: (fields: Fields) => Finding[]): boolean {
  for (const [way, join] of ways) {
    const fields = changed(mended.fields, rest, join);
    if (fields === null) continue;
    const found = reread(fields);
    const rests = restsIn(fields, found);
    const isWorse = ({ at }: Finding) =>
      isAt(at, rest.at) || ![...mended.found, ...rests].some((known) => isAt(known.at, at));
    if (found.some(isWorse)) continue;
    mended.rests.push({ text: rest, way });
    Object.assign(mended, { fields, found });
    return true;
  }
  return false;
}

/** Keys without a value: inside of a value all of them, as nothing there stands alone; else those that nobody knows. */
function restsIn({ pairs }: Fields, found: readonly Finding[], inside = false): Text[] {
  return pairs.flatMap(([key, value]) => {
    if (value instanceof Fields) return restsIn(value, found, true);
    const isRest = value instanceof Empty && (inside || found.some(({ at }) => isAt(at, key.at)));
    return isRest ? [key] : [];
  });
}

type Join = (before: Node, rest: Text) => readonly [before: Node, own?: Pairs[number]] | null;

/** What a rest can be, the surest first: a number says more than a list, and any words can be a text. */
const ways: readonly (readonly [name: string, join: Join])[] = [
  [
    'colon',
    (before, { text, at }) => {
      const [, key, , value] = WITHOUT_COLON.exec(text) ?? [];
      return key === undefined ? null : [before, [new Text(key, at), new Text(value as string, at)]];
    },
  ],
  [
    'decimal',
    (before, { text }) =>
      before instanceof Text && /\d$/.test(before.text) && /^\d/.test(text)
        ? [new Text(`${before.text}.${text}`, before.at)]
        : null,
  ],
  [
    'list',
    (before, rest) =>
      before instanceof Text || before instanceof List
        ? [new List([...(before instanceof List ? before.items : [before]), rest], before.at)]
        : null,
  ],
  [
    'text',
    (before, rest) =>
      before instanceof Text && !isNamed(rest) ? [new Text(`${before.text}, ${rest.text}`, before.at)] : null,
  ],
];

function changed(node: Fields, rest: Text, join: Join): Fields | null {
  const pairs: (readonly [Text, Node])[] = [];
  let done = false;
  for (const [key, value] of node.pairs) {
    const inside = value instanceof Fields ? changed(value, rest, join) : null;
    if (inside !== null) done = true;
    if (key !== rest) {
      pairs.push([key, inside ?? value]);
      continue;
    }
    const before = pairs.pop();
    const joined = before === undefined ? join(new Empty(key.at), rest) : join(before[1], rest);
    if (joined === null) return null;
    const [whole, own] = joined;
    if (before !== undefined) pairs.push([before[0], whole]);
    if (own !== undefined) pairs.push(own);
    done = true;
  }
  return done ? new Fields(pairs, node.at, node.style) : null;
}

/** The line that a place is on: all between its braces, or the key above them. */
function lineAt(fields: Fields, at: Place): string {
  if (fields.style === 'flow') return lineOf(fields);
  const [key, value] = fields.pairs.findLast(([key]) => key.at.line <= at.line) ?? [];
  return key === undefined ? '' : pairText(key, value as Node);
}

function isAt(one: Place, other: Place): boolean {
  return one.line === other.line && one.column === other.column;
}
