import { randomUUID } from 'node:crypto';
import { readFileSync, readlinkSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { hostname } from 'node:os';
import { join } from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import { codeOf } from '../journal/system-error.ts';
import { knowsNoLinks } from './links.ts';
import { reasonOf } from './reason.ts';

/** The process that writes, and how to tell whether another one is still there. */
export interface Writer {
  pid: number;
  isAlive: (pid: number) => boolean;
}

/** Held while one process writes to a room. */
export interface Lock {
  /** Remembers a half-written file, so that whoever finds the lock of a killed process can take it away. */
  remember: (temporary: string) => void;
}

/** What was done under the lock, or why it was not had: nothing was done then. */
export type Locked<T> = { done: T } | { refused: string };

/** How long another one's writing is waited for: about three seconds. A write takes some hundredths of one. */
const TRIES = 600;
const PAUSE = 5;

const NAME = '.nestlog.lock';
/** How write-file-atomic names the file beside a journal: nothing else is ever taken away. */
const HALF_WRITTEN = /\.ya?ml\.\d+$/i;

/**
 * Does something while no other nestlog writes to the room. The lock is a link that names its process: made in one step,
 * and told from the leftover of a killed process by whether that one is alive.
 */
export async function withLock<T>(
  folder: string,
  writer: Writer,
  work: (lock: Lock) => T,
  tries = TRIES,
): Promise<Locked<T>> {
  const path = join(folder, NAME);
  const mine = `${writer.pid}@${hostname()}:${randomUUID()}`;
  for (let tried = 0; ; tried++) {
    try {
      claim(path, mine);
      break;
    } catch (error) {
      if (codeOf(error) !== 'EEXIST')
        return { refused: `the room’s folder cannot be written to: ${reasonOf(error)}` };
    }
    const held = holderOf(path);
    if (held !== null && isDead(held, writer) && breakLock(path, held, mine)) continue;
    if (tried >= tries) return { refused: busy(held ?? '') };
    await pause(PAUSE * (0.5 + Math.random()));
  }
  try {
    return { done: work({ remember: (temporary) => remember(path, temporary) }) };
  } finally {
    if (holderOf(path) === mine) removeAll([traceOf(path), path]);
  }
}

/** Fails with EEXIST where somebody holds it. Disks without links get a file. */
function claim(path: string, holder: string): void {
  try {
    symlinkSync(holder, path);
  } catch (error) {
    if (!knowsNoLinks(error)) throw error;
    writeFileSync(path, holder, { flag: 'wx' });
  }
}

/** What a claim says; null where it is gone by now. */
function holderOf(path: string): string | null {
  try {
    return readlinkSync(path);
  } catch (error) {
    if (codeOf(error) !== 'EINVAL' && codeOf(error) !== 'UNKNOWN') return null;
  }
  try {
    return readFileSync(path, 'utf8');
  } catch {
    return null;
  }
}

/** One process never waits for itself: its own number on an old lock was another's, as numbers come round again. */
function isDead(held: string, writer: Writer): boolean {
  const { pid, host } = processOf(held);
  if (pid === undefined || host !== hostname()) return false;
  return Number(pid) === writer.pid || !writer.isAlive(Number(pid));
}

/** The process that a claim names, and its machine; nothing where another program made it. */
function processOf(held: string): { pid?: string; host?: string } {
  return /^(?<pid>\d+)@(?<host>[^:]*):/.exec(held)?.groups ?? {};
}

/**
 * Takes a dead process's lock away. Who may do so is settled by a second claim that bears the name of the first, so that
 * nobody takes away a lock that came into its place meanwhile. False where another one is at it.
 */
function breakLock(path: string, held: string, mine: string): boolean {
  const right = `${path}.${held.slice(held.indexOf(':') + 1)}`;
  try {
    claim(right, mine);
  } catch {
    return false;
  }
  const leftover = holderOf(traceOf(path));
  const half = leftover !== null && HALF_WRITTEN.test(leftover) ? [leftover] : [];
  const broken = holderOf(path) === held && removeAll([...half, traceOf(path), path]);
  return removeAll([right]) && broken;
}

/** Whether all of them are gone. */
function removeAll(paths: readonly string[]): boolean {
  try {
    for (const path of paths) rmSync(path, { force: true });
    return true;
  } catch {
    return false;
  }
}

const traceOf = (path: string) => `${path}.writing`;

/** Only a help to tidy up: where it cannot be made, the writing goes on. */
function remember(path: string, temporary: string): void {
  try {
    claim(traceOf(path), temporary);
  } catch {
    return;
  }
}

function busy(held: string): string {
  const { pid, host } = processOf(held);
  const who =
    pid === undefined ? 'another program' : `process ${pid}${host === hostname() ? '' : ` on ${host}`}`;
  return `${who} is writing to this room; if none is, take ${NAME} out of the room’s folder`;
}
