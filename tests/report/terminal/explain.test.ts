import { expect, test } from 'vitest';
import { explainText } from '../../../src/report/terminal/explain.ts';
import { widthOf } from '../../../src/report/terminal/width.ts';
import { taskWords } from '../../../src/rules/agenda/tasks.ts';

test('a task is told with its days, what ends it, and how to be rid of it', () => {
  const candle = taskWords.find(({ task }) => task === 'candle');
  if (candle === undefined) return expect.unreachable();
  expect(explainText(candle, { width: 80, color: false })).toMatch(
    /^candle: candle the eggs\n\nwhen {4}sitting \+ [\s\S]+\ndone {4}`candled`\nover {4}.+\n\nA lamp [\s\S]+`skip: candle`/,
  );
});

test.each(taskWords.map((words) => [words.task, words] as const))(
  '%s fits into 60 columns',
  (_task, words) => {
    for (const line of explainText(words, { width: 60, color: false }).split('\n')) {
      expect(widthOf(line)).toBeLessThanOrEqual(60);
    }
  },
);
