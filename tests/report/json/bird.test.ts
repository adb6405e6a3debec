import { expect, it } from 'vitest';
import { run } from '../../../src/commands/bird.ts';
import { runCommand } from '../../commands/run.ts';
import { FAMILY_DAY, family } from '../family.ts';

const bird = async (name: string) =>
  JSON.parse((await runCommand({ run }, family, { on: FAMILY_DAY, json: true, arguments: [name] })).text);

it('has the bird as the table has it, its pedigree and where its F comes from', async () => {
  const page = await bird('SF 26 01');
  expect(page.nestlog).toBe(1);
  expect(page.bird).toMatchObject({ id: 'SF-3/1/c1', ring: 'SF 26 01', inbreeding: 1 / 8, pair: null });
  expect(page.pedigree).toMatchObject({
    id: 'SF-3/1/c1',
    sire: { id: 'SF-20-01', sire: null },
    dam: { id: 'SF-24-51', sire: { id: 'SF-23-11', sire: { id: 'SF-20-01' } } },
  });
  expect(page.through).toEqual([{ ancestor: 'SF-20-01', share: 1 / 8 }]);
  expect(page.kin).toBe('grandsire and granddaughter');
  expect(page.known[1]).toEqual({ known: 2, of: 4 });
  expect(page.weights).toEqual([{ date: '2026-04-08', grams: 9.2 }]);
  expect(page.life[0]).toEqual({ date: '2026-03-30', what: 'hatched in clutch SF-3/1' });
});

it('has mates, young, moults and doubts', async () => {
  const old = await bird('SF-20-01');
  expect(old.mates[0]).toMatchObject({
    mate: 'SF-20-02',
    times: [{ pair: 'SF-1', from: '2023-02-01', to: '2025-08-03' }],
  });
  expect(old.mates[1].times).toEqual([{ pair: 'SF-3', from: '2026-03-01', to: null }]);
  expect(old.mates[1].young).toEqual([
    { id: 'SF-3/1/c1', status: 'here' },
    { id: 'SF-3/1/c2', status: 'here' },
  ]);
  expect(old.moults).toEqual([
    { date: '2025-11-02', state: 'started' },
    { date: '2025-12-20', state: 'done' },
  ]);
  expect((await bird('SF-22-30')).doubts).toEqual({ sire: 'one of SF-17-01, SF-17-04', dam: null });
});
