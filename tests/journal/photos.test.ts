import { expect, it } from 'vitest';
import { photosOf } from '../../src/journal/photos.ts';
import { day, record } from '../rooms.ts';

const files = {
  'LW-1': `
    pair: LW-1
    log:
      - {date: 2026-03-09, photo: [pictures/b.jpg, pictures/c.jpg], note: "both in the bundle"}
      - {date: 2026-03-01, laid: 1, photo: pictures/a.jpg}
      - {date: 2026-04-01, photo: pictures/later.jpg}
  `,
};

it('pictures stand in order of time, each with its journal and its note, and none from later', () => {
  const [journal] = record(files, '2026-03-20').pairs;
  expect(photosOf([...(journal?.entries ?? [])], day('2026-03-01')).map(({ path }) => path)).toEqual([
    'pictures/a.jpg',
  ]);
  expect(photosOf([...(journal?.entries ?? [])], day('2026-03-20'))).toEqual([
    { day: day('2026-03-01'), path: 'pictures/a.jpg', journal: 'pairs/LW-1.yaml', note: null },
    {
      day: day('2026-03-09'),
      path: 'pictures/b.jpg',
      journal: 'pairs/LW-1.yaml',
      note: 'both in the bundle',
    },
    {
      day: day('2026-03-09'),
      path: 'pictures/c.jpg',
      journal: 'pairs/LW-1.yaml',
      note: 'both in the bundle',
    },
  ]);
});

it('a note marked private is not told below the picture', () => {
  const { pairs } = record(
    {
      'LW-1': `
      pair: LW-1
      log:
        - {date: 2026-03-01, photo: a.jpg, note: "private: sold too cheap"}
    `,
    },
    '2026-03-20',
  );
  expect(photosOf([...(pairs[0]?.entries ?? [])], day('2026-03-20'))).toMatchObject([
    { path: 'a.jpg', note: null },
  ]);
});
