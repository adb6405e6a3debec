import { expect, test } from 'vitest';
import { notWritten, textOf, writer } from '../../src/commands/writing.ts';
import { keeper } from './keeper.ts';

test('this process is alive, and one that cannot be is not', () => {
  expect(writer.isAlive(writer.pid)).toBe(true);
  expect(writer.isAlive(2 ** 30)).toBe(false);
});

test('a file is read as text, or is none', () => {
  const { folder } = keeper({});
  expect(textOf(folder, 'nestlog.yaml')).toBe('room: the finch room\n');
  expect(textOf(folder, 'none.yaml')).toBeNull();
});

test('whatever went wrong, it is said which text stands', () => {
  const failed = (stands: 'before' | 'after' | 'neither') =>
    notWritten('pairs/LW-1.yaml', { state: 'failed', reason: 'the disk is full', stands });
  expect(failed('before')).toBe(
    'nothing was written, and pairs/LW-1.yaml is whole, as it was: the disk is full',
  );
  expect(failed('after')).toContain('is written and whole');
  expect(failed('neither')).toContain('look at it before you go on');
  expect(notWritten('pairs/LW-1.yaml', { state: 'changed' })).toContain('stands as that one left it');
});
