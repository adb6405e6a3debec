import { mkdirSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { CommandDefinition, CommandModule, Context, ExitCode } from '../../src/commands/context.ts';
import type { CommandEntry } from '../../src/commands/index.ts';
import { runProgram } from '../../src/commands/program.ts';
import { UsageError } from '../../src/commands/usage-error.ts';
import { parseDay } from '../../src/days.ts';

let room: string;
beforeAll(() => {
  room = mkdtempSync(join(tmpdir(), 'nestlog-program-'));
  mkdirSync(join(room, 'pairs'));
});
afterAll(() => rmSync(room, { recursive: true }));

const TODAY = parseDay('2026-05-17') as number;

const perches: CommandModule = {
  definition: {
    examples: [
      { line: 'nestlog perches', says: 'all of them' },
      { line: 'nestlog perches LW-1 --days 3', says: 'one pair’s' },
    ],
    arguments: [{ name: '[pair]', description: 'a pair’s id' }],
    options: [
      { flags: '--days <number>', description: 'how far to look', default: 7, parse: Number },
      {
        flags: '--wood <kind>',
        description: 'of what',
        parse: (kind) => {
          if (kind === 'plastic') throw new UsageError('--wood wants a kind of wood, such as apple');
          return kind;
        },
      },
    ],
  },
  run: () => 0,
};

/** Runs a small program of our own: what its command was given, and what came out. */
async function run(
  line: string,
  {
    answer = () => 0,
    width = 80,
    ...asked
  }: { answer?: (context: Context) => ExitCode; width?: number } & Pick<
    CommandDefinition,
    'room' | 'noJson'
  > = {},
) {
  const seen = { out: '', err: '', loaded: [] as string[], context: undefined as Context | undefined };
  const into = (stream: 'out' | 'err') => (text: string) => {
    seen[stream] += text;
  };
  const entry = (name: string, summary: string): CommandEntry => ({
    name,
    summary,
    load: async () => {
      seen.loaded.push(name);
      const definition = { ...perches.definition, ...asked };
      return {
        definition,
        run: (context) => {
          seen.context = context;
          return answer(context);
        },
      };
    },
  });
  const code = await runProgram(
    [entry('perches', 'What the birds sit on.'), entry('baths', 'Where they bathe.')],
    line.split(' ').filter((word) => word !== ''),
    {
      version: '1.2.3',
      environment: { NESTLOG_JOURNALS: room },
      here: room,
      today: () => TODAY,
      stdout: (color) => ({ write: into('out'), color: color ?? false, width }),
      stderr: (color) => ({ write: into('err'), color: color ?? false, width }),
    },
  );
  return { ...seen, code };
}

describe('common options', () => {
  it('stand on either side of the command', async () => {
    const sides = ['--date 2026-03-01 --json --color perches', 'perches --date 2026-03-01 --json --color'];
    for (const line of sides) {
      const { code, context } = await run(line);
      expect(code).toBe(0);
      expect(context).toMatchObject({
        day: parseDay('2026-03-01'),
        today: TODAY,
        json: true,
        journals: room,
      });
      expect(context?.stdout.color).toBe(true);
      expect(context?.stderr.color).toBe(true);
    }
  });

  it('may be left out: then the day to stand on is today, and colour is the stream’s matter', async () => {
    const { context } = await run('perches');
    expect(context).toMatchObject({
      day: TODAY,
      today: TODAY,
      json: false,
      arguments: [],
      options: { days: 7 },
    });
  });

  it.each([
    ['2026-02-30', '2026-02-28'],
    ['01.03.2026', '2026-03-01'],
    ['1/3/26', '2026-03-01 or 2026-01-03'],
    ['2026-3-1', '2026-03-01'],
  ])('--date %s is no day, but one may be meant', async (date, meant) => {
    const { code, err, context } = await run(`perches --date ${date}`);
    expect([code, context]).toEqual([2, undefined]);
    expect(err).toBe(
      `nestlog: --date wants a day of the calendar as YYYY-MM-DD, such as 2026-05-17; it was given \`${date}\`. Did you mean ${meant}?\n`,
    );
  });
});

it('yesterday and today are answered with their days', async () => {
  expect((await run('perches --date yesterday')).err).toMatch(/Did you mean \d{4}-\d\d-\d\d\?/);
  expect((await run('perches --date soon')).err).toMatch(/it was given `soon`\n/);
});

it('what is given twice is not half lost', async () => {
  for (const twice of ['--date 2026-03-01 --date 2026-03-02', '--journals a --journals b'])
    expect((await run(`perches ${twice}`)).err).toContain('is given twice');
});

describe('a command', () => {
  it('is given its own arguments and options, without the common ones', async () => {
    const { context } = await run('perches LW-1 --days 3 --no-color');
    expect(context).toMatchObject({ arguments: ['LW-1'], options: { days: 3 } });
    expect(context?.options).not.toHaveProperty('color');
  });

  it('is loaded only when it is called', async () => {
    expect((await run('baths')).loaded).toEqual(['baths']);
    expect((await run('--help')).loaded).toEqual([]);
  });

  it('decides between exit 0 and 1', async () => {
    expect((await run('perches', { answer: () => 1 })).code).toBe(1);
  });

  it('may call the usage wrong: its sentence on stderr and exit 2', async () => {
    const answer = () => {
      throw new UsageError('there is no pair LW-9 in this room');
    };
    expect(await run('perches LW-9', { answer })).toMatchObject({
      code: 2,
      out: '',
      err: 'nestlog: there is no pair LW-9 in this room\n',
    });
    expect(await run('perches --wood plastic')).toMatchObject({ code: 2, context: undefined });
  });

  it('lets through what is nobody’s mistake but the program’s', async () => {
    const answer = () => {
      throw new TypeError('of undefined');
    };
    await expect(run('perches', { answer })).rejects.toThrow(TypeError);
  });

  it('needs a room, unless it says otherwise', async () => {
    const line = 'perches --journals nowhere';
    expect(await run(line)).toMatchObject({ code: 2, context: undefined });
    expect((await run(line, { room: 'optional' })).context?.journals).toBe(join(room, 'nowhere'));
  });
});

describe('wrong usage exits 2, with stdout left empty', () => {
  it.each([
    ['perhces', /there is no command `perhces`; did you mean `perches`\?/],
    ['perches --dyas 3', /there is no option `--dyas`; did you mean `--days`\?/],
    ['perches LW-1 LW-2', /`LW-2` is too much/],
    [
      'perches --days',
      /'--days <number>' argument missing\nRun `nestlog help perches` to see what it takes\./,
    ],
    ['', /^Usage: nestlog/],
  ])('%s', async (line, message) => {
    const { code, out, err } = await run(line);
    expect([code, out]).toEqual([2, '']);
    expect(err).toMatch(message);
  });
});

it('a command that answers with no data refuses --json before it does anything', async () => {
  const { code, err, context } = await run('perches --json', { noJson: 'it only sings' });
  expect([code, err, context]).toEqual([2, 'nestlog: perches has no JSON: it only sings\n', undefined]);
  expect((await run('perches', { noJson: 'it only sings' })).code).toBe(0);
});

describe('help', () => {
  it('is on stdout, exits 0 and lists every command with its summary', async () => {
    const { code, out, err } = await run('--help');
    expect([code, err]).toEqual([0, '']);
    expect(out).toMatch(/perches .*What the birds sit on\./);
    expect(out).toMatch(/baths .*Where they bathe\./);
  });

  it('says how to begin, where examples are and what the exit codes mean; that of a command does not', async () => {
    const { out } = await run('--help');
    for (const said of ['nestlog start room', 'nestlog help record', 'Exit codes: 0 done'])
      expect(out).toContain(said);
    expect((await run('perches --help')).out).not.toContain('Exit codes');
  });

  it('of a command shows its examples before its options, and the common options too', async () => {
    const { code, out } = await run('perches --help');
    expect(code).toBe(0);
    expect(out.startsWith('What the birds sit on.\n\nExamples:\n  nestlog perches  ')).toBe(true);
    expect(out.indexOf('Examples:')).toBeLessThan(out.indexOf('--days <number>'));
    expect(out).toContain('--journals <folder>');
  });

  it('puts what an example does below it where the window is too narrow for both', async () => {
    const beside =
      'Examples:\n  nestlog perches                all of them\n  nestlog perches LW-1 --days 3  one pair’s\n';
    expect((await run('perches --help', { width: 44 })).out).toContain(beside);
    const below =
      'Examples:\n  nestlog perches\n      all of them\n  nestlog perches LW-1 --days 3\n      one pair’s\n';
    expect((await run('perches --help', { width: 43 })).out).toContain(below);
  });

  it('on a command that there is not names the one that was meant', async () => {
    const { code, err } = await run('help perchs');
    expect(code).toBe(2);
    expect(err).toContain('there is no command `perchs`; did you mean `perches`?');
  });

  it('is also had by the word help', async () => {
    expect((await run('help perches')).out).toBe((await run('perches --help')).out);
    expect((await run('help')).out).toBe((await run('--help')).out);
  });
});

it('knows its version', async () => {
  expect(await run('--version')).toMatchObject({ code: 0, out: '1.2.3\n' });
});
