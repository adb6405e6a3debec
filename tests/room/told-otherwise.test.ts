import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { formatDay } from '../../src/days.ts';
import { agendaOf } from '../../src/rules/agenda/agenda.ts';
import { broodsOf } from '../../src/rules/brood.ts';
import { learnedDurations } from '../../src/rules/durations.ts';
import { warningsOf } from '../../src/rules/warnings/index.ts';
import { dateOf, type Line } from '../generators/lines.ts';
import { filesOf, type Logs, plausible, wild } from '../generators/rooms.ts';
import { summaryOf } from '../generators/summary.ts';
import { day, type Files, room } from '../rooms.ts';

const on = fc.integer({ min: 0, max: 140 });

/** A morning, its days counted from the day stood on, without those whose names begin so. */
function morning(files: Files, date: string, without = 'nobody') {
  const stood = room(files, date);
  const broods = broodsOf(stood, learnedDurations(stood));
  const items = agendaOf(stood, broods, 7).filter(({ pair, bird }) => !(pair ?? bird)?.startsWith(without));
  const warnings = warningsOf(stood, broods).filter(({ pair, bird }) => !(pair ?? bird)?.startsWith(without));
  return {
    items: items.map(({ task, pair, bird, clutch, who, housing, state, from, to, say }) => ({
      ...{ task, pair, bird, clutch, who, housing, state, say },
      from: from - stood.day,
      to: to === null ? null : to - stood.day,
    })),
    warnings: warnings.map(({ kind, pair, bird, clutch, level }) => ({ kind, pair, bird, clutch, level })),
  };
}

/** A line as what holds for all of it, and what was seen. */
function parts({ saw }: Line): { holds: string; seen: string; key: string } {
  const holds = /^(?:(?:time|after|clutch|site): [^,]+, )*/.exec(saw)?.[0] ?? '';
  const seen = saw.slice(holds.length);
  return { holds, seen, key: seen.replace(/:.*$/, '') };
}

/** Neighbours in one journal that could be told in one entry of the first one's day: told so, and one after the other. */
function oneEntryOrTwo(logs: Logs): { one: Logs; two: Logs } | null {
  for (const [which, lines] of logs.entries()) {
    for (const [i, first] of lines.entries()) {
      const second = lines[i + 1];
      if (second === undefined) continue;
      const [a, b] = [parts(first), parts(second)];
      if (a.holds !== b.holds || a.key === b.key) continue;
      const instead = (...by: Line[]) => logs.with(which, lines.toSpliced(i, 2, ...by));
      return {
        one: instead({ on: first.on, saw: `${first.saw}, ${b.seen}` }),
        two: instead(first, { on: first.on, saw: second.saw }),
      };
    }
  }
  return null;
}

/** What is written twice to the letter is one entry. */
const isOnce = (logs: Logs) =>
  logs.every((lines) => new Set(lines.map(({ on, saw }) => `${on} ${saw}`)).size === lines.length);

/** What is known of a room; how often it was looked at in a day says nothing. */
function knownOf(logs: Logs, date: string): unknown {
  const distinct = (looks: object[]) => [...new Set(looks.map((look) => JSON.stringify(look)))];
  return JSON.parse(
    JSON.stringify(summaryOf(room(filesOf(logs), date)), (key, value) =>
      key === 'looks' ? distinct(value) : value,
    ),
  );
}

/** A pair of another species in a cage of its own. */
const strangers = {
  'SF-1': `pair: SF-1
species: star finch
cock: SF-24-1
hen: SF-24-2
housing: cage 77
log:
  - {date: 2026-01-03, laid: 4, sitting}
  - {date: 2026-01-18, hatched: 3}
  - {date: 2026-01-22, lost: {clear: 1}}
  - {date: 2026-02-12, fledged: 3}
  - {date: 2026-03-05, independent: 3}
`,
};

describe.each([
  ['plausible', plausible],
  ['wild', wild],
])('the morning of any %s room', (_name, rooms) => {
  it('is the same for the same lines so many days later, over the ends of months and years', () => {
    fc.assert(
      fc.property(rooms, on, fc.integer({ min: 1, max: 800 }), (logs, today, by) => {
        const later = (text: string) => text.replace(/\d{4}-\d\d-\d\d/g, (date) => formatDay(day(date) + by));
        const shifted = Object.entries(filesOf(logs)).map(([name, text]) => [name, later(text)]);
        expect(morning(Object.fromEntries(shifted), later(dateOf(today)))).toEqual(
          morning(filesOf(logs), dateOf(today)),
        );
      }),
      { numRuns: 60 },
    );
  });

  it('is the same whether two things stand in one entry or in two', () => {
    fc.assert(
      fc.property(rooms, on, (logs, today) => {
        const told = oneEntryOrTwo(logs);
        fc.pre(told !== null && isOnce(told.two));
        expect(knownOf(told.one, dateOf(today))).toEqual(knownOf(told.two, dateOf(today)));
      }),
      { numRuns: 60 },
    );
  });

  it('is the same beside a pair of another species that nobody names', () => {
    fc.assert(
      fc.property(rooms, on, (logs, today) => {
        const files = filesOf(logs);
        expect(morning({ ...files, ...strangers }, dateOf(today), 'SF-')).toEqual(
          morning(files, dateOf(today)),
        );
      }),
      { numRuns: 60 },
    );
  });
});
