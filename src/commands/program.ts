import { type Command, CommanderError, Option } from 'commander';
import { type Day, parseDay } from '../days.ts';
import { dateMeant } from '../journal/grammar/date-text.ts';
import { cacheFolder, stateFolder } from './cache-folder.ts';
import { CommandLine, noCommand, wrongDash } from './command-line.ts';
import type { CommandDefinition, CommandModule, ExitCode, Output } from './context.ts';
import type { CommandEntry } from './index.ts';
import { keepAnswer } from './kept-answer.ts';
import { anyFolder, roomFolder } from './room-folder.ts';
import { UsageError } from './usage-error.ts';

/** All that a run of the program takes from outside. */
export interface World {
  version: string;
  environment: Record<string, string | undefined>;
  /** The folder in which the program was called. */
  here: string;
  today: () => Day;
  /** Where the answer to this call may be kept for the next one; undefined where none is to be kept. */
  answer?: string | undefined;
  /** Says to somebody who looks on what is being waited for. */
  progress?: (text: string) => void;
  /** The stream with its decisions, once it is known whether `--color` or `--no-color` was given. */
  stdout: (color: boolean | undefined) => Output;
  stderr: (color: boolean | undefined) => Output;
}

const WRONG_USAGE = 2;

/** What whoever asks for help first does not know yet. */
const FIRST_STEPS = `
New here? \`nestlog start room\` begins a room, \`nestlog start pair LW-1\` a
journal. The help of a command, as \`nestlog help record\`, begins with examples.
Exit codes: 0 done; 1 errors found, or nothing written; 2 wrong usage.`;

const ALL_HELP = 'Run `nestlog --help` to see what there is.';

interface CommonOptions {
  journals?: string;
  date?: Day;
  json?: true;
  color?: boolean;
  cache: boolean;
}

/** Runs the command that the arguments name and gives the exit code. Only what is nobody's mistake is thrown. */
export async function runProgram(
  commands: CommandEntry[],
  words: string[],
  world: World,
): Promise<ExitCode | typeof WRONG_USAGE> {
  const outcome: { code: ExitCode } = { code: 0 };
  const program = programOf(commands, world, outcome);
  try {
    const dash = wrongDash(words);
    if (dash !== null) throw new UsageError(dash);
    if (words[0] === 'help') isCommand(words[1], commands);
    const said = words[0] === 'help' ? [...words.slice(1), '--help'] : words.map(withoutBullet);
    await program.parseAsync(said, { from: 'user' });
    return outcome.code;
  } catch (error) {
    // Commander has said by now what was wrong, or has printed the help that was asked for.
    if (error instanceof CommanderError) return error.exitCode === 0 ? 0 : WRONG_USAGE;
    if (!(error instanceof UsageError)) throw error;
    world.stderr(undefined).write(`nestlog: ${error.message}\n`);
    return WRONG_USAGE;
  }
}

