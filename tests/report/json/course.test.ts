import { expect, it } from 'vitest';
import { courseData, dayData, spanData } from '../../../src/report/json/course.ts';
import { day } from '../../rooms.ts';
import { story } from '../seasons.ts';

it('a clutch’s dates are days of the calendar, real ones beside those foreseen', () => {
  const [first] = story('LW-1').clutches;
  if (first === undefined) throw new Error('no clutch');
  expect(courseData(first)).toMatchObject({
    clutch: 1,
    season: '2026',
    counted: true,
    laid: { from: '2026-03-01', to: '2026-03-05' },
    sitting: { from: '2026-03-03', to: '2026-03-04', inferred: false },
    independent: { from: '2026-04-25', to: '2026-04-25' },
    over: '2026-04-25',
    foreseen: { hatch: { likely: expect.stringMatching(/^2026-03-1\d$/) } },
  });
});

it('what is not known is null', () => {
  expect([dayData(null), spanData(null)]).toEqual([null, null]);
  expect(dayData(day('2026-03-01'))).toBe('2026-03-01');
});
