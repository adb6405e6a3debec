import { visible } from './visible.ts';
import { wrap } from './width.ts';

/** What was begun, and what comes next. */
export interface Begun {
  what: 'room' | 'pair';
  /** Relative to the room. */
  files: readonly string[];
  /** Commands to go on with. */
  next: readonly string[];
  /** What git is told: a line that sets up the check before each commit, and lines that are still to be added. */
  git: { hook: string; add: string | null } | null;
  /** The room's folder, from where the command was called; empty where it is there. */
  folder: string;
}

/** The new files, and the commands with which a keeper goes on. */
export function begunText({ what, files, next, git, folder }: Begun, { width }: { width: number }): string {
  const place = folder === '' ? '' : `${visible(folder)}/`;
  const blocks = [
    [
      what === 'room' ? 'The room is begun:' : 'The journal is begun:',
      ...files.map((file) => `  ${place}${visible(file)}`),
    ],
    ['Go on with:', ...next.map((line) => `  ${visible(line)}`)],
  ];
  if (git !== null) {
    if (git.add !== null)
      blocks.push(['There is a .gitattributes already; add to it:', ...indented(git.add)]);
    const say =
      'No commit while a journal has an error: this line, given once in the room’s folder, sets it up.';
    blocks.push([...wrap(say, width), `  ${git.hook}`]);
  }
  return blocks.map((lines) => `${lines.join('\n')}\n`).join('\n');
}

function indented(text: string): string[] {
  return text
    .trimEnd()
    .split('\n')
    .map((line) => `  ${line}`);
}
