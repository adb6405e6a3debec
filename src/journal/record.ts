import type { Day } from '../days.ts';
import { isBirdList, isJournal, isProfile, isSettings } from '../file-names.ts';
import { byPlace, type Finding, type Place } from '../findings/finding.ts';
import type { Profile } from '../species/profile.ts';
import { type BirdRecord, birdsShape, readBirds } from './birds.ts';
import { allBy, datedIn, entryAt } from './entries.ts';
import type { PairJournal } from './entry.ts';
import { type Clock, type Dated, futureFindings, latestOf } from './future.ts';
import { restored } from './kept-reading.ts';
import type { Fields } from './nodes.ts';
import { readOwnSpecies } from './own-species.ts';
import { PackedEntries, type Ready } from './packed.ts';
import { pairShape, readPairJournal } from './pair-journal.ts';
import { otherYears } from './read/other-year.ts';
import { type RoomSettings, readSettings, settingsShape, usualSettings } from './settings.ts';
import { misplacedOf, type Stray, strayOf } from './stray.ts';
import { append } from './text/append.ts';
import type { Shape } from './text/recover.ts';
import { type Repeat, withoutRepeats } from './text/repeats.ts';
import { readTree } from './text/tree.ts';

/** A file that was read. Its text may be decoded when it is asked for; `hash` and `size` are those of its bytes, where known. */
export interface SourceText {
  path: string;
  readonly text: string;
  readonly hash?: string;
  readonly size?: number;
}

/** A file of the room: its text, or why there is none. Paths are relative to the room, with `/`. */
export type SourceFile =
  | SourceText
  | { path: string; problem: 'unreadable' | 'binary' | 'too-large' | 'loop'; detail: string };

/** All that the files of a room say, as it stands there. */
export interface RoomRecord {
  settings: RoomSettings;
  pairs: PairJournal[];
  birds: BirdRecord[];
  ownSpecies: Profile[];
  /** Text of each file, as the places of findings count in it. */
  sources: Sources;
  findings: Finding[];
}

/** Texts by the path of their file. */
export class Sources {
  readonly #holders = new Map<string, { readonly text: string }>();

  get(path: string): string | undefined {
    return this.#holders.get(path)?.text;
  }

  /** @param holder is asked for its text when somebody wants to see it */
  add(path: string, holder: { readonly text: string }): void {
    this.#holders.set(path, holder);
  }
}

/** What one file adds to the record. It depends on the file's path and text alone, not on the clock. */
export interface FileReading {
  says: Says;
  /** As the places of the findings count in it, where it had to be mended; else null: it is the file's own. */
  text: string | null;
  findings: Finding[];
}

type Says = Partial<{ settings: RoomSettings; birds: BirdRecord[]; profile: Profile; journal: PairJournal }>;

/** Whether nothing in the record is dated later than this day. */
export function endsBy({ pairs }: RoomRecord, day: Day): boolean {
  return pairs.every(({ entries }) => allBy(entries, day));
}

/** How one file is read: a pure function of its path and text. */
export type ReadOne = (source: SourceText) => FileReading;

/**
 * Reads the files of a room. Findings are sorted by file, line and column.
 *
 * @param read another way to come by a file's reading, such as a cache
 */
export function readRoom(files: readonly SourceFile[], clock: Clock, read: ReadOne = readSource): RoomRecord {
  const record: RoomRecord = {
    settings: usualSettings(),
    pairs: [],
    birds: [],
    ownSpecies: [],
    sources: new Sources(),
    findings: [],
  };
  let settingsFile: string | null = null;
  const ready: Ready = new Map();
  for (const file of files) {
    if ('problem' in file) {
      record.findings.push({
        code: `file-${file.problem}`,
        at: topOf(file.path),
        args: { detail: file.detail },
      });
      continue;
    }
    const reading = read(file);
    record.sources.add(file.path, reading.text === null ? file : { text: reading.text });
    for (const finding of reading.findings) record.findings.push(finding);
    if (!isSettings(file.path)) add(record, reading.says, ready);
    else if (settingsFile === null) {
      add(record, reading.says, ready);
      settingsFile = file.path;
    } else
      record.findings.push({ code: 'second-settings', at: topOf(file.path), args: { file: settingsFile } });
  }
  append(record.findings, futureFindings(datesOf(record), clock));
  for (const log of logsOf(record)) append(record.findings, otherYears(log, latestOf(clock)));
  record.findings.sort(byPlace);
  return record;
}

