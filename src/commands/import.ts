import { readFileSync } from 'node:fs';
import { basename } from 'node:path';
import { loadRoom } from '../journal/load.ts';
import { codeOf } from '../journal/system-error.ts';
import { importJson } from '../report/json/import.ts';
import { importText } from '../report/terminal/import.ts';
import { guessMapping } from '../write/import/guess.ts';
import { emptyPlan, planImport } from '../write/import/plan.ts';
import { readTable } from '../write/import/table.ts';
import { createFiles } from '../write/new-files.ts';
import { reasonOf } from '../write/reason.ts';
import type { CommandDefinition, Context, ExitCode } from './context.ts';
import { intoOption } from './into.ts';
import { understandAll } from './room.ts';
import { isRoom } from './room-folder.ts';
import { UsageError } from './usage-error.ts';

interface ImportOptions {
  map?: string;
  guess?: true;
  dryRun?: true;
  into?: string;
  all?: true;
}

/** Problems that are shown without `--all`: more of them mostly have one cause. */
const MOST = 20;

export const definition: CommandDefinition = {
  examples: [
    { line: 'nestlog import old.csv --guess > map.yaml', says: 'a mapping to begin with, from the headings' },
    {
      line: 'nestlog import old.csv --map map.yaml --dry-run',
      says: 'what would be written, or what is unclear',
    },
    { line: 'nestlog import old.csv --map map.yaml', says: 'a journal for each pair of the table' },
    { line: 'nestlog import old.csv --map map.yaml --into old', says: 'the same into pairs/old/' },
  ],
  arguments: [{ name: '<file>', description: 'a table with headings, saved as CSV in UTF-8' }],
  options: [
    { flags: '--map <file>', description: 'how its columns become entries (YAML)' },
    { flags: '--guess', description: 'print a mapping from the headings and a look at the dates' },
    { flags: '--dry-run', description: 'show what would be written, and write nothing' },
    intoOption(),
    { flags: '--all', description: `every problem, not only the first ${MOST}` },
  ],
  room: 'optional',
};

/** Makes journals of a table: all of them, or none where anything of it is unclear (exit code 1). */
export function run(context: Context<ImportOptions>): ExitCode {
  const { journals: folder, day, today, json, options, stdout } = context;
  const [file = ''] = context.arguments;
  const table = { name: basename(file), text: textOf(file) };
  const { width, color } = stdout;
  const most = options.all ? Number.POSITIVE_INFINITY : MOST;
  if (options.guess) {
    const reading = readTable(table.name, table.text);
    const { problems } = reading;
    if (problems.length === 0) stdout.write(guessMapping(reading.table));
    else
      stdout.write(
        importText({ ...emptyPlan(table.name, problems), written: false }, { width, color, most }),
      );
    return problems.length > 0 ? 1 : 0;
  }
  if (options.map === undefined) {
    throw new UsageError('name the mapping with --map; --guess prints one to begin with');
  }
  if (!isRoom(folder)) {
    throw new UsageError('No room here to import into: name its folder with --journals, or begin one.');
  }
  const mapping = { name: basename(options.map), text: textOf(options.map) };
  const target = {
    existing: loadRoom(folder),
    into: options.into ?? '',
    clock: { day, today },
    understand: understandAll,
  };
  const plan = planImport(table, mapping, target);
  const outcome = { ...plan, written: plan.problems.length === 0 && !options.dryRun };
  if (outcome.written) {
    const failure = createFiles(folder, plan.journals);
    if (failure !== null) {
      context.stderr.write(`nestlog: nothing is written: ${failure.path}: ${failure.reason}\n`);
      return 1;
    }
  }
  stdout.write(json ? importJson(outcome) : importText(outcome, { width, color, most }));
  return plan.problems.length > 0 ? 1 : 0;
}

function textOf(file: string): string {
  let bytes: Buffer;
  try {
    bytes = readFileSync(file);
  } catch (error) {
    const why = codeOf(error) === 'ENOENT' ? 'there is no such file' : reasonOf(error);
    throw new UsageError(`${file} cannot be read: ${why}`);
  }
  if (bytes.includes(0)) throw new UsageError(`${file} is no CSV: save the table as "CSV, UTF-8"`);
  return bytes.toString('utf8');
}