/** The line of a journal begins with a dash, but is no option: `record` says how it is written at the terminal. */
function withoutBullet(word: string): string {
  return word.replace(/^-\s+(?=\{|\w+:)/, '');
}

/** Help on a command that there is not would be the help on all, as if nothing were wrong. */
function isCommand(asked: string | undefined, commands: CommandEntry[]): void {
  const names = commands.map(({ name }) => name);
  if (asked === undefined || asked.startsWith('-') || asked === 'help' || names.includes(asked)) return;
  throw new UsageError(`${noCommand([asked], names)}\n${ALL_HELP}`);
}

/** All commands by their names; each is loaded, and its own words are known, only when it is called. */
function programOf(commands: CommandEntry[], world: World, outcome: { code: ExitCode }): Command {
  const loaded = new Map<string, CommandModule>();
  const program = withoutCommands(world).hook('preSubcommand', async (_, command) => {
    const entry = commands.find(({ name }) => name === command.name());
    if (entry === undefined) return;
    const module = await entry.load();
    loaded.set(entry.name, module);
    describe(command, entry, module.definition, world.stdout(undefined).width);
  });
  for (const { name, summary } of commands) {
    program
      .command(name)
      .summary(summary)
      .allowExcessArguments()
      .showHelpAfterError(`Run \`nestlog help ${name}\` to see what it takes.`)
      .action(async (...passed: unknown[]) => {
        const module = loaded.get(name);
        if (module !== undefined) outcome.code = await run(module, passed.at(-1) as Command, world);
      });
  }
  return program;
}

/** What holds whatever the command: common options, help, where words go, and that nothing exits by itself. */
function withoutCommands(world: World): Command {
  return new CommandLine('nestlog')
    .description('The morning agenda and the season’s book for people who breed cage and aviary birds.')
    .option(
      '--journals <folder>',
      'the room: a folder with nestlog.yaml (default: the nearest one upwards)',
      once('--journals'),
    )
    .option(
      '--date <day>',
      'the day to stand on, YYYY-MM-DD: nothing dated later is known',
      (text: string, before: Day | undefined) => dayOption(text, before, world.today()),
    )
    .option('--json', 'data for programs instead of text')
    .option('--color', 'colour, even if the output is no terminal')
    .option('--no-color', 'no colour')
    .option('--no-cache', 'read every journal anew, and keep nothing')
    .version(world.version, '-V, --version', 'print the version')
    .helpOption('-h, --help', 'print help')
    .helpCommand('help [command]', 'print help on a command')
    .addHelpText('after', FIRST_STEPS)
    .configureHelp({ showGlobalOptions: true })
    .showHelpAfterError(ALL_HELP)
    .exitOverride()
    .configureOutput({
      writeOut: (text) => world.stdout(undefined).write(text),
      writeErr: (text) => world.stderr(undefined).write(text),
      getOutHelpWidth: () => world.stdout(undefined).width,
      getErrHelpWidth: () => world.stderr(undefined).width,
      outputError: (text, write) => write(text.replace(/^error: /, 'nestlog: ')),
    });
}

/** Adds a loaded command's own arguments, options and help. */
function describe(
  command: Command,
  { summary }: CommandEntry,
  definition: CommandDefinition,
  width: number,
): void {
  for (const { name, description } of definition.arguments ?? []) command.argument(name, description);
  for (const { flags, description, default: initial, parse } of definition.options ?? []) {
    const option = new Option(flags, description);
    if (initial !== undefined) option.default(initial);
    if (parse !== undefined) option.argParser(parse);
    else if (flags.includes('<') && initial === undefined) option.argParser(once(flags));
    command.addOption(option);
  }
  command.addHelpText('before', `${summary}\n\nExamples:\n${laidOut(definition.examples, width)}\n`);
}

/** Each example beside what it does; where the window is too narrow for all of them, above. */
function laidOut(examples: CommandDefinition['examples'], width: number): string {
  const widest = Math.max(...examples.map(({ line }) => line.length));
  const beside = examples.map(({ line, says }) => `  ${line.padEnd(widest)}  ${says}`);
  if (beside.every((line) => line.length <= width)) return beside.join('\n');
  return examples.map(({ line, says }) => `  ${line}\n      ${says}`).join('\n');
}

async function run(module: CommandModule, command: Command, world: World): Promise<ExitCode> {
  const { journals, date, json, color, cache, ...rest } = command.optsWithGlobals<CommonOptions>();
  const { definition } = module;
  const { noJson } = definition;
  if (json && noJson !== undefined) throw new UsageError(`${command.name()} has no JSON: ${noJson}`);
  const today = world.today();
  const folderOf = definition.room === 'optional' ? anyFolder : roomFolder;
  const { NESTLOG_JOURNALS: environment } = world.environment;
  const folder = folderOf({ option: journals, environment, here: world.here });
  await refuseTooMany(command, definition, { folder, today });
  const { answer, progress } = world;
  return module.run({
    day: date ?? today,
    today,
    journals: folder,
    ...(progress === undefined ? {} : { progress }),
    json: json ?? false,
    ...(cache && answer !== undefined
      ? { keep: (said) => keepAnswer(answer, { option: journals, folder, today, ...said }) }
      : {}),
    cache: cache ? cacheFolder(world.environment) : undefined,
    state: stateFolder(world.environment),
    arguments: command.args,
    options: rest,
    stdout: world.stdout(color),
    stderr: world.stderr(color),
  });
}

/** Commander would count them; a keeper wants to know where they belong. */
async function refuseTooMany(
  command: Command,
  definition: CommandDefinition,
  { folder, today }: { folder: string; today: Day },
): Promise<void> {
  const { args: words, registeredArguments: taken } = command;
  if (words.length <= taken.length || taken.at(-1)?.variadic) return;
  const { glance } = await import('../journal/glance.ts');
  const { loadRoom } = await import('../journal/load.ts');
  const { tooMany } = await import('./too-many.ts');
  const names = glance(loadRoom(folder));
  command.error(`error: ${await tooMany({ name: command.name(), definition, words, today, names })}`, {
    code: 'commander.excessArguments',
  });
}

/** Of an option that is given twice the first would be lost without a word. */
function once(flags: string): (text: string, before: unknown) => string {
  return (text, before) => {
    if (before === undefined) return text;
    throw new UsageError(`${flags.split(' ')[0]} is given twice: \`${before}\` and \`${text}\``);
  };
}

function dayOption(text: string, before: Day | undefined, today: Day): Day {
  const day = parseDay(text);
  if (before !== undefined) throw new UsageError('--date is given twice');
  if (day !== null) return day;
  const meant = dateMeant(text, today);
  throw new UsageError(
    `--date wants a day of the calendar as YYYY-MM-DD, such as 2026-05-17; it was given \`${text}\`${meant === '' ? '' : `. Did you mean ${meant}?`}`,
  );
}
