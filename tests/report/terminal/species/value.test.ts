import { expect, test } from 'vitest';
import { forecastText, valueText } from '../../../../src/report/terminal/species/value.ts';

test.each([
  [{ low: 11, high: 13 }, 'days', '11–13 d'],
  [{ low: 5, high: 5 }, 'days', '5 d'],
  [{ low: -5, high: 3 }, 'days', '-5 to 3 d'],
  [{ low: 2, high: 2.3 }, 'mm', '2.0–2.3 mm'],
  [{ low: 3, high: 4 }, 'egg', 'egg 3–4'],
  [{ low: 1, high: 1 }, 'clutches', '1 clutch'],
  [{ low: 9, high: 12 }, 'months', '9–12 months'],
  ['last', 'egg', 'last'],
  ['required', '', 'required'],
])('%j %s is shown as %s', (value, unit, shown) => {
  expect(valueText(value, unit)).toBe(shown);
});

test('days of a forecast have one decimal', () => {
  expect(forecastText({ low: 11.26, high: 12.9 })).toBe('11.3–12.9');
});
