import { fingerprint } from '../journal/load.ts';
import { dueJson } from '../report/json/due.ts';
import type { Morning } from '../report/morning.ts';
import { type Grouping, groupings } from '../report/terminal/due/groups.ts';
import { dueText } from '../report/terminal/due.ts';
import { explainText } from '../report/terminal/explain.ts';
import type { Room } from '../room/fold.ts';
import { agendaOf } from '../rules/agenda/agenda.ts';
import { routineWords } from '../rules/agenda/routines.ts';
import { taskWords } from '../rules/agenda/tasks.ts';
import { broodsOf } from '../rules/brood.ts';
import { learnedDurations } from '../rules/durations.ts';
import { warnings, warningsOf } from '../rules/warnings/index.ts';
import type { CommandDefinition, Context, ExitCode } from './context.ts';
import { meant } from './meant.ts';
import { daysOption, type Narrowed, onlyOptions, wantedOf } from './narrow.ts';
import { oneOf } from './one-of.ts';
import { type PageOptions, pageOptions, writePage } from './page-file.ts';
import { openRoom } from './room.ts';
import { UsageError } from './usage-error.ts';

interface DueOptions extends Narrowed, PageOptions {
  by?: Grouping;
  explain?: string;
}

/** How far ahead a quiet morning looks for the next thing to do. */
const HORIZON = 60;

export const definition: CommandDefinition = {
  examples: [
    { line: 'nestlog due', says: 'this morning: late, now, the coming week, warnings' },
    { line: 'nestlog due --days 14', says: 'the coming fortnight' },
    { line: 'nestlog due --by housing', says: 'in the order of a walk through the room' },
    { line: 'nestlog due --explain candle', says: 'what a task or a warning means' },
    { line: 'nestlog due --page today.html', says: 'a tick list for the phone, or to print and hang up' },
    { line: 'nestlog due --date 2026-05-17', says: 'as it was known on that morning' },
  ],
  options: [
    daysOption(7),
    oneOf('--by <order>', groupings, 'urgency (as text), housing (on a page) or pair'),
    ...onlyOptions,
    {
      flags: '--explain <what>',
      description: 'what a task or a warning means, and when it is over',
      completes: [...taskWords.map(({ task }) => task), ...warnings.map(({ kind }) => kind)],
    },
    ...pageOptions,
  ],
};

/** Prints the morning. An empty one is a good one: the exit code is 0 either way. */
export function run(context: Context<DueOptions>): ExitCode | Promise<ExitCode> {
  const { day, today, options, stdout } = context;
  if (options.explain !== undefined && (context.json || options.page !== undefined))
    throw new UsageError('an explanation is text: leave --json and --page out');
  const { room, files, wanted } = opened(context);
  if (options.explain !== undefined) {
    stdout.write(
      explained(options.explain, room)
        .map((words) => explainText(words, stdout))
        .join('\n'),
    );
    return 0;
  }
  const broods = broodsOf(room, learnedDurations(room));
  const ahead = agendaOf(room, broods, Math.max(options.days, HORIZON)).filter(wanted);
  const items = ahead.filter((item) => item.state !== 'coming' || item.from <= day + options.days);
  const morning: Morning = {
    day,
    today,
    room: room.settings.room,
    days: options.days,
    items,
    warnings: warningsOf(room, broods).filter(wanted),
    findings: room.findings,
    next: ahead.find((item) => !items.includes(item)) ?? null,
  };
  const { by, page } = options;
  if (page !== undefined) return writeDuePage(context, page, morning);
  const { width, color } = stdout;
  const text = context.json ? dueJson(morning) : dueText(morning, { width, color, by: by ?? 'urgency' });
  stdout.write(text);
  context.keep?.({ fingerprint: fingerprint(files), text });
  return 0;
}

/** The room, and what of it is asked for. What its journals say is let go: it may be millions of entries. */
function opened(context: Context<DueOptions>) {
  const { options } = context;
  const { room, files } = openRoom(context, { forOthers: options.page !== undefined });
  return { room, files, wanted: options.explain === undefined ? wantedOf(options, room) : () => true };
}

/** Whoever opens a page in the bird room or takes it along walks from housing to housing. */
async function writeDuePage(context: Context<DueOptions>, name: string, morning: Morning): Promise<ExitCode> {
  const { duePage } = await import('../report/page/due.tsx');
  return writePage(context, name, duePage(morning, context.options.by ?? 'housing'));
}

/** The words of all that has this name: a task, a routine of this room, a warning. */
function explained(name: string, room: Room) {
  const tasks = [...taskWords, ...room.settings.routines.map(routineWords)];
  const found = [
    ...tasks.filter(({ task }) => task === name),
    ...warnings.filter(({ kind }) => kind === name),
  ];
  if (found.length > 0) return found;
  const [asked, warned] = [tasks.map(({ task }) => task), warnings.map(({ kind }) => kind)];
  const known = `there are the tasks ${asked.join(', ')} and the warnings ${warned.join(', ')}`;
  throw new UsageError(`no task or warning \`${name}\`; ${meant(name, [...asked, ...warned], known)}`);
}
