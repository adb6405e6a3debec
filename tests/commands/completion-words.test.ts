import { describe, expect, test } from 'vitest';
import { wordsFor } from '../../src/commands/completion-words.ts';
import type { CommandDefinition } from '../../src/commands/context.ts';

const definition: CommandDefinition = {
  examples: [{ line: 'nestlog record LW-1 laid=1', says: 'an egg' }],
  arguments: [
    { name: '<pair>', description: 'a pair' },
    { name: '[key=value...]', description: 'what was seen' },
  ],
  options: [
    { flags: '--pair <id>', description: 'only this pair' },
    { flags: '--housing <name>', description: 'only this housing' },
    { flags: '--by <order>', description: 'the order', completes: ['urgency', 'housing'] },
    { flags: '-n, --dry-run', description: 'write nothing' },
    { flags: '--map <file>', description: 'a mapping' },
  ],
};

const commands = ['record', 'species', 'bird'].map((name) => ({
  name,
  summary: `what ${name} does`,
  load: async () => ({
    definition:
      name === 'record' ? definition : { ...definition, arguments: [{ name: '[name]', description: '' }] },
    run: () => 0 as const,
  }),
}));

const looks: (string | null)[] = [];
const offered = (...words: string[]) =>
  wordsFor(words, commands, (folder) => {
    looks.push(folder);
    return {
      pairs: ['LW-1', 'LW-2', 'SF-1'],
      birds: ['LW-19-04'],
      housings: ['Flight  2', 'flight 2', 'flight 3', 'FLIGHT 2'],
      species: ['grey phoenix', 'Lavender Waxbill', 'зяблик', 'чиж'],
    };
  });

test('first the commands, with what they do', async () => {
  expect(await offered('')).toEqual([
    'record\twhat record does',
    'species\twhat species does',
    'bird\twhat bird does',
  ]);
  expect(await offered('b')).toEqual(['bird\twhat bird does']);
  expect(await offered('--date', '2026-05-17', 'b')).toEqual(['bird\twhat bird does']);
});

test('a dash offers the options of the command and those of all', async () => {
  const flags = (await offered('record', '--')).map((line) => line.split('\t')[0]);
  expect(flags).toEqual([
    '--pair',
    '--housing',
    '--by',
    '--dry-run',
    '--map',
    '--journals',
    '--date',
    '--json',
    '--color',
    '--no-color',
    '--no-cache',
    '--version',
    '--help',
  ]);
  expect(await offered('record', '--dr')).toEqual(['--dry-run\twrite nothing']);
  expect(await offered('--jo')).toEqual(['--journals\tthe room']);
});

describe('behind an option', () => {
  test('what it takes, in either way of writing it', async () => {
    expect(await offered('record', '--pair', 'l')).toEqual(['LW-1', 'LW-2']);
    expect(await offered('record', '--pair=S')).toEqual(['--pair=SF-1']);
    expect(await offered('record', '--by', '')).toEqual(['urgency', 'housing']);
  });

  test('a housing or a species once, as it was spelt first', async () => {
    expect(await offered('record', '--housing', 'fl')).toEqual(['Flight  2', 'flight 3']);
    expect(await offered('species', 'lavender')).toEqual(['Lavender Waxbill']);
    expect([await offered('species', 'з'), await offered('species', 'ч')]).toEqual([['зяблик'], ['чиж']]);
  });

  test('files and folders are the shell’s', async () => {
    expect(await offered('record', '--map', '')).toEqual([':files']);
    expect(await offered('record', '--map=x')).toEqual([':files']);
    expect(await offered('record', '--journals', '')).toEqual([':folders']);
  });

  test('nothing where nobody can know it', async () => expect(await offered('--date', '')).toEqual([]));
});

describe('an argument', () => {
  test('is known by its own name, else by that of the command', async () => {
    expect(await offered('record', 'S')).toEqual(['SF-1']);
    expect(await offered('bird', '')).toEqual(['LW-19-04']);
    expect(await offered('species', 'grey ph')).toEqual(['grey phoenix']);
    expect(await offered('species', '"red-billed')).toEqual(['red-billed firefinch']);
  });

  test('comes behind options and their values', async () => {
    expect(await offered('record', '--by', 'urgency', '--dry-run', 'S')).toEqual(['SF-1']);
  });

  test('that may be repeated is offered again and again', async () => {
    const candled = ['candled.fertile=', 'candled.clear=', 'candled.dead=', 'candled.unsure='];
    const says = 'what the lamp showed';
    expect(await offered('record', 'LW-1', 'laid=1', 'cand')).toEqual(
      candled.map((word) => `${word}\t${says}`),
    );
    expect(await offered('bird', 'LW-19-04', '')).toEqual([]);
  });
});

test('the room is looked at once it is needed, where --journals says', async () => {
  looks.length = 0;
  await offered('record', '--by', '');
  expect(looks).toEqual([]);
  await offered('--journals', 'my-room', 'record', 'S');
  await offered('--journals=other-room', 'record', 'S');
  await offered('record', 'S');
  expect(looks).toEqual(['my-room', 'other-room', null]);
});
