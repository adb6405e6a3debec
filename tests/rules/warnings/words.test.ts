import { expect, it } from 'vitest';
import { names, opening } from '../../../src/rules/warnings/words.ts';
import { view, waxbills } from './warned.ts';

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
