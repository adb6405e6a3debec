import type { Day } from '../days.ts';

/** One of the two streams, with what was decided for it. */
export interface Output {
  /** Text as it stands: line ends are the writer's. */
  write(text: string): void;
  color: boolean;
  /** In columns. */
  width: number;
}

/** What a command is given: it knows no clock, no environment and no arguments but these. */
export interface Context<Options = Record<string, unknown>> {
  /** The day to stand on: nothing dated later is known. */
  day: Day;
  /** The calendar day on the keeper's wall; equals `day` without `--date`. */
  today: Day;
  /** The room's folder, absolute. */
  journals: string;
  json: boolean;
  /** Where readings of journals are kept between runs; undefined where none are to be kept. */
  cache?: string | undefined;
  /** The user's folder for what programs remember between runs, absolute. */
  state: string;
  /** Says what is being waited for; may be called often. */
  progress?: (text: string) => void;
  /**
   * Keeps the whole of what this run prints: whoever calls with the same words on the same day gets it again while no
   * file of the room has changed. For commands that do nothing but print, and only what follows from these.
   */
  keep?: (said: { fingerprint: string; text: string }) => void;
  /** Positional arguments, in order; an optional one that was left out is undefined. */
  arguments: (string | undefined)[];
  /** The command's own options by their camel-case names. */
  options: Options;
  stdout: Output;
  stderr: Output;
}

/** 0 done, 1 errors found or a record refused; 2, wrong usage, is what a `UsageError` becomes. */
export type ExitCode = 0 | 1;

/** How a command is called. Its name and one-line summary stand in the registry, which is read without loading it. */
export interface CommandDefinition {
  /** Shown first in the help. */
  examples: [Example, ...Example[]];
  arguments?: CommandArgument[];
  options?: CommandOption[];
  /** `needed`: a folder that is a room, else exit 2 (the default). `optional`: any folder will do. */
  room?: 'needed' | 'optional';
  /** Of one that answers with no data: what it does instead. With `--json` it is called wrongly. */
  noJson?: string;
}

interface Example {
  line: string;
  says: string;
}

export interface CommandArgument {
  /** As commander reads them: `<pair>`, `[name]`. */
  name: string;
  description: string;
  /** The words that a shell offers for it, where its name does not say what it is. */
  completes?: readonly string[];
}

export interface CommandOption {
  /** As commander reads them: `--days <number>`. */
  flags: string;
  description: string;
  default?: unknown;
  /** The words that a shell offers behind it, where its name does not say what it takes. */
  completes?: readonly string[];
  /** Turns the text into the option's value, or throws a `UsageError` that says what would be right. */
  parse?: (text: string) => unknown;
}

/** What each file of this folder that is a command exports. */
export interface CommandModule {
  definition: CommandDefinition;
  // biome-ignore lint/suspicious/noExplicitAny: each command names the options of its own definition
  run(context: Context<any>): ExitCode | Promise<ExitCode>;
}
