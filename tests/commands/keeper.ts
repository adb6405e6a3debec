import { readFileSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { onTestFinished } from 'vitest';
import type { CommandModule } from '../../src/commands/context.ts';
import { day, type Files } from '../rooms.ts';
import { roomFolder } from './run.ts';

/** What a keeper types, and the day on the wall. */
interface Typed {
  words?: string[];
  options?: Record<string, unknown>;
  /** The day to stand on; the wall's without it. */
  on?: string;
  today?: string;
  json?: boolean;
  /** The user's folder for what programs remember; one beside the room without it. */
  state?: string;
}

/** A room on the disk, and commands that write to it. */
export function keeper(files: Files, folder = roomFolder(files)) {
  const state = `${folder}.state`;
  onTestFinished(() => rmSync(state, { recursive: true, force: true }));
  return {
    folder,
    read: (path: string) => readFileSync(join(folder, path), 'utf8'),
    async type({ run }: Pick<CommandModule, 'run'>, typed: Typed = {}) {
      const said = { out: '', err: '' };
      const stream = (name: 'out' | 'err') => ({
        write: (text: string) => {
          said[name] += text;
        },
        color: false,
        width: 80,
      });
      const today = day(typed.today ?? '2026-06-01');
      const exit = await run({
        day: typed.on === undefined ? today : day(typed.on),
        today,
        journals: folder,
        json: typed.json ?? false,
        state: typed.state ?? state,
        arguments: typed.words ?? [],
        options: typed.options ?? {},
        stdout: stream('out'),
        stderr: stream('err'),
      });
      return { ...said, exit };
    },
  };
}
