import { expect, it } from 'vitest';
import { type NameKind, namesIn } from '../../../src/rules/discretion/names.ts';
import { type Files, record, room } from '../../rooms.ts';

const files: Files = {
  'nestlog.yaml': 'room: the elm room\n',
  'birds.yaml': `
    birds:
      - id: LW-19-04
        ring: LW 19 04
        species: lavender waxbill
        sire: LW-17-01
        origin: swapped with Bela at Elmhurst
        owner: Ada Loveday
        log:
          - {date: 2025-01-01, arrived: back cage}
          - {date: 2025-02-01, released: flight 3}
          - {date: 2027-02-01, moved: flight 99}
  `,
  'LW-1': `
    pair: LW-1
    species: lavender waxbill
    cock: LW-19-04
    hen: LW-20-11
    housing: flight 2
    log:
      - {date: 2026-01-01, paired: {housing: flight 4, hen: LW-20-12}}
      - {date: 2026-01-20, parted: {cock: flight 7}}
      - {date: 2026-01-21, reunited: flight 8}
      - {date: 2026-01-22, parted: {hen: flight 9}}
      - {date: 2026-01-23, reunited: {cock: LW-19-05}}
      - {date: 2027-01-23, reunited: {hen: LW-27-44}}
      - {date: 2026-03-01, clutch: 1, laid: 4, sitting}
      - {date: 2026-03-14, hatched: 4}
      - {date: 2026-03-15, fostered: {BF-9: c4}}
      - {date: 2026-03-22, ringed: {c1: LW 26 01}}
      - {date: 2026-04-22, moved: {c1: young flight}}
      - {date: 2027-03-22, ringed: {c2: LW 27 09}}
  `,
};

const names = (kind: NameKind) =>
  namesIn(record(files, '2026-06-01'), room(files, '2026-06-01'))
    .filter((name) => name.kind === kind)
    .map(({ text }) => text)
    .sort();

it.each([
  ['pair', ['BF-9', 'LW-1']],
  [
    'bird',
    [
      'LW-1/1/c1',
      'LW-1/1/c2',
      'LW-1/1/c3',
      'LW-1/1/c4',
      'LW-17-01',
      'LW-19-04',
      'LW-19-05',
      'LW-20-11',
      'LW-20-12',
      'LW-27-44',
    ],
  ],
  ['ring', ['LW 19 04', 'LW 26 01', 'LW 27 09']],
  [
    'housing',
    [
      'back cage',
      'flight 2',
      'flight 3',
      'flight 4',
      'flight 7',
      'flight 8',
      'flight 9',
      'flight 99',
      'young flight',
    ],
  ],
  ['room', ['the elm room']],
  ['owner', ['Ada', 'Ada Loveday', 'Bela', 'Elmhurst', 'Loveday', 'swapped with Bela at Elmhurst']],
] as const)('every %s of the record is known, also of days to come', (kind, expected) => {
  expect(names(kind)).toEqual(expected);
});

/** The names of other keepers in one bird's origin or owner. */
function keepers(said: string): string[] {
  const one = { 'birds.yaml': `birds:\n  - {id: X, ${said}}\n` };
  return namesIn(record(one, '2026-06-01'), room(one, '2026-06-01'))
    .filter(({ kind }) => kind === 'owner')
    .map(({ text }) => text);
}

it('a keeper is named by capital words, not by the one that begins a sentence, nor by two letters', () => {
  expect(keepers('origin: Swapped with Cora at Oakhurst')).toEqual([
    'Swapped with Cora at Oakhurst',
    'Cora',
    'Oakhurst',
  ]);
  expect(keepers('origin: Swapped with Cora Oakhurst')).toEqual([
    'Swapped with Cora Oakhurst',
    'Cora',
    'Oakhurst',
  ]);
  expect(keepers('owner: Cora Loveday of Oakhurst')).toEqual([
    'Cora Loveday of Oakhurst',
    'Cora',
    'Loveday',
    'Oakhurst',
  ]);
  expect(keepers('owner: Cora of Oakhurst')).toEqual(['Cora of Oakhurst', 'Cora', 'Oakhurst']);
  expect(keepers('owner: Al Green')).toEqual(['Al Green', 'Green']);
  expect(keepers('owner: "014"')).toEqual(['014']);
});

it('birds of a journal that the room leaves out, as another tells of its pair, are known all the same', () => {
  const twice = {
    ...files,
    other: 'pair: LW-1\nspecies: lavender waxbill\ncock: LW-30-01\nhen: [LW-30-02, LW-30-03]\nlog: []\n',
  };
  const birds = namesIn(record(twice, '2026-06-01'), room(twice, '2026-06-01')).map(({ text }) => text);
  expect(birds).toEqual(expect.arrayContaining(['LW-30-01', 'LW-30-02', 'LW-30-03']));
});

it('an entry that names no place adds none; eggs set under another pair name it', () => {
  const some = {
    'birds.yaml': 'birds:\n  - {id: X, log: [{date: 2026-01-01, arrived}, {date: 2026-01-20, released}]}\n',
    P: 'pair: P\nspecies: star finch\nlog:\n  - {date: 2026-03-01, clutch: 1, laid: 1, pulled: e1}\n  - {date: 2026-03-04, set: {BF-8: e1}}\n  - {date: 2026-03-05, set: e1}\n',
  };
  const all = namesIn(record(some, '2026-06-01'), room(some, '2026-06-01'));
  expect(all.filter(({ kind }) => kind === 'housing')).toEqual([]);
  expect(all.filter(({ kind }) => kind === 'pair').map(({ text }) => text)).toEqual(['P', 'BF-8']);
});
