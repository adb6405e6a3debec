import { PassThrough } from 'node:stream';
import { expect, test } from 'vitest';
import { terminal, withAsking } from '../../src/commands/ask.ts';

function ends(typed: string) {
  const input = new PassThrough();
  const output = new PassThrough();
  input.end(typed);
  return { input, output };
}

test('answers come in the order of the questions, without the blanks around them', async () => {
  const answers = await withAsking(ends('  one \ntwo\n'), async (ask) => [
    await ask('first?'),
    await ask('second?'),
  ]);
  expect(answers).toEqual(['one', 'two']);
});

test('an empty answer, and the end of the input, are none', async () => {
  const answers = await withAsking(ends('\n'), async (ask) => [await ask('first?'), await ask('second?')]);
  expect(answers).toEqual([null, null]);
});

test('the question is shown', async () => {
  const both = ends('one\n');
  await withAsking(both, (ask) => ask('first?'));
  expect(String(both.output.read())).toBe('first? ');
});

test('without a terminal nothing is asked; a test has none', async () => {
  expect(terminal()).toBeNull();
  expect(await withAsking(null, (ask) => ask('first?'))).toBeNull();
});
