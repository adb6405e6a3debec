import { describe, expect, it } from 'vitest';
import { definition, run } from '../../src/commands/match.ts';
import { UsageError } from '../../src/commands/usage-error.ts';
import { FAMILY_DAY, family } from '../report/family.ts';
import type { Files } from '../rooms.ts';
import { runCommand } from './run.ts';

interface Call {
  species?: string;
  options?: Record<string, unknown>;
  files?: Files;
}

async function match({ species, options = {}, files = family }: Call) {
  const call = { on: FAMILY_DAY, json: true, options, arguments: species === undefined ? [] : [species] };
  return JSON.parse((await runCommand({ run }, files, call)).text);
}

const option = (flags: string) =>
  definition.options?.find((each) => each.flags.startsWith(flags))?.parse as (
    text: string,
    before?: unknown,
  ) => unknown;

describe('nestlog match', () => {
  it('takes one species, by any of its names', async () => {
    const { species } = await match({ species: 'Taeniopygia guttata' });
    expect(species.map((each: { species: string }) => each.species)).toEqual(['zebra finch']);
    await expect(match({ species: 'canary' })).rejects.toThrow('no species `canary` in this room');
    await expect(match({ species: 'kanarie' })).rejects.toThrow(UsageError);
  });

  it('has nobody to match of a species whose last bird is gone', async () => {
    const birds = 'birds:\n  - {id: DD-1, species: diamond dove, log: [{date: 2024-03-01, gone}]}\n';
    const gone = runCommand(
      { run },
      { 'birds.yaml': birds },
      { on: '2024-04-01', options: {}, arguments: ['diamond dove'] },
    );
    await expect(gone).rejects.toThrow('no diamond dove is here on that day');
  });

  it('keeps a pair that was parted, and leaves a bird out', async () => {
    const options = { keep: ['SF-2'], not: ['SF-24-50'] };
    const [finches] = (await match({ species: 'star finch', options })).species;
    expect(finches.kept.map(({ pair }: { pair: string }) => pair)).toEqual(['SF-2', 'SF-3']);
    expect(finches.leftOut).toContainEqual({ bird: 'SF-24-50', sex: 'cock', why: 'left out as you asked' });
  });

  it('names the one pair that it judges as the room does, however its letters were typed', async () => {
    expect((await match({ options: { pair: 'sf-3' } })).pair).toBe('SF-3');
  });

  it('takes the limit from the room’s settings, unless it is given', async () => {
    const files = { ...family, 'nestlog.yaml': 'limits: {max-inbreeding: 0.05}' };
    expect((await match({ files })).maxInbreeding).toBe(0.05);
    expect((await match({ files, options: { maxInbreeding: 0.25 } })).maxInbreeding).toBe(0.25);
  });

  it('exits 2 for a pair or bird that there is not, and for a pair that is not two birds', async () => {
    await expect(match({ options: { keep: ['SF-9'] } })).rejects.toThrow('no pair `SF-9` in this room');
    await expect(match({ options: { not: ['SF-99-99'] } })).rejects.toThrow(UsageError);
    await expect(match({ options: { pair: 'SF-1' } })).rejects.toThrow(
      'of SF-1 there are no two known birds here',
    );
    await expect(match({ options: { keep: ['SF-1'] } })).rejects.toThrow(UsageError);
  });
});

describe('its options', () => {
  it.each([
    ['0.125', 0.125],
    ['.1', 0.1],
    ['12.5%', 0.125],
    ['6.25 %', 0.0625],
    ['0', 0],
  ])('--max-inbreeding %s is %f', (text, value) => {
    expect(option('--max-inbreeding')(text)).toBe(value);
  });

  it.each([
    ['12,5%', '12.5%'],
    ['12,5', '12.5%'],
    ['12.5', '12.5%'],
    ['0,125', '0.125'],
    ['6', '6%'],
  ])('--max-inbreeding %s is none, but one is meant', (text, meant) => {
    expect(() => option('--max-inbreeding')(text)).toThrow(`not \`${text}\`; did you mean ${meant}?`);
  });

  it.each(['12.5', '1.1', '-0.1', 'low', ''])('--max-inbreeding %s is none', (text) => {
    expect(() => option('--max-inbreeding')(text)).toThrow(UsageError);
  });

  it('--keep and --not may be repeated', () => {
    expect(option('--keep')('LW-2', option('--keep')('LW-1'))).toEqual(['LW-1', 'LW-2']);
    expect(option('--not')('a')).toEqual(['a']);
  });
});
