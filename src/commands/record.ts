import { realpathSync } from 'node:fs';
import { join } from 'node:path';
import { loadRoom } from '../journal/load.ts';
import { recordJson } from '../report/json/record.ts';
import { type Recorded, recordText } from '../report/terminal/record.ts';
import { type Lock, withLock } from '../write/lock.ts';
import { replaceFile } from '../write/replace.ts';
import { keepMemory, memoryFile } from '../write/undo.ts';
import type { CommandDefinition, Context, ExitCode, Output } from './context.ts';
import { type NoPlace, type Request, type Trial, tryEntry } from './try-entry.ts';
import { UsageError } from './usage-error.ts';
import { notWritten, writer } from './writing.ts';

interface RecordOptions {
  note?: string;
  dryRun?: true;
  anyway?: true;
}

/** An editor may save just while we read: then it is read once more. */
const ATTEMPTS = 3;

export const definition: CommandDefinition = {
  examples: [
    { line: 'nestlog record LW-1 laid=1', says: 'a new egg, today' },
    { line: 'nestlog record LW-1 candled.fertile=e1,e3 candled.clear=e2', says: 'what the lamp showed' },
    { line: 'nestlog record LW-1 hatched=2 note="two at noon"', says: 'with a note' },
    { line: 'nestlog record LW-1 laid=1 --date 2026-05-16', says: 'of another day' },
    { line: 'nestlog record LW-22-11 weighed=8.4', says: 'a bird of birds.yaml' },
    {
      line: 'nestlog record LW-1 sitting --dry-run',
      says: 'what would be written, and what it would change',
    },
  ],
  arguments: [
    { name: '<pair>', description: 'whose journal: a pair, or a bird of birds.yaml' },
    { name: '[key=value...]', description: 'what was seen: laid=1, candled.clear=e2, sitting' },
  ],
  options: [
    { flags: '--note <text>', description: 'a note, as note=… is' },
    { flags: '--dry-run', description: 'show it and what it changes, and write nothing' },
    { flags: '--anyway', description: 'write it though the journal speaks against it' },
  ],
};

/** Appends one entry. What cannot be true beside the rest of the record is refused with the reason: exit code 1. */
export async function run(context: Context<RecordOptions>): Promise<ExitCode> {
  const { options, journals, stderr } = context;
  const request = requestOf(context);
  const attempt = () => tryEntry(loadRoom(journals), request);
  if (options.dryRun) return show(context, attempt());
  const locked = await withLock(journals, writer, (lock) => write(context, attempt, lock));
  return 'done' in locked ? locked.done : refuse(stderr, locked);
}

function show(context: Context<RecordOptions>, trial: Trial | NoPlace): ExitCode {
  if ('refused' in trial) return refuse(context.stderr, trial);
  return answer(context, trial, isAgainst(context, trial) ? 'refused' : 'planned');
}

function refuse(stderr: Output, { refused }: NoPlace): ExitCode {
  stderr.write(`nestlog: nothing was written: ${refused}\n`);
  return 1;
}

function requestOf({ arguments: words, options, day, today }: Context<RecordOptions>): Request {
  const [id = '', ...said] = words.map((word) => word ?? '');
  const note = options.note ?? null;
  if (/\s/.test(id) && id.includes('='))
    throw new UsageError(`the pair and what was seen are words of their own: \`nestlog record ${id}\``);
  if (said.length === 0 && note === null) {
    throw new UsageError(`what was seen? Such as \`nestlog record ${id} laid=1\`, or --note with words`);
  }
  return { id, words: said, note, day, today };
}

function write(context: Context<RecordOptions>, attempt: () => Trial | NoPlace, lock: Lock): ExitCode {
  const { journals, state, stderr } = context;
  for (let tried = 1; ; tried++) {
    const trial = attempt();
    if ('refused' in trial) return refuse(stderr, trial);
    const { plan } = trial;
    if (isAgainst(context, trial)) return answer(context, trial, 'refused');
    const outcome = replaceFile(join(journals, plan.path), plan.before, plan.after, lock.remember);
    if (outcome.state === 'written') {
      const room = realpathSync(journals);
      const lost = keepMemory(memoryFile(state, room), room, plan);
      if (lost !== null) stderr.write(`nestlog: written, but undo will not know of it: ${lost}\n`);
      return answer(context, trial, 'written');
    }
    if (outcome.state === 'changed' && tried < ATTEMPTS) continue;
    stderr.write(`nestlog: ${notWritten(plan.path, outcome)}\n`);
    return 1;
  }
}

/** What cannot be read is never written; what cannot be true is, where the keeper knows better. */
function isAgainst({ options }: Context<RecordOptions>, { verdict }: Trial): boolean {
  return verdict.unreadable.length > 0 || (verdict.errors.length > 0 && !options.anyway);
}

function answer(context: Context<RecordOptions>, trial: Trial, what: Recorded['what']): ExitCode {
  const { day, json, stdout, stderr } = context;
  const refused = what === 'refused';
  const recorded: Recorded = { ...trial, day, what };
  // What is refused is a message, not data.
  if (json) stdout.write(recordJson(recorded));
  else if (refused) stderr.write(recordText(recorded, stderr));
  else stdout.write(recordText(recorded, stdout));
  return refused ? 1 : 0;
}
