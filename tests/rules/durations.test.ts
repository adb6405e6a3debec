import fc from 'fast-check';
import { expect, test } from 'vitest';
import { formatDay } from '../../src/days.ts';
import type { Clutch } from '../../src/room/model.ts';
import { durationsFrom, durationsOfOthers, learnedDurations } from '../../src/rules/durations.ts';
import { bookDuration } from '../../src/rules/forecast/duration.ts';
import { ownDurations } from '../../src/rules/forecast/own-durations.ts';
import { day, room } from '../rooms.ts';

const range = { low: 11, high: 13 };

test('without own clutches a species takes what the book says', () => {
  expect(durationsFrom([])('incubation', 'lavender waxbill', range)).toEqual(bookDuration(range));
});

test('a species learns from its own clutches only, and sitting only from sitting', () => {
  const files = {
    'LW-1': `
      pair: LW-1
      species: lavender waxbill
      log:
        - {date: 2026-03-04, after: 2026-03-03, clutch: 1, laid: 1, sitting}
        - {date: 2026-03-17, after: 2026-03-16, hatched: 1}
    `,
  };
  const durations = learnedDurations(room(files, '2026-06-01'));
  expect(durations('incubation', 'lavender waxbill', range).n).toBe(1);
  expect(durations('incubation', 'star finch', range).n).toBe(0);
  expect(durations('fledging', 'lavender waxbill', range).n).toBe(0);
});

/** A clutch a month, sat on for so many days. */
const clutches = fc.array(fc.integer({ min: 9, max: 16 }), { minLength: 1, maxLength: 6 });

/** A journal of clutches, one a pair, in the order given; each sat on from its own month's tenth. */
function journals(lengths: readonly { length: number; month: number }[]) {
  return Object.fromEntries(
    lengths.map(({ length, month }) => {
      const start = day(`2025-0${month}-10`);
      const entries = [
        `{date: ${formatDay(start)}, after: ${formatDay(start - 1)}, clutch: 1, laid: 1, sitting}`,
        `{date: ${formatDay(start + length)}, after: ${formatDay(start + length - 1)}, hatched: 1}`,
      ];
      const log = entries.map((entry) => `  - ${entry}\n`).join('');
      return [`LW-${month}`, `pair: LW-${month}\nspecies: lavender waxbill\nlog:\n${log}`];
    }),
  );
}

const learned = (files: Record<string, string>, on: string) =>
  learnedDurations(room(files, on))('incubation', 'lavender waxbill', range);

test('the order of the clutches makes no difference', () => {
  fc.assert(
    fc.property(clutches, (lengths) => {
      const dated = lengths.map((length, i) => ({ length, month: i + 1 }));
      const one = learned(journals(dated), '2026-01-01');
      const other = learned(journals([...dated].reverse()), '2026-01-01');
      expect(one.n).toBe(lengths.length);
      expect(other.mean).toBeCloseTo(one.mean, 9);
      expect(other.variance).toBeCloseTo(one.variance, 9);
    }),
    { numRuns: 20 },
  );
});

test('what is expected of a clutch is what all others took, never its own outcome', () => {
  fc.assert(
    fc.property(clutches, (lengths) => {
      const dated = lengths.map((length, i) => ({ length, month: i + 1 }));
      const own = ownDurations(room(journals(dated), '2026-01-01'));
      const others = durationsOfOthers(own);
      for (const { clutch } of own) {
        const without = durationsFrom(own.filter((one) => one.clutch !== clutch));
        const [found, wanted] = [others(clutch), without].map((durations) =>
          durations('incubation', 'lavender waxbill', range),
        );
        expect(found?.n).toBe(lengths.length - 1);
        for (const figure of ['mean', 'variance', 'longest', 'degrees'] as const) {
          expect(found?.[figure]).toBeCloseTo(wanted?.[figure] ?? Number.NaN, 9);
        }
      }
    }),
    { numRuns: 20 },
  );
});

test('a clutch that taught nothing yet is expected to take what all others took', () => {
  const files = {
    ...journals([{ length: 14, month: 1 }]),
    'LW-9': `
      pair: LW-9
      species: lavender waxbill
      log:
        - {date: 2025-12-20, after: 2025-12-19, clutch: 1, laid: 1, sitting}
    `,
  };
  const known = room(files, '2026-01-01');
  const sitting = known.pairs.find(({ id }) => id === 'LW-9')?.clutches[0] as Clutch;
  const expected = durationsOfOthers(ownDurations(known))(sitting);
  expect(expected('incubation', 'lavender waxbill', range).n).toBe(1);
});

test('what a past day expected is never changed by later clutches', () => {
  fc.assert(
    fc.property(clutches, fc.integer({ min: 1, max: 6 }), (lengths, month) => {
      const dated = lengths.map((length, i) => ({ length, month: i + 1 }));
      const on = `2025-0${month}-28`;
      const then = dated.filter((one) => one.month <= month);
      expect(learned(journals(dated), on)).toEqual(learned(journals(then), on));
    }),
    { numRuns: 20 },
  );
});
