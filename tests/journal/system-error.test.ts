import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { codeOf, meaningOf } from '../../src/journal/system-error.ts';

test('an error of the system has a code, any other has none', () => {
  expect(() => readFileSync('/')).toThrow(expect.toSatisfy((error) => codeOf(error) === 'EISDIR'));
  expect(codeOf(new Error('odd'))).toBe('');
  expect(codeOf('odd')).toBe('');
});

test('the usual troubles of a disk have words, whether it is read or written; a rare code has none', () => {
  expect(['EACCES', 'EIO', 'ENOSPC'].map(meaningOf)).toEqual([
    'permission denied',
    'the disk does not work as it should',
    'the disk is full',
  ]);
  expect(meaningOf('EMLINK')).toBeNull();
});
