import { expect, test } from 'vitest';
import { root } from '../../bin/build/settings.mjs';
import { glance } from '../../src/journal/glance.ts';
import { loadRoom } from '../../src/journal/load.ts';
import { readRoom } from '../../src/journal/record.ts';
import { day } from '../rooms.ts';

const seen = (files: Record<string, string>) =>
  glance(Object.entries(files).map(([path, text]) => ({ path, text })));

test('names are read with quotes and comments taken off, each once', () => {
  expect(
    seen({
      'pairs/a.yaml':
        'pair: LW-1   # the old ones\nspecies: "lavender waxbill"\nhousing: flight 2\nlog:\n  - {pair: no}\n',
      'pairs/b.yaml': "pair: 'LW 2'\nhousing: flight 2\n",
      'birds.yaml':
        'birds:\n  - id: LW-19-04\n    ring: x\n  - {id: LW-20-11, sex: hen}\n  - {id: LW-21-02}\n  - sex: cock\n    id: "LW 3"\n',
      'nestlog.yaml': 'room: the shed\n',
    }),
  ).toEqual({
    pairs: ['LW-1', 'LW 2'],
    birds: ['LW-19-04', 'LW-20-11', 'LW-21-02', 'LW 3'],
    housings: ['flight 2'],
    species: ['lavender waxbill'],
  });
});

test('only lines that begin with their word are such names, in the files where they count', () => {
  expect(
    seen({
      'pairs/a.yaml':
        'pair:   LW-1\nhousing:\t flight 2\nspecies:   canary # singer\nnote: housing: no\n  species: no\n  pair: no\nold-pair: no\n',
      'pairs/birds.yaml': 'id: no\npair: LW-2\n',
      'birds.yml':
        'birds:\n  - id:   LW-19-04\n  -   {id: "LW, 3" , ring: 7}\n  - ring-id: no\n    said: id: no\n',
      'old-birds.yaml': 'birds:\n  - id: no\n',
      'birds.yaml.old': 'birds:\n  - id: no\n',
      'species/x.yaml': 'species: no\npair: no\n',
    }),
  ).toEqual({
    pairs: ['LW-1', 'LW-2'],
    birds: ['LW-19-04', 'LW, 3'],
    housings: ['flight 2'],
    species: ['canary'],
  });
});

test('quotes within a name belong to it, and what is said behind a name does not', () => {
  expect(
    seen({
      'pairs/a.yaml': 'pair: LW-1\nhousing: the "south" flight\n',
      'birds.yaml': 'birds:\n  - id: LW-19-04 # the old hen\n',
    }),
  ).toMatchObject({ housings: ['the "south" flight'], birds: ['LW-19-04'] });
});

test('names are seen behind the mark that Windows sets in front, and under the capitals of a phone', () => {
  expect(
    seen({
      'pairs/a.yaml': '\ufeffpair: LW-1\r\nHousing: flight 2\r\n',
      'birds.yaml': 'Birds:\n  - Id: LW-19-04\n',
    }),
  ).toEqual({ pairs: ['LW-1'], birds: ['LW-19-04'], housings: ['flight 2'], species: [] });
});

test('of a file that cannot be read nothing is known', () => {
  expect(glance([{ path: 'pairs/a.yaml', problem: 'binary', detail: '' }]).pairs).toEqual([]);
});

test('it sees the pairs and birds that the reader reads', () => {
  const files = loadRoom(`${root}/journals-example`);
  const clock = { day: day('2026-06-01'), today: day('2026-06-01') };
  const { pairs, birds } = readRoom(files, clock);
  expect(glance(files).pairs).toEqual(pairs.map(({ pair }) => pair.text));
  expect(glance(files).birds).toEqual(birds.map(({ id }) => id.text));
});
