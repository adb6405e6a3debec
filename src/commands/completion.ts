import { resolve } from 'node:path';
import { glance } from '../journal/glance.ts';
import { loadRoom } from '../journal/load.ts';
import { shellScript, shells } from '../report/shells.ts';
import { wordsFor } from './completion-words.ts';
import type { CommandDefinition, Context, ExitCode } from './context.ts';
import { commands } from './index.ts';
import { wordFrom } from './one-of.ts';

export const definition: CommandDefinition = {
  examples: [
    { line: 'source <(nestlog completion bash)', says: 'in ~/.bashrc' },
    { line: 'source <(nestlog completion zsh)', says: 'in ~/.zshrc, behind compinit' },
    { line: 'nestlog completion fish | source', says: 'in ~/.config/fish/config.fish' },
  ],
  arguments: [
    { name: '<shell>', description: shells.join(', '), completes: shells },
    { name: '[word...]', description: 'what the shell asks with: the words so far' },
  ],
  room: 'optional',
};

/**
 * Prints what a shell is to read once, or, asked by the shell with `words`, what fits behind the words so far. It must be
 * quick: names are read off the room's files at a glance, and only options and keys load what they belong to.
 */
export async function run({ arguments: [shell, ...words], journals, stdout }: Context): Promise<ExitCode> {
  if (shell === 'words') {
    const said = words.map((word) => word ?? '');
    const offered = await wordsFor(said, commands, (folder) =>
      glance(loadRoom(folder === null ? journals : resolve(folder))),
    );
    stdout.write(offered.map((line) => `${line}\n`).join(''));
    return 0;
  }
  stdout.write(shellScript(wordFrom(shells, shell ?? '', 'the shells are')));
  return 0;
}
