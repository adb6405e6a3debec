import { describe, expect, it } from 'vitest';
import { definition, run } from '../../src/commands/export.ts';
import { UsageError } from '../../src/commands/usage-error.ts';
import { FAMILY_DAY, family } from '../report/family.ts';
import { runCommand } from './run.ts';

const birds = async (options: Record<string, unknown> = {}, json = false) =>
  (await runCommand({ run }, family, { on: FAMILY_DAY, arguments: ['birds'], options, json })).text;

describe('nestlog export birds', () => {
  it('is CSV where nothing else is asked for', async () => {
    const [head, first, ...rest] = (await birds()).split('\r\n');
    expect(head).toMatch(/^id,ring,species,sex,hatched,/);
    expect(first).toMatch(/^SF-2\/1\/c3,,star finch,,2024-02-28,/);
    expect(rest).toHaveLength(15);
  });

  it('says the same in all its forms', async () => {
    const { nestlog, table, rows } = JSON.parse(await birds({ format: 'json' }));
    expect([nestlog, table]).toEqual([1, 'birds']);
    expect(rows).toHaveLength(15);
    expect(
      (await birds({ format: 'ndjson' }))
        .trimEnd()
        .split('\n')
        .map((line) => JSON.parse(line)),
    ).toEqual(rows);
    expect(await birds({}, true)).toBe(await birds({ format: 'json' }));
  });
});

it('a table or form that there is not is wrong usage', async () => {
  await expect(async () => runCommand({ run }, {}, { arguments: ['toString'] })).rejects.toThrow(UsageError);
  const format = definition.options?.find(({ flags }) => flags.startsWith('--format'))?.parse;
  expect(() => format?.('xml')).toThrow('--format takes csv, json, ndjson, not `xml`');
});
