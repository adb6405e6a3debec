import { describe, expect, it } from 'vitest';
import type { Files } from '../../rooms.ts';
import { birdIn, stock, threeGenerations } from './rooms.ts';

const life = (files: Files, name: string, on: string) => {
  const { status, age, housing } = birdIn(stock(files, on), name);
  return { status, age, housing };
};

/** A pair with one chick that hatched on 14 March, and another line of its log. */
const born = (more = '') => ({
  'LW-1': `
    pair: LW-1
    species: lavender waxbill
    cock: A
    hen: B
    log:
      - {date: 2026-03-01, laid: 1, clutch: 1}
      - {date: 2026-03-14, hatched: 1}
      ${more}
  `,
});

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
  it('a chick past every usual fledging age has left the nest', () => {
    expect(life(born(''), 'LW-1/1/c1', '2026-04-10').age).toBe('fledgling');
  });

  it('past every usual age of independence it feeds itself', () => {
    expect(life(born(''), 'LW-1/1/c1', '2026-04-28').age).toBe('young');
  });

  it('a month after that it is unaccounted for', () => {
    expect(life(born(''), 'LW-1/1/c1', '2026-06-30')).toEqual({
      status: 'unaccounted',
      age: null,
      housing: null,
    });
  });

  it('unless something was written of it since', () => {
    const weighed = born('- {date: 2026-05-20, weighed: {c1: 8.1}}');
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

describe('on the day', () => {
  const on = (day: string, more = '') => life(born(more), 'LW-1/1/c1', day);

  // Lavender waxbills: 17 to 21 days in the nest, fed to the 40th, old enough at nine months.
  it('it is what it is by its age, from the first day on which it is', () => {
    expect(['2026-04-04', '2026-04-05'].map((day) => on(day).age)).toEqual(['chick', 'fledgling']);
    expect(['2026-04-23', '2026-04-24'].map((day) => on(day).age)).toEqual(['fledgling', 'young']);
    const grown = '- {date: 2026-04-02, fledged: c1}\n        - {date: 2026-04-20, independent: c1}';
    expect(['2026-12-13', '2026-12-14'].map((day) => on(day, grown).age)).toEqual(['young', 'adult']);
  });

  it('it is unaccounted for from the day after the thirtieth, where the last sign of it is no later than its time', () => {
    expect(['2026-05-23', '2026-05-24'].map((day) => on(day).status)).toEqual(['here', 'unaccounted']);
    const seen = (day: string) => on('2026-06-30', `- {date: ${day}, weighed: {c1: 8.1}}`).status;
    expect([seen('2026-04-23'), seen('2026-04-24')]).toEqual(['unaccounted', 'here']);
  });

  it.each([
    ['seen to sleep somewhere', '- {date: 2026-05-20, roosting: {out: c1}}'],
    ['moved', '- {date: 2026-05-20, moved: {c1: cage 2}}'],
  ])('a bird that was %s after its time is here', (_what, line) => {
    expect(on('2026-06-30', line).status).toBe('here');
  });

  it('a bird with an item of its own is here, though nobody wrote that it feeds itself', () => {
    const listed = { ...born(), 'birds.yaml': 'birds: [{id: X, is: LW-1/1/c1}]' };
    expect(life(listed, 'X', '2026-06-30').status).toBe('here');
  });

  it('a bird that was ever put to a mate is here', () => {
    const mated = {
      ...born(),
      'LW-2':
        'pair: LW-2\nspecies: lavender waxbill\ncock: LW-1/1/c1\nhen: Z\nlog:\n  - {date: 2026-05-01, paired}',
    };
    expect(life(mated, 'LW-1/1/c1', '2026-06-30').status).toBe('here');
  });

  it('one that comes is expected until it does, though its log tells of another thing first', () => {
    const files = {
      'birds.yaml': 'birds: [{id: x, log: [{date: 2026-03-01, arrived: cage 1, weighed: 8.2}]}]',
    };
    expect(['2026-02-28', '2026-03-01'].map((day) => life(files, 'x', day).status)).toEqual([
      'expected',
      'here',
    ]);
  });

  it('one that hatches on that day is here', () => {
    const files = { 'birds.yaml': 'birds: [{id: x, species: lavender waxbill, hatched: 2026-03-01}]' };
    expect(['2026-02-28', '2026-03-01'].map((day) => life(files, 'x', day).status)).toEqual([
      'expected',
      'here',
    ]);
    // From outside it is a chick as long as its kind stays in the nest, then young: nobody here feeds it.
    expect(['2026-03-22', '2026-03-23'].map((day) => life(files, 'x', day).age)).toEqual(['chick', 'young']);
  });
});
