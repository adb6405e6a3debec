import { expect, test } from 'vitest';
import { taskWords } from '../../../src/rules/agenda/tasks.ts';

test('every task has its words, and each stands once', () => {
  expect(new Set(taskWords.map(({ task }) => task)).size).toBe(taskWords.length);
  for (const { say, when, doneBy, over, explain } of taskWords) {
    for (const words of [say, when, doneBy, over]) expect(words).not.toBe('');
    expect(explain).toMatch(/\.$/);
  }
});

test('where a task touches health it sends the keeper to a vet', () => {
  const explained = Object.fromEntries(taskWords.map(({ task, explain }) => [task, explain]));
  for (const task of ['next-egg', 'ring-check', 'quarantine-end']) expect(explained[task]).toMatch(/\bvet/);
});

test('no task asks for an egg to be destroyed', () => {
  for (const { say, explain } of taskWords) {
    expect(`${say} ${explain}`).not.toMatch(/\b(?:destroy|discard|dispose)\b/);
  }
});
