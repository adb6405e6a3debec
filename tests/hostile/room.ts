import { spawnSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { onTestFinished } from 'vitest';
import { root } from '../../bin/build/settings.mjs';

/** A sound pair, that has to be read whatever stands beside it. Its eggs are to be looked after on {@link DAY}. */
const SOUND = `pair: OK-1
species: star finch
cock: A1
hen: A2
housing: flight 9
log:
  - {date: 2026-05-01, clutch: 1, laid: 1}
  - {date: 2026-05-02, laid: 3, sitting}
`;

const DAY = '2026-05-17';

/** The beginning of a journal up to its entries. */
export const journal = (pair: string, ...entries: string[]) =>
  `pair: ${pair}\nspecies: star finch\ncock: C-${pair}\nhen: H-${pair}\nlog:\n${entries.map((entry) => `  - ${entry}\n`).join('')}`;

export interface Said {
  status: number | null;
  stdout: string;
  stderr: string;
}

export interface HostileRoom {
  folder: string;
  /** What the built program says, with these words. */
  nestlog: (...words: string[]) => Said;
  /** The same with further variables of the environment, and with a cache. */
  nestlogWith: (variables: Record<string, string>, ...words: string[]) => Said;
  /** The same by a clock that stands at this moment; it stands on that day. */
  nestlogAt: (moment: string, ...words: string[]) => Said;
}

/** A room on the disk with the sound pair and these files, and what the built program says of it. */
export function hostileRoom(files: Record<string, string | Uint8Array>): HostileRoom {
  const folder = mkdtempSync(join(tmpdir(), 'nestlog-hostile-'));
  onTestFinished(() => rmSync(folder, { recursive: true, force: true }));
  const all = { 'nestlog.yaml': 'room: r\n', 'pairs/ok.yaml': SOUND, ...files };
  for (const [path, content] of Object.entries(all)) {
    mkdirSync(dirname(join(folder, path)), { recursive: true });
    writeFileSync(join(folder, path), content);
  }
  const call = (words: string[], variables: Record<string, string>): Said => {
    const { status, stdout, stderr } = spawnSync(
      process.execPath,
      ['bin/nestlog.js', ...words, '--journals', folder],
      {
        cwd: root,
        encoding: 'utf8',
        timeout: 10_000,
        env: { PATH: process.env.PATH, NO_COLOR: '1', TZ: 'UTC', ...variables },
      },
    );
    return { status, stdout, stderr };
  };
  const dated = (words: string[]) => (words.includes('--date') ? words : [...words, '--date', DAY]);
  return {
    folder,
    nestlog: (...words) => call([...dated(words), '--no-cache'], {}),
    nestlogWith: (variables, ...words) => call(dated(words), variables),
    nestlogAt: (moment, ...words) =>
      call([...words, '--no-cache'], {
        NODE_OPTIONS: `--require ${fileURLToPath(new URL('clock.cjs', import.meta.url))}`,
        NESTLOG_TEST_CLOCK: moment,
      }),
  };
}

/** What a terminal would act on, or hide. Line ends are the program's own. */
// biome-ignore lint/suspicious/noControlCharactersInRegex: these are what is looked for
export const UNSEEN = /[\0-\x09\x0b-\x1f\x7f-\x9f\u200b\u200e\u200f\u2028-\u202e\u2066-\u2069]/;
