import { describe, expect, it } from 'vitest';
import { run as bird } from '../../src/commands/bird.ts';
import { run as exporting } from '../../src/commands/export.ts';
import { run as pair } from '../../src/commands/pair.ts';
import { runCommand } from '../commands/run.ts';
import { room } from '../rooms.ts';
import { clutchIn, days, journal, spell, waxbills } from './morning.ts';

const laid = (log: string, on: string) =>
  clutchIn(room({ a: waxbills(log) }, on), 'LW-1/1').eggs.map((egg) => days(egg.laid));

// Canary keepers: one egg a day with gaps of one to three days.
describe('a nest looked into once a week', () => {
  const week = 'date: 2026-03-01, checked';

  it('with one egg in it holds a fresh one: a day later there would be two', () => {
    expect(laid(`${week}\ndate: 2026-03-08, laid: 1`, '2026-03-08')).toEqual(['03-05…03-08']);
  });

  it('with a full clutch in it was laid some time since the last look', () => {
    expect(laid(`${week}\ndate: 2026-03-08, laid: 4`, '2026-03-08')).toEqual([
      '03-02…03-05',
      '03-03…03-06',
      '03-04…03-07',
      '03-05…03-08',
    ]);
  });

  it('never counts further back than a look that saw fewer', () => {
    expect(laid(`date: 2026-03-06, checked\ndate: 2026-03-08, laid: 1`, '2026-03-08')).toEqual([
      '03-07…03-08',
    ]);
  });
});

// Doves lay two eggs, the second two days after the first (rules of the trade, B2).
describe('a dove that lays again while her squabs are fed', () => {
  const files = {
    a: journal(
      'DD-1',
      'diamond dove',
      `
      date: 2026-03-01, laid: 1
      date: 2026-03-03, laid: 1
      date: 2026-03-16, hatched: 2
      date: 2026-03-28, fledged: 2
      date: 2026-03-30, laid: 1
      date: 2026-04-01, laid: 1, sitting
    `,
    ),
  };

  // The first egg is three days old at most on 30 March; 12–14 days of sitting from there.
  it('is not expected to hatch the day after her first egg, though nobody looked for a fortnight', () => {
    expect(spell(files, 'hatch', 'DD-1', '2026-03-29', '2026-04-14')).toEqual(['04-09 … 04-14']);
  });
});

describe('a brood that was found hatched when somebody looked again', () => {
  const files = {
    a: journal(
      'ZF-1',
      'zebra finch',
      `
      date: 2026-01-28, laid: 1
      date: 2026-01-29, laid: 2
      date: 2026-02-12, hatched: 2, lost: {clear: 1}
      date: 2026-02-20, ringed: {c1: A1}
    `,
    ),
  };
  const told = async (command: Parameters<typeof runCommand>[0], argument: string, format?: string) => {
    const call = { on: '2026-02-20', arguments: [argument], json: true, options: { format } };
    return JSON.parse((await runCommand(command, files, call)).text);
  };

  it('hatched on the same days, whichever command or table is asked', async () => {
    const { text } = await runCommand({ run: bird }, files, { on: '2026-02-20', arguments: ['ZF-1/1/c1'] });
    expect(text).toContain('hatched 8–12 Feb');
    const days = ['2026-02-08', '2026-02-12'];
    const of = ({ hatchedFrom, hatched }: Record<string, string>) => [hatchedFrom, hatched];
    expect(of((await told({ run: bird }, 'ZF-1/1/c1')).bird)).toEqual(days);
    const [clutch] = (await told({ run: pair }, 'ZF-1')).clutches;
    const span = { from: days[0], to: days[1] };
    expect([clutch.hatched, clutch.chicks[0].hatched]).toEqual([span, span]);
    for (const table of ['birds', 'chicks'])
      expect(of((await told({ run: exporting }, table)).rows.at(-1)), table).toEqual(days);
    const [egg] = (await told({ run: exporting }, 'eggs')).rows;
    expect([egg.endedFrom, egg.ended]).toEqual(days);
  });
});
