import { describe, expect, it } from 'vitest';
import { definition, run } from '../../src/commands/pair.ts';
import { ON, room } from '../published/known-season.ts';
import { runCommand } from './run.ts';

const account = (options: Record<string, unknown> = {}) =>
  runCommand({ run }, room, { on: ON, arguments: ['LW-1'], options: { account: true, ...options } });

const withWords = definition.options?.find(({ flags }) => flags.startsWith('--with'))?.parse;

describe('nestlog pair --account', () => {
  it('is Markdown that names nobody', async () => {
    const { text, exit } = await account();
    expect(text).toMatch(
      /^# Lavender waxbill \(Glaucestrilda caerulescens\): how one pair was kept and what it did\n/,
    );
    expect(text).not.toMatch(/LW-?\d/);
    expect(exit).toBe(0);
  });

  it('names the pair where that is asked for', async () => {
    expect((await account({ with: ['names'] })).text).toContain('- Pair: LW-1: C-LW-1 × H-LW-1');
  });

  it('takes what may be told, several with a comma', () => {
    expect(withWords?.('names, notes')).toEqual(['names', 'notes']);
    expect(() => withWords?.('everything')).toThrow('--with takes names, rings, places, notes');
    expect(() => withWords?.('names,Note')).toThrow('not `Note`; did you mean `notes`?');
  });

  it('--with alone is wrong usage', async () => {
    const call = { on: ON, arguments: ['LW-1'], options: { with: ['names'] } };
    await expect(async () => runCommand({ run }, room, call)).rejects.toThrow('add --account');
  });
});
