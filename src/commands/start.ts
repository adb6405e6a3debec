import { existsSync } from 'node:fs';
import { join, relative, resolve } from 'node:path';
import { nearest } from '../findings/nearest.ts';
import { isFolder, makeFolders } from '../journal/folders.ts';
import { loadRoom } from '../journal/load.ts';
import { readRoom } from '../journal/record.ts';
import { schemaFiles } from '../report/schema/index.ts';
import { findingsText } from '../report/terminal/findings.ts';
import { type Begun, begunText } from '../report/terminal/start.ts';
import { styles } from '../report/terminal/style.ts';
import { judgeFile } from '../write/judge.ts';
import { idOfFile, shellWord } from '../write/names.ts';
import { createFiles, type NewFile } from '../write/new-files.ts';
import { type NewPair, pairFile } from '../write/start/pair.ts';
import { GIT_ATTRIBUTES, PRE_COMMIT, roomFiles } from '../write/start/room.ts';
import { type Ask, terminal, withAsking } from './ask.ts';
import type { CommandDefinition, Context, ExitCode } from './context.ts';
import { intoOption } from './into.ts';
import { understandAll } from './room.ts';
import { isRoom } from './room-folder.ts';
import { UsageError } from './usage-error.ts';

interface StartOptions {
  name?: string;
  git?: boolean;
  species?: string;
  cock?: string;
  hen?: string;
  housing?: string;
  into?: string;
}

export const definition: CommandDefinition = {
  examples: [
    { line: 'nestlog start room', says: 'a room in this folder; asks for its name' },
    {
      line: 'nestlog start room finches --name "the finch room" --git',
      says: 'in a folder of its own, kept in git',
    },
    { line: 'nestlog start pair LW-4', says: 'a pair’s journal; asks for the rest' },
    {
      line: 'nestlog start pair LW-4 --species "lavender waxbill" --cock LW-19-04 --hen LW-20-11',
      says: 'the same without a question',
    },
  ],
  arguments: [
    { name: '<what>', description: 'room or pair', completes: ['room', 'pair'] },
    { name: '[name]', description: 'the folder of the room, or the id of the pair' },
  ],
  options: [
    { flags: '--name <name>', description: 'room: what it is called' },
    { flags: '--git', description: 'room: let git merge journals line by line' },
    { flags: '--species <name>', description: 'pair: common or scientific name' },
    { flags: '--cock <bird>', description: 'pair: id or ring; with commas where it is one of these' },
    { flags: '--hen <bird>', description: 'pair: id or ring; with commas where it is one of these' },
    { flags: '--housing <name>', description: 'pair: cage, flight or aviary' },
    intoOption('pair'),
  ],
  room: 'optional',
  noJson: 'it writes files, and says which',
};

/** Begins a room or a journal. What is there already is never touched: exit code 1. */
export async function run(context: Context<StartOptions>, ends = terminal()): Promise<ExitCode> {
  const { options } = context;
  const [what = ''] = context.arguments;
  if (what !== 'room' && what !== 'pair') throw new UsageError(notBegun(what));
  const stray = (Object.keys(options) as (keyof StartOptions)[]).find((one) => !of[what].includes(one));
  if (stray !== undefined) {
    const other = what === 'room' ? 'pair' : 'room';
    throw new UsageError(`--${stray} belongs to \`nestlog start ${other}\`, and a ${what} has none`);
  }
  return withAsking(ends, (ask) => (what === 'room' ? startRoom(context, ask) : startPair(context, ask)));
}

/** Which options are of what. */
const of: Record<'room' | 'pair', readonly (keyof StartOptions)[]> = {
  room: ['name', 'git'],
  pair: ['species', 'cock', 'hen', 'housing', 'into'],
};

function notBegun(what: string): string {
  if (/^birds?$/i.test(what))
    return 'birds need no start: each is an item of birds.yaml, `- {id: LW-19-04, sex: cock}`';
  const near = nearest(what, ['room', 'pair']);
  const meant = near === null ? `pair ${shellWord(what)}` : near;
  return `start room, or start pair; not \`${what}\`. Did you mean \`nestlog start ${meant}\`?`;
}

