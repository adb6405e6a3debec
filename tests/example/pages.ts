import type { Morning } from '../../src/report/morning.ts';
import { agendaOf } from '../../src/rules/agenda/agenda.ts';
import { broodsOf } from '../../src/rules/brood.ts';
import { learnedDurations } from '../../src/rules/durations.ts';
import { warningsOf } from '../../src/rules/warnings/index.ts';
import { exampleRoom, TODAY } from './room.ts';

/** The example room's morning on the day on which it is alive, a week ahead. */
export function exampleMorning(): Morning {
  const room = exampleRoom();
  const broods = broodsOf(room, learnedDurations(room));
  return {
    day: TODAY,
    today: TODAY,
    room: room.settings.room,
    days: 7,
    items: agendaOf(room, broods, 7),
    warnings: warningsOf(room, broods),
    findings: room.findings,
    next: null,
  };
}
