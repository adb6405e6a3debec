import { expect, it } from 'vitest';
import type { Brood } from '../../../src/rules/brood.ts';
import { about, pairWith } from '../../../src/rules/warnings/warning.ts';
import { view, waxbills } from './warned.ts';

const files = {
  'birds.yaml': 'birds:\n  - {id: LW-20-01, sex: cock}\n',
  'LW-1': waxbills(
    'date: 2026-03-01, paired\n date: 2026-03-04, laid: 1\n date: 2026-03-20, parted',
    'cock: LW-20-01',
  ),
};
const pairOn = (on: string) => {
  const known = view(files, on);
  const bird = known.find('LW-20-01');
  return bird === null ? null : pairWith(known, bird)?.id;
};

it('a bird is in its pair from the first entry until they are parted', () => {
  expect(['2026-02-28', '2026-03-01', '2026-03-19', '2026-03-20'].map(pairOn)).toEqual([
    undefined,
    'LW-1',
    'LW-1',
    undefined,
  ]);
});

it('a warning about a nest names the pair, its clutch and where it is', () => {
  const brood = view(files, '2026-03-05').broods[0] as Brood;
  expect(about({ ...brood, housing: 'flight 2' })).toEqual({
    pair: 'LW-1',
    bird: null,
    clutch: 1,
    housing: 'flight 2',
  });
});
