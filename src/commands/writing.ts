import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { codeOf } from '../journal/system-error.ts';
import type { Writer } from '../write/lock.ts';
import type { Replaced } from '../write/replace.ts';

/** This process, as the one that writes. */
export const writer: Writer = {
  pid: process.pid,
  isAlive: (pid) => {
    try {
      return process.kill(pid, 0);
    } catch (error) {
      // Another user's process is alive as well.
      return codeOf(error) === 'EPERM';
    }
  },
};

/** The text of a file of the room, or null where it cannot be read. */
export function textOf(room: string, path: string): string | null {
  try {
    return readFileSync(join(room, path), 'utf8');
  } catch {
    return null;
  }
}

/** Why a file was not written, and what stands there now. */
export function notWritten(path: string, outcome: Exclude<Replaced, { state: 'written' }>): string {
  if (outcome.state === 'changed') {
    return `${path} was changed by another program at the same moment, and stands as that one left it; try again`;
  }
  const { reason, stands } = outcome;
  if (stands === 'before') return `nothing was written, and ${path} is whole, as it was: ${reason}`;
  if (stands === 'after') return `${path} is written and whole, but may not be on the disk yet: ${reason}`;
  return `${path} was not written by nestlog: ${reason}; look at it before you go on`;
}
