import { describe, expect, it } from 'vitest';
import { stockFindings } from '../../../src/rules/stock/findings.ts';
import { type Files, record, room } from '../../rooms.ts';

/** What is found, `code file:line`, each with one of its words. */
function found(files: Files, on = '2026-06-01'): [string, string][] {
  return stockFindings(record(files, on), room(files, on)).map(({ code, at, args }) => [
    `${code} ${at.file}:${at.line}`,
    String(args.name ?? args.parent),
  ]);
}

const pair = (head: string, log = '- {date: 2026-02-01, paired}') => `
  pair: LW-1
  ${head}
  log:
    ${log}
`;

describe('names that differ only in capitals or blanks', () => {
  it('in the bird list and in a journal, told at the one that the list does not have', () => {
    const files = {
      'birds.yaml': 'birds:\n  - {id: LW-19-04}\n  - {id: x, sire: LW -19-04}\n',
      'LW-1': pair('cock: lw-19-04'),
    };
    expect(found(files)).toEqual([
      ['alike-names pairs/LW-1.yaml:2', 'lw-19-04'],
      ['alike-names birds.yaml:3', 'LW -19-04'],
    ]);
  });

  it('told once for each spelling, however often it stands there', () => {
    const files = { 'birds.yaml': 'birds:\n  - {id: A, sire: b}\n  - {id: C, sire: b}\n  - {id: B}\n' };
    expect(found(files)).toEqual([['alike-names birds.yaml:2', 'b']]);
  });

  it('of a new mate, and of pairs', () => {
    const files = {
      'LW-1': pair('cock: A\n  hen: B', '- {date: 2026-02-01, paired: {hen: a}}'),
      'lw-1': 'pair: lw-1\nlog:\n  - {date: 2026-02-01, paired}',
    };
    expect(found(files).map(([at]) => at)).toEqual([
      'alike-names pairs/LW-1.yaml:5',
      'alike-names pairs/lw-1.yaml:1',
    ]);
  });

  it('nothing where they are alike', () => {
    expect(found({ 'birds.yaml': 'birds: [{id: A}, {id: B, sire: A}]', 'LW-1': pair('cock: A') })).toEqual(
      [],
    );
  });
});

describe('a parent that hatched after its young', () => {
  it('on the bird list', () => {
    const files = {
      'birds.yaml': 'birds:\n  - {id: A, hatched: 2024-01-01}\n  - {id: B, hatched: 2023-01-01, dam: A}\n',
    };
    expect(found(files)).toEqual([['parent-younger birds.yaml:3', 'A']]);
  });

  it('in a journal, once for the whole brood, at the name of the parent', () => {
    const files = {
      'birds.yaml': 'birds:\n  - {id: A, hatched: 2026-04-01}\n',
      'LW-1': pair(
        'cock: A\n  hen: B',
        '- {date: 2026-03-01, laid: 2}\n    - {date: 2026-03-14, hatched: 2}',
      ),
    };
    expect(found(files)).toEqual([['parent-younger pairs/LW-1.yaml:2', 'A']]);
  });
});

it('one bird as both parents', () => {
  const files = { 'birds.yaml': 'birds:\n  - {id: A}\n  - {id: B, sire: A, dam: A}\n' };
  expect(found(files)).toEqual([['one-parent-twice birds.yaml:3', 'A']]);
});

describe('a chick as parent that no journal has', () => {
  const files = {
    'birds.yaml': 'birds:\n  - {id: B, sire: LW-1/1/c2}\n',
    'LW-1': pair('hen: LW-7/1/c1', '- {date: 2026-03-01, laid: 2}\n    - {date: 2026-03-14, hatched: 1}'),
  };

  it('is told at its name', () => {
    expect(found(files)).toEqual([
      ['no-such-parent birds.yaml:2', 'LW-1/1/c2'],
      ['no-such-parent pairs/LW-1.yaml:2', 'LW-7/1/c1'],
    ]);
  });

  it('but not on a day before the record ends: it may hatch yet', () => {
    expect(found(files, '2026-03-10')).toEqual([]);
  });
});
