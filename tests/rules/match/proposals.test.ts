import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { alone, dilemma, match, pairsOf } from './rooms.ts';

const ON = '2026-05-17';

describe('the best cock is the uncle of both young hens', () => {
  const proposed = match(dilemma, ON);

  it('so that he goes to the hen from outside, and they to cocks that are no kin of theirs', () => {
    const cocks = proposed.proposals
      .filter(({ hen }) => hen.id.startsWith('NIECE'))
      .map(({ cock }) => cock.id);
    expect(proposed.proposals.find(({ cock }) => cock.id === 'UNCLE')?.hen.id).toBe('STRANGER');
    expect(cocks).toHaveLength(2);
    expect(proposed.proposals.map(({ inbreeding }) => inbreeding)).toEqual([0, 0, 0]);
  });

  it('and the niece’s line says why she does not get him', () => {
    const niece = proposed.proposals.find(({ hen }) => hen.id === 'NIECE-1');
    expect(niece?.reasons).toContain(
      'UNCLE has fewer relatives here, but he and NIECE-1 are uncle and niece (F 0.125); he goes to STRANGER',
    );
  });

  it('if there is no other cock, he is proposed all the same, and it is said what they are', () => {
    const { proposals } = match(dilemma, ON, { not: ['OTHER', 'BROTHER', 'YOUNGEST', 'STRANGER'] });
    expect(proposals).toHaveLength(1);
    expect(proposals[0]).toMatchObject({ inbreeding: 1 / 8, kin: 'uncle and niece' });
    expect(proposals[0]?.through).toEqual([
      { founder: 'GS', share: 1 / 16 },
      { founder: 'GD', share: 1 / 16 },
    ]);
    expect(proposals[0]?.runnerUp?.hen.id).toMatch(/^NIECE/);
  });

  it('within a limit he stays alone, and so do they', () => {
    const limited = match(dilemma, ON, {
      not: ['OTHER', 'BROTHER', 'YOUNGEST', 'STRANGER'],
      maxInbreeding: 0.0625,
    });
    expect(limited.proposals).toEqual([]);
    expect(alone(limited).UNCLE).toBe(
      'every free hen is closer kin than 0.0625; the least so is NIECE-1 (uncle and niece, F 0.125)',
    );
  });
});

describe('who is left over', () => {
  it('is the cock with the most relatives, with the reason', () => {
    const proposed = match(dilemma, ON);
    const left = Object.keys(alone(proposed));
    expect(left).toHaveLength(1);
    expect(['OTHER', 'BROTHER', 'YOUNGEST']).toContain(left[0]);
    expect(Object.values(alone(proposed))).toEqual(['no hen left; the other cocks make the better pairs']);
  });

  it('a hen whose only cock within the limit goes to another', () => {
    const { proposals, leftOut } = match(dilemma, ON, { not: ['BROTHER', 'YOUNGEST'], maxInbreeding: 0.1 });
    expect(proposals).toHaveLength(2);
    expect(leftOut.find(({ one }) => one.id.startsWith('NIECE'))?.why).toBe(
      'every cock that is no closer kin than 0.1 goes to another: OTHER',
    );
  });

  it('everyone, where there is no hen', () => {
    const { proposals, leftOut } = match(dilemma, ON, { not: ['NIECE-1', 'NIECE-2', 'STRANGER'] });
    expect(proposals).toEqual([]);
    expect(leftOut.filter(({ why }) => why === 'no hen of the species is free and fit')).toHaveLength(4);
  });
});

describe('pairs that are together', () => {
  const files = {
    ...dilemma,
    'LW-1':
      'pair: LW-1\nspecies: lavender waxbill\ncock: UNCLE\nhen: NIECE-1\nlog:\n  - {date: 2026-02-01, paired}',
    'LW-2': `pair: LW-2\nspecies: lavender waxbill\ncock: OTHER\nhen: STRANGER\nlog:
  - {date: 2025-02-01, paired}
  - {date: 2025-09-01, parted}`,
  };

  it('stay, and are judged like the others', () => {
    const { kept, proposals } = match(files, ON);
    expect(kept.map(({ pair, inbreeding, kin }) => [pair, inbreeding, kin])).toEqual([
      ['LW-1', 1 / 8, 'uncle and niece'],
    ]);
    expect(proposals.flatMap(({ cock, hen }) => [cock.id, hen.id])).not.toContain('UNCLE');
  });

  it('are open to change when all is thought out anew, but for those to keep', () => {
    expect(match(files, ON, { anew: true }).kept).toEqual([]);
    expect(match(files, ON, { anew: true, keep: ['LW-1'] }).kept.map(({ pair }) => pair)).toEqual(['LW-1']);
  });

  it('a parted pair that is to come together again is kept', () => {
    const { kept, proposals } = match(files, ON, { keep: ['LW-2'] });
    expect(kept.map(({ pair }) => pair)).toEqual(['LW-1', 'LW-2']);
    expect(proposals.flatMap(({ cock, hen }) => [cock.id, hen.id])).not.toContain('STRANGER');
  });
});

