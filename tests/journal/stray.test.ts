import { describe, expect, it } from 'vitest';
import { kindOf } from '../../src/findings/codes.ts';
import { readFile } from '../../src/journal/record.ts';
import { isAlmostOurs, mayBeMisnamed, strayOf } from '../../src/journal/stray.ts';

const LOG = 'log:\n\n  # 2026\n  - {date: 2026-03-01, paired}\n';
const WIDE = 'log:\n  - { date: 2026-03-01, paired }\n';

describe('a file that nobody reads', () => {
  it.each([
    ['lw-1.yaml', 'pair: LW-1\n', 'pairs/lw-1.yaml', 'a pair’s journal'],
    ['pairs/LW-2.yaml.txt', LOG, 'pairs/LW-2.yaml', 'a pair’s journal'],
    ['pairs/LW-2.yml.doc', LOG, 'pairs/LW-2.yaml', 'a pair’s journal'],
    ['lw-3.yaml', '# the old ones\npair: LW-3\n', 'pairs/lw-3.yaml', 'a pair’s journal'],
    ['pairs/LW-1.2025.txt', LOG, 'pairs/LW-1.2025.yaml', 'a pair’s journal'],
    ['pairs/LW-2', `housing: flight 2\n${WIDE}`, 'pairs/LW-2.yaml', 'a pair’s journal'],
    ['pairs/LW-2.txt', LOG, 'pairs/LW-2.yaml', 'a pair’s journal'],
    ['pairs/old/LW-2', `pair: LW-2\n${LOG}`, 'pairs/old/LW-2.yaml', 'a pair’s journal'],
    ['Pairs/old/LW-2.yml', `pair: LW-2\n${LOG}`, 'pairs/LW-2.yaml', 'a pair’s journal'],
    ['bird.yaml', 'birds:\n  - {id: LW-19-04}\n', 'birds.yaml', 'a list of birds'],
    ['bird.yaml', 'birds: [{id: LW-19-04}, {id: LW-19-05}]\n', 'birds.yaml', 'a list of birds'],
    ['birds.yaml.txt', 'birds: # the old ones\n  - ring: LW 19 04\n', 'birds.yaml', 'a list of birds'],
    ['bird.yaml', '# all\nbirds: [{ id: LW-19-04 }]\n', 'birds.yaml', 'a list of birds'],
    ['bird.yaml', 'birds:\n  - ring: LW 19 04\n', 'birds.yaml', 'a list of birds'],
    ['star.yaml', '# own\nspecies: star finch\nfledging: 20\n', 'species/star.yaml', 'a species profile'],
    ['star.yaml', 'species: star finch\nincubation: 13\n', 'species/star.yaml', 'a species profile'],
  ])('%s belongs elsewhere by what it says', (path, text, to, looks) => {
    expect(strayOf(path, text)).toEqual({ to, looks });
  });

  it.each([
    ['a mark in front and Windows’ line ends', (text: string) => `\ufeff${text.replaceAll('\n', '\r\n')}`],
    ['line ends of an old Mac', (text: string) => text.replaceAll('\n', '\r')],
    ['the capitals of a phone', (text: string) => text.replace(/\b[a-z]/g, (letter) => letter.toUpperCase())],
  ])('is known by its words also with %s', (_, saved) => {
    const to = (text: string) => strayOf('bird.yaml.txt', saved(text))?.to;
    expect(to('birds:\n  - id: LW-19-04\n')).toBe('birds.yaml');
    expect(to('birds: [{id: LW-19-04}]\n')).toBe('birds.yaml');
    expect(to('log: # of this year\n  # in the shed\n  - date: 2026-03-01\n    paired:\n')).toBe(
      'pairs/bird.yaml',
    );
  });

  it.each(['incubation', 'fledging', 'independence', 'laying-interval', 'adult-mass'])(
    'is a profile where it gives the %s of a species',
    (key) => {
      expect(strayOf('star.yaml', `species: star finch\n${key}: 13\n`)?.to).toBe('species/star.yaml');
    },
  );

  it('is none of ours where it says something else', () => {
    expect(strayOf('compose.yaml', 'services:\n  log:\n    - x\n')).toBeNull();
    expect(strayOf('ci.yaml', 'log:\n  - verbose\n')).toBeNull();
    expect(strayOf('notes.txt', 'Two birds: a pair of LW.\n')).toBeNull();
    expect(
      strayOf('notes.txt', 'Birds:\n- two hens to collect\nPair: LW, feeds well\nLog:\n- oak\n'),
    ).toBeNull();
    expect(strayOf('lights.yaml', 'timer:\n  log:\n    - {date: 2026-03-01}\n  pair: lamps\n')).toBeNull();
    expect(strayOf('garden.yaml', 'songbirds:\n  - id: robin\nold-birds: [{id: A}]\n')).toBeNull();
    expect(strayOf('cards.yaml', 'species: x\nno-incubation: 13\n')).toBeNull();
    expect(strayOf('cards.yaml', 'species: [a, b]\n')).toBeNull();
    expect(strayOf('subspecies.yaml', 'subspecies: x\nincubation: 13\n')).toBeNull();
  });
});

describe('of a file beside those that are read', () => {
  it.each([
    'LW-1.yaml.txt',
    'LW-1.YAML.TXT',
    'LW-1.yml.doc',
    'LW-1.txt',
    'LW-1.text',
    'LW-1.2025.txt',
    'LW-1',
  ])('%s may have its ending from an editor that knows no YAML', (name) => {
    expect(mayBeMisnamed(name)).toBe(true);
  });

  it.each([
    'LW-1.yaml~',
    'LW-1.png',
    'LW-1.csv',
    'README.md',
    'LW-1.txt.zip',
    'LW-1.yaml.tar.gz',
    'plan.context',
  ])('%s is something else', (name) => {
    expect(mayBeMisnamed(name)).toBe(false);
  });

  it.each('bk bak backup copy old orig rej sav save tmp temp 1 12'.split(' '))(
    'LW-1.yaml.%s is what an editor or git left beside one that is read',
    (ending) => {
      expect(mayBeMisnamed(`LW-1.yaml.${ending}`)).toBe(false);
    },
  );
});

it('a folder that is nearly called as one of the room’s may be a slip', () => {
  expect(
    ['Pairs', 'PAIRS', 'pair', 'paris', 'journal', 'journals', 'Species', 'specie', 'bird', 'birds'].every(
      isAlmostOurs,
    ),
  ).toBe(true);
  expect(
    ['pairs', 'species', 'pictures', 'notes', 'old', 'old-pairs', 'pairs-2025', 'my species'].some(
      isAlmostOurs,
    ),
  ).toBe(false);
});

describe('what lies in the wrong folder of the room', () => {
  it.each([
    ['pairs/birds.yaml', 'birds:\n  - {id: LW-19-04}\n', 'its birds belong in birds.yaml'],
    [
      'pairs/zebra-finch.yaml',
      'species: zebra finch\nincubation: 12-14\n',
      'move it to species/zebra-finch.yaml',
    ],
    ['species/LW-3.yaml', 'pair: LW-3\nlog:\n  - {date: 2026-03-01, paired}\n', 'move it to pairs/LW-3.yaml'],
  ])('%s is one finding, and no pair or species by mistake', (path, text, fix) => {
    const { findings, says } = readFile(path, text);
    expect(says).toEqual({});
    expect(findings.map((finding) => [finding.code, kindOf(finding).hint(finding.args)])).toEqual([
      ['stray-journal', fix],
    ]);
  });
});
