import { grouped } from '../grouped.ts';
import type { Glance } from '../journal/glance.ts';
import { FILES, FOLDERS } from '../report/shells.ts';
import { housingKey } from '../room/housings.ts';
import { comparable } from '../species/names.ts';
import type { CommandArgument, CommandDefinition, CommandOption } from './context.ts';
import type { CommandEntry } from './index.ts';

/** Something to offer, and what it means. */
interface Candidate {
  word: string;
  says?: string;
}

/** What stands at a place of the command line, by the name that the place has. */
type Noun = 'pair' | 'bird' | 'housing' | 'species' | 'file' | 'folder' | 'key=value' | 'command';

const nouns: Record<string, Noun> = {
  pair: 'pair',
  keep: 'pair',
  bird: 'bird',
  housing: 'housing',
  species: 'species',
  map: 'file',
  file: 'file',
  journals: 'folder',
  folder: 'folder',
  'key=value': 'key=value',
  entry: 'key=value',
  command: 'command',
};

interface Place {
  /** Names of the place, the most telling first: of the option, what it takes, of the command. */
  names: string[];
  completes: readonly string[] | null;
}

interface KnownOption extends Place {
  flag: string;
  takesValue: boolean;
  says: string;
}

/** Options on either side of every command. */
const common: KnownOption[] = [
  option('--journals <folder>', 'the room'),
  option('--date <day>', 'the day to stand on'),
  option('--json', 'data for programs'),
  option('--color', 'colour'),
  option('--no-color', 'no colour'),
  option('--no-cache', 'read every journal anew'),
  option('--version', 'the version'),
  option('--help', 'help'),
];

/** Reads the names of the room, in a folder that the words name or the usual one. */
type Look = (folder: string | null) => Glance;

/**
 * What fits behind the words so far, the last of which is being typed: lines for the shells of `shells.ts`. A command is
 * loaded only for its own options and arguments.
 */
