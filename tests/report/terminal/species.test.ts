import { describe, expect, test } from 'vitest';
import { recordText, speciesListText, speciesText } from '../../../src/report/terminal/species.ts';
import { widthOf } from '../../../src/report/terminal/width.ts';
import { speciesView } from '../../../src/rules/species/view.ts';
import { findSpecies } from '../../../src/species/find.ts';
import type { Profile } from '../../../src/species/profile.ts';
import { expectGolden } from '../../golden.ts';
import { day, room } from '../../rooms.ts';

const stood = room(
  {
    'LW-1': `
      pair: LW-1
      species: lavender waxbill
      log:
        - {date: 2025-03-04, after: 2025-03-03, clutch: 1, laid: 1, sitting}
        - {date: 2025-03-16, after: 2025-03-15, hatched: 1}
        - {date: 2025-04-04, fledged: 1}
        - {date: 2026-03-04, after: 2026-03-03, clutch: 2, laid: 1, sitting}
        - {date: 2026-03-18, after: 2026-03-17, hatched: 1}
    `,
  },
  '2026-06-01',
);
const profile = findSpecies('lavender waxbill') as Profile;
const view = speciesView(stood, profile);
const golden = (name: string) => new URL(`golden/species-${name}.txt`, import.meta.url);

describe.each([80, 120])('at %d columns', (width) => {
  test('a profile', () => {
    expectGolden(golden(`${width}`), speciesText(view, { width, color: false }));
  });

  test('past forecasts', () => {
    expectGolden(golden(`record-${width}`), recordText(view, day('2026-06-01'), { width, color: false }));
  });

  test('the list', () => {
    const some = ['star finch', 'lavender waxbill', 'diamond dove'].map(
      (name) => findSpecies(name) as Profile,
    );
    expectGolden(golden(`list-${width}`), speciesListText(some, { width, color: false }));
  });
});

test('no line is wider than the terminal, in colour or without', () => {
  for (const color of [true, false]) {
    for (const line of speciesText(view, { width: 60, color }).split('\n'))
      expect(widthOf(line)).toBeLessThanOrEqual(60);
  }
});

test('an unknown value is said to be unknown, never a number', () => {
  const bare = { ...profile, moult: null };
  expect(speciesText({ ...view, profile: bare }, { width: 80, color: false })).toMatch(/^moult +unknown$/m);
});
