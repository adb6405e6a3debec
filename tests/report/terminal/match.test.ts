import { describe, expect, it } from 'vitest';
import { run } from '../../../src/commands/match.ts';
import { widthOf } from '../../../src/report/terminal/width.ts';
import { runCommand } from '../../commands/run.ts';
import { expectGolden } from '../../golden.ts';
import { FAMILY_DAY, family } from '../family.ts';

const text = async (width: number, options = {}) =>
  (await runCommand({ run }, family, { on: FAMILY_DAY, width, options })).text;

describe.each([80, 120])('at %i columns', (width) => {
  it.each([
    ['as it stands', 'match', {}],
    ['with all pairs open and a limit', 'match-anew', { anew: true, maxInbreeding: 0.1 }],
    ['one pair', 'match-pair', { pair: 'SF-3' }],
  ])('%s', async (_, file, options) => {
    const page = await text(width, options);
    expectGolden(import.meta.url, `${file}-${width}.txt`, page);
    for (const line of page.split('\n')) expect(widthOf(line)).toBeLessThanOrEqual(width);
  });
});

it('states close kin, says what it means and leaves the rest to the keeper', async () => {
  const page = await text(200, { pair: 'SF-3' });
  expect(page).toContain('close kin: grandsire and granddaughter');
  expect(page).toContain('12.5 % are expected to be one ancestor’s gene twice');
  expect(page.replaceAll('\n', ' ')).toContain('what local rules ask, is yours to judge');
});

it('gives the day on which a pair that stays chased each other as every other page does', async () => {
  const files = {
    'birds.yaml': `birds:
  - {id: A, species: king quail, sex: cock, hatched: 2025-05-05}
  - {id: B, species: king quail, sex: hen, hatched: 2025-05-05}
`,
    'A-1': `pair: A-1
species: king quail
cock: A
hen: B
log:
  - {date: 2026-03-01, paired}
  - {date: 2026-04-01, chasing: {by: cock, at: hen, level: fierce}}
`,
  };
  const page = (await runCommand({ run }, files, { on: '2026-04-05', width: 200, options: {} })).text;
  expect(page).toContain('there was fierce chasing between them on 1 Apr 2026');
});
