import { expect, it } from 'vitest';
import { line, pair, spell, warned, waxbills } from './warned.ts';

// Lavender waxbills rear on live food (lavender-waxbill.com): said at pairing, not at the hatch.
it('a pair of a species that rears on live food is told so for a fortnight', () => {
  const files = { 'LW-1': waxbills('date: 2026-03-01, paired, food: [dry seed, greens]') };
  expect(spell(files, 'live-food-ahead', '2026-02-25', '2026-03-31')).toEqual(['03-01 … 03-15 note']);
  expect(line(files, 'live-food-ahead', '2026-03-01').text).toBe(
    'Together since 1 Mar. The lavender waxbill rears on live food: without it the chicks are thrown out or starve.',
  );
});

it('where nobody wrote when they were put together, from the first entry on', () => {
  const files = { 'LW-1': waxbills('date: 2026-03-01, nest: offered\n date: 2026-03-05, courting') };
  expect(spell(files, 'live-food-ahead', '2026-02-25', '2026-03-31')).toEqual(['03-01 … 03-15 note']);
});

it.each([
  ['live food is offered', 'food: [live food, dry seed]'],
  ['eggs are laid', 'laid: 1'],
  ['they are parted', 'parted'],
])('it is over when %s', (_what, then) => {
  const files = { 'LW-1': waxbills(`date: 2026-03-01, paired\n date: 2026-03-04, ${then}`) };
  expect(spell(files, 'live-food-ahead', '2026-02-25', '2026-03-31')).toEqual(['03-01 … 03-03 note']);
});

it('it is over with a clutch that came to nothing, not with one of the year before', () => {
  const lost = waxbills(
    'date: 2026-03-01, paired\n date: 2026-03-04, laid: 1\n date: 2026-03-06, lost: {broken: e1}',
  );
  expect(spell({ 'LW-1': lost }, 'live-food-ahead', '2026-02-25', '2026-03-31')).toEqual([
    '03-01 … 03-03 note',
  ]);
  const before =
    'date: 2025-03-01, laid: 1\n date: 2025-03-06, lost: {broken: e1}\n date: 2025-09-01, parted';
  const again = waxbills(`${before}\n date: 2026-03-01, reunited`);
  expect(spell({ 'LW-1': again }, 'live-food-ahead', '2026-02-25', '2026-03-31')).toEqual([
    '03-01 … 03-15 note',
  ]);
});

it('a pair that is put together again over young in the nest is told so no more: it rears already', () => {
  const log = 'date: 2026-03-01, laid: 2, sitting: hen\n date: 2026-03-14, hatched: all';
  const again = waxbills(`${log}\n date: 2026-03-16, parted: {cock: cage 3}\n date: 2026-03-17, reunited`);
  expect(warned({ 'LW-1': again }, 'live-food-ahead', '2026-03-17')).toEqual([]);
});

it('a species that does better with it is told that', () => {
  const files = {
    'species/ridge-finch.yaml': 'species: ridge finch\nlive-food: advised\n',
    'RF-1': pair('RF-1', 'ridge finch', 'date: 2026-03-01, paired'),
  };
  expect(line(files, 'live-food-ahead', '2026-03-01').text).toBe(
    'Together since 1 Mar. The ridge finch rears far better with live food.',
  );
});

it('live food for the whole room counts', () => {
  const files = {
    'nestlog.yaml': 'log:\n  - {date: 2026-02-01, food: [mealworms]}\n',
    'LW-1': waxbills('date: 2026-03-01, paired'),
  };
  expect(warned(files, 'live-food-ahead', '2026-03-01')).toEqual([]);
});

it('a species that rears on seed is told nothing', () => {
  expect(
    warned(
      { 'ZF-1': pair('ZF-1', 'zebra finch', 'date: 2026-03-01, paired') },
      'live-food-ahead',
      '2026-03-01',
    ),
  ).toEqual([]);
});
