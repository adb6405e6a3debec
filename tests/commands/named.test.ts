import { expect, it } from 'vitest';
import { asWritten, housingNamed, pairNamed, speciesNamed } from '../../src/commands/named.ts';
import { UsageError } from '../../src/commands/usage-error.ts';
import type { Pair } from '../../src/room/model.ts';
import { room } from '../rooms.ts';

const of = (id: string) => `pair: ${id}\nspecies: star finch\nlog:\n  - {date: 2026-03-01, paired}\n`;
const two = room({ 'SF-1': of('SF-1'), 'SF-2': of('SF-2') }, '2026-03-02');

it('a pair is found by its id', () => {
  expect(pairNamed('SF-1', two).id).toBe('SF-1');
});

it('a name is taken however its capitals and blanks are typed, unless it could be two', () => {
  expect(pairNamed('sf-1', two).id).toBe('SF-1');
  expect(asWritten(' red  flight', ['Red flight'])).toBe('Red flight');
  expect(asWritten('sf-1', ['SF-1', 'Sf-1'])).toBeNull();
  expect(asWritten('Sf-1', ['SF-1', 'Sf-1'])).toBe('Sf-1');
  expect(asWritten('sf-3', ['SF-1'])).toBeNull();
});

it('a name that there is not is wrong usage, with the nearest one, or all, or none', () => {
  expect(() => pairNamed('SF 1', two)).toThrow(UsageError);
  expect(() => pairNamed('SF 1', two)).toThrow('no pair `SF 1` in this room; did you mean `SF-1`?');
  expect(() => pairNamed('aviary', two)).toThrow('there is SF-1, SF-2');
  expect(() => pairNamed('SF-1', { pairs: [] })).toThrow('there is none');
});

it('a bird of a pair, or a journal’s file, is answered with what was meant', () => {
  const parents = room({ 'SF-1': of('SF-1').replace('log:', 'cock: SF-22-01\nlog:') }, '2026-03-02');
  expect(() => pairNamed('SF-22-01', parents)).toThrow('it is a bird of SF-1: `nestlog bird SF-22-01`');
  expect(() => pairNamed('pairs/SF-1.yaml', parents)).toThrow('did you mean `SF-1`?');
});

it('a species is found by each of its names, also where it has no profile or no pair', () => {
  const known = room(
    {
      'SF-1': of('SF-1'),
      'XF-1': 'pair: XF-1\nspecies: crag finch\nlog:\n  - {date: 2026-03-01, paired}\n',
      'birds.yaml': 'birds:\n  - {id: DD-1, species: diamond dove}\n',
    },
    '2026-03-02',
  );
  expect(speciesNamed('Neochmia ruficauda', known)).toBe('star finch');
  expect(speciesNamed('Crag Finch', known)).toBe('crag finch');
  expect(speciesNamed('diamond dove', known)).toBe('diamond dove');
  expect(() => speciesNamed('star fnich', known)).toThrow('did you mean `star finch`?');
  expect(() => speciesNamed('LW-1', { ...known, pairs: [{ id: 'LW-1' }] as Pair[] })).toThrow(
    'no species `LW-1`; it is a pair: --pair LW-1',
  );
  expect(() => speciesNamed('canary', known)).toThrow(
    'no species `canary` in this room; there is crag finch, diamond dove, star finch',
  );
});

it('a housing is found however its letters are written, and also when it stands empty by now', () => {
  const housed = (id: string, housing: string, log = '') =>
    `pair: ${id}\nspecies: star finch\ncock: ${id}-C\nhousing: ${housing}\nlog:\n  - {date: 2026-03-01, paired}\n${log}`;
  const known = room(
    {
      'SF-1': housed('SF-1', 'Flight 10', '  - {date: 2026-03-03, moved: cage 4}\n'),
      'SF-2': housed('SF-2', 'flight 2'),
    },
    '2026-03-04',
  );
  expect(housingNamed('flight 10', known)).toBe('Flight 10');
  expect(housingNamed('cage 4', known)).toBe('cage 4');
  expect(() => housingNamed('attic', known)).toThrow('there is cage 4, flight 2, Flight 10');
});
