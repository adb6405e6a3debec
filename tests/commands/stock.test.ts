import { describe, expect, it } from 'vitest';
import { definition, run } from '../../src/commands/stock.ts';
import { UsageError } from '../../src/commands/usage-error.ts';
import { FAMILY_DAY, family } from '../report/family.ts';
import { runCommand } from './run.ts';

const birds = async (options: Record<string, unknown>, on = FAMILY_DAY): Promise<string[]> => {
  const { text } = await runCommand({ run }, family, { on, json: true, options });
  return JSON.parse(text).birds.map(({ id }: { id: string }) => id);
};

/** The value of an option as the command line gives it. */
function parsed(flags: string, text: string): unknown {
  return definition.options?.find((option) => option.flags.startsWith(flags))?.parse?.(text);
}

describe('nestlog stock', () => {
  it('shows one species by any of its names', async () => {
    expect(await birds({ species: 'Taeniopygia guttata' })).toEqual(['ZF-1', 'ZF-2']);
    expect(await birds({ species: 'Zebra Finch' })).toEqual(['ZF-1', 'ZF-2']);
  });

  it('shows one housing, one age, one sex', async () => {
    expect(await birds({ housing: 'cage 9' })).toEqual(['SF-25-60']);
    expect(await birds({ age: 'young' })).toEqual(['SF-3/1/c1', 'SF-3/1/c2']);
    expect(await birds({ sex: 'unknown', age: 'adult' })).toEqual([]);
  });

  it('shows those that left instead', async () => {
    expect(await birds({ gone: true })).toEqual(['SF-20-02', 'SF-23-13']);
  });

  it('shows who was here on another day', async () => {
    expect(await birds({ species: 'star finch' }, '2023-03-01')).toEqual([
      'SF-20-01',
      'SF-20-02',
      'SF-22-30',
      'SF-23-11',
      'SF-23-12',
      'SF-23-13',
    ]);
  });

  it('exits 0 with nobody here', async () => {
    expect((await runCommand({ run }, {})).exit).toBe(0);
  });

  it('does not take words that are no age, sex or species', async () => {
    expect(parsed('--age', 'adult')).toBe('adult');
    expect(() => parsed('--age', 'old')).toThrow(UsageError);
    expect(() => parsed('--sex', 'male')).toThrow('--sex takes cock, hen, unknown, not `male`');
    await expect(async () => birds({ species: 'zebra fnch' })).rejects.toThrow('did you mean `zebra finch`?');
  });
});