it('the order of the bird list makes no difference to what the pairs cost', () => {
  const [head = '', ...birds] = (dilemma['birds.yaml'] as string).trimEnd().split('\n');
  const cost = (of: string[]) => {
    const { proposals } = match({ 'birds.yaml': `${[head, ...of].join('\n')}\n` }, ON);
    return proposals.reduce((sum, mating) => sum + mating.cost, 0);
  };
  const before = cost(birds);
  fc.assert(
    fc.property(fc.shuffledSubarray(birds, { minLength: birds.length }), (shuffled) => {
      expect(cost(shuffled)).toBeCloseTo(before, 12);
    }),
    { numRuns: 20 },
  );
});

it('each species is matched by itself', () => {
  const files = {
    'birds.yaml': `
      birds:
        - {id: A, species: lavender waxbill, sex: cock, hatched: 2023-01-01}
        - {id: B, species: zebra finch, sex: hen, hatched: 2023-01-01}
    `,
  };
  expect(pairsOf(match(files, ON))).toEqual([]);
});

describe('two that chased each other fiercely', () => {
  const quail = (level: string, others = '', more = '') => ({
    'birds.yaml': `
      birds:
        - {id: A, species: king quail, sex: cock, hatched: 2025-05-05}
        - {id: B, species: king quail, sex: hen, hatched: 2025-05-05}${others}
    `,
    P: `
      pair: A-1
      species: king quail
      cock: A
      hen: B
      log:
        - {date: 2026-03-01, paired}
        - {date: 2026-04-01, chasing: {by: cock, at: hen, level: ${level}}}
        - {date: 2026-04-02, parted: {cock: cage 7}}${more}
    `,
  });

  it('are not proposed for each other again, and it is said why, with the day', () => {
    const fierce = match(quail('fierce'), '2026-04-05');
    expect(pairsOf(fierce)).toEqual([]);
    expect(alone(fierce).A).toBe(
      'fierce chasing with B on 1 Apr 2026: they are not proposed for each other again',
    );
    expect(alone(fierce).B).toMatch(/^fierce chasing with A/);
    expect(pairsOf(match(quail('mild'), '2026-04-05'))).toEqual(['A × B']);
  });

  it('are told from a parent that drives its young: that is no quarrel of the two', () => {
    const driven = quail('fierce');
    const of = (who: string) => ({ ...driven, P: driven.P.replace('at: hen', `at: ${who}`) });
    expect(pairsOf(match(of('c2'), '2026-04-05'))).toEqual(['A × B']);
    // Under her own name she is the hen.
    expect(pairsOf(match(of('B'), '2026-04-05'))).toEqual([]);
  });

  it('go to others, and are no next best', () => {
    const hen = '\n        - {id: C, species: king quail, sex: hen, hatched: 2025-05-05}';
    const fierce = match(quail('fierce', hen), '2026-04-05');
    expect(pairsOf(fierce)).toEqual(['A × C']);
    expect(fierce.proposals[0]?.runnerUp).toBeNull();
  });

  it('are why the hen gets another cock than the one with the fewest relatives', () => {
    const others = `
        - {id: C, species: king quail, sex: hen, hatched: 2025-05-05}
        - {id: E, species: king quail, sex: cock, hatched: 2025-05-05, sire: S, dam: D}
        - {id: BROTHER-OF-E, species: king quail, hatched: 2025-05-05, sire: S, dam: D}`;
    const { proposals } = match(quail('fierce', others), '2026-04-05');
    expect(proposals.find(({ hen }) => hen.id === 'B')).toMatchObject({
      cock: { id: 'E' },
      reasons: [
        'A has fewer relatives here, but there was fierce chasing between him and B on 1 Apr 2026; he goes to C',
      ],
    });
  });

  it('are marked where they are together again', () => {
    const again = '\n        - {date: 2026-04-03, reunited}';
    expect(match(quail('fierce', '', again), '2026-04-05').kept[0]?.cautions).toContain(
      'there was fierce chasing between them on 1 Apr 2026',
    );
  });
});

it('who may be the cock of a colony’s nest is proposed with that doubt, but not when all is thought out anew', () => {
  const bird = (id: string, sex: string) =>
    `  - {id: ${id}, species: lavender waxbill, sex: ${sex}, hatched: 2023-04-01}\n`;
  const files = {
    'birds.yaml': `birds:\n${bird('A', 'cock')}${bird('B', 'cock')}${bird('H', 'hen')}${bird('FREE', 'hen')}`,
    'LW-1':
      'pair: LW-1\nspecies: lavender waxbill\ncock: [A, B]\nhen: H\nlog:\n  - {date: 2026-01-01, paired}\n',
  };
  const doubts = (anew: boolean) =>
    match(files, '2026-05-01', { anew }).proposals.map(({ cock, hen, cautions }) => [
      cock.id,
      hen.id,
      cautions,
    ]);
  expect(doubts(false)).toEqual([
    ['A', 'FREE', ['A may be in LW-1, which was not parted: is there anybody to rear?']],
  ]);
  expect(doubts(true).map(([, , cautions]) => cautions)).toEqual([[], []]);
});
