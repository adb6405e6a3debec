import { describe, expect, it } from 'vitest';
import { kindOf } from '../../../src/findings/codes.ts';
import { record } from '../../rooms.ts';

/** What is found on that day in a log with an entry for each of these days. */
function found(on: string, ...days: string[]) {
  const lines = days.map((day, i) => `  - {date: ${day}, note: "${i}"}\n`);
  const { findings } = record({ 'pairs/lw-1.yaml': `pair: LW-1\nlog:\n${lines.join('')}` }, on);
  return findings.map(({ code, at, args }) => ({
    is: `${at.line} ${code}`,
    fix: kindOf({ code }).hint(args),
  }));
}

/** The fixes that are offered for it long afterwards. */
const fixes = (...days: string[]) => found('2026-12-31', ...days).map(({ fix }) => fix?.split('?')[0]);

describe('the year of a day', () => {
  it('is doubted where day and month go on and the year goes back', () => {
    expect(found('2026-12-31', '2026-03-01', '2026-03-04', '2025-03-05', '2026-03-06')).toEqual([
      {
        is: '5 other-year',
        fix: 'did you mean 2026-03-05? If it was 2025-03-05, put the line where its day belongs',
      },
    ]);
  });

  it('is measured by what was written today', () => {
    const onToday = found('2026-03-06', '2025-02-01', '2026-03-06', '2025-03-04');
    expect(onToday.map(({ is }) => is)).toEqual(['5 other-year']);
  });

  it('is not measured by a day that nobody has lived yet', () => {
    const slips = (...days: string[]) => found('2026-04-01', ...days).map(({ is }) => is);
    expect(slips('2062-03-02', '2026-03-03', '2026-03-04')).toEqual(['3 future-date']);
    expect(slips('2026-03-01', '2062-03-02', '2026-03-03', '2025-03-04')).toEqual([
      '4 future-date',
      '6 other-year',
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
