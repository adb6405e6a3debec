import { describe, expect, it } from 'vitest';
import type { Files } from '../../rooms.ts';
import { birdIn, stock, threeGenerations } from './rooms.ts';

/** Sire and dam of a bird by id, and what is in doubt. */
function parents(files: Files, name: string, on = '2026-06-01') {
  const { sire, dam } = birdIn(stock(files, on), name).parents;
  return { sire: sire.id, dam: dam.id, doubt: sire.doubt ?? dam.doubt };
}

describe('a parent', () => {
  it('named by ring, by id or as a chick is the same bird', () => {
    expect(parents(threeGenerations, 'GIRL')).toEqual({ sire: 'C', dam: 'D', doubt: null });
    expect(parents(threeGenerations, 'LW-3/1/c2')).toEqual({ sire: 'SON', dam: 'GIRL', doubt: null });
  });

  it('who has no item of its own is known by name', () => {
    const files = { 'birds.yaml': 'birds: [{id: x, sire: old cock, dam: unknown}]' };
    expect(parents(files, 'x')).toEqual({ sire: 'old cock', dam: null, doubt: null });
  });

  it('who may be one of two is unknown, with both named', () => {
    const files = { 'birds.yaml': 'birds: [{id: x, sire: [a, b]}, {id: a, ring: 7}, {id: b}]' };
    expect(parents(files, 'x')).toEqual({ sire: null, dam: null, doubt: 'one of a, b' });
  });

  it('named twice under two names is one', () => {
    const files = { 'birds.yaml': 'birds: [{id: x, sire: [a, "ring:7"]}, {id: a, ring: 7}]' };
    expect(parents(files, 'x').sire).toBe('a');
  });

  it('that hatched after its young is left out', () => {
    const files = {
      'birds.yaml': 'birds: [{id: x, hatched: 2024-05-01, dam: a}, {id: a, sex: hen, hatched: 2024-05-01}]',
    };
    expect(parents(files, 'x')).toEqual({ sire: null, dam: null, doubt: 'a hatched after it' });
  });

  it('that is the bird itself is left out', () => {
    expect(parents({ 'birds.yaml': 'birds: [{id: x, dam: x}]' }, 'x').doubt).toBe(
      'x stands as its own parent',
    );
  });

  it('cannot be sire and dam at once', () => {
    const files = { 'birds.yaml': 'birds: [{id: x, sire: a, dam: a}, {id: a}]' };
    expect(parents(files, 'x')).toEqual({ sire: null, dam: null, doubt: 'a stands as both parents' });
  });
});

describe('a chick', () => {
  const pair = (more: string) => `
    pair: LW-1
    species: lavender waxbill
    cock: A
    hen: B
    log:
      - {date: 2026-02-01, paired}
      - {date: 2026-03-01, laid: 1, clutch: 1}
      - {date: 2026-03-14, hatched: 1}
      ${more}
  `;

  it('reared by foster parents keeps its own', () => {
    const files = {
      'LW-1': pair('- {date: 2026-03-16, fostered: {LW-2: c1}}'),
      'LW-2': 'pair: LW-2\ncock: P\nhen: Q\nlog:\n  - {date: 2026-02-01, paired}',
    };
    expect(parents(files, 'LW-1/1/c1')).toEqual({ sire: 'A', dam: 'B', doubt: null });
  });

  it('keeps them when its dam gets another mate', () => {
    const files = { 'LW-1': pair('- {date: 2026-04-01, paired: {cock: Z}}') };
    expect(parents(files, 'LW-1/1/c1').sire).toBe('A');
  });

  it('has the sire that the bird list names, where that names one', () => {
    const files = {
      'birds.yaml': 'birds: [{id: x, is: LW-1/1/c1, sire: Z}, {id: Z, sex: cock}]',
      'LW-1': pair(''),
    };
    expect(parents(files, 'x')).toEqual({ sire: 'Z', dam: 'B', doubt: null });
  });

  it('of a flight with two cocks has no sire, with a note', () => {
    const files = { 'LW-1': pair('').replace('cock: A', 'cock: [A, Z]') };
    expect(parents(files, 'LW-1/1/c1')).toEqual({ sire: null, dam: 'B', doubt: 'one of A, Z' });
  });
});

describe('eggs laid soon after the hen left another cock', () => {
  const rooms = (parted: string, first = '2026-03-01') => ({
    'LW-1': `
      pair: LW-1
      cock: OLD
      hen: B
      log:
        - {date: 2026-01-01, paired}
        - {date: ${parted}, parted}
    `,
    'LW-2': `
      pair: LW-2
      species: lavender waxbill
      cock: NEW
      hen: B
      log:
        - {date: ${parted}, paired}
        - {date: ${first}, laid: 1, clutch: 1}
        - {date: 2026-03-16, hatched: 1}
    `,
  });

  it('within 14 d may be either cock’s', () => {
    expect(parents(rooms('2026-02-15'), 'LW-2/1/c1')).toEqual({
      sire: null,
      dam: 'B',
      doubt: 'the hen had been with OLD until 15 Feb, within 14 d of the egg',
    });
  });

  it('after 15 d are the new one’s', () => {
    expect(parents(rooms('2026-02-14'), 'LW-2/1/c1')).toEqual({ sire: 'NEW', dam: 'B', doubt: null });
  });

  it('are the same cock’s when he was only away for a while', () => {
    const files = {
      'LW-1': `
        pair: LW-1
        cock: A
        hen: B
        log:
          - {date: 2026-01-01, paired}
          - {date: 2026-02-20, parted}
          - {date: 2026-02-25, reunited}
          - {date: 2026-03-01, laid: 1, clutch: 1}
          - {date: 2026-03-16, hatched: 1}
      `,
    };
    expect(parents(files, 'LW-1/1/c1').sire).toBe('A');
  });
});
