import { describe, expect, it } from 'vitest';
import { parseDay } from '../../src/days.ts';
import { futureFindings } from '../../src/journal/future.ts';

const day = (text: string) => parseDay(text) as number;
const dateAt = { file: 'a', line: 1, column: 1, length: 10 };

/** The suggestion for an entry of that date, or null where there is nothing to say. */
function finding(date: string, on: string, today: string) {
  const [found] = futureFindings([{ date: day(date), dateAt }], { day: day(on), today: day(today) });
  return found === undefined ? null : found.args.suggestion;
}

describe('a day that has not come', () => {
  it('is later than the day stood on and than today', () => {
    expect(finding('2026-05-18', '2026-05-17', '2026-05-17')).not.toBeNull();
    expect(finding('2026-05-17', '2026-05-17', '2026-05-17')).toBeNull();
  });

  it('has come by today although an earlier day is stood on, or the other way round', () => {
    expect(finding('2026-05-17', '2026-01-01', '2026-05-17')).toBeNull();
    expect(finding('2026-05-17', '2026-05-17', '2026-01-01')).toBeNull();
  });

  it.each([
    ['2027-03-01', '2026-03-01'],
    ['2027-05-17', '2026-05-17'],
    ['2026-12-01', '2025-12-01'],
    ['2062-02-01', '2026-02-01'],
    ['2028-02-29', '2024-02-29'],
  ])('%s was probably %s', (date, meant) => {
    expect(finding(date, '2026-05-17', '2026-05-17')).toBe(meant);
  });

  it('is one finding where most of a record lies ahead: then the clock is behind', () => {
    const entries = Array.from({ length: 30 }, (_, index) => ({ date: day('2026-03-01') + index, dateAt }));
    const at = (today: string) =>
      futureFindings(entries, { day: day(today), today: day(today) }).map(({ code }) => code);
    expect(at('1970-01-01')).toEqual(['clock-behind']);
    expect(at('2026-03-28')).toEqual(['future-date', 'future-date']);
    expect(at('2026-04-01')).toEqual([]);
    // Fewer than ten entries are a slip of a finger each, not a record.
    const some = (count: number) =>
      futureFindings(entries.slice(0, count), { day: 0, today: 0 }).map(({ code }) => code);
    expect(some(10)).toEqual(['clock-behind']);
    expect(some(9)).toEqual(Array(9).fill('future-date'));
    const [finding] = futureFindings(entries, { day: 0, today: 0 });
    expect(finding?.args).toEqual({ today: '1970-01-01', later: 30, of: 30, last: '2026-03-30' });
  });

  it('is the latest of all, wherever it stands, that is told where the clock is behind; half of a record are slips', () => {
    const dated = (...dates: string[]) =>
      dates.map((date, line) => ({ date: day(date), dateAt: { ...dateAt, line: line + 1 } }));
    const past = Array(4).fill('2026-03-01');
    const found = (...dates: string[]) =>
      futureFindings(dated(...past, ...dates), { day: day('2026-03-01'), today: day('2026-03-01') });
    const lying = ['2026-05-01', '2026-06-01', '2026-07-01', '2026-05-09', '2026-05-02', '2026-05-03'];
    expect(found(...lying)).toMatchObject([
      { code: 'clock-behind', at: { line: 7 }, args: { later: 6, of: 10, last: '2026-07-01' } },
    ]);
    expect(found('2026-02-28', '2026-03-01', ...lying).map(({ code }) => code)).toEqual(
      Array(6).fill('future-date'),
    );
  });
});
