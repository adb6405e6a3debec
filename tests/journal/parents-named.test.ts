import { expect, it } from 'vitest';
import type { PairJournal } from '../../src/journal/entry.ts';
import { parentsNamed } from '../../src/journal/parents-named.ts';
import { day, record } from '../rooms.ts';

const [journal] = record(
  {
    'LW-1': `
      pair: LW-1
      cock: [A, B]
      hen: H
      log:
        - {date: 2026-02-01, paired}
        - {date: 2026-03-01, parted: {hen: cage 9}}
        - {date: 2026-03-02, paired: {hen: N}}
        - {date: 2026-04-01, reunited: {hen: H}}
    `,
  },
  '2026-05-01',
).pairs as [PairJournal];

it('a journal names the parents of its head, and whoever took a place since, with the day', () => {
  const said = (parent: 'cock' | 'hen') =>
    parentsNamed(journal, parent).map(({ text, since, at }) => [text, since, at.line]);
  expect(said('cock')).toEqual([
    ['A', null, 2],
    ['B', null, 2],
  ]);
  expect(said('hen')).toEqual([
    ['H', null, 3],
    ['N', day('2026-03-02'), 7],
    ['H', day('2026-04-01'), 8],
  ]);
});
