import { describe, expect, it } from 'vitest';
import { run } from '../../../src/commands/stock.ts';
import { widthOf } from '../../../src/report/terminal/width.ts';
import { runCommand } from '../../commands/run.ts';
import { expectGolden } from '../../golden.ts';
import { FAMILY_DAY, family } from '../family.ts';

const text = async (width: number, options = {}) =>
  (await runCommand({ run }, family, { on: FAMILY_DAY, width, options })).text;

describe.each([80, 120])('at %i columns', (width) => {
  it('who is here', async () => {
    const page = await text(width);
    expectGolden(import.meta.url, `stock-${width}.txt`, page);
    for (const line of page.split('\n')) expect(widthOf(line)).toBeLessThanOrEqual(width);
  });

  it('who left', async () => {
    expectGolden(import.meta.url, `stock-gone-${width}.txt`, await text(width, { gone: true }));
  });
});

it('of a part of the birds it does not say how varied they are: that would be of another group', async () => {
  expect(await text(80, { sex: 'hen' })).not.toContain('gene diversity');
  expect(await text(80, { species: 'star finch' })).toContain('gene diversity');
});

it('of nobody says so', async () => {
  expect(await text(80, { housing: 'cage 9', species: 'zebra finch' })).toContain('Nobody is here.');
  expect((await runCommand({ run }, {}, { options: { gone: true } })).text).toContain('Nobody has left.');
});
