import type { Day } from '../days.ts';
import type { Finding, Place } from '../findings/finding.ts';
import type { Visit } from './entry.ts';
import { type FeedingSettings, feeding, sensibleFeeding } from './feeding.ts';
import { monthAndDate, share } from './grammar/amounts.ts';
import type { KeyTable } from './grammar/key.ts';
import { fields, type Located, number, text, wholeNumber, wordOf } from './grammar/values.ts';
import { Empty, Fields, List, type Node, Refused } from './nodes.ts';
import { type Observation, observations } from './observations/index.ts';
import { lineOf } from './print.ts';
import { readKeys } from './read/keys.ts';
import { LogReader, logKey } from './read/log.ts';
import { asOurs } from './read/spelling.ts';
import type { VisitGrammar } from './read/visit.ts';
import { type Routine, readRoutine, routineKeys } from './routines.ts';
import type { Shape } from './text/recover.ts';

export type { Routine } from './routines.ts';

/** One entry of the room's own log. */
export interface RoomEntry {
  at: Place;
  date: Day;
  dateAt: Place;
  /** Names of routines that were carried out. */
  done: Located[];
  /** What is offered in the whole room from now on; null where nothing is said of it. */
  food: { kind: Located; grams: number | null }[] | null;
  note: Located | null;
}

/** What nestlog.yaml says, with what holds where it says nothing. */
export interface RoomSettings {
  room: string | null;
  seasonStart: { month: number; date: number };
  /** Whether young are closed-ringed in this room. */
  ringing: boolean;
  limits: {
    /** Days. */
    quarantine: number;
    clutchesPerYear: number | null;
    /** Coefficient of inbreeding, 0 to 1. */
    maxInbreeding: number | null;
  };
  routines: Routine[];
  /** When the keeper feeds and how seed is sprouted; null where nothing is said of it. */
  feeding: FeedingSettings | null;
  /** Closed rings in the drawer by inside diameter. */
  rings: { mm: number; inHand: number }[];
  /** Days from ordering rings to having them. */
  ringLead: number | null;
  log: RoomEntry[];
}

const yesOrNoWords = {
  yes: { alsoSaid: ['true', 'on', 'y'] },
  no: { alsoSaid: ['false', 'off', 'n', 'none', 'never'] },
} as const;

/** What nestlog.yaml says besides its lists. */
export const settingsKeys = {
  room: { value: text, example: 'room: the birdroom', takes: 'a name' },
  'season-start': { value: monthAndDate, example: 'season-start: 09-01', takes: 'month and date, MM-DD' },
  ringing: { value: wordOf(yesOrNoWords), example: 'ringing: no', takes: 'yes or no' },
  limits: {
    value: fields({
      quarantine: wholeNumber(0, 'days'),
      'clutches-per-year': wholeNumber(1),
      'max-inbreeding': share,
    }),
    example: 'limits: {quarantine: 30, clutches-per-year: 3, max-inbreeding: 0.125}',
    takes: '{quarantine: days, clutches-per-year: number, max-inbreeding: 0 to 1}',
  },
  feeding: {
    value: feeding,
    example: 'feeding: {from: 06:00, to: 20:00, every: 3 h, soak: 12 h, sprout: 24 h}',
    takes: '{from: time, to: time, every: hours, soak: hours, sprout: hours}',
  },
  'ring-lead': { value: wholeNumber(0, 'days'), example: 'ring-lead: 21', takes: 'days' },
} as const satisfies KeyTable;

/** What nestlog.yaml says of the rings of one size. */
export const ringKeys = {
  mm: { value: number('mm'), example: 'mm: 2.3', takes: 'inside diameter in mm' },
  'in-hand': { value: wholeNumber(0), example: 'in-hand: 12', takes: 'how many are in the drawer' },
} as const satisfies KeyTable;

const lists = ['routines', 'rings', 'log'];