export async function wordsFor(
  words: readonly string[],
  commands: readonly CommandEntry[],
  look: Look,
): Promise<string[]> {
  const current = (words.at(-1) ?? '').replace(/^["']/, '');
  const before = words.slice(0, -1);
  const room = () => look(folderIn(before));
  const entry = commandOf(before, commands);
  const definition = entry === null ? null : (await entry.load()).definition;
  const options = [
    ...(definition?.options ?? []).map((one) => option(one.flags, one.description, one.completes)),
    ...common,
  ];

  const previous = options.find(({ flag, takesValue }) => takesValue && flag === before.at(-1));
  if (previous !== undefined) return offer(await candidates(previous, room, commands), current);
  const [, flag, typed] = /^(--[\w-]+)=(.*)$/.exec(current) ?? [];
  const joined = options.find((known) => known.takesValue && known.flag === flag);
  if (joined !== undefined) {
    const lines = offer(await candidates(joined, room, commands), typed ?? '');
    return lines.map((line) => (line.startsWith(':') ? line : `${flag}=${line}`));
  }
  if (current.startsWith('-')) {
    return offer(
      options.map(({ flag: word, says }) => ({ word, says })),
      current,
    );
  }
  if (entry === null || definition === null) {
    return offer(
      commands.map(({ name, summary }) => ({ word: name, says: summary })),
      current,
    );
  }
  const place = argumentAt(entry, definition, positionals(before, options).length - 1);
  return place === null ? [] : offer(await candidates(place, room, commands), current);
}

/** The room that the words name last, in either way of writing it. */
function folderIn(before: readonly string[]): string | null {
  const at = before.findLastIndex((word) => word === '--journals' || word.startsWith('--journals='));
  const said = before[at];
  if (said === undefined) return null;
  return said === '--journals' ? (before[at + 1] ?? null) : said.slice('--journals='.length);
}

function option(flags: string, says: string, completes?: readonly string[]): KnownOption {
  const flag = /--[\w-]+/.exec(flags)?.[0] ?? flags;
  const noun = /[<[]([^>\]]+)/.exec(flags)?.[1];
  const names = [flag.slice(2), ...(noun === undefined ? [] : [noun.replace('...', '')])];
  return { flag, takesValue: noun !== undefined, says, names, completes: completes ?? null };
}

/** The words that are no options and no values of options. */
function positionals(before: readonly string[], options: readonly KnownOption[]): string[] {
  return before.filter((word, index) => {
    if (word.startsWith('-')) return false;
    const { takesValue = false } = options.find(({ flag }) => flag === before[index - 1]) ?? {};
    return !takesValue;
  });
}

function commandOf(before: readonly string[], commands: readonly CommandEntry[]): CommandEntry | null {
  const [name] = positionals(before, common);
  return commands.find((entry) => entry.name === name) ?? null;
}

/** An argument of a command; one that may be repeated is the last. */
function argumentAt(
  entry: CommandEntry,
  { arguments: list = [] }: CommandDefinition,
  index: number,
): Place | null {
  const last = list.at(-1);
  const found = list[index] ?? (last?.name.includes('...') ? last : undefined);
  return found === undefined ? null : placeOf(found, entry.name);
}

function placeOf({ name, completes }: CommandArgument, command: string): Place {
  return { names: [name.replace(/[<>[\].]/g, '').toLowerCase(), command], completes: completes ?? null };
}

/** What can stand as this argument of a command, as far as that is a list of words. */
export function wordsOfArgument(
  argument: CommandArgument,
  command: string,
  names: Glance,
): Promise<string[]> {
  return listed(placeOf(argument, command), names);
}

/** What can stand behind this option, as far as that is a list of words. */
export function wordsOfOption({ flags, completes }: CommandOption, names: Glance): Promise<string[]> {
  return listed(option(flags, '', completes), names);
}

async function listed(place: Place, names: Glance): Promise<string[]> {
  const list = await candidates(place, () => names, []);
  return typeof list === 'string' ? [] : list.map(({ word }) => word);
}

async function candidates(
  { names, completes }: Place,
  room: () => Glance,
  commands: readonly CommandEntry[],
): Promise<Candidate[] | typeof FILES | typeof FOLDERS> {
  if (completes !== null) return completes.map((word) => ({ word }));
  const name = names.find((one) => Object.hasOwn(nouns, one));
  const noun = name === undefined ? null : nouns[name];
  const plain = (list: readonly string[]) => list.map((word) => ({ word }));
  switch (noun) {
    case 'pair':
      return plain(room().pairs);
    case 'bird':
      return plain(room().birds);
    case 'housing':
      return plain(firstSpelt(room().housings, housingKey));
    case 'species': {
      const { shippedSpecies } = await import('../species/shipped.ts');
      // A name without a letter from a to z has nothing to be compared by but itself.
      return plain(firstSpelt([...room().species, ...shippedSpecies()], (name) => comparable(name) || name));
    }
    case 'key=value': {
      const { entryWords } = await import('../report/schema/entry-words.ts');
      return entryWords();
    }
    case 'command':
      return commands.map((entry) => ({ word: entry.name, says: entry.summary }));
    case 'file':
      return FILES;
    case 'folder':
      return FOLDERS;
    default:
      return [];
  }
}

/** Names that mean the same are offered once, as the first of them is spelt. */
function firstSpelt(names: readonly string[], keyOf: (name: string) => string): string[] {
  return [...grouped(names, keyOf).values()].map(([first]) => first);
}

/** The candidates that go on from what is typed, capitals or not. */
function offer(list: Candidate[] | typeof FILES | typeof FOLDERS, typed: string): string[] {
  if (typeof list === 'string') return [list];
  const start = typed.toLowerCase();
  return list
    .filter(({ word }) => word.toLowerCase().startsWith(start))
    .map(({ word, says }) => (says === undefined ? word : `${word}\t${says}`));
}
