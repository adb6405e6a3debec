import { expect, it } from 'vitest';
import { daysRange, names, opening } from '../../../src/rules/warnings/words.ts';
import { view, waxbills } from './warned.ts';

it('says one figure where both ends of a range are alike', () => {
  expect(daysRange({ low: 11, high: 13 })).toBe('11–13 d');
  expect(daysRange({ low: 2, high: 2 })).toBe('2 d');
});

it('begins a sentence with a capital, but leaves the refs of eggs and chicks as they are written', () => {
  expect(opening('the young')).toBe('The young');
  expect(opening('e1 and e2')).toBe('e1 and e2');
});

it('names young as the journal does, and not those that were only heard', () => {
  const log = 'date: 2026-03-01, laid: 3\n date: 2026-03-14, hatched: 2';
  const [brood] = view({ 'LW-1': waxbills(log) }, '2026-03-15').broods;
  if (brood === undefined) throw new Error('no brood');
  expect(names(brood, brood.young)).toBe('c1 and c2');
  const [heard] = view({ 'LW-1': waxbills('date: 2026-03-14, heard') }, '2026-03-15').broods;
  if (heard === undefined) throw new Error('no brood');
  expect(names(heard, heard.young)).toBe('the young');
});
