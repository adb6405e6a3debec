import { expect, test } from 'vitest';
import type { Finding } from '../../src/findings/finding.ts';
import { judge, judgeFile } from '../../src/write/judge.ts';
import type { EntryPlan } from '../../src/write/plan.ts';
import { planned } from './planned.ts';

/** The new entry becomes line 4. */
const plan = planned('pair: LW-1\nlog:\n  - {date: 2026-03-01, paired}\nhousing: cage 1\n', [
  'laid=1',
]) as EntryPlan;

function finding(code: Finding['code'], line: number, args: Finding['args'] = {}, file = plan.path): Finding {
  return { code, at: { file, line, column: 1, length: 1 }, args };
}

test('what was wrong before speaks against nothing, though its line has moved', () => {
  const before = [
    finding('impossible', 3),
    finding('impossible', 4),
    finding('ring-twice', 9, {}, 'birds.yaml'),
  ];
  const after = [
    finding('impossible', 3),
    finding('impossible', 5),
    finding('ring-twice', 9, {}, 'birds.yaml'),
  ];
  expect(judge(plan, before, after)).toEqual({ unreadable: [], errors: [], hints: [] });
});

test('a line that a sentence names may have moved as well', () => {
  const twice = (line: number, named: number) => finding('bird-twice', line, { id: 'B', line: named });
  expect(judge(plan, [twice(8, 6)], [twice(9, 7)]).errors).toEqual([]);
});

test('what was there once and is there twice is new', () => {
  expect(
    judge(plan, [finding('impossible', 3)], [finding('impossible', 3), finding('impossible', 3)]).errors,
  ).toHaveLength(1);
});

test('what cannot be read, what cannot be true and what is doubtful are told apart', () => {
  const found = [finding('unknown-key', 4), finding('impossible', 4), finding('which-clutch', 4)];
  expect(judge(plan, [], found)).toEqual({ unreadable: [found[0]], errors: [found[1]], hints: [found[2]] });
});

test('a day that has not come is read all the same', () => {
  expect(judge(plan, [], [finding('future-date', 4)]).errors).toHaveLength(1);
});

test('an entry that stands there already speaks against itself', () => {
  const verdict = judge(plan, [], [finding('same-entry', 4, { line: 3 })]);
  expect(verdict.errors).toHaveLength(1);
  expect(verdict.hints).toEqual([]);
});

test('of a new file only its own findings count', () => {
  const found = [
    finding('pair-twice', 2),
    finding('unknown-species', 3),
    finding('impossible', 3, {}, 'pairs/LW-2.yaml'),
  ];
  expect(judgeFile(plan.path, found)).toEqual({ errors: [found[0]], hints: [found[1]] });
});
