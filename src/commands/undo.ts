import { realpathSync } from 'node:fs';
import { join } from 'node:path';
import { undoText } from '../report/terminal/record.ts';
import { type Lock, withLock } from '../write/lock.ts';
import { replaceFile } from '../write/replace.ts';
import { forget, memoryFile, planUndo, readMemory } from '../write/undo.ts';
import type { CommandDefinition, Context, ExitCode } from './context.ts';
import { notWritten, textOf, writer } from './writing.ts';

interface UndoOptions {
  dryRun?: true;
}

export const definition: CommandDefinition = {
  examples: [
    { line: 'nestlog undo', says: 'takes back the last entry that `record` wrote here' },
    { line: 'nestlog undo --dry-run', says: 'shows which one that is' },
  ],
  options: [{ flags: '--dry-run', description: 'show what would be taken back, and write nothing' }],
  noJson: 'it takes one entry back, and says which',
};

/** Takes back the last entry. A file that was changed since is left alone, and the exit code is 1. */
export async function run(context: Context<UndoOptions>): Promise<ExitCode> {
  if (context.options.dryRun) return undo(context, null);
  const locked = await withLock(context.journals, writer, (lock) => undo(context, lock));
  if ('done' in locked) return locked.done;
  return refuse(context, `nothing was taken back: ${locked.refused}`);
}

/** @param lock null where nothing is to be written */
function undo(context: Context<UndoOptions>, lock: Lock | null): ExitCode {
  const { journals, state, stdout } = context;
  const room = realpathSync(journals);
  const file = memoryFile(state, room);
  const memory = readMemory(file);
  if (memory === null || memory.room !== room) {
    return refuse(context, 'there is no entry to take back: `record` wrote none here since the last undo');
  }
  const { path, inserted } = memory;
  const text = textOf(room, path);
  if (text === null) return refuse(context, `${path} cannot be read, so nothing was taken back`);
  const plan = planUndo(memory, text);
  if ('refused' in plan) {
    const lines = inserted.trim().split(/(?<!\s)\s*?[\r\n]+/);
    const say = `${path} was changed since, so nothing was taken back; the entry was:`;
    return refuse(context, [say, ...lines].join('\n  '));
  }
  if (lock !== null) {
    const outcome = replaceFile(join(room, path), plan.before, plan.after, lock.remember);
    if (outcome.state !== 'written') return refuse(context, notWritten(path, outcome));
    forget(file);
  }
  stdout.write(undoText({ path, inserted, done: lock !== null }));
  return 0;
}

function refuse({ stderr }: Context<UndoOptions>, why: string): ExitCode {
  stderr.write(`nestlog: ${why}\n`);
  return 1;
}
