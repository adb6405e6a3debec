import type { CommandModule } from './context.ts';

/** A command as the list of commands knows it, without having loaded it. */
export interface CommandEntry {
  name: string;
  /** One line for the list of commands and the top of the command's own help. */
  summary: string;
  load: () => Promise<CommandModule>;
}

/** All commands, in the order of `nestlog --help`. */
export const commands: CommandEntry[] = [];
