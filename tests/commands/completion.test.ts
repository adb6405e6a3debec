import { expect, test } from 'vitest';
import { run } from '../../src/commands/completion.ts';
import { runCommand } from './run.ts';

const complete = (...words: string[]) =>
  runCommand({ run }, { 'lw-1': 'pair: LW-1\nlog:\n' }, { arguments: words });

test('each shell gets lines that it reads once', async () => {
  expect((await complete('bash')).text).toMatch(/complete -F _nestlog nestlog\n$/);
  expect((await complete('zsh')).text).toMatch(/^#compdef nestlog\n/);
  expect((await complete('fish')).text).toMatch(/complete -c nestlog /);
});

test('words are answered with the room’s own names', async () => {
  expect((await complete('words', 'due', '--pair', '')).text).toBe('LW-1\n');
  expect((await complete('words', 'chec')).text).toMatch(/^check\t/);
});

test('another shell is told which there are', async () => {
  await expect(complete('csh')).rejects.toThrow('the shells are bash, zsh, fish, not `csh`');
});
