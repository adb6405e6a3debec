import { describe, expect, test } from 'vitest';
import { hues, type Meaning, styles } from '../../../src/report/terminal/style.ts';

/** Red, green and blue (0–255) of a number of the 6 × 6 × 6 cube and the grey ramp, as xterm's 256colres.h has them. */
function rgb(number: number): number[] {
  if (number >= 232) return Array(3).fill(8 + 10 * (number - 232));
  const level = (step: number) => (step === 0 ? 0 : 55 + 40 * step);
  const cube = number - 16;
  return [Math.floor(cube / 36), Math.floor(cube / 6) % 6, cube % 6].map(level);
}

/** Relative luminance as WCAG 2.2 defines it (https://www.w3.org/TR/WCAG22/#dfn-relative-luminance). */
function luminance(number: number): number {
  const [red = 0, green = 0, blue = 0] = rgb(number)
    .map((value) => value / 255)
    .map((value) => (value <= 0.04045 ? value / 12.92 : ((value + 0.055) / 1.055) ** 2.4));
  return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
}

describe.each(Object.entries(hues))('%s can be read', (_, number) => {
  test('on black', () => {
    expect((luminance(number) + 0.05) / 0.05).toBeGreaterThanOrEqual(4);
  });
  test('on white', () => {
    expect(1.05 / (luminance(number) + 0.05)).toBeGreaterThanOrEqual(4);
  });
});

const meanings = Object.keys(styles(false)) as Meaning[];

test.each(meanings)('without colour, %s is the bare text', (meaning) => {
  expect(styles(false)[meaning]('LW-1')).toBe('LW-1');
});

test.each(meanings)('with colour, %s is marked, and never by faintness (SGR 2)', (meaning) => {
  const marked = styles(true)[meaning]('LW-1');
  expect(marked).not.toBe('LW-1');
  expect(marked).not.toContain('\u001B[2m');
});