async function startRoom(context: Context<StartOptions>, ask: Ask): Promise<ExitCode> {
  const { options, arguments: words, stderr } = context;
  const folder = words[1] === undefined ? context.journals : resolve(words[1]);
  if (existsSync(join(folder, 'nestlog.yaml'))) {
    stderr.write(`nestlog: nothing was written: ${folder} is a room already\n`);
    return 1;
  }
  const pairs = join(folder, 'pairs');
  if (existsSync(pairs) && !isFolder(pairs)) {
    stderr.write(`nestlog: nothing was written: ${pairs} is no folder, and the journals are to lie there\n`);
    return 1;
  }
  const name = options.name ?? (await ask('What is the room called?'));
  const git = options.git ?? isYes(await ask('Is it kept in git, by more than one person or machine? (y/N)'));
  const files = [...roomFiles({ name, git }), ...schemaFiles()].filter(
    ({ path }) => !existsSync(join(folder, path)),
  );
  const wanted = git && !files.some(({ path }) => path === '.gitattributes');
  return begin(context, folder, files, {
    what: 'room',
    next: ['nestlog start pair LW-1'],
    git: git ? { hook: PRE_COMMIT, add: wanted ? GIT_ATTRIBUTES : null } : null,
    folder: relative(process.cwd(), folder),
  });
}

async function startPair(context: Context<StartOptions>, ask: Ask): Promise<ExitCode> {
  const { options, journals: folder, day, today, stderr } = context;
  if (!isRoom(folder)) throw new UsageError('No room here; `nestlog start room` begins one.');
  const asked = await askPair(context, ask);
  const { pair } = asked;
  const file = pairFile(asked, day, options.into);
  // Where its own file is there, writing it says so.
  const existing = loadRoom(folder).filter(({ path }) => path !== file.path);
  const record = readRoom([...existing, file], { day, today });
  // The new one would count instead of it, being named after the pair.
  const there = record.pairs.find((one) => one.pair.text === pair && one.file !== file.path);
  if (there !== undefined) {
    stderr.write(`nestlog: nothing was written: the pair \`${pair}\` already has a journal, ${there.file}\n`);
    return 1;
  }
  const { errors, hints } = judgeFile(file.path, understandAll(record, { day, today }).findings);
  const layout = { sources: record.sources, width: stderr.width, styles: styles(stderr.color), perFile: 10 };
  if (errors.length > 0) {
    stderr.write(
      `nestlog: nothing was written: the journal would not be sound.\n\n${findingsText(errors, layout)}`,
    );
    return 1;
  }
  if (hints.length > 0) stderr.write(`${findingsText(hints, layout)}\n`);
  return begin(context, folder, [file], {
    what: 'pair',
    next: [`nestlog record ${shellWord(pair)} paired`, `nestlog record ${shellWord(pair)} laid=1`],
    git: null,
    folder: '',
  });
}

/** What the options say of the pair, and for the rest the keeper is asked. */
async function askPair({ options, arguments: words }: Context<StartOptions>, ask: Ask): Promise<NewPair> {
  const said = words[1] ?? (await ask('Which id is the pair to have, such as LW-4?'));
  const pair = said?.trim() ?? '';
  if (pair === '')
    throw new UsageError('which pair? Such as `nestlog start pair LW-4 --species "lavender waxbill"`');
  const id = idOfFile(pair);
  if (id !== null) throw new UsageError(`a pair is begun by its id, not by a file: did you mean \`${id}\`?`);
  const species = options.species ?? (await ask('Which species?'));
  if (species === null) throw new UsageError('which species? Such as --species "lavender waxbill"');
  return {
    pair,
    species,
    cock: several(options.cock ?? (await ask('Which bird is the cock? (empty: unknown)'))),
    hen: several(options.hen ?? (await ask('Which bird is the hen? (empty: unknown)'))),
    housing: options.housing ?? (await ask('Where do they live? (empty: not said)')),
  };
}

function begin(
  { stdout, stderr }: Context<StartOptions>,
  folder: string,
  files: readonly NewFile[],
  told: Omit<Begun, 'files'>,
): ExitCode {
  const failure = createFiles(folder, files);
  if (failure !== null) {
    stderr.write(`nestlog: nothing was written: ${failure.path}: ${failure.reason}\n`);
    return 1;
  }
  if (told.what === 'room') makeFolders(join(folder, 'pairs'));
  stdout.write(begunText({ ...told, files: files.map(({ path }) => path) }, stdout));
  return 0;
}

function isYes(answer: string | null): boolean {
  return /^y(es)?$/i.test(answer ?? '');
}

function several(said: string | null): string[] {
  return (said ?? '')
    .split(',')
    .map((name) => name.trim())
    .filter((name) => name !== '');
}
