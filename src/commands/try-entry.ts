import type { Day } from '../days.ts';
import { nearest } from '../findings/nearest.ts';
import { keptIn } from '../grouped.ts';
import { birdLog } from '../journal/birds.ts';
import type { Fields } from '../journal/nodes.ts';
import { pairLog } from '../journal/pair-journal.ts';
import { lineOf } from '../journal/print.ts';
import type { VisitGrammar } from '../journal/read/visit.ts';
import {
  type FileReading,
  type ReadOne,
  type RoomRecord,
  readFile,
  readRoom,
  type SourceFile,
} from '../journal/record.ts';
import { LONGEST_LINE } from '../journal/text/line-shapes.ts';
import { LOST } from '../journal/text/prepare.ts';
import { type Room, understandRoom } from '../room/fold.ts';
import { agendaOf } from '../rules/agenda/agenda.ts';
import { broodsOf } from '../rules/brood.ts';
import { learnedDurations } from '../rules/durations.ts';
import { warningsOf } from '../rules/warnings/index.ts';
import { type Changes, changesOf, type MorningLines } from '../write/changes.ts';
import { judge, type Verdict } from '../write/judge.ts';
import { idOfFile, shellWord } from '../write/names.ts';
import { terminalWords } from '../write/pasted.ts';
import { clutchBegun, pinned } from '../write/pin.ts';
import { type EntryPlan, planEntry, type Target } from '../write/plan.ts';
import { entryOfWords } from '../write/words.ts';
import { asWritten } from './named.ts';
import { understandAll } from './room.ts';
import { UsageError } from './usage-error.ts';

/** What is to be recorded, as it was said. */
export interface Request {
  /** A pair, or a bird of the list. */
  id: string;
  words: string[];
  note: string | null;
  day: Day;
  today: Day;
}

/** An entry, what it makes of the room, and what speaks against it. Nothing is written. */
export interface Trial {
  plan: EntryPlan;
  verdict: Verdict;
  changes: Changes;
  /** Text of each file as it would be. */
  sources: Pick<ReadonlyMap<string, string>, 'get'>;
  /** How to type what stands in such a journal, or null where a text is none of it. */
  typed: (text: string) => string | null;
}

/** Days ahead in which tasks are compared: beyond any that is foreseen. */
const HORIZON = 1000;

type TextFile = Extract<SourceFile, { text: string }>;

/** The room before or after, on the day stood on and with everything recorded. */
interface View {
  record: RoomRecord;
  whole: Room;
  standing: Room;
}

/** Where an entry belongs. */
interface Place {
  target: Target;
  file: TextFile;
  grammar: VisitGrammar;
}

/** Where a file cannot take an entry at all: why, and what its keeper can do. */
export interface NoPlace {
  refused: string;
}

/**
 * Tries an entry on the room: a plan, checked against the whole history, later entries included. A `UsageError` where
 * there is nothing to plan: an unknown id, words that make no entry.
 */
export function tryEntry(files: readonly SourceFile[], request: Request): Trial | NoPlace {
  const read = readOnce();
  const before = viewOf(files, request, read);
  const id = idAsWritten(before, request.id);
  const place = placeOf(files, before, id);
  const spoken = entryOfWords(request.words, { ...request, grammar: place.grammar });
  if ('wrong' in spoken) throw new UsageError(spoken.wrong);
  // Written back, they would be gone for good.
  if (place.file.text.includes(LOST)) {
    return {
      refused: `${place.file.path} has letters that are no UTF-8; save it as UTF-8 in your editor first`,
    };
  }
  const line = lineOf(spoken.entry);
  if (line.length > LONGEST_LINE) {
    return {
      refused: `the entry is longer than ${LONGEST_LINE.toLocaleString('en')} characters and could not be read again; put a long note into a file of its own, and its name into the note`,
    };
  }
  if (planEntry(place.file, place.target, spoken.entry) === null) {
    return {
      refused: `${place.file.path} has no log that a line can be added to; add it yourself:\n  ${line}`,
    };
  }
  const attempt = (entry: Fields) => {
    const plan = planEntry(place.file, place.target, entry) as EntryPlan;
    const after = viewOf(
      files.map((file) => (file === place.file ? { path: file.path, text: plan.after } : file)),
      request,
      read,
    );
    return { plan, after, verdict: judge(plan, before.whole.findings, after.whole.findings) };
  };
  const first = attempt(spoken.entry);
  const clutch = clutchBegun(spoken.entry, id, before.whole, first.after.whole);
  const second = clutch === null ? first : attempt(pinned(spoken.entry, clutch));
  const { plan, after, verdict } =
    second.verdict.errors.length > first.verdict.errors.length ? first : second;
  const changes = changesOf(morningOf(before.standing), morningOf(after.standing));
  const typed = (text: string) => terminalWords(text, place.grammar);
  return { plan, verdict, changes, sources: after.record.sources, typed };
}

