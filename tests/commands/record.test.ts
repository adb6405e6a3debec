import { chmodSync, existsSync, lstatSync, renameSync, symlinkSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import * as record from '../../src/commands/record.ts';
import { UsageError } from '../../src/commands/usage-error.ts';
import { dedent } from '../rooms.ts';
import { keeper } from './keeper.ts';

const LW_1 = `
  pair: LW-1
  species: lavender waxbill
  cock: LW-19-04
  hen: LW-20-11
  housing: flight 2
  log:
    - {date: 2026-05-18, clutch: 1, laid: 1}
    - {date: 2026-05-19, laid: 1}
    - {date: 2026-05-20, laid: 1}
    - {date: 2026-05-21, laid: 1, sitting, note: "tight by lamplight"}
`;
const BIRDS = `
  birds:
    - id: LW-20-11
      species: lavender waxbill
      sex: hen
`;
const room = (log = '') => keeper({ 'LW-1': dedent(LW_1) + log, 'birds.yaml': BIRDS });
const PATH = 'pairs/LW-1.yaml';

test('an entry is written behind the others, and what it changes is told', async () => {
  const { type, read } = room();
  const before = read(PATH);
  const told = await type(record, {
    words: ['LW-1', 'candled.fertile=e1,e2,e3', 'candled.clear=e4'],
    today: '2026-05-27',
  });
  const line = '- {date: 2026-05-27, candled: {fertile: [e1, e2, e3], clear: e4}}';
  expect(read(PATH)).toBe(`${before}  ${line}\n`);
  expect(told).toEqual({
    out: `Written to pairs/LW-1.yaml, line 11:\n  ${line}\n\nIn the agenda:\n  gone   candle the eggs, LW-1\n`,
    err: '',
    exit: 0,
  });
});

test('a dry run says the same and writes nothing', async () => {
  const { type, read, folder } = room();
  const before = read(PATH);
  const told = await type(record, { words: ['LW-1', 'hatched=2'], options: { dryRun: true } });
  expect(told.out).toContain(
    'Would be written to pairs/LW-1.yaml, line 11:\n  - {date: 2026-06-01, hatched: 2}\n',
  );
  expect(told.out).toContain('  new    see that the chicks are fed, LW-1: 2–3 Jun\n');
  expect(told.exit).toBe(0);
  expect(read(PATH)).toBe(before);
  expect(existsSync(join(folder, '.nestlog.lock'))).toBe(false);
});

test('a first egg is pinned to its clutch, a note comes last', async () => {
  const { type, read } = room('  - {date: 2026-05-22, lost: {eaten: all}}\n');
  await type(record, { words: ['LW-1', 'note=a new start', 'laid=1'] });
  expect(read(PATH)).toMatch(/ {2}- \{date: 2026-06-01, clutch: 2, laid: 1, note: "a new start"\}\n$/);
});

test('what is refused is mended as it was typed, what is written as it stands in the journal', async () => {
  const { type } = room();
  const fix = async (...words: string[]) =>
    /fix: .*/.exec((await type(record, { words: ['LW-1', ...words] })).err)?.[0];
  expect(await fix('candled=fertile')).toBe('fix: such as `candled.fertile=e1,e3 candled.clear=e2`');
  expect(await fix('lost=infertile')).toBe(
    'fix: eggs are e1, e2 … in laying order; a cause stands before them:',
  );
  expect(await fix('hatchd=2')).toBe('fix: did you mean `hatched`?');
  const counted = await type(record, { words: ['LW-1', 'checked.eggs=9'] });
  expect(counted.out).toContain('fix: was a line left out? `laid: 5`');
});

test('a note alone is an entry', async () => {
  const { type, read } = room();
  await type(record, { words: ['LW-1'], options: { note: 'a hawk on the roof' } });
  expect(read(PATH)).toMatch(/ {2}- \{date: 2026-06-01, note: "a hawk on the roof"\}\n$/);
});

test('a bird of the list has a log of its own', async () => {
  const { type, read } = room();
  await type(record, { words: ['LW-20-11', 'weighed=8.4'] });
  expect(read('birds.yaml')).toMatch(/sex: hen\n {4}log:\n {6}- \{date: 2026-06-01, weighed: 8.4\}\n$/);
});

describe('what cannot be true is refused with the reason', () => {
  test('an egg that is lost does not hatch', async () => {
    const { type, read } = room('  - {date: 2026-05-25, lost: {broken: e2}}\n');
    const before = read(PATH);
    const told = await type(record, { words: ['LW-1', 'hatched=e2'] });
    expect(told).toMatchObject({ out: '', exit: 1 });
    expect(told.err).toMatch(/^nestlog: nothing was written to pairs\/LW-1\.yaml: 1 thing in the record/);
    expect(told.err).toMatch(/pairs\/LW-1\.yaml:12:33: error: e2 .*lost/);
    expect(told.err).toContain('--anyway');
    expect(read(PATH)).toBe(before);
  });

  test('unless the keeper knows better: then it is written, and the finding is told', async () => {
    const { type, read } = room('  - {date: 2026-05-25, lost: {broken: e2}}\n');
    const told = await type(record, { words: ['LW-1', 'hatched=e2'], options: { anyway: true } });
    expect(told.exit).toBe(0);
    expect(told.out).toMatch(/^Written to pairs\/LW-1\.yaml, line 12:/);
    expect(told.out).toMatch(/error: e2 /);
    expect(read(PATH)).toMatch(/hatched: e2\}\n$/);
  });

  test('an entry of the past is held against what came later', async () => {
    const { type } = room('  - {date: 2026-05-30, hatched: e2}\n');
    const told = await type(record, { words: ['LW-1', 'lost.broken=e2'], on: '2026-05-25' });
    expect(told.exit).toBe(1);
    expect(told.err).toMatch(/pairs\/LW-1\.yaml:11:33: error: e2 .*lost/);
  });

  test('a day that has not come', async () => {
    const told = await room().type(record, { words: ['LW-1', 'sitting'], on: '2062-06-01' });
    expect(told.exit).toBe(1);
    expect(told.err).toContain('2062-06-01 has not come yet');
  });

  test('the same once more', async () => {
    const { type } = room();
    await type(record, { words: ['LW-1', 'checked'] });
    const told = await type(record, { words: ['LW-1', 'checked'] });
    expect(told.exit).toBe(1);
    expect(told.err).toMatch(/pairs\/LW-1\.yaml:12:5: hint: /);
  });
});

