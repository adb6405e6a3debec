import { createHash } from 'node:crypto';
import { readFileSync, rmSync } from 'node:fs';
import { dirname, join } from 'node:path';
import writeFileAtomic from 'write-file-atomic';
import * as z from 'zod';
import { makeFolders } from '../journal/folders.ts';
import type { EntryPlan } from './plan.ts';
import { reasonOf } from './reason.ts';

const memory = z.object({
  nestlog: z.literal(1),
  room: z.string(),
  path: z.string(),
  at: z.number(),
  inserted: z.string(),
  /** SHA-256 of the file without and with the entry. */
  before: z.string(),
  after: z.string(),
});

/** What is kept of the last entry that was written to a room. */
export type Memory = z.output<typeof memory>;

/** The way back, or why there is none. */
export type UndoPlan = { before: string; after: string } | { refused: 'changed' };

/** Where the last entry of a room is kept, in the user's folder for state. */
export function memoryFile(state: string, room: string): string {
  return join(state, 'nestlog', 'last', `${digest(room).slice(0, 16)}.json`);
}

/** Keeps an entry for `undo`. Gives the reason where it cannot be kept; the entry itself is written all the same. */
export function keepMemory(file: string, room: string, plan: EntryPlan): string | null {
  const { path, at, inserted } = plan;
  const kept: Memory = {
    nestlog: 1,
    room,
    path,
    at,
    inserted,
    before: digest(plan.before),
    after: digest(plan.after),
  };
  try {
    const problem = makeFolders(dirname(file), 0o700);
    if (problem !== null) throw problem;
    writeFileAtomic.sync(file, `${JSON.stringify(kept)}\n`, { mode: 0o600 });
    return null;
  } catch (error) {
    return reasonOf(error);
  }
}

/** The last entry of a room; null where nothing is kept, or nothing that can be understood. */
export function readMemory(file: string): Memory | null {
  try {
    return memory.parse(JSON.parse(readFileSync(file, 'utf8')));
  } catch {
    return null;
  }
}

/** An entry is taken back once. Where the file cannot be taken away the journal, which has changed since, tells it too. */
export function forget(file: string): void {
  try {
    rmSync(file, { force: true });
  } catch {
    return;
  }
}

/** How to take the entry out again: only of a file that nobody has touched since. */
export function planUndo({ at, inserted, before, after }: Memory, text: string): UndoPlan {
  if (digest(text) !== after) return { refused: 'changed' };
  const without = text.slice(0, at) + text.slice(at + inserted.length);
  return digest(without) === before ? { before: text, after: without } : { refused: 'changed' };
}

function digest(text: string): string {
  return createHash('sha256').update(text).digest('hex');
}
