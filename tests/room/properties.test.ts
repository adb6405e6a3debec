import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { codes } from '../../src/findings/codes.ts';
import type { Room } from '../../src/room/fold.ts';
import { isDependent } from '../../src/room/lives.ts';
import { eggsWithoutFate, inTwoPlaces, outOfOrder, raisedByCount } from '../fuzz/laws.ts';
import { dateOf } from '../generators/lines.ts';
import { filesOf, type Logs, plausible, shuffled, wild } from '../generators/rooms.ts';
import { findingsOf, summaryOf } from '../generators/summary.ts';
import { day, record, room } from '../rooms.ts';

const LAST = 260;
const known = (logs: Logs, on = LAST): Room => room(filesOf(logs), dateOf(on));

describe.each([
  ['plausible', plausible, 60],
  ['wild', wild, 60],
] as const)('any %s room', (_name, rooms, numRuns) => {
  it('is the same whatever the order of its lines', () => {
    fc.assert(
      fc.property(shuffled(rooms), ([logs, other]) => {
        expect(summaryOf(known(other))).toEqual(summaryOf(known(logs)));
        expect(findingsOf(known(other))).toEqual(findingsOf(known(logs)));
      }),
      { numRuns },
    );
  });

  it('on an earlier day knows nothing of what is dated later', () => {
    fc.assert(
      fc.property(rooms, fc.integer({ min: 0, max: 140 }), (logs, on) => {
        const until = logs.map((lines) => lines.filter((line) => line.on <= on));
        expect(summaryOf(known(logs, on))).toEqual(summaryOf(known(until, on)));
      }),
      { numRuns },
    );
  });

  it('has nobody in two places', () => {
    fc.assert(
      fc.property(rooms, fc.integer({ min: 0, max: 140 }), (logs, on) => {
        expect(inTwoPlaces(known(logs, on))).toEqual([]);
      }),
      { numRuns },
    );
  });

  it('has in a nest who is fed there, and eggs that are open', () => {
    fc.assert(
      fc.property(rooms, fc.integer({ min: 0, max: 200 }), (logs, on) => {
        for (const { here } of known(logs, on).pairs) {
          expect([...here.young].filter((one) => !isDependent(one))).toEqual([]);
          expect([...here.eggs].filter(({ fate }) => fate !== null)).toEqual([]);
        }
      }),
      { numRuns },
    );
  });

  it('raises nobody from the dead by a count', () => {
    fc.assert(
      fc.property(rooms, fc.integer({ min: 20, max: 200 }), (logs, on) => {
        const returns = logs.map((lines) => [...lines, { on, saw: 'back: all' }]);
        const last = dateOf(LAST);
        const clock = { day: day(last), today: day(last) };
        expect(raisedByCount(record(filesOf(returns), last), clock)).toEqual([]);
      }),
      { numRuns },
    );
  });

  it('has a fate, or is open, for every egg and chick: none is counted twice, none vanishes', () => {
    fc.assert(
      fc.property(rooms, (logs) => {
        expect(eggsWithoutFate(known(logs))).toEqual([]);
      }),
      { numRuns },
    );
  });

  it('lets nothing happen before it can: laid, hatched, fledged, independent, in this order', () => {
    fc.assert(
      fc.property(rooms, (logs) => {
        expect(outOfOrder(known(logs))).toEqual([]);
      }),
      { numRuns },
    );
  });
});

describe('a plausible room', () => {
  it('reads without an error', () => {
    fc.assert(
      fc.property(plausible, (logs) => {
        const errors = known(logs).findings.filter(({ code }) => codes[code].level === 'error');
        expect(errors.map(({ code, args }) => `${code} ${JSON.stringify(args)}`)).toEqual([]);
      }),
      { numRuns: 60 },
    );
  });

  it('with each of its lines twice is the same room', () => {
    fc.assert(
      fc.property(plausible, (logs) => {
        const twice = logs.map((lines) => lines.flatMap((line) => [line, line]));
        expect(summaryOf(known(twice))).toEqual(summaryOf(known(logs)));
      }),
      { numRuns: 60 },
    );
  });
});
