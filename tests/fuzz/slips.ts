import fc from 'fast-check';
import { type Day, parseDay } from '../../src/days.ts';
import { dateOf } from '../generators/lines.ts';
import { filesOf, type Logs, plausible, wild } from '../generators/rooms.ts';
import { summaryOf } from '../generators/summary.ts';
import { room } from '../rooms.ts';
import { corpus, type TextFile } from './corpus.ts';
import { brokenByReading } from './laws.ts';
import { mutated, slips } from './mutations.ts';

/** How long one room may take, in milliseconds; the largest has the entries of three years. */
const TOO_LONG = 2000;
/** How often a slow room is tried again. */
const TRIES = 3;
const FIRST = parseDay('2026-01-01') as Day;

/** A room, the day to stand on, and what else has to hold of it. */
interface Trial {
  files: TextFile[];
  day: Day;
  law?: () => string[];
}

/** What came of many trials. */
interface Outcome {
  runs: number;
  /** Null where every law held, else the smallest case that breaks one. */
  broken: { why: string; files: TextFile[] } | null;
  /** The slowest trial, in milliseconds. */
  slowest: number;
}

interface Asked {
  runs: number;
  seed: number;
  /** Milliseconds. */
  clock: () => number;
}

/** Slips of the hand in real journals. `root` is the project's folder. */
export function slippedRooms(root: string): fc.Arbitrary<Trial> {
  const rooms = corpus(root);
  return fc
    .record({ room: fc.nat(), file: fc.nat(), made: slips(6), on: fc.nat(400) })
    .map(({ room, file, made, on }) => {
      const files = rooms[room % rooms.length] as TextFile[];
      const chosen = file % files.length;
      const slipped = files.map((source, index) =>
        index === chosen ? { ...source, text: mutated(source.text, made) } : source,
      );
      return { files: slipped, day: FIRST + on };
    });
}

/** Rooms that are written line by line; what is dated later may change nothing of an earlier day. */
export const writtenRooms: fc.Arbitrary<Trial> = fc
  .tuple(fc.oneof(wild, plausible), fc.nat(140))
  .map(([logs, on]) => ({ files: textsOf(logs), day: FIRST + on, law: () => futureShows(logs, on) }));

function textsOf(logs: Logs): TextFile[] {
  return Object.entries(filesOf(logs)).map(([name, text]) => ({ path: `pairs/${name}.yaml`, text }));
}

function futureShows(logs: Logs, on: number): string[] {
  const until = logs.map((lines) => lines.filter((line) => line.on <= on));
  const [whole, cut] = [logs, until].map((some) =>
    JSON.stringify(summaryOf(room(filesOf(some), dateOf(on)))),
  );
  return whole === cut ? [] : ['what was written later changes what was known then'];
}

/** Reads, understands and prints rooms, and looks whether every law is kept. */
export function tryRooms(trials: fc.Arbitrary<Trial>, { runs, seed, clock }: Asked): Outcome {
  let slowest = 0;
  const property = fc.property(trials, ({ files, day, law }) => {
    const timed = () => {
      const begun = clock();
      const broken = brokenByReading(files, day);
      return { broken, took: clock() - begun };
    };
    const { broken, took: first } = timed();
    let took = first;
    // A room that hangs does so each time; what else the machine was doing, or a clearing of the memory, does not.
    for (let again = 0; again < TRIES && took > TOO_LONG; again++) took = Math.min(took, timed().took);
    slowest = Math.max(slowest, took);
    if (took > TOO_LONG) broken.push(`one room took ${Math.round(took)} ms`);
    broken.push(...(law?.() ?? []));
    if (broken.length > 0) throw new Error(broken.slice(0, 3).join('\n'));
  });
  const { failed, counterexample, errorInstance, numRuns } = fc.check(property, { numRuns: runs, seed });
  const [smallest] = counterexample ?? [];
  if (!failed || smallest === undefined) return { runs: numRuns, broken: null, slowest };
  const why = errorInstance instanceof Error ? (errorInstance.stack ?? '') : String(errorInstance);
  return { runs: numRuns, broken: { why, files: smallest.files }, slowest };
}
