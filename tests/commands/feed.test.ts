import { describe, expect, it } from 'vitest';
import { definition, run } from '../../src/commands/feed.ts';
import { UsageError } from '../../src/commands/usage-error.ts';
import { HATCHED, pairRoom } from '../rules/feed/rooms.ts';
import { runCommand } from './run.ts';

const parse = definition.options?.find(({ flags }) => flags.startsWith('--days'))?.parse as (
  text: string,
) => number;

describe('nestlog feed', () => {
  it('plans so many days, the one stood on being the first', async () => {
    const call = { on: '2026-03-20', options: { days: 3 }, json: true };
    const { text, exit } = await runCommand({ run }, pairRoom('lavender waxbill', HATCHED), call);
    const { date, days, housings } = JSON.parse(text);
    expect([date, days, exit]).toEqual(['2026-03-20', 3, 0]);
    expect(housings[0].days.map((one: { date: string }) => one.date)).toEqual([
      '2026-03-20',
      '2026-03-21',
      '2026-03-22',
    ]);
  });

  it('exits 0 where nobody is to be fed', async () => {
    expect((await runCommand({ run }, {}, { options: { days: 7 } })).exit).toBe(0);
  });

  it.each(['1', '7', '60'])('--days %s', (text) => {
    expect(parse(text)).toBe(Number(text));
  });

  it.each(['0', '61', '-1', '1.5', 'week', ''])('--days %s is no number of days to plan', (text) => {
    expect(() => parse(text)).toThrow(UsageError);
  });
});
