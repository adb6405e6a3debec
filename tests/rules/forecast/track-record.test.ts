import { expect, test } from 'vitest';
import { formatDay } from '../../../src/days.ts';
import { pastForecasts, trackRecord } from '../../../src/rules/forecast/track-record.ts';
import { day, room } from '../../rooms.ts';

/** A pair whose clutches all hatch so many days after the fourth egg, on which they are seen to begin to sit. */
const pair = (...lengths: number[]) => ({
  'species/test-finch.yaml':
    'species: test finch\nincubation: 11-13\nfledging: 17-21\nsitting-from: last\nlaying-interval: 1\nclutch: 4\n',
  'TF-1': `
    pair: TF-1
    species: test finch
    log:
${lengths
  .map((length, i) => {
    const start = day(`2025-0${i + 1}-10`);
    return [
      `      - {date: ${formatDay(start)}, after: ${formatDay(start - 1)}, clutch: ${i + 1}, laid: 4, sitting}`,
      `      - {date: ${formatDay(start + length)}, after: ${formatDay(start + length - 1)}, clutch: ${i + 1}, hatched: 4}`,
    ].join('\n');
  })
  .join('\n')}
  `,
});

const past = (...lengths: number[]) => pastForecasts(room(pair(...lengths), '2026-01-01'));

test('each clutch is forecast from all the others, never from itself', () => {
  expect(past(12, 12, 12).map(({ n }) => n)).toEqual([2, 2, 2]);
  // One clutch alone is forecast by the book.
  const [only] = past(14);
  expect(only).toMatchObject({ n: 0 });
  expect(only?.likely).toBe(only?.book.likely);
});

test('where the room is always late the forecasts learn it, and the book does not', () => {
  const record = trackRecord(past(13, 13, 13, 13, 13));
  expect(record).toMatchObject({ n: 5, inside: 1 });
  expect(record?.crps).toBeLessThan(record?.book.crps ?? 0);
});

test('the median of the errors is that of the days between likely and real', () => {
  // The book's likely day is the 12th; alone, a clutch of 14 days is two days off.
  expect(trackRecord(past(14))?.medianError).toBe(2);
});

test('without clutches there is nothing to score', () => {
  expect(trackRecord([])).toBeNull();
});
