import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { afterAll, expect } from 'vitest';
import type { CommandModule, Output } from '../../src/commands/context.ts';
import { commands } from '../../src/commands/index.ts';
import { runProgram } from '../../src/commands/program.ts';
import { day, dedent, type Files } from '../rooms.ts';

interface Call {
  on?: string;
  today?: string;
  json?: boolean;
  arguments?: string[];
  options?: Record<string, unknown>;
  width?: number;
  /** Where messages go; without it, a message fails the test. */
  stderr?: Output;
}

const folder = mkdtempSync(join(tmpdir(), 'nestlog-command-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

let rooms = 0;

/** Writes a room that stands in a test as text into a folder of its own, and gives the folder. */
export function roomFolder(files: Files): string {
  mkdirSync(folder, { recursive: true });
  const room = join(folder, String(rooms++));
  for (const [name, text] of Object.entries({ 'nestlog.yaml': 'room: the finch room\n', ...files })) {
    const file = join(room, name.endsWith('.yaml') ? name : `pairs/${name}.yaml`);
    mkdirSync(dirname(file), { recursive: true });
    writeFileSync(file, dedent(text));
  }
  return room;
}

/** Runs a command, in this process, on a room that stands in the test as text. */
export async function runCommand(
  command: Pick<CommandModule, 'run'>,
  files: Files,
  call: Call = {},
): Promise<{ text: string; exit: unknown }> {
  const written: string[] = [];
  const stdout = { write: (text: string) => void written.push(text), color: false, width: call.width ?? 80 };
  const on = day(call.on ?? '2026-06-01');
  const exit = await command.run({
    day: on,
    today: call.today === undefined ? on : day(call.today),
    journals: roomFolder(files),
    state: '/nowhere',
    json: call.json ?? false,
    arguments: call.arguments ?? [],
    options: call.options ?? {},
    stdout,
    stderr: call.stderr ?? { ...stdout, write: (text: string) => expect.unreachable(text) },
  });
  return { text: written.join(''), exit };
}

/** Runs the whole program, in this process, on a room that stands in the test as text, with all that a keeper types. */
export async function typed(words: string[], files: Files = {}, today = '2026-06-01') {
  const said = { out: '', err: '' };
  const stream = (name: 'out' | 'err') => () => ({
    write: (text: string) => {
      said[name] += text;
    },
    color: false,
    width: 80,
  });
  const room = roomFolder(files);
  const code = await runProgram(commands, words, {
    version: '1.2.3',
    environment: { HOME: `${room}.home` },
    here: room,
    today: () => day(today),
    stdout: stream('out'),
    stderr: stream('err'),
  });
  return { ...said, code };
}
