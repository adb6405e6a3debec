import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { build } from 'esbuild';
import { afterAll } from 'vitest';
import { root, settings } from '../../bin/build/settings.mjs';

/** Folders for the tests of one file that write, and programs for processes of their own; all is gone behind them. */
export function workshop() {
  const folder = mkdtempSync(join(tmpdir(), 'nestlog-write-'));
  afterAll(() => rmSync(folder, { recursive: true, force: true }));
  let programs = 0;
  return {
    /** A new folder. */
    scratch: () => mkdtempSync(join(folder, 'room-')),
    /** A program from TypeScript that imports from `./src`; gives its path. */
    async bundled(contents: string): Promise<string> {
      const outfile = join(folder, `program-${programs++}.cjs`);
      await build({ ...settings, stdin: { contents, resolveDir: root, loader: 'ts' }, outfile });
      return outfile;
    },
  };
}

/** Appends entries to journals of a room in turn, each in a write of its own: `ROOM NAME COUNT JOURNAL…`. */
export const APPENDER = `
  import { readFileSync } from 'node:fs';
  import { pairLog } from './src/journal/pair-journal.ts';
  import { withLock } from './src/write/lock.ts';
  import { planEntry } from './src/write/plan.ts';
  import { replaceFile } from './src/write/replace.ts';
  import { entryOfWords } from './src/write/words.ts';
  import { writer } from './src/commands/writing.ts';

  const [room = '', name = '', count = '1', ...journals] = process.argv.slice(2);
  async function main() {
    for (let i = 1; i <= Number(count); i++) {
      const spoken = entryOfWords(['checked'], { day: 20000 + i, note: name + ' ' + i, grammar: pairLog });
      const journal = journals[i % journals.length];
      const path = room + '/' + journal;
      const locked = await withLock(room, writer, (lock) => {
        const file = { path: journal, text: readFileSync(path, 'utf8') };
        const plan = planEntry(file, { of: 'pair' }, spoken.entry);
        return replaceFile(path, plan.before, plan.after, lock.remember);
      });
      if (!('done' in locked) || locked.done.state !== 'written') {
        console.log(JSON.stringify(locked));
        process.exitCode = 1;
        return;
      }
      console.log(i);
    }
  }
  main();
`;

/** Replaces a file and prints what became of it: `FILE BEFORE AFTER`, the last two by the files that hold the texts. */
export const REPLACER = `
  import { readFileSync } from 'node:fs';
  import { replaceFile } from './src/write/replace.ts';
  const [file, before, after] = process.argv.slice(2);
  console.log(JSON.stringify(replaceFile(file, readFileSync(before, 'utf8'), readFileSync(after, 'utf8'))));
`;

/**
 * Makes calls of the file system fail, or kills the process at one: loaded before a program with `-r`, told by the
 * variable `FAULT`, such as `fsyncSync 2 EIO` or `renameSync 1 kill`.
 */
export const FAULTS = `
  import fs from 'node:fs';
  const [name = '', call = '1', what = ''] = (process.env.FAULT ?? '').split(' ');
  const original = fs[name];
  let calls = 0;
  if (original !== undefined) fs[name] = (...words) => {
    if (++calls !== Number(call)) return original(...words);
    if (what === 'kill-behind') original(...words);
    if (what.startsWith('kill')) process.kill(process.pid, 'SIGKILL');
    throw Object.assign(new Error(what), { code: what });
  };
`;
