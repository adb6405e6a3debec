import { fileURLToPath } from 'node:url';
import { test } from 'vitest';
import { type Day, formatDay } from '../../src/days.ts';
import { loadRoom } from '../../src/journal/load.ts';
import { readRoom } from '../../src/journal/record.ts';
import { understandRoom } from '../../src/room/fold.ts';
import { agendaOf } from '../../src/rules/agenda/agenda.ts';
import { broodsOf } from '../../src/rules/brood.ts';
import { learnedDurations } from '../../src/rules/durations.ts';
import { warningsOf } from '../../src/rules/warnings/index.ts';
import { expectKept } from '../golden.ts';
import { day } from '../rooms.ts';

const clock = { day: day('2026-06-30'), today: day('2026-06-30') };
const record = readRoom(loadRoom(fileURLToPath(new URL('../../journals-example', import.meta.url))), clock);

/** All that one morning says, a line each. */
function morning(on: Day): string[] {
  const room = understandRoom(record, { day: on, today: clock.today });
  const broods = broodsOf(room, learnedDurations(room));
  return [
    ...warningsOf(room, broods).map(
      ({ level, kind, pair, bird }) => `${level} ${kind} ${pair ?? bird ?? 'the room'}`,
    ),
    ...agendaOf(room, broods, 0).map(
      ({ state, task, pair, bird, clutch, who, from, to }) =>
        `${state} ${task} ${pair ?? bird ?? 'the room'}${clutch === null ? '' : `/${clutch}`}` +
        `${who === null ? '' : ` ${who.join(',')}`} ${formatDay(from)}…${to === null ? '' : formatDay(to)}`,
    ),
  ];
}

// The example room goes through most situations of a bird room; a change in any of these mornings is to be read.
test('the mornings of the example room, day by day through a season', () => {
  const first = day('2026-02-01');
  const pages = Array.from({ length: 106 }, (_, i) =>
    [`== ${formatDay(first + i)}`, ...morning(first + i)].join('\n'),
  );
  expectKept(new URL('mornings.txt', import.meta.url), `${pages.join('\n')}\n`);
});
