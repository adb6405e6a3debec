import { expect, test } from 'vitest';
import { explainText } from '../../../src/report/terminal/explain.ts';
import { widthOf } from '../../../src/report/terminal/width.ts';
import type { TaskWords } from '../../../src/rules/agenda/item.ts';
import { taskWords } from '../../../src/rules/agenda/tasks.ts';
import { warnings } from '../../../src/rules/warnings/index.ts';
import type { WarningWords } from '../../../src/rules/warnings/warning.ts';

const at = (width: number) => ({ width, color: false });
const named = (name: string) => {
  const found = [...taskWords, ...warnings].find((one) => ('task' in one ? one.task : one.kind) === name);
  if (found === undefined) throw new Error(`no ${name}`);
  return found;
};

test('a task is told with its days, what ends it, and how to be rid of it', () => {
  expect(explainText(named('candle'), at(80))).toMatch(
    /^candle: candle the eggs\n\nwhen {4}sitting \+ [\s\S]+\ndone {4}`candled`\nover {4}.+\n\nA lamp [\s\S]+`skip: candle`/,
  );
});

test('a warning is told with its cause, what ends it, how much it presses, and that a vet goes before it', () => {
  const text = explainText(named('egg-binding'), at(80));
  expect(text).toMatch(/^egg-binding: a warning\n\nwhen {4}`unwell` says of a hen that she strains/);
  expect(text).toMatch(
    /\nover {4}she laid[\s\S]+\nlevel {3}ACT NOW, a bird may suffer today\n\nA hen that cannot/,
  );
  expect(text).toMatch(/\n\nNothing here replaces an avian vet\.\n$/);
});

test('a warning that is no matter of health sends nobody to a vet', () => {
  expect(explainText(named('unaccounted'), at(80))).not.toContain('vet');
});

test('a warning of several levels says what each asks for', () => {
  expect(explainText(named('close-kin'), at(80))).toContain('level   WATCH, look today; note, know\n');
});

test.each<[string, TaskWords | WarningWords]>([
  ...taskWords.map((words): [string, TaskWords] => [words.task, words]),
  ...warnings.map((words): [string, WarningWords] => [words.kind, words]),
])('%s fits into 60 columns', (_name, words) => {
  for (const line of explainText(words, at(60)).split('\n')) expect(widthOf(line)).toBeLessThanOrEqual(60);
});
