import { type SpawnSyncOptions, spawnSync } from 'node:child_process';
import {
  chmodSync,
  chownSync,
  lstatSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  statSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { join } from 'node:path';
import { beforeAll, describe, expect, test } from 'vitest';
import { replaceFile } from '../../src/write/replace.ts';
import { FAULTS, REPLACER, workshop } from './workshop.ts';

const { bundled, scratch } = workshop();

/** Longer than a page of memory and a block of a disk, so that a part of it can be on the disk. */
const OLD = `${'- {date: 2026-03-01, laid: 1, note: "old"}\n'.repeat(400)}`;
const NEW = `${OLD}- {date: 2026-03-02, laid: 1, note: "new"}\n`;

let program = '';
let faults = '';
beforeAll(async () => {
  program = await bundled(REPLACER);
  faults = await bundled(FAULTS);
});

/** A journal in a folder of its own, and its texts beside that folder. */
function journal(text = OLD) {
  const around = scratch();
  const folder = join(around, 'pairs');
  mkdirSync(folder);
  const file = join(folder, 'LW-1.yaml');
  const texts = [join(around, 'before'), join(around, 'after')] as const;
  writeFileSync(file, text);
  writeFileSync(texts[0], OLD);
  writeFileSync(texts[1], NEW);
  return { folder, file, texts, around };
}

type Journal = ReturnType<typeof journal>;

/** Replaces in a process of its own, and gives what it said; null where it was killed. */
function replace({ file, texts }: Journal, options: SpawnSyncOptions = {}, shell: string | null = null) {
  const words = ['-r', faults, program, file, ...texts];
  const { stdout, status, stderr } =
    shell === null
      ? spawnSync(process.execPath, words, options)
      : spawnSync('sh', ['-c', `${shell} "$@"`, 'sh', process.execPath, ...words], options);
  if (status === 0) return JSON.parse(stdout.toString());
  expect(stderr.toString()).toBe('');
  return null;
}

const fault = (what: string) => ({ env: { ...process.env, FAULT: what } });
const read = ({ file }: Journal) => readFileSync(file, 'utf8');

describe('without trouble', () => {
  test('the new text stands there and nothing beside it', () => {
    const one = journal();
    expect(replaceFile(one.file, OLD, NEW)).toEqual({ state: 'written' });
    expect(read(one)).toBe(NEW);
    expect(readdirSync(one.folder)).toEqual(['LW-1.yaml']);
  });

  test('a link stays one, and what it leads to is replaced', () => {
    const one = journal();
    const link = join(one.around, 'link.yaml');
    symlinkSync('pairs/LW-1.yaml', link);
    expect(replaceFile(link, OLD, NEW)).toEqual({ state: 'written' });
    expect(lstatSync(link).isSymbolicLink()).toBe(true);
    expect(read(one)).toBe(NEW);
  });

  test('the mode stays', () => {
    const one = journal();
    chmodSync(one.file, 0o640);
    replaceFile(one.file, OLD, NEW);
    expect(statSync(one.file).mode & 0o777).toBe(0o640);
  });

  test.runIf(process.getuid?.() === 0)('the owner stays', () => {
    const one = journal();
    chownSync(one.file, 65534, 65534);
    replaceFile(one.file, OLD, NEW);
    expect(statSync(one.file)).toMatchObject({ uid: 65534, gid: 65534 });
  });
});

describe('a file that somebody else changed', () => {
  test('before: it stands as that one left it', () => {
    const one = journal('theirs\n');
    expect(replaceFile(one.file, OLD, NEW)).toEqual({ state: 'changed' });
    expect(read(one)).toBe('theirs\n');
  });

  test('while the new text was being written: the same', () => {
    const one = journal();
    expect(replaceFile(one.file, OLD, NEW, () => writeFileSync(one.file, 'theirs\n'))).toEqual({
      state: 'changed',
    });
    expect(read(one)).toBe('theirs\n');
    expect(readdirSync(one.folder)).toEqual(['LW-1.yaml']);
  });

  test('by a byte that is no UTF-8: it is not what was read', () => {
    const one = journal();
    writeFileSync(one.file, Buffer.from([0xff, 0x0a]));
    expect(replaceFile(one.file, '\ufffd\n', NEW)).toEqual({ state: 'changed' });
    expect(readFileSync(one.file)).toEqual(Buffer.from([0xff, 0x0a]));
  });
});

describe('killed at any moment, the old text is whole or the new one is', () => {
  test.each([
    ['when the file beside it is begun', 'openSync 2 kill', OLD],
    ['when the text is written', 'writeFileSync 1 kill', OLD],
    ['before it is on the disk', 'fsyncSync 1 kill', OLD],
    ['before it gets its name', 'renameSync 1 kill', OLD],
    ['as soon as it has its name', 'renameSync 1 kill-behind', NEW],
    ['before the name is on the disk', 'fsyncSync 3 kill', NEW],
  ])('%s', (_, what, text) => {
    const one = journal();
    expect(replace(one, fault(what))).toBeNull();
    expect(read(one) === text).toBe(true);
  });
});

describe('when the disk fails, the outcome says which text stands', () => {
  test.each([
    ['writing', 'writeFileSync 1 ENOSPC', { reason: 'the disk is full', stands: 'before' }, OLD],
    ['a file beside it', 'openSync 1 EROFS', { reason: 'the disk can only be read', stands: 'before' }, OLD],
    [
      'bringing it to the disk',
      'fsyncSync 1 EIO',
      { reason: 'the disk does not work as it should', stands: 'before' },
      OLD,
    ],
    ['renaming', 'renameSync 1 EACCES', { reason: 'permission denied', stands: 'before' }, OLD],
    [
      'the folder',
      'fsyncSync 3 EIO',
      { reason: 'the disk does not work as it should', stands: 'after' },
      NEW,
    ],
  ])('%s', (_, what, outcome, text) => {
    const one = journal();
    expect(replace(one, fault(what))).toEqual({ state: 'failed', ...outcome });
    expect(read(one) === text).toBe(true);
    expect(readdirSync(one.folder)).toEqual(['LW-1.yaml']);
  });

  test('a file that may not grow takes a part of the text, which is never taken for the whole', () => {
    const one = journal();
    expect(replace(one, {}, 'ulimit -f 16; exec')).toEqual({
      state: 'failed',
      reason: 'the file may not grow any more',
      stands: 'before',
    });
    expect(read(one) === OLD).toBe(true);
    expect(readdirSync(one.folder)).toEqual(['LW-1.yaml']);
  });

  const canMount = spawnSync('unshare', ['-rm', 'mount', '-t', 'tmpfs', 'tmpfs', '/mnt']).status === 0;

  test.runIf(canMount)('so it is on a disk that is full', () => {
    const one = journal();
    // Room for the old text and a part of the new one; seen by this process only.
    const mount = `cp ${one.file} ${one.around}/kept && mount -t tmpfs -o size=32k tmpfs ${one.folder} && cp ${one.around}/kept ${one.file}`;
    const shell = `${mount} && node() { "$@" && cp ${one.file} ${one.around}/found && ls ${one.folder} > ${one.around}/names; }; node`;
    const { stdout } = spawnSync('unshare', [
      ...['-rm', 'sh', '-c', `${shell} "$@"`, 'sh', process.execPath, program, one.file, ...one.texts],
    ]);
    expect(JSON.parse(stdout.toString())).toEqual({
      state: 'failed',
      reason: 'the disk is full',
      stands: 'before',
    });
    expect(readFileSync(join(one.around, 'found'), 'utf8') === OLD).toBe(true);
    expect(readFileSync(join(one.around, 'names'), 'utf8')).toBe('LW-1.yaml\n');
  });
});

describe('what may not be written stays as it is', () => {
  /** A user to whom permissions apply. */
  const somebody = process.getuid?.() === 0 ? { uid: 65534, gid: 65534 } : {};

  test('a folder that can only be read', () => {
    const one = journal();
    chmodSync(one.around, 0o755);
    chmodSync(join(one.around, '..'), 0o755);
    chmodSync(one.file, 0o666);
    chmodSync(one.folder, 0o555);
    expect(replace(one, somebody)).toEqual({
      state: 'failed',
      reason: 'permission denied',
      stands: 'before',
    });
    expect(read(one) === OLD).toBe(true);
    chmodSync(one.folder, 0o755);
  });

  test('a file that its keeper made read-only, even for those who may do anything', () => {
    const one = journal();
    chmodSync(one.file, 0o444);
    expect(replaceFile(one.file, OLD, NEW)).toMatchObject({ state: 'failed', stands: 'before' });
    expect(read(one) === OLD).toBe(true);
  });

  test('a link that leads nowhere, a file that is gone', () => {
    const one = journal();
    expect(replaceFile(join(one.folder, 'none.yaml'), OLD, NEW)).toEqual({
      state: 'failed',
      reason: 'it is no longer there',
      stands: 'neither',
    });
    expect(readdirSync(one.folder)).toEqual(['LW-1.yaml']);
  });
});
