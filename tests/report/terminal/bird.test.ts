import { describe, expect, it } from 'vitest';
import { run } from '../../../src/commands/bird.ts';
import { widthOf } from '../../../src/report/terminal/width.ts';
import { runCommand } from '../../commands/run.ts';
import { expectGolden } from '../../golden.ts';
import type { Files } from '../../rooms.ts';
import { seldomLookedAt } from '../../rules/stock/rooms.ts';
import { FAMILY_DAY, family } from '../family.ts';
import { FORBIDDEN } from '../hostile.ts';

const text = async (name: string, width = 80, files: Files = family) =>
  (await runCommand({ run }, files, { on: FAMILY_DAY, width, arguments: [name] })).text;

describe.each([80, 120])('at %i columns', (width) => {
  it.each([
    ['SF-3/1/c1', 'inbred'],
    ['SF-20-01', 'old-cock'],
    ['SF-24-52', 'fostered'],
  ])('%s', async (name, file) => {
    const page = await text(name, width);
    expectGolden(import.meta.url, `${file}-${width}.txt`, page);
    for (const line of page.split('\n')) expect(widthOf(line)).toBeLessThanOrEqual(width);
  });
});

it('says in its life what its head says of its hatching, and its death as the pair’s story does', async () => {
  const page = await text('LW-1/1/c1', 80, seldomLookedAt);
  expect(page).toContain('no ring recorded · hatched 11–18 Mar in clutch LW-1/1 from e1');
  expect(page).toContain('  11–18 Mar    hatched in clutch LW-1/1');
  expect(page).toContain('  21–23 Mar    died: chilled');
});

it('of a bird in a circle of parents says that F cannot be told', async () => {
  const files = { 'birds.yaml': 'birds: [{id: x, sire: y}, {id: y, sire: x}]' };
  expect(await text('x', 80, files)).toContain('F cannot be told: the pedigree runs in a circle');
});

it('lets nothing through that a terminal obeys', async () => {
  const files = {
    'birds.yaml': 'birds: [{id: "x\\u001b[2J", origin: "\\u202Efrom afar", sire: "p\\u0007"}]',
  };
  const page = await text('x\u001b[2J', 80, files);
  expect(page).toContain('<ESC>');
  expect(page).not.toMatch(FORBIDDEN);
});
