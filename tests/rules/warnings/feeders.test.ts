import { expect, it } from 'vitest';
import type { Brood } from '../../../src/rules/brood.ts';
import { feedersOf, feedingWords } from '../../../src/rules/warnings/feeders.ts';
import { day } from '../../rooms.ts';
import { view, waxbills } from './warned.ts';

const log = `
  date: 2026-03-01, laid: 3
  date: 2026-03-14, hatched: 3
  date: 2026-03-20, feeding: {cock: all}
  date: 2026-03-22, feeding: {hen: c1}
  date: 2026-03-22, feeding: {cock: c1}
  date: 2026-03-24, feeding: {hand: c2}
`;
const brood = (text = log) => view({ 'LW-1': waxbills(text) }, '2026-03-30').broods[0] as Brood;

it('who fed is told by the last day on which it was seen; both, where both were seen', () => {
  const [c1, c2] = brood().young;
  if (c1 === undefined || c2 === undefined) throw new Error('no young');
  expect([...(feedersOf(c1, day('2026-03-30'))?.who ?? [])].sort()).toEqual(['cock', 'hen']);
  expect([...(feedersOf(c1, day('2026-03-21'))?.who ?? [])]).toEqual(['cock']);
  expect([...(feedersOf(c2, day('2026-03-30'))?.who ?? [])]).toEqual(['hand']);
  expect(feedersOf(c1, day('2026-03-19'))).toBeNull();
});

it('in words, those of whom nothing is known last', () => {
  const known = brood();
  expect(feedingWords(known, known.young, day('2026-03-30'))).toBe(
    'the cock and the hen fed c1 on 22 Mar; your hand fed c2 on 24 Mar; the cock fed c3 on 20 Mar',
  );
  const first = brood(log.replace('cock: all', 'cock: c3'));
  expect(feedingWords(first, first.young, day('2026-03-20'))).toBe(
    'the cock fed c3 on 20 Mar; nobody wrote who feeds c1 and c2',
  );
  expect(feedingWords(known, known.young, day('2026-03-19'))).toBe('nobody wrote who feeds c1, c2 and c3');
});