/**
 * As {@link readFile}, as little of it in memory as can be: a room may have millions of entries. Made anew from JSON,
 * nothing in it is cut from the text of its file, which would hold the whole of that.
 */
export const readSource: ReadOne = ({ path, text }) => {
  const reading = readUnrepeated(path, text) ?? inPacks(path, readFile(path, text));
  return restored(path, JSON.parse(JSON.stringify(reading)));
};

/** What stands again on another day is read once; null where that cannot be, or is not worth the while. */
function readUnrepeated(path: string, text: string): FileReading | null {
  const rest = isJournal(path) ? withoutRepeats(text) : null;
  if (rest === null) return null;
  const reading = readFile(path, rest.text);
  const { says, text: mended, findings } = reading;
  const entries = says.journal?.entries ?? [];
  const sound = mended === null && findings.length === 0 && rest.kept.length === entries.length;
  return sound && rest.kept.every((line, index) => entryAt(entries, index).at.line === line)
    ? inPacks(path, reading, rest.repeats)
    : null;
}

function inPacks(path: string, reading: FileReading, repeats: readonly Repeat[] = []): FileReading {
  const { journal } = reading.says;
  if (journal !== undefined) journal.entries = PackedEntries.of(path, journal.entries, repeats);
  return reading;
}

/** Reads one file; where it lies in the room says what it is. */
export function readFile(path: string, source: string): FileReading {
  if (isSettings(path))
    return read(path, source, settingsShape, (...from) => ({ settings: readSettings(...from) }));
  if (isBirdList(path)) {
    return neverEmpty(
      path,
      read(path, source, birdsShape, (...from) => ({ birds: readBirds(...from) })),
    );
  }
  if (!isProfile(path) && !isJournal(path)) return unread(path, strayOf(path, source));
  const reading = isProfile(path)
    ? read(path, source, {}, (...from) => ({ profile: readOwnSpecies(path, ...from) }))
    : read(path, source, pairShape, (...from) => ({ journal: readPairJournal(path, ...from) }));
  const misplaced = reading.findings.length === 0 ? null : misplacedOf(path, source);
  return misplaced === null ? neverEmpty(path, reading) : unread(path, misplaced);
}

/** Of what nobody reads where it lies no more is told than where it belongs. */
function unread(path: string, stray: Stray | null): FileReading {
  const findings: Finding[] =
    stray === null ? [] : [{ code: 'stray-journal', at: topOf(path), args: { path, ...stray } }];
  return { says: {}, text: null, findings };
}

function read(
  path: string,
  source: string,
  shape: Shape,
  says: (root: Fields, findings: Finding[]) => Says,
): FileReading {
  const { root, text, findings } = readTree(path, source, shape);
  return { says: root === null ? {} : says(root, findings), text: text === source ? null : text, findings };
}

/** A room need not have settings or birds, but a file of them or a journal without a word is one that was lost. */
function neverEmpty(path: string, reading: FileReading): FileReading {
  const { says, findings } = reading;
  if (findings.length === 0 && Object.keys(says).length === 0) {
    findings.push({ code: 'empty-file', at: topOf(path), args: {} });
  }
  return reading;
}

function add(record: RoomRecord, { settings, birds, profile, journal }: Says, ready: Ready): void {
  if (settings !== undefined) record.settings = settings;
  for (const bird of birds ?? []) record.birds.push(bird);
  if (profile !== undefined) record.ownSpecies.push(profile);
  if (journal === undefined) return;
  const { entries } = journal;
  record.pairs.push(
    entries instanceof PackedEntries ? { ...journal, entries: entries.sharing(ready) } : journal,
  );
}

function* datesOf(record: RoomRecord): Iterable<Dated> {
  for (const log of logsOf(record)) yield* log;
}

/** Each log by itself, in the order in which it stands. */
function* logsOf({ pairs, birds, settings }: RoomRecord): Iterable<Iterable<Dated>> {
  for (const { entries } of pairs) yield datedIn(entries);
  for (const { log } of birds) yield log;
  yield settings.log;
}

function topOf(file: string): Place {
  return { file, line: 1, column: 1, length: 1 };
}
