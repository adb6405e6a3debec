import { expect, test } from 'vitest';
import { roomRecords } from '../../../src/rules/species/records.ts';
import { room } from '../../rooms.ts';

const pair = (id: string, species: string, ...hatched: string[]) => ({
  [id]: `
    pair: ${id}
    species: ${species}
    log:
      - {date: 2026-03-04, after: 2026-03-03, clutch: 1, laid: 1, sitting}
${hatched.map((date) => `      - {date: ${date}, after: ${date.slice(0, 8)}15, hatched: 1}`).join('\n')}
  `,
});

test('each species has its own score, and the room one of all together', () => {
  const stood = room(
    {
      ...pair('A-1', 'star finch', '2026-03-17'),
      ...pair('LW-1', 'lavender waxbill', '2026-03-16'),
      ...pair('LW-2', 'Estrilda caerulescens', '2026-03-16'),
      ...pair('MF-1', 'melba finch'),
    },
    '2026-06-01',
  );
  const [hatching, fledging] = roomRecords(stood);
  expect(hatching?.species.map(({ species, record }) => [species, record.n])).toEqual([
    ['lavender waxbill', 2],
    ['star finch', 1],
  ]);
  expect(hatching?.all?.n).toBe(3);
  expect(fledging).toEqual({ kind: 'fledging', species: [], all: null });
});
