import { speciesView } from '../../../../src/rules/species/view.ts';
import { findSpecies } from '../../../../src/species/find.ts';
import type { Profile } from '../../../../src/species/profile.ts';
import { room } from '../../../rooms.ts';

/** A room with two clutches of one pair: 12 and 14 days of sitting, 19 days in the nest once. */
export const stood = room(
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

export const lavender = findSpecies('lavender waxbill') as Profile;
export const view = speciesView(stood, lavender);
