import { describe, expect, it } from 'vitest';
import { definition, run } from '../../src/commands/ahead.ts';
import { UsageError } from '../../src/commands/usage-error.ts';
import { layingPair } from '../rules/ahead/futures.ts';
import { runCommand } from './run.ts';

const files = { A: layingPair('A', 5) };
const call = { on: '2026-03-10', options: { weeks: 8 } };

describe('nestlog ahead', () => {
  it('prints the weeks ahead, as text or for a program', async () => {
    const page = await runCommand({ run }, files, call);
    expect(page.exit).toBe(0);
    expect(page.text).toContain('Tuesday 10 March 2026 · the finch room');
    expect(page.text).toContain('Young expected');
    const data = JSON.parse((await runCommand({ run }, files, { ...call, json: true })).text);
    expect(data).toMatchObject({ nestlog: 1, date: '2026-03-10', eggs: 5, clutches: 1 });
  });

  it('says the same twice', async () => {
    const [one, two] = [await runCommand({ run }, files, call), await runCommand({ run }, files, call)];
    expect(one.text).toBe(two.text);
  });

  it('looks as far as it is asked to', async () => {
    const weeks = async (number: number) =>
      JSON.parse((await runCommand({ run }, files, { ...call, options: { weeks: number }, json: true })).text)
        .weeks.length;
    expect(await weeks(2)).toBe(3);
    expect(await weeks(12)).toBe(13);
  });

  it('exits 0 for an empty room', async () => {
    const { text, exit } = await runCommand({ run }, {}, call);
    expect(exit).toBe(0);
    expect(text).not.toContain('NaN');
  });
});

describe('--weeks', () => {
  const parse = definition.options?.[0]?.parse as (text: string) => unknown;
  it.each(['1', '8', '99'])('takes %s', (text) => {
    expect(parse(text)).toBe(Number(text));
  });

  it.each(['0', '-1', '100', '2.5', 'many', ''])('refuses %j', (text) => {
    expect(() => parse(text)).toThrow(UsageError);
  });
});
