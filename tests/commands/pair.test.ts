import { describe, expect, it } from 'vitest';
import { run } from '../../src/commands/pair.ts';
import { ON, room } from '../published/known-season.ts';
import { runCommand } from './run.ts';

const pair = (id: string, json = false, files: Parameters<typeof runCommand>[1] = room) =>
  runCommand({ run }, files, { on: ON, arguments: [id], json });

describe('nestlog pair', () => {
  it('tells its story', async () => {
    const { text, exit } = await pair('LW-1');
    expect(text).toMatch(/^LW-1 · lavender waxbill · C-LW-1 × H-LW-1\n/);
    expect(exit).toBe(0);
  });

  it('for programs', async () => {
    expect(JSON.parse((await pair('LW-2', true)).text)).toMatchObject({ nestlog: 1, pair: 'LW-2' });
  });

  it('that there is not is wrong usage, with what was meant', async () => {
    await expect(async () => pair('LW-11')).rejects.toThrow(
      'no pair `LW-11` in this room; did you mean `LW-1`?',
    );
    await expect(async () => pair('X', false, {})).rejects.toThrow('there is none');
  });
});
