import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it, onTestFinished } from 'vitest';
import { definition, run } from '../../src/commands/season.ts';
import { UsageError } from '../../src/commands/usage-error.ts';
import { ON, room } from '../published/known-season.ts';
import { runCommand } from './run.ts';

const season = (args: string[], options: Record<string, unknown> = {}, on = ON) =>
  runCommand({ run }, room, { on, arguments: args, options });

describe('nestlog season', () => {
  it('is this season where none is named, and exits 0', async () => {
    const { text, exit } = await season([]);
    expect(text).toMatch(/^Season 2026 · the finch room · as known on Thursday 30 July 2026\n/);
    expect(exit).toBe(0);
  });

  it('an empty season is no mistake', async () => {
    const { text, exit } = await season(['2019']);
    expect(text).toContain('No clutch was begun in it.');
    expect(exit).toBe(0);
  });

  it('knows nothing later than the day stood on', async () => {
    expect((await season([], {}, '2026-03-12')).text).toContain('1 clutch of 1 pair');
  });

  it('divides by what is asked for', async () => {
    expect((await season(['all'], { by: 'month' })).text).toContain('BY MONTH OF THE FIRST EGG');
  });

  it.each(['25', '2026..2024', 'last'])('%s is no season', async (asked) => {
    await expect(async () => season([asked])).rejects.toThrow(UsageError);
  });

  it('of a season written another way the right one is named', async () => {
    await expect(async () => season(['2025-26'])).rejects.toThrow('did you mean 2025/26 or 2025..2026?');
  });

  it('--page writes a page, and replaces none unasked', async () => {
    const folder = mkdtempSync(join(tmpdir(), 'nestlog-season-'));
    onTestFinished(() => rmSync(folder, { recursive: true, force: true }));
    const page = join(folder, 'season.html');
    const { text, exit } = await season([], { page });
    expect([text, exit]).toEqual([`written: ${page}\n`, 0]);
    expect(readFileSync(page, 'utf8')).toContain('<h1>Season 2026 · the finch room</h1>');
    await season(['2019'], { page, force: true });
    expect(readFileSync(page, 'utf8')).toContain('No clutch was begun in it.');
  });

  it('--by takes what there is, and suggests it', () => {
    const by = definition.options?.find(({ flags }) => flags.startsWith('--by'))?.parse;
    expect(by?.('hen')).toBe('hen');
    expect(() => by?.('hens')).toThrow('did you mean `hen`?');
    expect(() => by?.('toString')).toThrow(UsageError);
  });
});
