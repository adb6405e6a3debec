import type { Finding, Place } from '../findings/finding.ts';
import type { KeyTable } from './grammar/key.ts';
import { type Located, text, wholeNumber, word } from './grammar/values.ts';
import { Fields, type Node, Refused } from './nodes.ts';
import { readKeys } from './read/keys.ts';

const anchors = [
  'paired',
  'laid',
  'sitting',
  'hatched',
  'fledged',
  'independent',
  'arrived',
  'parted',
] as const;

/** What a routine of the room counts its days from. */
export type Anchor = (typeof anchors)[number];

/** A task of the keeper's own. */
export interface Routine {
  at: Place;
  name: Located;
  /** Its days count from this; null for a task of the room, which counts from when it was last done. */
  after: Anchor | null;
  /** Days after it. */
  days: number;
  /** Again after so many days, or null where once is enough. */
  every: number | null;
  until: Anchor | null;
  say: string;
}

/** What nestlog.yaml says of one routine. */
export const routineKeys = {
  name: { value: text, example: 'name: calcium', takes: 'a name' },
  after: { value: word(...anchors), example: 'after: paired', takes: anchors.join(', ') },
  days: { value: wholeNumber(0, 'days'), example: 'days: 3', takes: 'days' },
  every: { value: wholeNumber(1, 'days'), example: 'every: 2', takes: 'days' },
  until: { value: word(...anchors), example: 'until: laid', takes: anchors.join(', ') },
  say: { value: text, example: 'say: calcium in the egg food', takes: 'text' },
} as const satisfies KeyTable;

/** Reads one routine; without a name, or anything to count from, it is a finding and null. */
export function readRoutine(item: Node, findings: Finding[]): Routine | null {
  if (item instanceof Refused) return null;
  if (!(item instanceof Fields)) {
    findings.push({ code: 'not-a-routine', at: item.at, args: {} });
    return null;
  }
  const before = findings.length;
  const { name, after, days, every, until, say } = readKeys(item, routineKeys, [], findings);
  if (name !== null && (after !== null || every !== null)) {
    const dead = until !== null && !canEnd(after, until);
    if (dead) findings.push({ code: 'routine-never-ends', at: item.at, args: { after: after ?? '', until } });
    const ends = dead ? null : until;
    return { at: item.at, name, after, days: days ?? 0, every, until: ends, say: say?.text ?? name.text };
  }
  if (findings.length === before) findings.push({ code: 'not-a-routine', at: item.at, args: {} });
  return null;
}

/** Whether one can follow the other: of a bird that arrived only two are known, and only birds arrive. */
function canEnd(after: Anchor | null, until: Anchor): boolean {
  if (after === 'arrived') return until === 'independent' || until === 'paired';
  return after !== null && until !== 'arrived' && until !== after;
}