describe('what nobody can read is never written', () => {
  test.each([
    ['candeld.clear=e2', 'did you mean `candled`?'],
    ['weighed.c1=4,5', 'write 4.5'],
    ['laid=-1', 'is less than none'],
    ['nest=buliding', 'did you mean `building`?'],
  ])('%s', async (word, hint) => {
    const { type, read } = room();
    const before = read(PATH);
    const told = await type(record, { words: ['LW-1', word], options: { anyway: true } });
    expect(told).toMatchObject({ out: '', exit: 1 });
    expect(told.err).toContain(hint);
    expect(told.err).not.toContain('--anyway');
    expect(read(PATH)).toBe(before);
  });
});

test('what was wrong in the room before stands in no one’s way', async () => {
  const { type, read } = room('  - {date: 2026-05-24, hatched: e9}\n  - {date: 2026-05-25, [}\n');
  expect((await type(record, { words: ['LW-1', 'checked.eggs=4'] })).exit).toBe(0);
  expect(read(PATH)).toMatch(/ {2}- \{date: 2026-06-01, checked: \{eggs: 4\}\}\n$/);
});

test('a warning that the entry gives rise to comes first', async () => {
  const { out } = await room().type(record, {
    words: ['LW-1', 'unwell.hen=fluffed, straining'],
    today: '2026-05-19',
  });
  expect(out).toMatch(/\n {2}ACT NOW {2}LW-1/);
});

test('for programs it is data, refused or not', async () => {
  const { type } = room();
  const good = await type(record, { words: ['LW-1', 'checked'], json: true });
  expect(JSON.parse(good.out)).toEqual({
    nestlog: 1,
    date: '2026-06-01',
    written: true,
    refused: false,
    file: PATH,
    line: 11,
    lines: ['  - {date: 2026-06-01, checked}'],
    findings: [],
  });
  const bad = await type(record, { words: ['LW-1', 'hatched=9'], json: true });
  expect(bad).toMatchObject({ err: '', exit: 1 });
  expect(JSON.parse(bad.out)).toMatchObject({
    written: false,
    refused: true,
    findings: [{ code: 'too-many' }],
  });
});

test('an id is taken however its capitals are typed, and the entry numbers its clutch all the same', async () => {
  const { type } = room();
  const { out } = await type(record, { words: ['lw-1', 'laid=1'], options: { dryRun: true } });
  const same = await room().type(record, { words: ['LW-1', 'laid=1'], options: { dryRun: true } });
  expect(out).toBe(same.out);
  expect(out).toContain('LW-1');
});

