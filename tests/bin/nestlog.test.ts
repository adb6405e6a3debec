import { spawnSync } from 'node:child_process';
import { cpSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { homedir, tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { root } from '../../bin/build/settings.mjs';
import { version } from '../../package.json';

const environment = { PATH: process.env.PATH, HOME: homedir(), NO_COLOR: '1', COLUMNS: '80', TZ: 'UTC' };

/** Runs Node with these words, and gives all that came out. */
function node(words: string[], { cwd = root, env = {} } = {}) {
  const { status, stdout, stderr } = spawnSync(process.execPath, words, {
    cwd,
    encoding: 'utf8',
    env: { ...environment, ...env },
  });
  return { status, stdout, stderr };
}

describe('the program', () => {
  it('knows its version without its bundle', () => {
    const said = { status: 0, stdout: `${version}\n`, stderr: '' };
    expect(node(['bin/nestlog.js', '--version'])).toEqual(said);
    expect(node(['bin/nestlog.js', '-V'])).toEqual(said);
  });

  it('keeps stdout for data: what is wrong goes to stderr, with exit 2', () => {
    const { status, stdout, stderr } = node(['bin/nestlog.js', 'no-such-command']);
    expect([status, stdout]).toEqual([2, '']);
    expect(stderr).toMatch(/^nestlog: there is no command `no-such-command`/);
  });

  it('says so where the folder of its terminal was taken away', () => {
    const program = join(root, 'bin/nestlog.js');
    const script = `cd "$(mktemp -d)" && rmdir "$PWD" && ${process.execPath} ${program}`;
    const inNone = (words: string) =>
      spawnSync('bash', ['-c', `${script} ${words}`], { encoding: 'utf8', env: environment });
    const { status, stdout, stderr } = inNone('due');
    expect([status, stdout]).toEqual([2, '']);
    expect(stderr).toMatch(/^nestlog: the folder that this terminal stands in is no longer there; .*\n$/);
    expect(inNone('--version').stdout).toBe(`${version}\n`);
  });

  // zod leaves this mark on the global object when its code runs.
  it('shows its help without having run any command’s code', () => {
    const marked = (words: string) => {
      const script = `require('./dist/nestlog.cjs').main(${words}, 'x')
        .then(() => console.log('grammar loaded:', '__zod_globalRegistry' in globalThis))`;
      return node(['-e', script]).stdout;
    };
    expect(marked("['--help']")).toMatch(/^Usage: nestlog.*grammar loaded: false\n$/s);
    expect(marked("['due', '--help']")).toMatch(/^.*Usage: nestlog due.*grammar loaded: true\n$/s);
  });

  it('understands signs that are no ASCII as its sources do, though it is loaded one byte a character', () => {
    const room = mkdtempSync(join(tmpdir(), 'nestlog-signs-'));
    mkdirSync(join(room, 'pairs'));
    const log = 'log:\n  - {date: 2026-03-01, laid: 1, measured: {e1: 15 × 11}}\n';
    writeFileSync(join(room, 'pairs/a.yaml'), `pair: A\nspecies: star finch\n${log}`);
    const { status, stdout } = node(['bin/nestlog.js', 'check', '--journals', room]);
    rmSync(room, { recursive: true });
    expect([status, stdout]).toEqual([0, expect.stringContaining('nothing to mend')]);
    expect(/[^\0-\x7f]/.test(readFileSync(join(root, 'dist/nestlog.cjs'), 'utf8'))).toBe(false);
  });

  it('takes a closed pipe for a reader that has seen enough', () => {
    const script = `node bin/nestlog.js --help | true; echo "\${PIPESTATUS[0]}"`;
    const { stdout, stderr } = spawnSync('bash', ['-c', script], {
      cwd: root,
      encoding: 'utf8',
      env: environment,
    });
    expect([stdout, stderr]).toEqual(['0\n', '']);
  });
});

describe('the launcher', () => {
  let folder: string;
  beforeEach(() => {
    folder = mkdtempSync(join(tmpdir(), 'nestlog-launcher-'));
    cpSync(join(root, 'bin'), join(folder, 'bin'), { recursive: true });
    writeFileSync(join(folder, 'package.json'), '{"version": "4.5.6"}');
  });
  afterEach(() => rmSync(folder, { recursive: true }));

  /** Runs the launcher over a program that does this. */
  const launch = (body: string, env = {}) => {
    mkdirSync(join(folder, 'dist'));
    writeFileSync(join(folder, 'dist/nestlog.cjs'), `exports.main = async () => { ${body} };`);
    return node(['bin/nestlog.js', 'due', '--date', '2026-05-17'], { cwd: folder, env });
  };

  it('says how to build the program when it is not built', () => {
    const { status, stderr } = node(['bin/nestlog.js', 'due'], { cwd: folder });
    expect(status).toBe(2);
    expect(stderr).toBe('nestlog: the program is not built yet; run `npm run build` in its folder first.\n');
  });

  it('answers a mistake of the program with one calm paragraph, and no stack', () => {
    const { status, stdout, stderr } = launch(
      `throw new TypeError('no egg in ' + require('node:os').homedir() + '/room\\u001b[31m\\n')`,
    );
    expect([status, stdout]).toEqual([2, '']);
    expect(stderr).toContain('nestlog 4.5.6 met something it was not made for');
    expect(stderr).toContain('"TypeError: no egg in ~/room [31m ", from "nestlog due --date 2026-05-17"');
    expect(stderr.trimEnd().split('\n')).toHaveLength(1);
    expect(stderr).not.toMatch(/^\s+at /m);
  });

  it('shows the stack to who asks for it', () => {
    expect(launch(`throw new TypeError('no egg')`, { NESTLOG_DEBUG: '1' }).stderr).toMatch(/no egg\n\s+at /);
  });

  it('answers an error outside the promise in the same way', () => {
    const { status, stderr } = launch(`setTimeout(() => { throw new RangeError('too many eggs') })`);
    expect(status).toBe(2);
    expect(stderr).toContain('"RangeError: too many eggs"');
  });

  it('says it when the disk takes no more', () => {
    const body = `const error = Object.assign(new Error('full'), { code: 'ENOSPC', syscall: 'write' });
      setTimeout(() => { throw error })`;
    const { status, stderr } = launch(body);
    expect([status, stderr]).toEqual([2, 'nestlog: its output could not be written (ENOSPC).\n']);
  });
});
