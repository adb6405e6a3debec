import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { formatTime } from '../../../src/journal/grammar/time-text.ts';
import { batchesFor, leadDays, type Moment } from '../../../src/rules/feed/batches.ts';
import { feedingHours } from '../../../src/rules/feed/hours.ts';

const clock = ({ day, minute }: Moment) => `${day} ${formatTime(minute)}`;
const hours = (soak: number, sprout: number) =>
  feedingHours({ from: 360, to: 1200, every: 120, soak: soak * 60, sprout: sprout * 60 });
const steps = (soak: number, sprout: number) => {
  const [batch] = batchesFor([{ day: 10, dry: 20 }], hours(soak, sprout));
  if (batch === undefined) throw new Error('no batch');
  return [batch.soak, batch.drain, batch.ready].map(clock);
};

describe('seed is ready for the first portion of its day', () => {
  it('counted back by the hours that it soaks and sprouts', () => {
    expect(steps(12, 24)).toEqual(['8 18:00', '9 06:00', '10 06:00']);
    expect(steps(12, 48)).toEqual(['7 18:00', '8 06:00', '10 06:00']);
  });

  it('and nobody gets up at night for it: the step is done the evening before', () => {
    expect(steps(8, 24)).toEqual(['8 20:00', '9 06:00', '10 06:00']);
    expect(steps(12, 30)).toEqual(['8 08:00', '8 20:00', '10 06:00']);
  });
});

it('a day on which nobody eats any has no batch', () => {
  expect(batchesFor([{ day: 10, dry: 0 }], hours(12, 24))).toEqual([]);
});

it('every step of any batch is in feeding hours, long enough before the next, and within the lead days', () => {
  const hour = fc.integer({ min: 0, max: 23 });
  fc.assert(
    fc.property(
      hour,
      hour,
      fc.integer({ min: 1, max: 48 }),
      fc.integer({ min: 1, max: 120 }),
      (a, b, soak, sprout) => {
        const [from, to] = [Math.min(a, b) * 60, Math.max(a, b) * 60];
        const room = feedingHours({ from, to, every: 60, soak: soak * 60, sprout: sprout * 60 });
        const [batch] = batchesFor([{ day: 20, dry: 1 }], room);
        if (batch === undefined) return expect.unreachable('no batch');
        const at = ({ day, minute }: Moment) => day * 1440 + minute;
        for (const { minute } of [batch.soak, batch.drain, batch.ready]) {
          expect(minute).toBeGreaterThanOrEqual(from);
          expect(minute).toBeLessThanOrEqual(to);
        }
        expect(at(batch.drain) - at(batch.soak)).toBeGreaterThanOrEqual(soak * 60);
        expect(at(batch.ready) - at(batch.drain)).toBeGreaterThanOrEqual(sprout * 60);
        expect(20 - batch.soak.day).toBeLessThanOrEqual(leadDays(room));
      },
    ),
  );
});
