import { expect, it } from 'vitest';
import { run } from '../../../src/commands/match.ts';
import { runCommand } from '../../commands/run.ts';
import { FAMILY_DAY, family } from '../family.ts';

const match = async (options = {}) =>
  JSON.parse((await runCommand({ run }, family, { on: FAMILY_DAY, json: true, options })).text);

it('has proposals with their reasons, pairs that stay and who is left out', async () => {
  const { nestlog, date, maxInbreeding, species } = await match();
  expect([nestlog, date, maxInbreeding]).toEqual([1, FAMILY_DAY, null]);
  const [finches] = species;
  expect(finches.proposals[0]).toMatchObject({
    cock: 'SF-24-50',
    hen: 'SF-24-52',
    inbreeding: 0,
    kin: null,
    through: [],
    runnerUp: { cock: 'SF-23-12', hen: 'SF-24-52', inbreeding: 1 / 8, kin: 'uncle and niece' },
  });
  expect(finches.kept).toEqual([
    expect.objectContaining({ pair: 'SF-3', kin: 'grandsire and granddaughter' }),
  ]);
  expect(finches.leftOut).toContainEqual({ bird: 'SF-25-60', sex: 'hen', why: 'in quarantine until 1 Jun' });
});

it('one pair has the same keys', async () => {
  const pair = await match({ pair: 'SF-3' });
  expect(pair).toMatchObject({
    nestlog: 1,
    pair: 'SF-3',
    cock: 'SF-20-01',
    inbreeding: 1 / 8,
    zInbreeding: 1 / 4,
  });
  const { proposals } = (await match()).species[0];
  const { reasons: _, runnerUp: __, ...mating } = proposals[0];
  expect(Object.keys(pair)).toEqual(expect.arrayContaining(Object.keys(mating)));
});
