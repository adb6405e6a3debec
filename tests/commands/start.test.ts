import { existsSync, mkdirSync, mkdtempSync, readdirSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { PassThrough, Writable } from 'node:stream';
import { afterAll, describe, expect, test } from 'vitest';
import type { Terminal } from '../../src/commands/ask.ts';
import * as check from '../../src/commands/check.ts';
import type { Context } from '../../src/commands/context.ts';
import * as record from '../../src/commands/record.ts';
import { definition, run } from '../../src/commands/start.ts';
import { UsageError } from '../../src/commands/usage-error.ts';
import { keeper } from './keeper.ts';

const scratch = mkdtempSync(join(tmpdir(), 'nestlog-start-'));
afterAll(() => rmSync(scratch, { recursive: true, force: true }));

const empty = () => keeper({}, mkdtempSync(join(scratch, 'room-')));
const start = { run: (context: Context<never>) => run(context, null) };

/** A terminal at which these answers are typed, and what it shows. */
function talk(...answers: string[]) {
  const input = new PassThrough();
  input.end(answers.map((answer) => `${answer}\n`).join(''));
  const shown: string[] = [];
  const output = new Writable({
    write(chunk, _, done) {
      shown.push(String(chunk));
      done();
    },
  });
  const ends: Terminal = { input, output };
  return { shown, start: { run: (context: Context<never>) => run(context, ends) } };
}

describe('start room', () => {
  test('makes a folder a room that check finds nothing in', async () => {
    const { type, read, folder } = empty();
    const { out, err, exit } = await type(start, { words: ['room'], options: { name: 'the finch room' } });
    expect({ err, exit }).toEqual({ err: '', exit: 0 });
    expect(out).toMatch(/^The room is begun:\n/);
    expect(out).toContain('nestlog start pair LW-1');
    expect(read('nestlog.yaml')).toContain('\nroom: the finch room\n');
    expect(readdirSync(folder).sort()).toEqual(['.nestlog', 'birds.yaml', 'nestlog.yaml', 'pairs']);
    expect(readdirSync(join(folder, '.nestlog')).sort()).toEqual(
      ['birds', 'pair', 'room', 'species'].map((kind) => `${kind}.schema.json`),
    );
    expect(await type(check)).toMatchObject({ out: expect.stringMatching(/^All is well/), exit: 0 });
  });

  test('in a folder of its own, which need not be there yet', async () => {
    const { type, folder } = empty();
    await type(start, { words: ['room', join(folder, 'upstairs/finches')] });
    expect(existsSync(join(folder, 'upstairs/finches/nestlog.yaml'))).toBe(true);
  });

  test('never touches a room that is there', async () => {
    const { type, read } = keeper({});
    const before = read('nestlog.yaml');
    const { err, exit } = await type(start, { words: ['room'], options: { name: 'another' } });
    expect(exit).toBe(1);
    expect(err).toMatch(/^nestlog: nothing was written: .* is a room already\n$/);
    expect(read('nestlog.yaml')).toBe(before);
  });

  test('says so where a file stands in the place of its pairs', async () => {
    const { type, folder } = empty();
    writeFileSync(join(folder, 'pairs'), '');
    const { err, exit } = await type(start, { words: ['room'] });
    expect(exit).toBe(1);
    expect(err).toMatch(
      /^nestlog: nothing was written: .*pairs is no folder, and the journals are to lie there\n$/,
    );
    expect(readdirSync(folder)).toEqual(['pairs']);
  });

  test('keeps birds that are there already', async () => {
    const { type, read, folder } = empty();
    writeFileSync(join(folder, 'birds.yaml'), 'birds: []\n');
    expect((await type(start, { words: ['room'] })).exit).toBe(0);
    expect(read('birds.yaml')).toBe('birds: []\n');
  });

  test('with git writes what it needs, and how to check before each commit', async () => {
    const { type, read } = empty();
    const { out } = await type(start, { words: ['room'], options: { git: true } });
    expect(read('.gitattributes')).toContain('merge=union');
    expect(out).toContain('> .git/hooks/pre-commit && chmod +x .git/hooks/pre-commit\n');
  });

  test('lines for git are offered where a file of that name has others', async () => {
    const { type, read, folder } = empty();
    writeFileSync(join(folder, '.gitattributes'), '*.svg binary\n');
    const { out } = await type(start, { words: ['room'], options: { git: true } });
    expect(read('.gitattributes')).toBe('*.svg binary\n');
    expect(out).toContain('  pairs/**/*.yaml merge=union\n');
  });

  test('at a terminal asks for name and git', async () => {
    const { type, read } = empty();
    const { shown, start: asking } = talk('the finch room', 'y');
    await type(asking, { words: ['room'] });
    expect(shown).toEqual([expect.stringContaining('called?'), expect.stringContaining('git')]);
    expect(read('nestlog.yaml')).toContain('\nroom: the finch room\n');
    expect(read('.gitattributes')).toContain('merge=union');
  });
});

describe('start pair', () => {
  const options = {
    species: 'lavender waxbill',
    cock: 'LW-19-04',
    hen: 'LW-20-11,LW-20-12',
    housing: 'flight 2',
  };

  test('begins a journal that record can go on with', async () => {
    const { type, read } = keeper({});
    const { out, err, exit } = await type(start, { words: ['pair', 'LW-4'], options });
    expect({ err, exit }).toEqual({ err: '', exit: 0 });
    expect(out).toBe(
      'The journal is begun:\n  pairs/LW-4.yaml\n\nGo on with:\n  nestlog record LW-4 paired\n  nestlog record LW-4 laid=1\n',
    );
    const before = read('pairs/LW-4.yaml');
    expect(before).toContain('\nhen: [LW-20-11, LW-20-12]\n');
    await type(record, { words: ['LW-4', 'paired'] });
    expect(read('pairs/LW-4.yaml')).toBe(`${before}  - {date: 2026-06-01, paired}\n`);
    expect((await type(check)).exit).toBe(0);
  });

  test('never touches a journal that is there, whatever its file', async () => {
    const { type, folder } = keeper({ 'finches/old': 'pair: LW-4\nlog:\n' });
    const { err, exit } = await type(start, { words: ['pair', 'LW-4'], options });
    expect(exit).toBe(1);
    expect(err).toContain('the pair `LW-4` already has a journal');
    expect(existsSync(join(folder, 'pairs/LW-4.yaml'))).toBe(false);
  });

  test('in a folder below pairs/, and in none that leads out of it', async () => {
    const { type, read } = keeper({});
    const { out, exit } = await type(start, {
      words: ['pair', 'LW-4'],
      options: { ...options, into: 'waxbills' },
    });
    expect([exit, out]).toEqual([0, expect.stringContaining('pairs/waxbills/LW-4.yaml')]);
    expect(read('pairs/waxbills/LW-4.yaml')).toMatch(
      /^# yaml-language-server: \$schema=\.\.\/\.\.\/\.nestlog/,
    );
    expect((await type(check)).exit).toBe(0);
    const into = definition.options?.find(({ flags }) => flags.startsWith('--into'));
    expect(into?.parse?.('waxbills/small')).toBe('waxbills/small');
    for (const folder of ['../elsewhere', '/tmp', '.git', 'C:\\birds']) {
      expect(() => into?.parse?.(folder)).toThrow('--into takes a folder below pairs/');
    }
  });

  test('nor a file that has its name', async () => {
    const { type, read } = keeper({ 'LW-4': 'pair: LW-7\nlog:\n' });
    const { err, exit } = await type(start, { words: ['pair', 'LW-4'], options });
    expect(exit).toBe(1);
    expect(err).toContain('pairs/LW-4.yaml: a file of this name is there by now');
    expect(read('pairs/LW-4.yaml')).toBe('pair: LW-7\nlog:\n');
    await type(start, { words: ['pair', 'LW-5'], options });
    const again = await type(start, { words: ['pair', 'LW-5'], options });
    expect([again.exit, again.err]).toEqual([
      1,
      'nestlog: nothing was written: pairs/LW-5.yaml: a file of this name is there by now\n',
    ]);
  });

  test('a species without a profile is told, and begun all the same', async () => {
    const { type } = keeper({});
    const { err, exit } = await type(start, {
      words: ['pair', 'LW-4'],
      options: { species: 'lavendar waxbill' },
    });
    expect(exit).toBe(0);
    expect(err).toContain('did you mean `lavender waxbill`?');
  });

  test('an id that no journal can have, a hen of the wrong sex', async () => {
    const { type, folder } = keeper({ 'birds.yaml': 'birds:\n  - {id: LW-19-04, sex: cock}\n' });
    expect(await type(start, { words: ['pair', 'e1'], options })).toMatchObject({ exit: 1 });
    const { err, exit } = await type(start, {
      words: ['pair', 'LW-4'],
      options: { ...options, hen: 'LW-19-04' },
    });
    expect(exit).toBe(1);
    expect(err).toContain('LW-19-04 stands as hen of LW-4 but is a cock');
    expect(existsSync(join(folder, 'pairs'))).toBe(false);
  });

  test('without a terminal nothing is asked', async () => {
    const { type } = keeper({});
    await expect(type(start, { words: ['pair'] })).rejects.toThrow(UsageError);
    await expect(type(start, { words: ['pair', 'LW-4'] })).rejects.toThrow('--species');
    await expect(type(start, { words: ['cage'] })).rejects.toThrow('start room, or start pair');
    await expect(empty().type(start, { words: ['pair', 'LW-4'], options })).rejects.toThrow(
      'nestlog start room',
    );
  });

  test('at a terminal only what is missing is asked for', async () => {
    const { type, read } = keeper({});
    const { shown, start: asking } = talk('lavender waxbill', '', 'cage 1');
    await type(asking, { words: ['pair', 'LW-4'], options: { cock: 'LW-19-04' } });
    expect(shown).toHaveLength(3);
    expect(read('pairs/LW-4.yaml')).toContain(
      '\nspecies: lavender waxbill\ncock: LW-19-04\nhen: unknown\nhousing: cage 1\nlog:\n',
    );
  });
});

test('a folder that cannot be written to gets nothing', async () => {
  const { type, folder } = empty();
  mkdirSync(join(folder, 'no'));
  writeFileSync(join(folder, 'no', '.nestlog'), 'a file where the folder of schemas would be');
  const { err, exit } = await type(start, { words: ['room', join(folder, 'no')] });
  expect(exit).toBe(1);
  expect(err).toMatch(/^nestlog: nothing was written: /);
  expect(statSync(join(folder, 'no')).isDirectory()).toBe(true);
  expect(readdirSync(join(folder, 'no'))).toEqual(['.nestlog']);
});

describe('what is typed otherwise', () => {
  const pair = async (words: string[], options: object = {}) => {
    const there = empty();
    await there.type(start, { words: ['room'], options: { name: 'x' } });
    try {
      const told = await there.type(start, { words, options: { species: 'star finch', ...options } });
      return { ...told, ...there };
    } catch (error) {
      return { err: (error as UsageError).message, ...there };
    }
  };

  test('blanks around an id are not part of it', async () => {
    const { read } = await pair(['pair', 'SF-4 ']);
    expect(read('pairs/SF-4.yaml')).toContain('pair: SF-4\n');
  });

  test('a folder may be named from the room', async () => {
    const { read } = await pair(['pair', 'SF-4'], { into: 'old' });
    expect(read('pairs/old/SF-4.yaml')).toContain('pair: SF-4\n');
  });

  test('an option of the other kind is not passed over', async () => {
    expect((await pair(['pair', 'SF-4'], { name: 'SF-4' })).err).toMatch(/--name belongs to/);
  });

  test('a file, another word, or the id alone is answered with what was meant', async () => {
    expect((await pair(['pair', 'pairs/SF-4.yaml'])).err).toMatch(/did you mean `SF-4`/);
    expect((await pair(['Pairs', 'SF-4'])).err).toMatch(/`nestlog start pair`/);
    expect((await pair(['SF-4'])).err).toMatch(/`nestlog start pair SF-4`/);
    expect((await pair(['bird', 'SF-4'])).err).toMatch(/birds.yaml/);
  });

  test('a pair of the same name but for capitals is not begun a second time', async () => {
    const there = empty();
    await there.type(start, { words: ['room'], options: { name: 'x' } });
    await there.type(start, { words: ['pair', 'SF-4'], options: { species: 'star finch' } });
    const told = await there.type(start, { words: ['pair', 'sf-4'], options: { species: 'star finch' } });
    expect([told.exit, told.err]).toEqual([1, expect.stringContaining('differ only in capitals')]);
  });
});
