import { expect, it } from 'vitest';
import {
  ageText,
  ancestorsText,
  coefficient,
  percentInTwoFigures,
} from '../../../src/report/terminal/birds.ts';
import { day } from '../../rooms.ts';
import { birdIn, stock } from '../../rules/stock/rooms.ts';

it.each([
  [null, '?'],
  [0, '0'],
  [1 / 8, '0.125'],
  [1 / 3, '0.333'],
  [1 / 4096, '<0.001'],
  [1 / 1024, '0.001'],
])('a coefficient of %s is written %s', (value, text) => {
  expect(coefficient(value)).toBe(text);
});

it.each([
  [0, '0 %'],
  [1 / 16, '6.3 %'],
  [0.05, '5 %'],
  [0.1234, '12 %'],
  [1, '100 %'],
])('a share of %f is written %s', (share, text) => {
  expect(percentInTwoFigures(share)).toBe(text);
});

it.each([
  ['2025-01-01', '0–1 y'],
  ['2026-05-01', '1–2 y'],
  ['2027-01-01', '2–3 y'],
])('a bird with a ring of 2024 is on %s %s old', (on, text) => {
  const { bird } = birdIn(stock({ 'birds.yaml': 'birds: [{id: x, hatched: 2024}]' }, on), 'x');
  expect(ageText({ bird }, day(on))).toBe(text);
});

it.each([
  ['2026-05-01', '0 d'],
  ['2026-06-29', '59 d'],
  ['2026-08-01', '3 mo'],
  ['2028-04-30', '23 mo'],
  ['2028-05-01', '2 y'],
])('a bird of 1 May 2026 is on %s %s old', (on, text) => {
  const { bird } = birdIn(
    stock({ 'birds.yaml': 'birds: [{id: x, hatched: 2026-05-01}]' }, '2026-05-01'),
    'x',
  );
  expect(ageText({ bird }, day(on))).toBe(text);
});

it('ancestors are named with their part of F, the rest counted', () => {
  const through = ['a', 'b', 'c'].map((founder) => ({ founder, share: 1 / 16 }));
  expect(ancestorsText(through, 2)).toBe('a (0.063), b (0.063), 1 more');
  expect(ancestorsText(through.slice(0, 1), 2)).toBe('a (0.063)');
});
