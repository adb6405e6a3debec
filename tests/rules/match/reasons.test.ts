import { describe, expect, it } from 'vitest';
import { fieldOf } from '../../../src/rules/match/field.ts';
import { nextBest, reasonsFor, whyAlone } from '../../../src/rules/match/reasons.ts';
import { birdIn, stock } from '../stock/rooms.ts';
import { dilemma } from './rooms.ts';

const all = stock(dilemma, '2026-05-17');
const here = all.birds.filter(({ status }) => status === 'here');
const field = (limit: number | null, without: string[] = []) =>
  fieldOf(
    here.filter(({ id }) => !without.includes(id)),
    all,
    limit,
  );

describe('why two were put together', () => {
  const open = field(null);
  const of = (hen: string) => {
    const mating = open.chosen.find((each) => each.hen.id === hen);
    if (mating === undefined) throw new Error(`nobody for ${hen}`);
    return mating;
  };

  it('because one has the fewest relatives', () => {
    expect(reasonsFor(of('STRANGER'), open)).toEqual([
      'of the free cocks, UNCLE has the fewest relatives here',
      'of the free hens, STRANGER has the fewest relatives here',
    ]);
  });

  it('not because one has the fewest relatives where it is the only one of its sex', () => {
    const one = field(null, ['OTHER', 'BROTHER', 'YOUNGEST']);
    const [only] = one.chosen;
    expect(only && reasonsFor(only, one).filter((reason) => reason.includes('free cocks'))).toEqual([]);
  });

  it('because the one with the fewest is closer kin than the limit', () => {
    const strict = field(0.1);
    const niece = strict.chosen.find((each) => each.hen.id === 'NIECE-1');
    expect(niece && reasonsFor(niece, strict)).toEqual([
      'UNCLE has fewer relatives here, but he and NIECE-1 are uncle and niece (F 0.125, beyond the limit); he goes to STRANGER',
    ]);
  });

  it('because the one with the fewest does more good with another', () => {
    // Two cocks from outside and two hens, none of them related; the elder cock’s sister lives here.
    const birds = [
      '{id: A, species: zebra finch, sex: cock, hatched: 2023-01-01}',
      '{id: B, species: zebra finch, sex: cock, hatched: 2023-01-01, sire: S, dam: D}',
      '{id: X, species: zebra finch, sex: hen, hatched: 2023-01-01}',
      '{id: Y, species: zebra finch, sex: hen, hatched: 2023-01-01, sire: S, dam: D}',
    ];
    const few = stock(
      { 'birds.yaml': `birds:\n${birds.map((one) => `  - ${one}\n`).join('')}` },
      '2026-05-17',
    );
    const free = fieldOf(few.birds, few, null);
    const x = free.chosen.find((each) => each.hen.id === 'X');
    expect(x && reasonsFor(x, free).at(-1)).toBe('A has fewer relatives here, but does more good with Y');
  });

  it('because the one with the fewest is close kin', () => {
    expect(reasonsFor(of('NIECE-2'), open)).toEqual([
      'UNCLE has fewer relatives here, but he and NIECE-2 are uncle and niece (F 0.125); he goes to STRANGER',
    ]);
  });

  it('the next best is the hen’s next best cock, or the cock’s next best hen where he is the only one', () => {
    expect(nextBest(of('STRANGER'), open)?.hen.id).toBe('STRANGER');
    const one = field(null, ['OTHER', 'BROTHER', 'YOUNGEST']);
    const [only] = one.chosen;
    expect(only && nextBest(only, one)?.cock.id).toBe('UNCLE');
    const last = field(null, ['OTHER', 'BROTHER', 'YOUNGEST', 'NIECE-1', 'NIECE-2']);
    expect(last.chosen[0] && nextBest(last.chosen[0], last)).toBeNull();
  });
});

describe('why one is left over', () => {
  const why = (name: string, ...of: Parameters<typeof field>) => whyAlone(birdIn(all, name), field(...of));

  it('nobody of the other sex, nobody within the limit, or nobody left', () => {
    expect(why('UNCLE', null, ['NIECE-1', 'NIECE-2', 'STRANGER'])).toBe(
      'no hen of the species is free and fit',
    );
    expect(why('UNCLE', 0.1, ['STRANGER'])).toMatch(
      /^every free hen is closer kin than 0.1; the least so is NIECE-1/,
    );
    expect(why('UNCLE', 0.1)).toBe('every hen that is no closer kin than 0.1 goes to another: STRANGER');
    expect(why('OTHER', null)).toBe('no hen left; the other cocks make the better pairs');
  });

  it('a crowd, of which only those with the fewest relatives are weighed', () => {
    const hens = Array.from({ length: 250 }, (_, i) => `  - {id: hen-${i}, sex: hen, species: zebra finch}`);
    // The 251st has brothers and sisters here.
    const kin = ['one', 'two'].map(
      (id) => `  - {id: ${id}, sex: hen, species: zebra finch, sire: S, dam: D}`,
    );
    const crowd = stock({ 'birds.yaml': `birds:\n${[...hens, ...kin].join('\n')}\n` }, '2026-05-17');
    const left = fieldOf(
      crowd.birds.filter(({ bird }) => bird.sex === 'hen'),
      crowd,
      null,
    );
    expect(whyAlone(birdIn(crowd, 'two'), left)).toBe(
      'so many hens are free that only those with the fewest relatives were weighed',
    );
    expect(whyAlone(birdIn(crowd, 'hen-7'), left)).toBe('no cock of the species is free and fit');
  });
});
