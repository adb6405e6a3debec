import fc from 'fast-check';
import { expect, test } from 'vitest';
import { fullRef } from '../../../src/room/model.ts';
import { broodsOf } from '../../../src/rules/brood.ts';
import { learnedDurations } from '../../../src/rules/durations.ts';
import { warningsOf } from '../../../src/rules/warnings/index.ts';
import { dateOf } from '../../generators/lines.ts';
import { filesOf, type Logs, plausible, shuffled, wild } from '../../generators/rooms.ts';
import { agenda, room } from '../../rooms.ts';
import { broods } from './hill-finch.ts';

const RUNS = { numRuns: 120 };

const someDay = fc.integer({ min: 0, max: 200 });
const agendaOf = (logs: Logs, on: number) => agenda(filesOf(logs), dateOf(on));

/** Eggs and chicks that somebody has to care for in some nest, in store, in an incubator or by hand. */
const cared = (logs: Logs, on: number) =>
  broods(filesOf(logs), dateOf(on)).flatMap(({ eggs, stored, young }) =>
    [...eggs, ...stored, ...young].map(fullRef),
  );

test('lines may stand in any order: the agenda is the same', () => {
  fc.assert(
    fc.property(shuffled(plausible), someDay, ([logs, other], on) => {
      expect(agendaOf(other, on)).toEqual(agendaOf(logs, on));
    }),
    RUNS,
  );
});

test('what is written later never changes the agenda of an earlier day', () => {
  fc.assert(
    fc.property(plausible, someDay, (logs, on) => {
      const then = logs.map((lines) => lines.filter((line) => line.on <= on));
      expect(agendaOf(logs, on)).toEqual(agendaOf(then, on));
    }),
    RUNS,
  );
});

// Of a clutch begun half a year ago nothing is asked any more.
test('for half a year every open egg and fed chick of a nest is in a brood, and nobody is in two', () => {
  fc.assert(
    fc.property(plausible, fc.integer({ min: 0, max: 180 }), (logs, on) => {
      const all = cared(logs, on);
      expect([...all].sort()).toEqual([...new Set(all)].sort());
      const { pairs } = room(filesOf(logs), dateOf(on));
      const open = pairs.flatMap(({ here }) => [...here.eggs, ...here.young].map(fullRef));
      expect(all).toEqual(expect.arrayContaining(open));
    }),
    RUNS,
  );
});

test.each([
  ['plausible', plausible],
  ['wild', wild],
] as const)('whatever was seen in a %s room, its morning has sound days and reasons', (_name, rooms) => {
  fc.assert(
    fc.property(rooms, someDay, (logs, on) => {
      for (const { task, from, likely, to, why, say } of agendaOf(logs, on)) {
        const days = [from, likely ?? from, to ?? likely ?? from];
        expect(days.every(Number.isInteger), task).toBe(true);
        expect(days, task).toEqual(days.toSorted((a, b) => a - b));
        expect(`${why}${say}`).not.toMatch(/undefined|NaN|null|Infinity/);
      }
      const known = room(filesOf(logs), dateOf(on));
      expect(() => warningsOf(known, broodsOf(known, learnedDurations(known)))).not.toThrow();
    }),
    RUNS,
  );
});
