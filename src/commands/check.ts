import { isError } from '../findings/codes.ts';
import { checkJson } from '../report/json/check.ts';
import { checkText } from '../report/terminal/check.ts';
import { sumBy } from '../statistics/sums.ts';
import type { CommandDefinition, Context, ExitCode } from './context.ts';
import { openRoom } from './room.ts';

interface CheckOptions {
  all?: boolean;
}

/** Findings of one file that are shown without `--all`: more of them mostly have one cause. */
const PER_FILE = 20;

export const definition: CommandDefinition = {
  examples: [
    { line: 'nestlog check', says: 'what is wrong or doubtful in the journals, and how to mend it' },
    { line: 'nestlog check --all', says: 'all of it, however much one file has' },
    { line: 'nestlog check --json', says: 'the same for an editor or a script' },
  ],
  options: [{ flags: '--all', description: `every finding, not only the first ${PER_FILE} of a file` }],
};

/** Prints every finding. Errors make the exit code 1; hints never do. */
export function run(context: Context<CheckOptions>): ExitCode {
  const { day, json, options, stdout } = context;
  const { record, room } = openRoom(context);
  const { findings, settings } = room;
  if (json) stdout.write(checkJson(day, settings.room, findings));
  else {
    // A journal may be read and yet not count, as the second one of a pair.
    const counted = new Set(room.pairs.map(({ at }) => at.file));
    const journals = record.pairs.filter(({ file }) => counted.has(file));
    const checked = {
      room: settings.room,
      findings,
      sources: record.sources,
      pairs: journals.length,
      entries: sumBy(journals, ({ entries }) => entries.length),
    };
    const perFile = options.all ? Number.POSITIVE_INFINITY : PER_FILE;
    stdout.write(checkText(checked, { width: stdout.width, color: stdout.color, perFile }));
  }
  return findings.some(isError) ? 1 : 0;
}
