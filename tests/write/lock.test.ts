import { existsSync, mkdirSync, readdirSync, readlinkSync, symlinkSync, writeFileSync } from 'node:fs';
import { hostname } from 'node:os';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { type Writer, withLock } from '../../src/write/lock.ts';
import { workshop } from './workshop.ts';

const { scratch } = workshop();

const DEAD = 4_000_001;
const ALIVE = 4_000_002;
const writer: Writer = { pid: 4_000_003, isAlive: (pid) => pid !== DEAD };

const held = (folder: string, pid: number, host = hostname()) =>
  symlinkSync(`${pid}@${host}:token`, join(folder, '.nestlog.lock'));

test('while work is done the room has a lock that names its process, and none behind it', async () => {
  const folder = scratch();
  const locked = await withLock(folder, writer, () => readlinkSync(join(folder, '.nestlog.lock')));
  expect(locked).toEqual({ done: expect.stringMatching(/^4000003@/) });
  expect(readdirSync(folder)).toEqual([]);
});

test('work that throws leaves no lock', async () => {
  const folder = scratch();
  const failing = () => {
    throw new Error('no');
  };
  await expect(withLock(folder, writer, failing)).rejects.toThrow('no');
  expect(readdirSync(folder)).toEqual([]);
});

test('another process that writes is waited for', async () => {
  const folder = scratch();
  const order: string[] = [];
  const other = { ...writer, pid: ALIVE };
  await Promise.all([
    withLock(folder, writer, () => order.push('one')),
    withLock(folder, other, () => order.push('two')),
  ]);
  expect(order.sort()).toEqual(['one', 'two']);
});

test('one that goes on is not waited for forever, and nothing is done', async () => {
  const folder = scratch();
  held(folder, ALIVE);
  const locked = await withLock(folder, writer, () => expect.unreachable(), 3);
  expect(locked).toEqual({
    refused: expect.stringMatching(/^process 4000002 is writing to this room; .*\.nestlog\.lock/),
  });
  expect(readdirSync(folder)).toEqual(['.nestlog.lock']);
});

test('whether a process of another machine is alive cannot be told', async () => {
  const folder = scratch();
  held(folder, DEAD, 'elsewhere');
  const locked = await withLock(folder, writer, () => expect.unreachable(), 1);
  expect(locked).toEqual({ refused: expect.stringContaining('process 4000001 on elsewhere') });
});

test('the lock of a killed process is taken away, and what it had half written', async () => {
  const folder = scratch();
  mkdirSync(join(folder, 'pairs'));
  const half = join(folder, 'pairs', 'LW-1.yaml.2904857610');
  writeFileSync(half, 'pair: L');
  held(folder, DEAD);
  symlinkSync(half, join(folder, '.nestlog.lock.writing'));
  expect(await withLock(folder, writer, () => 'written')).toEqual({ done: 'written' });
  expect(readdirSync(folder, { recursive: true })).toEqual(['pairs']);
});

test('a process that got the number of a killed one does not wait for itself', async () => {
  const folder = scratch();
  held(folder, writer.pid);
  expect(await withLock(folder, writer, () => 'written', 1)).toEqual({ done: 'written' });
});

test('nothing but a half-written journal is ever taken away', async () => {
  const folder = scratch();
  const precious = join(folder, 'LW-1.yaml');
  writeFileSync(precious, 'pair: LW-1\n');
  held(folder, DEAD);
  symlinkSync(precious, join(folder, '.nestlog.lock.writing'));
  await withLock(folder, writer, () => null);
  expect(existsSync(precious)).toBe(true);
});

test('who may break a lock is one: the other waits', async () => {
  const folder = scratch();
  held(folder, DEAD);
  symlinkSync('1@other:x', join(folder, '.nestlog.lock.token'));
  const locked = await withLock(folder, writer, () => expect.unreachable(), 2);
  expect(locked).toEqual({ refused: expect.stringContaining('process 4000001') });
});

test('what is remembered while writing is forgotten behind it', async () => {
  const folder = scratch();
  await withLock(folder, writer, (lock) => {
    lock.remember('/somewhere/LW-1.yaml.1');
    expect(readlinkSync(join(folder, '.nestlog.lock.writing'))).toBe('/somewhere/LW-1.yaml.1');
  });
  expect(readdirSync(folder)).toEqual([]);
});

test('a folder that is not there has no lock', async () => {
  const locked = await withLock(join(scratch(), 'gone'), writer, () => expect.unreachable());
  expect(locked).toEqual({ refused: 'the room’s folder cannot be written to: it is no longer there' });
});

test('something else of that name is not waited for forever either', async () => {
  const folder = scratch();
  mkdirSync(join(folder, '.nestlog.lock'));
  const locked = await withLock(folder, writer, () => expect.unreachable(), 2);
  expect(locked).toEqual({ refused: expect.stringContaining('another program') });
});
