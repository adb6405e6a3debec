import type { Day } from '../days.ts';
import { nearest } from '../findings/nearest.ts';
import type { Glance } from '../journal/glance.ts';
import { dateMeant } from '../journal/grammar/date-text.ts';
import { idOfFile, shellWord } from '../write/names.ts';
import { wordsOfArgument, wordsOfOption } from './completion-words.ts';
import type { CommandDefinition } from './context.ts';
import { asWritten } from './named.ts';

/** A call with more words behind its command than that takes. */
interface Call {
  name: string;
  definition: CommandDefinition;
  words: readonly string[];
  today: Day;
  /** The names of the room. */
  names: Glance;
}

/**
 * What is said where a command takes no more words: the name that several of them are, or which option or other command
 * takes them. An option takes what a shell would offer behind it.
 */
export async function tooMany(call: Call): Promise<string> {
  const { name, definition, words } = call;
  const taken = definition.arguments?.length ?? 0;
  const stray = words.slice(taken);
  const takes = ['no word', 'one word', 'two words'][taken] ?? `${taken} words`;
  const better = (await asOneName(call)) ?? (await asOption(call, stray.join(' '))) ?? elsewhere(call);
  const said = stray.map((word) => `\`${word}\``).join(' ');
  const more = better === null ? '' : `; ${better}`;
  return `\`nestlog ${name}\` takes ${takes} behind it, and ${said} is too much${more}`;
}

/** The last name was given in several words: `pair LW 1`. */
async function asOneName({ name, definition, words, names }: Call): Promise<string | null> {
  const place = definition.arguments?.at(-1);
  if (place === undefined) return null;
  const at = (definition.arguments?.length ?? 0) - 1;
  const [before, parts] = [words.slice(0, at), words.slice(at)];
  const known = await wordsOfArgument(place, name, names);
  if (parts.every((part) => asWritten(part, known) !== null)) return 'give one after the other';
  const whole = parts.join(' ');
  const isId = /name|pair|bird/.test(place.name) && /^\p{L}+ \d+$/u.test(whole);
  const id = isId ? whole.replace(' ', '-') : null;
  const near = nearest(whole, known) ?? id;
  if (near !== null) return didYouMean(name, ...before, near);
  return place.completes === undefined && /^\[?<?(name|file|folder)/.test(place.name)
    ? `a name with blanks stands in quotes: \`${line(name, ...before, whole)}\``
    : null;
}

/** Which option takes what was given. */
async function asOption(
  { name, definition, words, today, names }: Call,
  said: string,
): Promise<string | null> {
  const before = words.slice(0, definition.arguments?.length ?? 0);
  const day = dateMeant(said, today);
  if (day !== '') return didYouMean(name, ...before, '--date', day);
  const offered: { flag: string; known: string[] }[] = [];
  for (const option of definition.options ?? []) {
    const [flag = '', value] = option.flags.split(' ');
    if (value === '<number>' && /^\d+$/.test(said)) return didYouMean(name, ...before, flag, said);
    if (value !== undefined) offered.push({ flag, known: await wordsOfOption(option, names) });
  }
  for (const find of [asWritten, nearest]) {
    for (const { flag, known } of offered) {
      const word = find(said, known);
      if (word !== null) return didYouMean(name, ...before, flag, word);
    }
  }
  return null;
}

/** Of a pair or a bird tell other commands. */
function elsewhere({ words, names: { pairs, birds } }: Call): string | null {
  for (const [command, known] of [['pair', pairs] as const, ['bird', birds] as const]) {
    const said = words.at(-1) ?? '';
    const name = asWritten(idOfFile(said) ?? said, known);
    if (name !== null) return `of that ${command} tells \`${line(command, name)}\``;
  }
  return null;
}

function didYouMean(...words: string[]): string {
  return `did you mean \`${line(...words)}\`?`;
}

function line(...words: string[]): string {
  return ['nestlog', ...words.map(shellWord)].join(' ');
}