/** What the entries of the room's log may say. */
export const roomLog: VisitGrammar = {
  observations: { done: observations.done, food: observations.food },
  circumstances: ['time', 'note'],
};

export const settingsShape: Shape = { log: 'entries', routines: 'entries', rings: 'entries' };

/** What holds in a room without nestlog.yaml. */
export function usualSettings(): RoomSettings {
  return {
    room: null,
    seasonStart: { month: 1, date: 1 },
    ringing: true,
    limits: { quarantine: 30, clutchesPerYear: null, maxInbreeding: null },
    routines: [],
    feeding: null,
    rings: [],
    ringLead: null,
    log: [],
  };
}

/** Reads nestlog.yaml. What is missing or wrong is as in any room. */
export function readSettings(written: Fields, findings: Finding[]): RoomSettings {
  const usual = usualSettings();
  const root = asOurs(written, { ...settingsKeys, routines: {}, rings: {}, log: logKey }, findings);
  const said = readKeys(root, settingsKeys, lists, findings);
  const reader = new LogReader<Observation>(roomLog, findings);
  return {
    room: said.room?.text ?? null,
    seasonStart: said['season-start'] ?? usual.seasonStart,
    ringing: said.ringing !== 'no',
    limits: {
      quarantine: said.limits?.quarantine ?? usual.limits.quarantine,
      clutchesPerYear: said.limits?.['clutches-per-year'] ?? null,
      maxInbreeding: said.limits?.['max-inbreeding'] ?? null,
    },
    routines: itemsOf(root, 'routines', findings).flatMap((item) => readRoutine(item, findings) ?? []),
    feeding: feedingOf(root, said.feeding, findings),
    rings: itemsOf(root, 'rings', findings).flatMap((item) => readRing(item, findings) ?? []),
    ringLead: said['ring-lead'],
    log: valuesOf(root, 'log').flatMap((log) => reader.read(log).map(roomEntry)),
  };
}

function valuesOf({ pairs }: Fields, name: string): Node[] {
  return pairs.filter(([key]) => key.text === name).map(([, value]) => value);
}

function itemsOf(root: Fields, name: string, findings: Finding[]): Node[] {
  return valuesOf(root, name).flatMap((value) => {
    if (value instanceof List) return [...value.items];
    if (!(value instanceof Empty || value instanceof Refused)) {
      const isItem = ({ pairs }: Fields) =>
        pairs.every(([key]) => Object.hasOwn({ ...routineKeys, ...ringKeys }, key.text));
      const line = value instanceof Fields && isItem(value) ? lineOf(value) : '';
      findings.push({ code: 'no-list', at: value.at, args: { key: name, line } });
    }
    return [];
  });
}

/** The hours that make sense; what does not is a finding, and as if it had not been said. */
function feedingOf(root: Fields, said: FeedingSettings | null, findings: Finding[]): FeedingSettings | null {
  if (said === null) return null;
  const { at } = valuesOf(root, 'feeding')[0] as Node;
  const { problems, feeding } = sensibleFeeding(said);
  findings.push(...problems.map((problem) => ({ ...problem, at })));
  return feeding;
}

function readRing(item: Node, findings: Finding[]): { mm: number; inHand: number } | null {
  if (item instanceof Refused) return null;
  const before = findings.length;
  if (item instanceof Fields) {
    const { mm, 'in-hand': inHand } = readKeys(item, ringKeys, [], findings);
    if (mm !== null && inHand !== null) return { mm, inHand };
  }
  if (findings.length === before) findings.push({ code: 'not-a-ring', at: item.at, args: {} });
  return null;
}

function roomEntry({ at, date, dateAt, note, saw }: Visit<Observation>): RoomEntry {
  const entry: RoomEntry = { at, date, dateAt, note, done: [], food: null };
  for (const observation of saw) {
    if (observation.key === 'done') entry.done = observation.value;
    if (observation.key === 'food') entry.food = observation.value;
  }
  return entry;
}
