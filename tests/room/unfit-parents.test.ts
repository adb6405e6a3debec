import { describe, expect, it } from 'vitest';
import { type Files, room } from '../rooms.ts';
import { journal, waxbills } from './facts.ts';

const found = (files: Files, on = '2026-12-31') =>
  room(files, on).findings.map(({ code, at, args }) => ({ code, file: at.file, line: at.line, ...args }));

describe('a parent', () => {
  it('is of the right sex: a cock in the place of the hen is an error where he is named', () => {
    const files = {
      'birds.yaml': 'birds:\n  - {id: A, sex: cock}\n  - {id: B, sex: hen, dam: A}\n',
      a: waxbills('date: 2026-03-01, paired', 'hen: A'),
    };
    expect(found(files)).toMatchObject([
      { code: 'parent-sex', file: 'birds.yaml', line: 3, bird: 'A', parent: 'dam of B', sex: 'cock' },
      { code: 'parent-sex', file: 'pairs/a.yaml', line: 3, bird: 'A', parent: 'hen of LW-1', sex: 'cock' },
    ]);
  });

  it('is of the right sex where it takes a place later, too, but not before it does', () => {
    const files = {
      'birds.yaml': 'birds:\n  - {id: A, sex: cock}\n  - {id: B, sex: hen}\n  - {id: C, sex: cock}\n',
      a: waxbills(
        'date: 2026-03-01, paired\ndate: 2026-03-08, parted\ndate: 2026-03-09, paired: {hen: C}',
        'cock: A\nhen: B',
      ),
    };
    expect(found(files, '2026-03-09')).toMatchObject([
      { code: 'parent-sex', file: 'pairs/a.yaml', bird: 'C', parent: 'hen of LW-1', sex: 'cock' },
    ]);
    expect(found(files, '2026-03-08')).toEqual([]);
  });

  it('of unknown sex may be either', () => {
    expect(found({ 'birds.yaml': 'birds:\n  - {id: A}\n  - {id: B, sire: A}\n' })).toEqual([]);
  });

  it('has the sex of the bird list; what its log says of it later accuses no pedigree', () => {
    const birds = (sex: string) =>
      `birds:\n  - {id: A, ${sex}log: [{date: 2026-03-01, sexed: hen}]}\n  - {id: B, sire: A}\n`;
    expect(found({ 'birds.yaml': birds('sex: cock, ') })).toEqual([]);
    expect(found({ 'birds.yaml': birds('') })).toMatchObject([{ code: 'parent-sex', bird: 'A', sex: 'hen' }]);
    const pair = (head: string) => ({
      'birds.yaml': 'birds:\n  - {id: A, sex: hen}\n  - {id: B, sex: hen, dam: A}\n',
      a: waxbills('', head),
    });
    expect(found(pair('hen: A'))).toEqual([]);
    expect(found(pair('cock: A'))).toMatchObject([
      { code: 'parent-sex', parent: 'cock of LW-1', sex: 'hen' },
    ]);
    expect(found(pair('cock: nobody'))).toEqual([]);
  });

  it('is of the species of its young: one of another is doubted where it is named, whatever its species is called there', () => {
    const birds = (hen: string) =>
      `birds:\n  - {id: A, species: red-billed firefinch}\n  - {id: B, species: ${hen}}\n  - {id: C, species: lavender waxbill, sire: A, dam: B}\n`;
    const files = {
      'birds.yaml': birds('Estrilda caerulescens'),
      a: waxbills('date: 2026-03-01, paired', 'cock: A\nhen: B'),
    };
    const other = {
      code: 'other-species',
      bird: 'A',
      species: 'red-billed firefinch',
      other: 'lavender waxbill',
    };
    expect(found(files)).toMatchObject([
      { ...other, file: 'birds.yaml', line: 4, parent: 'sire of C' },
      { ...other, file: 'pairs/a.yaml', line: 3, parent: 'cock of LW-1' },
    ]);
  });

  it('may be of another where the cross has a name of its own, and none of its parents is called so', () => {
    const birds = 'birds:\n  - {id: A, species: European goldfinch}\n  - {id: B, species: canary}\n';
    const mules = (species: string, hen = 'B') =>
      found({
        'birds.yaml': `${birds}  - {id: D, species: canary}\n`,
        'species/goldfinch-mule.yaml':
          'species: goldfinch mule\nscientific: Serinus x Carduelis\nincubation: 12-14\n',
        a: journal('M-1', species, 'date: 2026-03-01, paired', `cock: A\nhen: ${hen}`),
      }).map(({ code }) => code);
    expect(mules('goldfinch mule')).toEqual([]);
    expect(mules('canary')).toEqual(['other-species']);
    // Two of one species are no cross: the journal's own is the slip.
    const two = {
      'birds.yaml': `${birds}  - {id: D, species: canary}\n`,
      a: waxbills('date: 2026-03-01, paired', 'cock: D\nhen: B'),
    };
    expect(found(two).map(({ code }) => code)).toEqual(['other-species', 'other-species']);
  });

  it('is not doubted for a species without a profile, of which another hint tells: it may be misspelt', () => {
    const birds = 'birds:\n  - {id: A, species: lavender waxbill}\n';
    const files = {
      'birds.yaml': birds,
      a: journal('LW-1', 'lavender waxbil', 'date: 2026-03-01, paired', 'cock: A'),
    };
    expect(found(files).map(({ code }) => code)).toEqual(['unknown-species']);
  });

  it('of unknown species, or known by the journal alone, may be of any', () => {
    const files = {
      'birds.yaml': 'birds:\n  - {id: A}\n',
      a: waxbills('date: 2026-03-01, paired', 'cock: A\nhen: B'),
      b: journal('FF-1', 'red-billed firefinch', 'date: 2026-03-01, paired', 'cock: A\nhen: B'),
    };
    expect(found(files).filter(({ code }) => code === 'other-species')).toEqual([]);
  });
});
