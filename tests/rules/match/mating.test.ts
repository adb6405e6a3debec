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

describe('fierce chasing between two', () => {
  const birds = `
  - {id: a, sex: cock, species: zebra finch, hatched: 2023-01-01}
  - {id: b, sex: hen, species: zebra finch, hatched: 2023-01-01}
  - {id: c, sex: hen, species: zebra finch, hatched: 2023-01-01}`;
  const chased = (hen: string, ...log: string[]) => {
    const lines = [
      'date: 2025-01-01, paired',
      'date: 2025-03-05, parted',
      'date: 2025-06-01, paired: {hen: c}',
      ...log,
    ];
    const journal = `pair: ZF-1\nspecies: zebra finch\ncock: a\nhen: b\nlog:\n${lines.map((line) => `  - {${line}}\n`).join('')}`;
    const all = stock({ 'birds.yaml': `birds:\n${birds}`, 'ZF-1': journal }, '2026-01-01');
    const { cautions } = judge(matingOf(birdIn(all, 'a'), birdIn(all, hen), all), all);
    return cautions.map((caution) => caution.replace('there was fierce chasing between them on ', ''));
  };
  const fierce = (on: string, at = 'hen', by = 'cock') =>
    `date: ${on}, chasing: {by: ${by}, at: ${at}, level: fierce}`;

  it('is told of the mate with whom it was, from the first day to the last, by the last time', () => {
    expect(chased('b', fierce('2025-01-01'))).toEqual(['1 Jan 2025']);
    expect(chased('b', fierce('2025-03-05'))).toEqual(['5 Mar 2025']);
    expect(chased('c', fierce('2025-06-01'))).toEqual(['1 Jun 2025']);
    const twice = [fierce('2025-02-01'), fierce('2025-02-20'), fierce('2025-07-01')];
    expect(chased('b', ...twice)).toEqual(['20 Feb 2025']);
    expect(chased('c', ...twice)).toEqual(['1 Jul 2025']);
  });

  it('is told by name too, and of nobody named, but not of one of the young', () => {
    expect(chased('b', fierce('2025-02-01', 'b', 'a'))).toEqual(['1 Feb 2025']);
    expect(chased('b', 'date: 2025-02-01, chasing: {level: fierce}')).toEqual(['1 Feb 2025']);
    expect(chased('b', fierce('2025-02-01', 'young'))).toEqual([]);
    expect(chased('b', fierce('2025-02-01').replace('fierce', 'hard'))).toEqual([]);
  });
});

describe('what is no caution', () => {
  it('a species that nobody wrote is not another one', () => {
    const birds = (one: string, other: string) => `
  - {id: a, sex: cock, hatched: 2023-01-01${one}}
  - {id: b, sex: hen, hatched: 2023-01-01${other}}`;
    const [zebra, canary] = [', species: zebra finch', ', species: canary'];
    expect(judged(birds(zebra, ''), 'a', 'b').cautions).toEqual([]);
    expect(judged(birds('', canary), 'a', 'b').cautions).toEqual([]);
    expect(judged(birds(zebra, canary), 'a', 'b').cautions).toEqual([
      'two species, zebra finch and canary: mean kinship says nothing of their young',
    ]);
  });

  it('an unknown age is none from the day on which it has been here for as long as the species needs', () => {
    const birds = (on: string) =>
      ['a, sex: cock', 'b, sex: hen']
        .map((one) => `\n  - {id: ${one}, species: zebra finch, log: [{date: ${on}, arrived: cage 1}]}`)
        .join('');
    // Zebra finches: six months (common practice).
    expect(judged(birds('2025-07-01'), 'a', 'b').cautions).toEqual([]);
    expect(judged(birds('2025-07-02'), 'a', 'b').cautions).toEqual([
      'nobody wrote when a and b hatched: old enough?',
    ]);
  });

  it('one place is none where a parent of one of them is known, and two places are none', () => {
    const birds = (his: string, hers: string) => `
  - {id: a, sex: cock, hatched: 2023-01-01${his}}
  - {id: b, sex: hen, hatched: 2023-01-01${hers}}`;
    const from = (place: string) => `, origin: ${place}`;
    expect(judged(birds(`${from('the show')}, sire: S`, from('the show')), 'a', 'b').cautions).toEqual([]);
    expect(judged(birds(`${from('the show')}, dam: D`, from('the show')), 'a', 'b').cautions).toEqual([]);
    expect(judged(birds(from('the show'), from('the fair')), 'a', 'b').cautions).toEqual([]);
    expect(judged(birds('', ''), 'a', 'b').cautions).toEqual([]);
  });
});