function morningOf(room: Room): MorningLines {
  const broods = broodsOf(room, learnedDurations(room));
  return { items: agendaOf(room, broods, HORIZON), warnings: warningsOf(room, broods) };
}

/** Later than the wall's today nothing has happened, even for a keeper who stands on such a day. */
function viewOf(files: readonly SourceFile[], { day, today }: Request, read: ReadOne): View {
  const record = readRoom(files, { day: today, today }, read);
  const whole = understandAll(record, { day: Math.max(day, today), today });
  return { record, whole, standing: day >= today ? whole : understandRoom(record, { day, today }) };
}

/** Of several rooms that differ in one file, all others are read once. */
function readOnce(): ReadOne {
  const known = new Map<string, FileReading>();
  return ({ path, text }) => keptIn(known, JSON.stringify([path, text]), () => readFile(path, text));
}

/** A pair's or a listed bird's id, also where the bird's ring was said; what neither has is left as it was said. */
function idAsWritten({ record, whole }: View, said: string): string {
  const id = asWritten(said, idsOf(record, whole));
  if (id !== null) return id;
  const rings = new Map(
    record.birds.flatMap(({ id, ring }) => (ring === null ? [] : [[ring.text, id.text]])),
  );
  return rings.get(asWritten(said, rings.keys()) ?? '') ?? said;
}

function idsOf({ birds }: RoomRecord, { pairs }: Room): string[] {
  return [...pairs.map((pair) => pair.id), ...birds.map((bird) => bird.id.text)];
}

function placeOf(files: readonly SourceFile[], { record, whole }: View, id: string): Place {
  const pair = whole.pairs.find((one) => one.id === id);
  const bird = record.birds.find((one) => one.id.text === id);
  const path = pair?.at.file ?? bird?.at.file;
  const file = files.find((one): one is TextFile => one.path === path && 'text' in one);
  if (file === undefined) throw new UsageError(unknown(id, record, whole));
  return pair === undefined
    ? { target: { of: 'bird', id }, file, grammar: birdLog }
    : { target: { of: 'pair' }, file, grammar: pairLog };
}

function unknown(id: string, record: RoomRecord, room: Room): string {
  const what = `no journal has the pair \`${id}\`, and birds.yaml no such bird`;
  const [, owner, ref] = /^([^/]+)\/(\d+\/[ec]\d+)$/.exec(id) ?? [];
  if (owner !== undefined && room.pairs.some((pair) => pair.id === owner)) {
    return `${what}; eggs and chicks are recorded with their pair, such as \`nestlog record ${owner} weighed.${ref}=4.5\``;
  }
  const file = idOfFile(id);
  if (file !== null) return `${what}; a pair is named by its id: did you mean \`${file}\`?`;
  for (const { id: pair, cock, hen } of room.pairs) {
    const parent = cock.includes(id) ? 'cock' : hen.includes(id) ? 'hen' : null;
    if (parent !== null)
      return `${what}; it is the ${parent} of ${pair}, such as \`nestlog record ${shellWord(pair)} weighed.${parent}=8.4\``;
  }
  if (/[=:]/.test(id)) return `${what}; the pair or bird comes first: \`nestlog record LW-1 ${id}\``;
  const ids = idsOf(record, room);
  const several = id.split(/[\s,;&+]+/).filter((one) => asWritten(one, ids) !== null);
  if (several.length > 1)
    return `${what}; each has an entry of its own: \`nestlog record ${several[0]} …\` first`;
  const lives = room.pairs.filter(({ housing }) => housing !== null && asWritten(id, [housing]) !== null);
  if (lives.length > 0) return `${what}; it is a housing, of ${lives.map((one) => one.id).join(', ')}`;
  const near = nearest(id, ids);
  if (near !== null) return `${what}; did you mean \`${near}\`?`;
  return `${what}; \`nestlog start pair ${shellWord(id)}\` begins a journal`;
}
