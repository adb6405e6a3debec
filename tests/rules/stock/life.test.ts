import { describe, expect, it } from 'vitest';
import type { Files } from '../../rooms.ts';
import { birdIn, stock, threeGenerations } from './rooms.ts';

const life = (files: Files, name: string, on: string) => {
  const { status, age, housing } = birdIn(stock(files, on), name);
  return { status, age, housing };
};

describe('age, as was seen', () => {
  it.each([
    ['2025-06-01', 'LW-3/1/c1', 'chick'],
    ['2025-06-12', 'LW-3/1/c1', 'fledgling'],
    ['2025-06-12', 'LW-3/1/c3', 'chick'],
    ['2024-05-01', 'LW-1/1/c2', 'young'],
    ['2025-03-01', 'LW-1/1/c2', 'adult'],
    ['2024-05-01', 'A', 'adult'],
    ['2024-05-01', 'D', 'adult'],
  ])('on %s %s is a %s', (on, name, age) => {
    expect(life(threeGenerations, name, on).age).toBe(age);
  });
});

describe('age, where nothing was written', () => {
  const log = (line: string) => ({
    'LW-1': `
      pair: LW-1
      species: lavender waxbill
      cock: A
      hen: B
      log:
        - {date: 2026-03-01, laid: 1, clutch: 1}
        - {date: 2026-03-14, hatched: 1}
        ${line}
    `,
  });

  it('a chick past every usual fledging age has left the nest', () => {
    expect(life(log(''), 'LW-1/1/c1', '2026-04-10').age).toBe('fledgling');
  });

  it('past every usual age of independence it feeds itself', () => {
    expect(life(log(''), 'LW-1/1/c1', '2026-04-28').age).toBe('young');
  });

  it('a month after that it is unaccounted for', () => {
    expect(life(log(''), 'LW-1/1/c1', '2026-06-30')).toEqual({
      status: 'unaccounted',
      age: null,
      housing: null,
    });
  });

  it('unless something was written of it since', () => {
    const weighed = log('- {date: 2026-05-20, weighed: {c1: 8.1}}');
    expect(life(weighed, 'LW-1/1/c1', '2026-06-30').status).toBe('here');
  });
});

describe('status', () => {
  it('a bird lives where it was last put', () => {
    expect(life(threeGenerations, 'SON', '2025-06-20')).toEqual({
      status: 'here',
      age: 'adult',
      housing: 'flight 3',
    });
    expect(life(threeGenerations, 'A', '2024-02-01').housing).toBe('flight 1');
  });

  it('one that has not come yet is expected, as is a chick of the list that has not hatched', () => {
    expect(life(threeGenerations, 'A', '2021-12-31').status).toBe('expected');
    expect(life(threeGenerations, 'SON', '2024-03-20').status).toBe('expected');
  });

  it('one that died or left is not here', () => {
    const files = {
      'birds.yaml': `
        birds:
          - {id: x, log: [{date: 2026-01-01, arrived: cage 1}, {date: 2026-02-01, died: accident}]}
          - {id: y, log: [{date: 2026-02-01, gone: lent}]}
      `,
    };
    expect(life(files, 'x', '2026-02-01')).toEqual({ status: 'died', age: null, housing: null });
    expect(life(files, 'x', '2026-01-31').status).toBe('here');
    expect(life(files, 'y', '2026-03-01').status).toBe('gone');
  });
});
