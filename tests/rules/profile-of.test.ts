import { expect, it } from 'vitest';
import { run as due } from '../../src/commands/due.ts';
import { run as match } from '../../src/commands/match.ts';
import { profileOf } from '../../src/rules/profile-of.ts';
import { runCommand } from '../commands/run.ts';
import { room } from '../rooms.ts';

it('the profile of a bird is that of its clutch, its listed species in this room, or none', () => {
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
  expect(['HF-1/1/c1', 'A', 'B', 'C', 'D'].map(speciesOf)).toEqual([
    'hill finch',
    'zebra finch',
    'hill finch',
    undefined,
    undefined,
  ]);
});

it('what the room’s own profile says holds for birds of which nobody is paired yet, whichever command is asked', async () => {
  const files = {
    'species/zebra-finch.yaml': 'species: zebra finch\nbreeding-age: 12\n',
    'birds.yaml': `
      birds:
        - {id: Z1, species: zebra finch, sex: hen, hatched: 2025-06-01, log: [{date: 2025-08-01, arrived: cage 1}]}
        - {id: Z2, species: zebra finch, sex: cock, hatched: 2024-06-01, log: [{date: 2025-08-01, arrived: cage 1}, {date: 2025-09-01, released}]}
    `,
  };
  const told = async (command: Parameters<typeof runCommand>[0], on: string) =>
    (await runCommand(command, files, { on, options: { days: 7 } })).text.replace(/\s+/g, ' ');
  // The shipped profile would have her breed at six months.
  expect(await told({ run: due }, '2025-12-01')).not.toContain('breed');
  expect(await told({ run: match }, '2026-05-31')).toContain(
    'Z1: too young: 11 months, old enough on 1 Jun 2026',
  );
  expect(await told({ run: due }, '2026-06-01')).toMatch(/breed.*Z1|Z1.*breed/);
  expect(await told({ run: match }, '2026-06-01')).not.toContain('too young');
});
