import type { Span } from '../days.ts';
import type { Finding, Place } from '../findings/finding.ts';
import { type BirdObservation, birdObservations } from './bird-observations/index.ts';
import type { Visit } from './entry.ts';
import { readDate } from './grammar/date-text.ts';
import type { KeyTable } from './grammar/key.ts';
import { period } from './grammar/moment.ts';
import { ownName, parents, speciesKey } from './grammar/names.ts';
import { knownOrNot } from './grammar/sexes.ts';
import { type Located, text, wordOf } from './grammar/values.ts';
import { calledSo, type Vocabulary } from './grammar/vocabulary.ts';
import { Empty, Fields, List, type Node, Refused, Text } from './nodes.ts';
import { observations } from './observations/index.ts';
import { pairText } from './print.ts';
import { readKeys, unknownKey } from './read/keys.ts';
import { LogReader, logKey } from './read/log.ts';
import { alsoNoted } from './read/other-words.ts';
import { asOurs } from './read/spelling.ts';
import { isItsValue } from './read/value.ts';
import type { VisitGrammar } from './read/visit.ts';
import type { Shape } from './text/recover.ts';

export type { BirdObservation };

/** One visit: what one line of a bird's log says. */
export type BirdEntry = Pick<Visit<BirdObservation>, 'at' | 'date' | 'dateAt' | 'time' | 'note' | 'saw'>;

/** One bird that came from outside, or the later life of one that was bred here. */
export interface BirdRecord {
  at: Place;
  id: Located;
  ring: Located | null;
  species: Located | null;
  sex: 'cock' | 'hen' | null;
  /** On one of these days. */
  hatched: Span | null;
  /** One id, or several where one of these is the parent, or none where unknown. */
  sire: Located[];
  dam: Located[];
  origin: Located | null;
  owner: Located | null;
  /** The chick of a journal, `PAIR/CLUTCH/CHICK`, that this bird is. */
  is: Located | null;
  log: BirdEntry[];
}

/** What birds.yaml says of a bird besides its log. */
export const birdKeys = {
  id: {
    value: ownName,
    example: 'id: LW-19-04',
    takes: 'the id of the bird',
    alsoSaid: ['name', 'bird', 'bird id'],
  },
  ring: {
    value: text,
    example: 'ring: LW 19 04',
    takes: 'the code on the ring',
    alsoSaid: ['band', 'ring number', 'ring code'],
  },
  species: speciesKey,
  sex: {
    value: wordOf(knownOrNot),
    example: 'sex: hen',
    takes: 'cock or hen',
    alsoSaid: ['gender'],
  },
  hatched: {
    value: period,
    example: 'hatched: 2024-05-17',
    takes: 'a date, or 2024-05 or 2024 where no more is known',
    alsoSaid: ['born', 'hatch', 'hatch date', 'date of birth', 'dob'],
  },
  sire: {
    value: parents,
    example: 'sire: LW-17-02',
    takes: 'a bird, or a list where it is one of these',
    alsoSaid: ['father'],
  },
  dam: {
    value: parents,
    example: 'dam: LW-18-05',
    takes: 'a bird, or a list where it is one of these',
    alsoSaid: ['mother'],
  },
  origin: {
    value: text,
    example: 'origin: swapped at the spring meeting',
    takes: 'text',
    alsoSaid: ['from', 'source', 'breeder'],
  },
  owner: { value: text, example: 'owner: on loan from a friend', takes: 'text' },
  is: { value: text, example: 'is: LW-3/2/c1', takes: 'a chick of a journal, PAIR/CLUTCH/CHICK' },
} as const satisfies KeyTable;

/** What the entries of a bird's log may say. */
export const birdLog: VisitGrammar = {
  observations: birdObservations,
  circumstances: ['time', 'note'],
  elsewhere: { observations, where: 'the journal of its pair' },
};

export const birdsShape: Shape = { birds: 'records', log: 'entries' };

const birdWords: Vocabulary = { ...birdKeys, log: logKey };

