import { expect, test } from 'vitest';
import { run } from '../../src/commands/check.ts';
import type { Files } from '../rooms.ts';
import { runCommand } from './run.ts';

const check = (files: Files, { json, all }: { json?: boolean; all?: boolean } = {}) =>
  runCommand({ run }, files, { json, options: { all } });

const sound = `
  pair: LW-1
  species: lavender waxbill
  cock: LW-19-04
  hen: LW-20-11
  log:
    - {date: 2026-03-01, laid: 1}
    - {date: 2026-03-02, laid: 1}
`;

test('a sound room is told so, and the exit code is 0', async () => {
  expect(await check({ 'lw-1': sound })).toEqual({
    text: 'All is well: 1 pair and 2 entries of the finch room read, and nothing to mend.\n',
    exit: 0,
  });
});

test('an error makes the exit code 1', async () => {
  const { text, exit } = await check({ 'lw-1': sound.replace('laid: 1}', 'laid: -1}') });
  expect(text).toMatch(/^pairs\/lw-1\.yaml:6:30: error: -1 /);
  expect(exit).toBe(1);
});

test('hints never do', async () => {
  const { text, exit } = await check({ 'lw-1': sound.replace('lavender waxbill', 'lavendar waxbill') });
  expect(text).toMatch(/^pairs\/lw-1\.yaml:2:10: hint: /);
  expect(exit).toBe(0);
});

test('five mistakes are five findings', async () => {
  const entries = ['laid: -1', 'candeld: 2', 'hatched: x', 'candled: {fertille: 1}', 'weighed: {c1: 4,5}'];
  const log = entries.map((entry, index) => `    - {date: 2026-03-0${index + 3}, ${entry}}\n`).join('');
  const { text } = await check({ 'lw-1': `${sound.trimEnd()}\n${log}` });
  expect(text.match(/^pairs\S+ error: /gm)).toHaveLength(5);
});

test('a file with one mistake many times is cut short, unless all is asked for', async () => {
  const log = Array.from(
    { length: 25 },
    (_, index) => `    - {date: 2026-04-${index + 1 < 10 ? 0 : ''}${index + 1}, laid: -1}\n`,
  );
  const files = { 'lw-1': `${sound.trimEnd()}\n${log.join('')}` };
  expect((await check(files)).text).toContain('\npairs/lw-1.yaml: and 5 more\n');
  expect((await check(files, { all: true })).text).not.toContain('more');
  expect(JSON.parse((await check(files, { json: true })).text).findings).toHaveLength(25);
});
