import fc from 'fast-check';
import { expect, test } from 'vitest';
import { formatDay } from '../../src/days.ts';
import { durationsFrom, learnedDurations } from '../../src/rules/durations.ts';
import { bookDuration } from '../../src/rules/forecast/duration.ts';
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