/** The list of birds with its keys spelt as ours are. */
export function birdsAsOurs(written: Fields, findings: Finding[]): Fields {
  const { pairs, at, style } = asOurs(written, { birds: { alsoSaid: ['stock', 'flock'] } }, findings);
  const inList = (item: Node) => (item instanceof Fields ? asOurs(item, birdWords, findings) : item);
  const spelled = pairs.map(
    ([key, list]) => [key, list instanceof List ? new List(list.items.map(inList), list.at) : list] as const,
  );
  return new Fields(spelled, at, style);
}

/** Reads the stock that came from outside. A bird that cannot be named is a finding; the others count. */
export function readBirds(written: Fields, findings: Finding[]): BirdRecord[] {
  const root = birdsAsOurs(written, findings);
  const birds: BirdRecord[] = [];
  const reader = new LogReader<BirdObservation>(birdLog, findings);
  for (const [key, list] of root.pairs) {
    if (key.text !== 'birds') findings.push(unknownKey(key, ['birds']));
    else if (list instanceof List) {
      for (const item of list.items) {
        const bird = readBird(item, reader, findings);
        if (bird !== null) birds.push(bird);
      }
    } else if (!(list instanceof Empty || list instanceof Refused)) {
      findings.push({ code: 'birds-no-list', at: list.at, args: {} });
    }
  }
  return birds;
}

/** The keys of a bird without those that are told in its log, under their day; each is a finding. */
function aboveLog(bird: Fields, findings: Finding[]): Fields {
  const kept = bird.pairs.filter(([key, value]) => {
    const said = Object.hasOwn(birdWords, key.text) ? null : asEntry(key, value);
    if (said === null) return true;
    const where = `the bird’s log, under its day: ${said}`;
    findings.push({
      code: 'unknown-key',
      at: key.at,
      args: { key: key.text, where, suggestion: '', keys: '' },
    });
    return false;
  });
  return new Fields(kept, bird.at, bird.style);
}

/** `died: 2026-05-01` as the entry that it would be; null where no log tells of such a thing. */
function asEntry(key: Text, value: Node): string | null {
  const names = Object.hasOwn(birdObservations, key.text) ? [key.text] : calledSo(key.text, birdObservations);
  const [name = key.text === 'note' ? key.text : undefined] = names;
  if (name === undefined || !(value instanceof Text)) return null;
  const dated = readDate(value.text);
  const day = 'day' in dated ? value.text : String(dated.args.suggestion);
  const isDay = /^\d{4}-\d\d-\d\d$/.test(day);
  const observation = (birdObservations as VisitGrammar['observations'])[name];
  const how = observation !== undefined && isItsValue(key.text, observation);
  const unsaid = day === '';
  const what = how
    ? `${name}: ${key.text}${unsaid ? alsoNoted(value) : ''}`
    : unsaid
      ? pairText(new Text(name, key.at), value)
      : name;
  return `\`- {date: ${isDay ? day : '…'}, ${what}}\``;
}

function readBird(item: Node, reader: LogReader<BirdObservation>, findings: Finding[]): BirdRecord | null {
  if (item instanceof Refused) return null;
  if (!(item instanceof Fields)) {
    findings.push({ code: 'not-a-bird', at: item.at, args: {} });
    return null;
  }
  const { id, sex, sire, dam, ...said } = readKeys(aboveLog(item, findings), birdKeys, ['log'], findings);
  const log: BirdEntry[] = [];
  for (const [key, node] of item.pairs) {
    if (key.text === 'log') for (const entry of reader.read(node)) log.push(entry);
  }
  const name = id ?? said.is ?? said.ring;
  if (name === null) {
    if (!item.pairs.some(([key]) => key.text === 'id'))
      findings.push({ code: 'no-id', at: item.at, args: {} });
    return null;
  }
  return {
    at: item.at,
    id: name,
    ...said,
    sex: sex === 'unknown' ? null : sex,
    sire: sire ?? [],
    dam: dam ?? [],
    log,
  };
}
