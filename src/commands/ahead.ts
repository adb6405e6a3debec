import { aheadJson } from '../report/json/ahead.ts';
import { aheadText } from '../report/terminal/ahead.ts';
import { aheadOf } from '../rules/ahead/ahead.ts';
import type { CommandDefinition, Context, ExitCode } from './context.ts';
import { openRoom } from './room.ts';
import { UsageError } from './usage-error.ts';

interface AheadOptions {
  weeks: number;
}

export const definition: CommandDefinition = {
  examples: [
    { line: 'nestlog ahead', says: 'the next eight weeks: young, rings to order, room, rest' },
    { line: 'nestlog ahead --weeks 12', says: 'twelve weeks' },
    { line: 'nestlog ahead --date 2026-05-17', says: 'as it was known on that day' },
    { line: 'nestlog ahead --json', says: 'every figure for a program' },
  ],
  options: [
    { flags: '--weeks <number>', description: 'how many weeks ahead', default: 8, parse: weeksAhead },
  ],
};

/** Prints what the weeks ahead will need. A room without eggs and young is no mistake. */
export function run(context: Context<AheadOptions>): ExitCode {
  const { options, stdout, json } = context;
  const { room } = openRoom(context);
  const ahead = { ...aheadOf(room, options), findings: room.findings };
  stdout.write(json ? aheadJson(ahead) : aheadText(ahead, stdout));
  return 0;
}

function weeksAhead(text: string): number {
  if (/^[1-9]\d?$/.test(text)) return Number(text);
  throw new UsageError(`--weeks takes a number of weeks from 1 to 99 such as 8, not \`${text}\``);
}
