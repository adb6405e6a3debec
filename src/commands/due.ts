import { dueJson } from '../report/json/due.ts';
import type { Morning } from '../report/morning.ts';
import { dueText } from '../report/terminal/due.ts';
import { agendaOf } from '../rules/agenda/agenda.ts';
import type { CommandDefinition, Context, ExitCode } from './context.ts';
import { openRoom } from './room.ts';
import { UsageError } from './usage-error.ts';

interface DueOptions {
  days: number;
  by: 'urgency' | 'housing' | 'pair';
}

/** How far ahead a quiet morning looks for the next thing to do. */
const HORIZON = 60;

export const definition: CommandDefinition = {
  examples: [
    { line: 'nestlog due', says: 'this morning: late, now, the coming week, warnings' },
    { line: 'nestlog due --days 14', says: 'the coming fortnight' },
    { line: 'nestlog due --by housing', says: 'in the order of a walk through the room' },
    { line: 'nestlog due --date 2026-05-17', says: 'as it was known on that morning' },
  ],
  options: [
    { flags: '--days <number>', description: 'how many days ahead', default: 7, parse: daysAhead },
    { flags: '--by <order>', description: 'urgency, housing or pair', default: 'urgency', parse: order },
  ],
};

/** Prints the morning. An empty one is a good one: the exit code is 0 either way. */
export function run(context: Context<DueOptions>): ExitCode {
  const { day, today, options, stdout } = context;
  const { room } = openRoom(context);
  const ahead = agendaOf(room, { days: Math.max(options.days, HORIZON) });
  const items = ahead.filter((item) => item.state !== 'coming' || item.from <= day + options.days);
  const morning: Morning = {
    day,
    today,
    room: room.settings.room,
    days: options.days,
    items,
    warnings: [],
    findings: room.findings,
    next: ahead.find((item) => !items.includes(item)) ?? null,
  };
  const { width, color } = stdout;
  stdout.write(context.json ? dueJson(morning) : dueText(morning, { width, color, by: options.by }));
  return 0;
}

function daysAhead(text: string): number {
  if (/^\d{1,3}$/.test(text)) return Number(text);
  throw new UsageError(`--days takes a number of days such as 14, not \`${text}\``);
}

function order(text: string): DueOptions['by'] {
  if (text === 'urgency' || text === 'housing' || text === 'pair') return text;
  throw new UsageError(`--by takes urgency, housing or pair, not \`${text}\``);
}
