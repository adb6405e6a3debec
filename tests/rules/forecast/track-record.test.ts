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

test('it is the middle one of the errors, in whatever order they came', () => {
  // By the book, the 12th day: two days off, none, one.
  expect(trackRecord(past(14, 12, 13))?.book.medianError).toBe(1);
});

test('a window holds its own first and last day, and nothing beyond them', () => {
  // Book: 11 … 13 days.
  for (const [length, inside] of [
    [10, 0],
    [11, 1],
    [13, 1],
    [14, 0],
  ] as const)
    expect(trackRecord(past(length))?.inside, `${length} days`).toBe(inside);
  expect(trackRecord(past(12, 12, 12, 18))?.inside).toBe(3 / 4);
});

test('a window claims what a normal distribution has on its days', () => {
  // 11 … 13 d about 12 with a deviation of 2 / 3.29: 1.5 / 0.6079 = 2.4675 deviations to either side, 98.64 %.
  const [only] = past(12);
  expect(only?.claimed).toBeCloseTo(0.9864, 4);
  expect(trackRecord(past(12))?.claimed).toBeCloseTo(0.9864, 4);
});

test('hatching teaches nothing of fledging, nor one species of another', () => {
  const files = pair(12, 12);
  const fledged = `${files['TF-1'].trimEnd()}\n      - {date: 2025-02-10, clutch: 1, fledged: all}\n`;
  const other = {
    'species/ridge-finch.yaml': files['species/test-finch.yaml'].replace('test', 'ridge'),
    'RF-1': files['TF-1'].replace('TF-1', 'RF-1').replace('test', 'ridge'),
  };
  const found = pastForecasts(room({ ...files, 'TF-1': fledged, ...other }, '2026-01-01'));
  expect(found.map(({ species, kind, n }) => `${species} ${kind} ${n}`).sort()).toEqual([
    'ridge finch incubation 1',
    'ridge finch incubation 1',
    'test finch fledging 0',
    'test finch incubation 1',
    'test finch incubation 1',
  ]);
});

test('the forecast is that of the egg that was warm first, beside the first chick', () => {
  // The one lay in store for three days; the other was sat on from the 12th, so it is due on the 24th, and comes then.
  const score = (stored: string, sat: string) => {
    const other = sat === 'e1' ? 'date: 2025-01-11, laid: 1' : 'date: 2025-01-11, laid: 1, pulled: e1';
    const files = {
      ...pair(),
      'TF-1': `
        pair: TF-1
        species: test finch
        log:
          - {${other}}
          - {date: 2025-01-12, laid: 1, sitting${stored === 'e2' ? ', pulled: e2' : ''}}
          - {date: 2025-01-15, set: {TF-1: ${stored}}}
          - {date: 2025-01-23, checked}
          - {date: 2025-01-24, hatched: ${sat}}
          - {date: 2025-01-27, hatched: ${stored}}
      `,
    };
    const [only] = pastForecasts(room(files, '2026-01-01'));
    return [only?.likely, only?.happened];
  };
  expect(score('e1', 'e2')).toEqual([day('2025-01-24'), day('2025-01-24')]);
  expect(score('e2', 'e1')).toEqual([day('2025-01-24'), day('2025-01-24')]);
});

test('without clutches there is nothing to score', () => {
  expect(trackRecord([])).toBeNull();
});
