import { expect, it } from 'vitest';
import { profileOf } from '../../src/rules/profile-of.ts';
import { room } from '../rooms.ts';

const known = room(
  {
    'birds.yaml': `
      birds:
        - {id: A, species: zebra finch}
        - {id: B, species: hill finch}
        - {id: C, species: a bird of fable}
        - {id: D}
    `,
    'species/hill-finch.yaml': 'species: hill finch\nadult-mass: 11\n',
    'HF-1': `
      pair: HF-1
      species: hill finch
      log:
        - {date: 2026-03-01, laid: 1}
        - {date: 2026-03-14, hatched: 1}
    `,
  },
  '2026-03-20',
);

const speciesOf = (id: string) => {
  const bird = known.birds.find((one) => one.id === id);
  return bird === undefined ? undefined : profileOf(known, bird)?.species;
};

it('the profile of a bird is that of its clutch, its listed species in this room, or none', () => {
  expect(['HF-1/1/c1', 'A', 'B', 'C', 'D'].map(speciesOf)).toEqual([
    'hill finch',
    'zebra finch',
    'hill finch',
    undefined,
    undefined,
  ]);
});
