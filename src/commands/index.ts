import type { CommandModule } from './context.ts';

/** A command as the list of commands knows it, without having loaded it. */
export interface CommandEntry {
  name: string;
  /** One line for the list of commands and the top of the command's own help. */
  summary: string;
  load: () => Promise<CommandModule>;
}

/** All commands, in the order of `nestlog --help`. */
export const commands: CommandEntry[] = [
  { name: 'due', summary: 'this morning: late, now, coming days, warnings', load: () => import('./due.ts') },
  {
    name: 'season',
    summary: 'a year, or all: rates, survival, causes, comparisons',
    load: () => import('./season.ts'),
  },
  {
    name: 'pair',
    summary: 'one pair’s clutches on a timeline, fates, dates foreseen and real',
    load: () => import('./pair.ts'),
  },
  { name: 'bird', summary: 'one bird: life, parents, young, inbreeding', load: () => import('./bird.ts') },
  { name: 'stock', summary: 'who is here, and how varied the stock is', load: () => import('./stock.ts') },
  { name: 'match', summary: 'whom to pair with whom', load: () => import('./match.ts') },
  {
    name: 'ahead',
    summary: 'weeks ahead: young expected, rings to order, room, rest',
    load: () => import('./ahead.ts'),
  },
  {
    name: 'feed',
    summary: 'live food, egg food and sprouting: who, where, when, how much',
    load: () => import('./feed.ts'),
  },
  { name: 'record', summary: 'append one entry to a journal', load: () => import('./record.ts') },
  { name: 'undo', summary: 'take the last recorded entry back', load: () => import('./undo.ts') },
  { name: 'start', summary: 'begin a room or a pair’s journal', load: () => import('./start.ts') },
  {
    name: 'species',
    summary: 'a profile with the source of every value',
    load: () => import('./species.ts'),
  },
  {
    name: 'calendar',
    summary: 'the agenda as iCalendar, for calendar programs',
    load: () => import('./calendar.ts'),
  },
  { name: 'import', summary: 'journals from a table', load: () => import('./import.ts') },
  { name: 'export', summary: 'tables for other programs', load: () => import('./export.ts') },
  { name: 'check', summary: 'every finding in the journals', load: () => import('./check.ts') },
  { name: 'schema', summary: 'JSON Schemas and snippets for editors', load: () => import('./schema.ts') },
  {
    name: 'completion',
    summary: 'what bash, zsh or fish offer at the Tab key',
    load: () => import('./completion.ts'),
  },
];
