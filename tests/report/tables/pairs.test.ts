import { expect, it } from 'vitest';
import { pairTable } from '../../../src/report/tables/pairs.ts';
import { room } from '../../rooms.ts';

it('says of each pair who it is, where, and whether it is together', () => {
  const files = {
    'SF-1':
      'pair: SF-1\nspecies: star finch\ncock: [A1, A2]\nhousing: flight 1\nlog:\n  - {date: 2026-03-01, paired}\n  - {date: 2026-03-05, parted}\n',
    'LW-1': 'pair: LW-1\nspecies: lavender waxbill\nhen: B1\nlog:\n  - {date: 2026-03-01, paired}\n',
  };
  expect([...pairTable(room(files, '2026-03-09').pairs).rows]).toEqual([
    {
      pair: 'LW-1',
      species: 'lavender waxbill',
      scientific: 'Glaucestrilda caerulescens',
      cock: null,
      hen: 'B1',
      housing: null,
      together: 'yes',
      file: 'pairs/LW-1.yaml',
    },
    {
      pair: 'SF-1',
      species: 'star finch',
      scientific: 'Bathilda ruficauda',
      cock: 'A1 or A2',
      hen: null,
      housing: 'flight 1',
      together: 'no',
      file: 'pairs/SF-1.yaml',
    },
  ]);
});
