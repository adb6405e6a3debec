import { describe, expect, it } from 'vitest';
import { judge, matingOf } from '../../../src/rules/match/mating.ts';
import { birdIn, stock } from '../stock/rooms.ts';

function judged(birds: string, cock: string, hen: string) {
  const all = stock({ 'birds.yaml': `birds:\n${birds}` }, '2026-01-01');
  return judge(matingOf(birdIn(all, cock), birdIn(all, hen), all), all);
}

describe('what the young of two would be', () => {
  const family = `
  - {id: G, sex: cock, species: zebra finch, hatched: 2022-01-01}
  - {id: d, sex: hen, species: zebra finch, hatched: 2023-01-01, sire: G, dam: M}
  - {id: m, sex: hen, species: zebra finch, hatched: 2022-01-01}`;

  it('sire and daughter: F ¼, and ½ on the Z chromosomes of the sons', () => {
    expect(judged(family, 'G', 'd')).toMatchObject({
      inbreeding: 1 / 4,
      zInbreeding: 1 / 2,
      kin: 'sire and daughter',
      through: [{ founder: 'G', share: 1 / 4 }],
      cautions: [],
    });
  });

  it('their mean kinship lies between their parents’, and the cost is both together', () => {
    const { cock, hen, meanKinship, inbreeding, cost } = judged(family, 'G', 'd');
    expect(meanKinship).toBe(((cock.meanKinship ?? 0) + (hen.meanKinship ?? 0)) / 2);
    expect(cost).toBe(meanKinship + inbreeding);
  });
});

it('a bird of unknown age that has been here for long enough is old enough', () => {
  const log = 'log: [{date: 2023-01-01, arrived: cage 1}]';
  const birds = `
  - {id: a, sex: cock, species: zebra finch, ${log}}
  - {id: b, sex: hen, species: zebra finch, hatched: 2023-01-01}`;
  expect(judged(birds, 'a', 'b').cautions).toEqual([]);
  const lately = birds.replace('{date: 2023-01-01, arrived', '{date: 2025-11-01, arrived');
  expect(judged(lately, 'a', 'b').cautions).toEqual(['nobody wrote when a hatched: old enough?']);
});

describe('what the numbers cannot know is said', () => {
  it('two birds of unknown parents from one place', () => {
    const birds = `
  - {id: a, sex: cock, hatched: 2023-01-01, origin: the spring meeting}
  - {id: b, sex: hen, hatched: 2023-01-01, origin: The spring meeting}`;
    expect(judged(birds, 'a', 'b').cautions).toEqual([
      'both came from one place (the spring meeting) with unknown parents: they may be brother and sister',
    ]);
  });

  it('two species, where a pair that there is has them', () => {
    const birds = `
  - {id: a, sex: cock, species: blue-faced parrotfinch, hatched: 2023-01-01}
  - {id: b, sex: hen, species: Gouldian finch, hatched: 2023-01-01}`;
    expect(judged(birds, 'a', 'b').cautions).toEqual([
      'two species, blue-faced parrotfinch and Gouldian finch: mean kinship says nothing of their young',
    ]);
  });

  it('a sire who may be one of two, and an unknown age', () => {
    const birds = `
  - {id: a, sex: cock, sire: [p, q], hatched: 2023-01-01}
  - {id: b, sex: hen}`;
    expect(judged(birds, 'a', 'b').cautions).toEqual([
      'the sire of a is not certain: one of p, q',
      'nobody wrote when b hatched: old enough?',
    ]);
  });

  it('a dam who may be one of two, and once where both parents are unsure for one reason', () => {
    const hen = (parents: string) => `
  - {id: a, sex: cock, hatched: 2023-01-01}
  - {id: b, sex: hen, ${parents}, hatched: 2023-01-01}`;
    expect(judged(hen('sire: p, dam: [q, r]'), 'a', 'b').cautions).toEqual([
      'the dam of b is not certain: one of q, r',
    ]);
    expect(judged(hen('sire: [p, q], dam: [p, q]'), 'a', 'b').cautions).toEqual([
      'the sire of b is not certain: one of p, q',
    ]);
  });

  it('a pedigree that runs in a circle', () => {
    const birds = `
  - {id: a, sex: cock, sire: c}
  - {id: c, sex: cock, sire: a}
  - {id: b, sex: hen, hatched: 2023-01-01}`;
    expect(judged(birds, 'a', 'b').cautions.join()).toContain('the pedigree of a runs in a circle');
  });
});
