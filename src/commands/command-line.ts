import { Command } from 'commander';
import { nearest } from '../findings/nearest.ts';
import { shellWord } from '../write/names.ts';
import { meant } from './meant.ts';

/**
 * A command as commander knows it, but for what it says of options and commands that there are not: what was meant is
 * found as everywhere else, and one letter, as other programs take it, stands for the options that begin with it.
 */
export class CommandLine extends Command {
  override createCommand(name?: string): CommandLine {
    return new CommandLine(name);
  }

  /** Called by commander. */
  unknownOption(said: string): void {
    const flag = said.replace(/=.*/s, '');
    const flags = [this, ...(this.parent === null ? [] : [this.parent])]
      .flatMap((command) => command.createHelp().visibleOptions(command))
      .flatMap(({ long }) => long ?? []);
    const near = nearest(flag, flags);
    const begun = flags.filter((one) => /^-\w$/.test(flag) && one.startsWith(`-${flag}`));
    const fits = near === null ? begun : [near];
    const seen = this.registeredArguments.some((one) => one.name().startsWith('key='));
    const words = `${said.replace(/^-+/, '')}${said.includes('=') ? '' : '=…'}`;
    const unfit = seen ? `; what was seen is written without hyphens: \`${words}\`` : '';
    const more =
      fits.length === 0 ? unfit : `; did you mean ${fits.map((one) => `\`${one}\``).join(' or ')}?`;
    this.error(`error: there is no option \`${flag}\`${more}`, { code: 'commander.unknownOption' });
  }

  /** Called by commander. */
  unknownCommand(): void {
    const names = this.commands.map((command) => command.name());
    this.error(`error: ${noCommand(this.args, names)}`, { code: 'commander.unknownCommand' });
  }
}

/** What is said where the first word is no command: often it is what the command was to be about. */
export function noCommand([said = '', ...behind]: readonly string[], names: readonly string[]): string {
  const what = `there is no command \`${said}\``;
  const near = meant(said, names, '');
  if (near !== '') return `${what}; ${near}`;
  if (said.includes('='))
    return `${what}; what was seen is recorded of a pair: \`nestlog record LW-1 ${said}\``;
  const seen = behind.findIndex((one) => one.includes('='));
  const whose = shellWord([said, ...behind][seen] ?? said);
  if (seen >= 0) return `${what}; did you mean \`nestlog record ${whose} …\`?`;
  if (!/\d/.test(said)) return what;
  const word = shellWord(said);
  return `${what}; of a pair tells \`nestlog pair ${word}\`, of a bird \`nestlog bird ${word}\``;
}

/** A long dash before a word, which autocorrection makes of two hyphens. */
const LONG_DASH = /^[‐-―−][‐-―−-]*(?=[a-z])/i;

/** What is said where an option begins with no hyphen; null where none does. It would be read as a word of the answer. */
export function wrongDash(words: readonly string[]): string | null {
  const end = words.indexOf('--');
  const options = end < 0 ? words : words.slice(0, end);
  const said = options.find((word) => LONG_DASH.test(word) && !/\s/.test(word));
  if (said === undefined) return null;
  return `\`${said}\` begins with a long dash; did you mean \`${said.replace(LONG_DASH, '--')}\`, with two hyphens?`;
}
