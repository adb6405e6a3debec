import { describe, expect, it } from 'vitest';
import { run } from '../../src/commands/bird.ts';
import { FAMILY_DAY, family } from '../report/family.ts';
import { runCommand } from './run.ts';

const page = async (name: string) =>
  (await runCommand({ run }, family, { on: FAMILY_DAY, arguments: [name] })).text;

describe('nestlog bird', () => {
  it.each(['SF-23-11', 'SF 23 11', 'SF-1/1/c1'])('%s is one and the same bird', async (name) => {
    expect(await page(name)).toBe(await page('SF-23-11'));
  });

  it('exits 2 for a name that nobody bears, with the nearest one', async () => {
    await expect(async () => page('SF-23-1')).rejects.toThrow(
      'no bird is called `SF-23-1`; did you mean `SF-23-11`?',
    );
    await expect(async () => page('somebody')).rejects.toThrow('`nestlog stock` lists who is here');
  });
});
