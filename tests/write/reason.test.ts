import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { reasonOf } from '../../src/write/reason.ts';

function failure(path: string): unknown {
  try {
    return readFileSync(path);
  } catch (error) {
    return error;
  }
}

test('the usual troubles are told in words', () => {
  expect(reasonOf(failure('/nowhere/at/all'))).toBe('it is no longer there');
  expect(reasonOf(failure('/'))).toBe('it is a folder');
});

test('others as the system tells them', () => {
  expect(reasonOf(new Error('odd'))).toBe('odd');
  expect(reasonOf('odd')).toBe('odd');
});
