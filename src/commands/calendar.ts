import { calendarText } from '../report/calendar/calendar.ts';
import { agendaOf } from '../rules/agenda/agenda.ts';
import { routineWords } from '../rules/agenda/routines.ts';
import { taskWords } from '../rules/agenda/tasks.ts';
import { broodsOf } from '../rules/brood.ts';
import { learnedDurations } from '../rules/durations.ts';
import type { CommandDefinition, Context, ExitCode } from './context.ts';
import { daysOption, type Narrowed, onlyOptions, wantedOf } from './narrow.ts';
import { openRoom } from './room.ts';
import { tellUnread } from './unread.ts';

export const definition: CommandDefinition = {
  examples: [
    { line: 'nestlog calendar > room.ics', says: 'what is due in the next 60 days, for a calendar program' },
    { line: 'nestlog calendar --days 14 > room.ics', says: 'the coming fortnight' },
    {
      line: 'nestlog calendar --housing "flight 2" > flight-2.ics',
      says: 'one flight for who looks after it',
    },
  ],
  options: [daysOption(60), ...onlyOptions],
  noJson: 'it writes iCalendar; `nestlog due --days 60 --json` has the same',
};

/** Writes the agenda as iCalendar to stdout. A room where nothing is due gives a calendar without entries. */
export function run(context: Context<Narrowed>): ExitCode {
  const { day, options, stdout } = context;
  const { room } = openRoom(context);
  const wanted = wantedOf(options, room);
  tellUnread(context, room);
  const items = agendaOf(room, broodsOf(room, learnedDurations(room)), options.days).filter(wanted);
  const words = [...taskWords, ...room.settings.routines.map(routineWords)];
  const doneBy = new Map(words.map((one) => [one.task, one.doneBy]));
  stdout.write(
    calendarText({
      day,
      room: room.settings.room,
      items,
      doneBy: (task) => doneBy.get(task) ?? null,
    }),
  );
  return 0;
}
