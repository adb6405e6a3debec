import { expect, it } from 'vitest';
import { figuresMeant, hoursMeant, shareMeant } from '../../src/findings/figures-meant.ts';

it.each([
  ['30 days', 'days', '30'],
  ['4 weeks', 'days', '28'],
  ['2-3 weeks', 'days', '14-21'],
  ['8400mg', 'grams', '8.4'],
  ['4100 mg', 'grams', '4.1'],
  ['1.5 cm', 'mm', '15'],
  ['3 months', 'days', ''],
  ['1 year', 'months', '12'],
  ['9-12 months', 'months', '9-12'],
  ['2,0 to 2,3 mm', 'mm', '2.0-2.3'],
  ['12,14', 'days', '12-14'],
  ['8,55', 'g', ''],
  ['about 12', 'days', '12'],
  ['13+', 'days', ''],
  ['-3', 'days', ''],
  ['14-12 days', 'days', ''],
  ['two weeks', 'days', '14'],
  ['soon', 'days', ''],
])('%s, in %s, means %s', (text, unit, meant) => {
  expect(figuresMeant(text, unit)).toBe(meant);
});

it.each([
  ['2 hours', '2 h'],
  ['1,5 hrs', '1.5 h'],
  ['45 minutes', '45 min'],
  ['1 day', '24 h'],
  ['often', ''],
])('%s is %s', (text, meant) => {
  expect(hoursMeant(text)).toBe(meant);
});

it.each([
  ['12,5%', '12.5%'],
  ['12,5 %', '12.5%'],
  ['25', '25%'],
  ['0,125', '0.125'],
  ['a fifth', ''],
  ['125', ''],
])('the share meant by `%s` is `%s`', (text, share) => {
  expect(shareMeant(text)).toBe(share);
});
