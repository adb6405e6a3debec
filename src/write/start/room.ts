import { scalar } from '../../journal/print.ts';
import { schemaLine } from '../../journal/schema-files.ts';
import type { NewFile } from '../new-files.ts';

/** What a room is begun with. */
export interface NewRoom {
  /** Null where it has no name. */
  name: string | null;
  /** Whether git is to merge its journals line by line. */
  git: boolean;
}

/** The files of a new room: its settings, its birds, and on wish what git needs to know. */
export function roomFiles({ name, git }: NewRoom): NewFile[] {
  return [
    { path: 'nestlog.yaml', text: settings(name) },
    { path: 'birds.yaml', text: BIRDS },
    ...(git ? [{ path: '.gitattributes', text: GIT_ATTRIBUTES }] : []),
  ];
}

function settings(name: string | null): string {
  return `${schemaLine('room', 'nestlog.yaml')}
# The room: its name, its rules, its own tasks. Everything in here is optional; a line without its # holds.
${name === null ? '# room: the finch room' : `room: ${scalar(name)}`}
# season-start: 09-01
# ringing: no
# limits: {quarantine: 30, clutches-per-year: 3, max-inbreeding: 0.1}
#
# Tasks of your own. \`after\` hangs one on a pair's life, \`every\` alone on the calendar:
# routines:
#   - {name: calcium, after: paired, days: 3, every: 2, until: laid, say: calcium in the egg food}
#   - {name: dust baths, every: 14, say: fresh sand in all flights}
`;
}

const BIRDS = `${schemaLine('birds', 'birds.yaml')}
# Birds that came from outside. Chicks need no entry: they join the stock by hatching. A bird could read:
#
#   - id: LW-19-04
#     species: lavender waxbill
#     sex: cock
#     hatched: 2019-05-30
#     log:
#       - {date: 2020-10-14, arrived: quarantine cage}
birds:
`;

/** Lines for git, with what they are good for and where they are not. */
export const GIT_ATTRIBUTES = `# Two people, or two machines, write to one journal: git keeps the new lines of both and asks nothing.
#
# Safe, because an entry is one line: their order does not matter, and a line that both have counts once.
# Not for changes to a line that is there already. Where one side corrects an entry and the other writes next to it,
# the line comes back as it was, beside the corrected one; where both change a line such as \`housing:\`, both stay.
# Entries over several lines can be mixed into one another. So after a merge: nestlog check
pairs/**/*.yaml merge=union
`;

/** A hook for git that lets no commit through while a journal has an error, as a line for the shell. */
export const PRE_COMMIT =
  "printf '#!/bin/sh\\nexec nestlog check --journals .\\n' > .git/hooks/pre-commit && chmod +x .git/hooks/pre-commit";
