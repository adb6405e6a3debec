import { describe, expect, it } from 'vitest';
import { readLog } from '../reading.ts';

/** The fixes that are offered for a log of these days, one entry each. */
const fixes = (...days: string[]) =>
  readLog(...days.map((day, i) => `- {date: ${day}, note: "${i}"}`)).fixes.map((fix) => fix?.split('?')[0]);

describe('the year of a day', () => {
  it('is doubted where day and month go on and the year goes back', () => {
    const { found, fixes: told } = readLog(
      '- {date: 2026-03-01, paired}',
      '- {date: 2026-03-04, laid: 1}',
      '- {date: 2025-03-05, laid: 1}',
      '- {date: 2026-03-06, laid: 1}',
    );
    expect(found).toEqual(['5:12 other-year']);
    expect(told).toEqual([
      'did you mean 2026-03-05? If it was 2025-03-05, put the line where its day belongs',
    ]);
  });

  it('is doubted in January, when one still writes the old one, line after line', () => {
    expect(fixes('2025-12-20', '2025-12-30', '2025-01-02', '2025-01-05', '2026-01-08')).toEqual([
      'did you mean 2026-01-02',
      'did you mean 2026-01-05',
    ]);
    expect(fixes('2024-02-20', '2024-02-27', '2023-02-28')).toEqual(['did you mean 2024-02-28']);
  });

  it('is not doubted where something is written down much later than it was', () => {
    expect(fixes('2026-03-01', '2026-05-04', '2025-10-11', '2026-05-06')).toEqual([]);
    expect(fixes('2026-03-01', '2026-05-04', '2024-09-01', '2026-05-06')).toEqual([]);
  });

  it('is not doubted in a log that was written from below to above', () => {
    expect(fixes('2026-03-04', '2026-03-01', '2025-03-20', '2025-03-02', '2024-04-01')).toEqual([]);
  });
});
