import { expect, test } from 'vitest';
import type { Bird } from '../../src/room/model.ts';
import { clutchesOfHen, clutchLimit, firstEgg, freeAgain, inYearTo } from '../../src/rules/hen-year.ts';
import { birdsByName } from '../../src/rules/stock/names.ts';
import { day, room } from '../rooms.ts';

const journal = (pair: string, ...firstEggs: string[]) => `
  pair: ${pair}
  species: lavender waxbill
  cock: C-1
  hen: H-1
  log:
${firstEggs.map((date, i) => `    - {date: ${date}, clutch: ${i + 1}, laid: 1}`).join('\n')}
`;

/** A hen whose clutches lie in two pairs' nests. */
function stand() {
  const aviary = room(
    {
      'LW-1': journal('LW-1', '2025-09-01', '2026-02-20'),
      'LW-2': journal('LW-2', '2025-03-01', '2025-06-01'),
    },
    '2026-03-01',
  );
  const find = birdsByName(aviary.birds);
  return { aviary, find, hen: find('H-1') as Bird };
}

test('a hen’s clutches are hers whatever pair she laid them in, the oldest first', () => {
  const { aviary, find, hen } = stand();
  expect(clutchesOfHen(aviary, hen, find).map(firstEgg)).toEqual(
    ['2025-03-01', '2025-06-01', '2025-09-01', '2026-02-20'].map(day),
  );
});

test('a year is 365 days to the day asked about', () => {
  const { aviary, find, hen } = stand();
  const hers = clutchesOfHen(aviary, hen, find);
  // 2025-03-01 is 364 days before 2026-02-28 and 365 before 2026-03-01.
  expect(inYearTo(hers, day('2026-02-28'))).toHaveLength(4);
  expect(inYearTo(hers, day('2026-03-01'))).toHaveLength(3);
  expect(inYearTo(hers, day('2025-06-01'))).toHaveLength(2);
});

test('with three in a year and a limit of three she is free when the oldest of them is a year old', () => {
  const { aviary, find, hen } = stand();
  const year = inYearTo(clutchesOfHen(aviary, hen, find), day('2026-03-01'));
  expect(freeAgain(year, 3)).toBe(day('2026-06-01'));
  expect(freeAgain(year, 4)).toBeNull();
});

test('the room’s own limit goes before the species’', () => {
  const { aviary } = stand();
  const profile = aviary.pairs[0]?.profile ?? null;
  expect(clutchLimit(aviary, profile)).toBe(3);
  const strict = room(
    { 'LW-1': journal('LW-1'), 'nestlog.yaml': 'limits: {clutches-per-year: 2}\n' },
    '2026-03-01',
  );
  expect(clutchLimit(strict, profile)).toBe(2);
  expect(clutchLimit(aviary, null)).toBeNull();
});

test('an entry that names a chick as laid gives her no clutch, and no year of its own', () => {
  const slip = room({ 'LW-1': journal('LW-1', '2026-01-10').replace('laid: 1', 'laid: c1') }, '2026-03-01');
  const find = birdsByName(slip.birds);
  expect(clutchesOfHen(slip, find('H-1') as Bird, find)).toEqual([]);
  expect(slip.pairs[0]?.clutches.map(firstEgg)).toEqual([day('2026-01-10')]);
});
