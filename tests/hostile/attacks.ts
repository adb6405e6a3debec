import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { expect } from 'vitest';
import { type HostileRoom, journal, UNSEEN } from './room.ts';

/** What was tried against the program, what happens, and the trial itself: a row of the manual's table. */
export interface Attack {
  tried: string;
  happens: string;
  files: Record<string, string | Uint8Array>;
  /** Further than this the sound pair beside it must keep its morning, which every trial asks. */
  expects: (room: HostileRoom) => void;
}

const ONE_DAY = '{date: 2026-05-02, laid: 3, sitting}';

/** The file's own findings of `check`, without excerpt and fix. */
const says = ({ nestlog }: HostileRoom, words: string) => {
  const { status, stdout, stderr } = nestlog('check');
  expect([status, stderr]).toEqual([1, '']);
  expect(stdout.replaceAll('\n  ', ' ')).toContain(words);
};

const ESCAPES = '"\\u001B[2J\\u001B]0;own\\u0007\\u202E\\u200B\\u009B31m"';

/** By what they try. A file is named by `check`; the sound pair beside it keeps its morning. */
export const attacks: readonly Attack[] = [
  {
    tried: 'a YAML bomb: anchors and aliases that grow a billion times',
    happens: 'refused as a finding where the anchor stands; nothing is expanded',
    files: { 'pairs/x.yaml': `${journal('X-1')}a: &a [x, x]\nb: &b [*a, *a]\nc: [*b, *b]\n` },
    expects: (room) => says(room, 'pairs/x.yaml:6:1: error'),
  },
  {
    tried: 'brackets nested 5,000 deep',
    happens: 'one finding at that entry; the rest of the journal counts',
    files: {
      'pairs/x.yaml': journal(
        'X-1',
        `{date: 2026-05-01, laid: ${'['.repeat(5000)}x${']'.repeat(5000)}}`,
        ONE_DAY,
      ),
    },
    expects: (room) => says(room, 'pairs/x.yaml:6:'),
  },
  {
    tried: 'a line of 200,000 characters',
    happens:
      'one finding at that line; the rest of the journal counts, also where it is a comment between two entries',
    files: {
      'pairs/x.yaml': journal('X-1', `{date: 2026-05-01, note: "${'x'.repeat(200_000)}"}`, ONE_DAY),
      'pairs/y.yaml': `${journal('Y-1', '{date: 2026-05-01, paired}')}  # ${'x'.repeat(200_000)}\n  - ${ONE_DAY}\n`,
    },
    expects: (room) => {
      says(room, 'pairs/x.yaml:6:');
      says(room, 'pairs/y.yaml:7:3: error: this cannot be read: the line is longer than 100,000 characters');
      expect(room.nestlog('pair', 'Y-1').stdout).toContain('3 eggs');
    },
  },
  {
    tried: 'a line of blanks, brackets or quotes that would keep a regular expression busy',
    happens:
      'read in a time that grows with its length alone; every expression of the program is judged by a tool in `npm run check`',
    files: {
      'pairs/x.yaml': `${journal('X-1', ONE_DAY)}  - {date: 2026-05-03, note: ${' '.repeat(15_000)}x, ${': #'.repeat(15_000)}\n${'\t#'.repeat(20_000)}\n`,
    },
    expects: (room) => says(room, 'pairs/x.yaml:8:'),
  },
  {
    tried: 'keys and names such as `__proto__`, `constructor`, `toString`',
    happens: 'words like any others: as keys unknown, as names names',
    files: {
      'pairs/x.yaml': journal(
        '__proto__',
        '{date: 2026-05-02, laid: 3, sitting, __proto__: 3}',
        '{constructor: 1}',
      ),
    },
    expects: (room) => says(room, 'there is no key `__proto__` here'),
  },
  {
    tried: 'terminal escapes, bidi and zero-width signs in names, notes, keys and file names',
    happens: 'shown as `<ESC>`, `<U+202E>` and so on, in every output; a terminal is never sent one',
    files: {
      'nestlog.yaml': `room: ${ESCAPES}\n`,
      'pairs/x\u001B[2J.yaml': `pair: X-1\nspecies: ${ESCAPES}\nhousing: ${ESCAPES}\nlog:\n  - {date: 2026-05-01, laid: 1, note: ${ESCAPES}, ${ESCAPES}: 1}\n`,
    },
    expects: ({ nestlog }) => {
      for (const words of [['due'], ['check'], ['stock'], ['season'], ['pair', 'X-1']]) {
        const { stdout, stderr } = nestlog(...words);
        expect(UNSEEN.exec(stdout + stderr)).toBeNull();
      }
    },
  },
  {
    tried: 'paths as ids: `pair: ../../x`, `nestlog start pair ../x`, `nestlog bird /etc/passwd`',
    happens: 'an id has no `/`: a finding, or wrong usage; no file outside the room is read or begun',
    files: { 'pairs/x.yaml': journal('../../x', ONE_DAY) },
    expects: (room) => {
      says(room, '`../../x` cannot be an id');
      expect(room.nestlog('start', 'pair', '../x', '--species', 'star finch').status).toBe(1);
      expect(existsSync(join(room.folder, 'x.yaml'))).toBe(false);
      expect(room.nestlog('bird', '/etc/passwd').status).toBe(2);
      expect(room.nestlog('pair', '../ok').status).toBe(2);
    },
  },
  {
    tried: 'bytes that are no UTF-8, NUL bytes, UTF-16',
    happens: 'the file is named as not being text, or read by its byte order mark; the others count',
    files: {
      'pairs/x.yaml': Uint8Array.from([0xff, 0xfe, 0xfd, 0, 1, 2, 0x80]),
      'pairs/y.yaml': Buffer.from(`${journal('Y-1', ONE_DAY)}\0`),
    },
    expects: (room) => {
      says(room, 'pairs/x.yaml:1:1: error');
      says(room, 'pairs/y.yaml:');
    },
  },
  {
    tried: 'a merge that git could not settle, left in the file',
    happens: 'the marks are findings; the lines of both sides count',
    files: {
      'pairs/x.yaml': `${journal('X-1', ONE_DAY)}<<<<<<< ours\n  - {date: 2026-05-03, checked}\n=======\n  - {date: 2026-05-04, checked}\n>>>>>>> theirs\n`,
    },
    expects: (room) => says(room, 'pairs/x.yaml:7:'),
  },
  {
    tried: 'numbers beyond all nests: `laid: 99999999999`, `clutch: -1`, `weighed: {hen: 1e308}`',
    happens: 'findings at their places; they make no work and no morning late',
    files: {
      'pairs/x.yaml': journal(
        'X-1',
        '{date: 2026-05-01, laid: 99999999999}',
        '{date: 2026-05-01, clutch: -1, laid: 1}',
        '{date: 2026-05-01, weighed: {hen: 1e308}}',
      ),
    },
    expects: (room) => {
      for (const line of [6, 7, 8]) says(room, `pairs/x.yaml:${line}:`);
    },
  },
  {
    tried: 'the machine’s clock at 1970',
    happens: 'one finding asks whether the clock is right; nothing is forgotten once it is',
    files: {
      'pairs/x.yaml': journal(
        'X-1',
        ...Array.from(
          { length: 12 },
          (_, day) => `{date: 2026-05-0${1 + (day % 9)}, time: 1${day % 6}:00, checked}`,
        ),
      ),
    },
    expects: ({ nestlogAt }) => {
      const { stdout } = nestlogAt('1970-01-01T12:00:00Z', 'check');
      expect(stdout.replaceAll('\n  ', ' ')).toContain('entries are dated later: is its clock right?');
    },
  },
  {
    tried: 'the machine’s clock at 2100, and `--date` at the ends of the calendar',
    happens: 'an answer as for any other day: what is long over is no longer asked about',
    files: {},
    expects: ({ nestlog, nestlogAt }) => {
      expect(nestlogAt('2100-01-01T12:00:00Z', 'due')).toMatchObject({ status: 0, stderr: '' });
      expect(nestlog('due', '--date', '0001-01-01').status).toBe(0);
      expect(nestlog('due', '--date', '9999-12-31').status).toBe(0);
      expect(nestlog('due', '--date', '2026-02-30').status).toBe(2);
    },
  },
  {
    tried:
      'surprises of the environment: `COLUMNS=0`, `COLUMNS=1e9`, no `HOME`, a cache folder that is no folder or where the system takes none, an unknown `TZ` or `LANG`',
    happens: 'the same morning: eighty columns, no cache, English',
    files: {},
    expects: ({ nestlog, nestlogWith }) => {
      const usual = nestlog('due').stdout;
      for (const [name, value] of [
        ['COLUMNS', '0'],
        ['COLUMNS', 'wide'],
        ['HOME', ''],
        ['XDG_CACHE_HOME', '/dev/null'],
        ['XDG_CACHE_HOME', '/proc/nestlog/cache'],
        ['TZ', 'Nowhere/Land'],
        ['LANG', 'xx_XX'],
      ] as const) {
        expect(nestlogWith({ [name]: value }, 'due'), `${name}=${value}`).toEqual({
          status: 0,
          stdout: usual,
          stderr: '',
        });
      }
      expect(nestlogWith({ COLUMNS: '1000000000' }, 'due').status).toBe(0);
    },
  },
  {
    tried: 'settings that contradict or make no sense: `season-start: 13-45`, `every: 0`, keys twice',
    happens: 'findings at their places; the usual value stands in',
    files: {
      'nestlog.yaml':
        'room: r\nroom: s\nseason-start: 13-45\nroutines:\n  - {name: a, every: 0}\nnonsense: 1\n',
    },
    expects: (room) => {
      for (const line of [2, 3, 5, 6]) says(room, `nestlog.yaml:${line}:`);
    },
  },
];