describe('wrong usage', () => {
  const usage = async (...words: string[]) => {
    try {
      await room().type(record, { words });
    } catch (error) {
      if (error instanceof UsageError) return error.message;
      throw error;
    }
    return expect.unreachable();
  };

  test('names what was probably meant', async () => {
    expect(await usage('LW-11', 'laid=1')).toContain('did you mean `LW-1`?');
    expect(await usage('SF-9', 'laid=1')).toContain('`nestlog start pair SF-9`');
    expect(await usage('LW-1/1/c1', 'weighed=4.5')).toContain('`nestlog record LW-1 weighed.1/c1=4.5`');
    expect(await usage('LW-1')).toContain('`nestlog record LW-1 laid=1`');
    expect(await usage('LW-1', 'laid=1', 'laid=1')).toContain('said twice');
  });

  test('a log that no entry can be added to is left to the keeper, with the line', async () => {
    const { type } = keeper({ 'LW-1': 'pair: LW-1\nlog: none yet\n' });
    for (const options of [{}, { dryRun: true }]) {
      const { err, exit } = await type(record, { words: ['LW-1', 'laid=1'], options });
      expect(err).toMatch(/^nestlog: nothing was written: .*\n {2}- \{date: 2026-06-01, laid: 1\}\n$/);
      expect(exit).toBe(1);
    }
  });
});

describe('the disk', () => {
  test('a journal that is a link stays one', async () => {
    const { type, read, folder } = room();
    renameSync(join(folder, PATH), join(folder, 'elsewhere.txt'));
    symlinkSync('../elsewhere.txt', join(folder, PATH));
    await type(record, { words: ['LW-1', 'checked'] });
    expect(lstatSync(join(folder, PATH)).isSymbolicLink()).toBe(true);
    expect(read('elsewhere.txt')).toMatch(/checked\}\n$/);
  });

  test('a read-only journal is told to be whole', async () => {
    const { type, folder } = room();
    chmodSync(join(folder, PATH), 0o444);
    const { err, exit } = await type(record, { words: ['LW-1', 'checked'] });
    expect(exit).toBe(1);
    expect(err).toMatch(/^nestlog: nothing was written, and pairs\/LW-1\.yaml is whole, as it was: /);
  });

  test('a note longer than a line may be is refused, and the journal not blamed for it', async () => {
    const { type, read } = room();
    const before = read(PATH);
    const { err, exit } = await type(record, {
      words: ['LW-1', 'checked', `note=${'so it went, '.repeat(9000)}`],
    });
    expect(exit).toBe(1);
    expect(err).toMatch(/the entry is longer than 100,000 characters .* into a file of its own/);
    expect(read(PATH)).toBe(before);
  });

  test('a journal that is no UTF-8 is left alone', async () => {
    const { type, folder, read } = room();
    const bytes = Buffer.concat([Buffer.from(read(PATH)), Buffer.from([0x23, 0xe4, 0x0a])]);
    writeFileSync(join(folder, PATH), bytes);
    const { err, exit } = await type(record, { words: ['LW-1', 'checked'] });
    expect(exit).toBe(1);
    expect(err).toContain('UTF-8');
  });

  test('a lock that somebody holds', async () => {
    const { type, folder } = room();
    symlinkSync('1@elsewhere:x', join(folder, '.nestlog.lock'));
    const { err, exit } = await type(record, { words: ['LW-1', 'checked'] });
    expect(exit).toBe(1);
    expect(err).toMatch(/^nestlog: nothing was written: process 1 on elsewhere is writing/);
  });
});

describe('whose log it is may be said in other ways', () => {
  const typed = async (...words: string[]) => {
    const { type, read } = keeper({
      'LW-1': dedent(LW_1),
      'birds.yaml': 'birds:\n  - {id: SF-1, sex: cock, ring: AB 014}\n',
    });
    try {
      await type(record, { words });
      return read('birds.yaml');
    } catch (error) {
      return (error as UsageError).message;
    }
  };

  test('a bird by its ring', async () => {
    expect(await typed('ab 014', 'weighed=8.4')).toContain('weighed: 8.4');
  });

  test('a parent that birds.yaml does not list is recorded with its pair', async () => {
    expect(await typed('LW-20-11', 'weighed=8.4')).toContain('`nestlog record LW-1 weighed.hen=8.4`');
  });

  test('a file is no id, and the id comes first', async () => {
    expect(await typed('pairs/LW-1.yaml', 'laid=1')).toContain('did you mean `LW-1`?');
    expect(await typed('laid=1', 'LW-1')).toContain('the pair or bird comes first');
    expect(await typed('LW-1 laid=1')).toContain('words of their own: `nestlog record LW-1 laid=1`');
    expect(await typed('LW-1,SF-1', 'laid=1')).toContain('`nestlog record LW-1 …` first');
    expect(await typed('Flight 2', 'laid=1')).toContain('it is a housing, of LW-1');
    expect(await typed('my pair', 'laid=1')).toContain('`nestlog start pair "my pair"`');
  });
});
