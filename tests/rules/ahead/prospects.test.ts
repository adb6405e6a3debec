import { describe, expect, it } from 'vitest';
import { formatDay } from '../../../src/days.ts';
import { type Prospect, prospectsOf } from '../../../src/rules/ahead/prospects.ts';
import { room } from '../../rooms.ts';
import { layingPair } from './futures.ts';

const of = (log: readonly string[], on: string, species = 'zebra finch') =>
  prospectsOf(
    room(
      {
        A: `\npair: A\nspecies: ${species}\nhousing: cage 1\nlog:\n${log.map((line) => `  - ${line}`).join('\n')}\n`,
      },
      on,
    ),
  );

const laid = ({ is }: Prospect) => is.stage === 'egg' && is.toCome === null;
const started = ({ is }: Prospect) => [formatDay(is.start.from), formatDay(is.start.to)];

describe('who may come', () => {
  it('are the eggs that the lamp has not ruled out, and the young that are still fed', () => {
    const { prospects } = of(
      [
        '{date: 2026-03-01, clutch: 1, laid: 1}',
        '{date: 2026-03-04, laid: 3, sitting}',
        '{date: 2026-03-11, candled: {fertile: [e1, e2, e3], clear: e4}}',
        '{date: 2026-03-17, hatched: [e1, e2]}',
      ],
      '2026-03-18',
    );
    expect(prospects.map(({ name, is }) => [name, is.stage])).toEqual([
      ['A/1/e3', 'egg'],
      ['A/1/c1', 'nestling'],
      ['A/1/c2', 'nestling'],
    ]);
    expect(prospects[0]?.is).toMatchObject({ fertile: true, toCome: null });
  });

  it('are no longer young that feed themselves, died or left', () => {
    const log = [
      '{date: 2026-03-01, clutch: 1, laid: 4, sitting}',
      '{date: 2026-03-15, hatched: 4}',
      '{date: 2026-04-04, fledged: 4}',
      '{date: 2026-04-20, independent: c1, died: c2, gone: {sold: c3}}',
    ];
    expect(of(log, '2026-04-21').prospects.map(({ name, is }) => [name, is.stage])).toEqual([
      ['A/1/c4', 'fledgling'],
    ]);
  });

  it('leave out eggs long past their time, and say so', () => {
    const { prospects, pastTheirTime } = of(
      ['{date: 2026-01-01, clutch: 1, laid: 4, sitting}'],
      '2026-03-01',
    );
    expect(prospects).toEqual([]);
    expect(pastTheirTime).toEqual([{ clutch: 'A/1', eggs: 4 }]);
  });

  it('are a usual clutch where somebody sits and nobody looked, and it is said', () => {
    const { prospects, uncounted } = of(['{date: 2026-03-01, sitting}'], '2026-03-10');
    expect(prospects.map(({ name }) => name)).toEqual([
      'A/1/e1',
      'A/1/e2',
      'A/1/e3',
      'A/1/e4',
      'A/1/e5',
      'A/1/e6',
      'A/1/e7',
    ]);
    expect(uncounted).toEqual(['A/1']);
  });

  it('are one at the least where young were only heard, and it is said', () => {
    const { prospects, uncounted } = of(
      ['{date: 2026-03-01, sitting}', '{date: 2026-03-15, heard}'],
      '2026-03-16',
    );
    expect(prospects.filter(({ is }) => is.stage === 'nestling')).toHaveLength(1);
    expect(uncounted).toEqual(['A/1']);
  });
});

describe('eggs still to be laid', () => {
  const toCome = (log: readonly string[], on: string) =>
    of(log, on).prospects.filter((one) => !laid(one)).length;

  // The shipped profile of the zebra finch: four to six eggs, one a day.
  it('are expected up to one more than the species lays', () => {
    expect(
      toCome(['{date: 2026-03-01, clutch: 1, laid: 1}', '{date: 2026-03-02, laid: 1}'], '2026-03-02'),
    ).toBe(5);
  });

  it('are expected no more once none came for two days, or she sits on a usual clutch', () => {
    const two = ['{date: 2026-03-01, clutch: 1, laid: 1}', '{date: 2026-03-02, laid: 1}'];
    expect(toCome(two, '2026-03-05')).toBe(0);
    expect(
      toCome([...two, '{date: 2026-03-03, laid: 1}', '{date: 2026-03-04, laid: 1, sitting}'], '2026-03-04'),
    ).toBe(0);
  });
});

describe('their days begin', () => {
  it('with the sitting that was seen', () => {
    const { prospects } = prospectsOf(room({ A: layingPair('A', 5) }, '2026-03-10'));
    expect(started(prospects[4] as Prospect)).toEqual(['2026-03-05', '2026-03-05']);
  });

  // Common practice, as the agenda asks: eggs in store are set back after four or five days.
  it('once they are set back, for eggs in the cool store', () => {
    const { prospects } = of(
      ['{date: 2026-03-01, clutch: 1, laid: 1}', '{date: 2026-03-01, pulled: e1}'],
      '2026-03-02',
      'Gouldian finch',
    );
    expect(started(prospects.find(laid) as Prospect)).toEqual(['2026-03-05', '2026-03-06']);
  });

  it('where they lie, with the place they are at', () => {
    const { prospects } = of(
      [
        '{date: 2026-03-01, clutch: 1, laid: 3, sitting}',
        '{date: 2026-03-02, pulled: all}',
        '{date: 2026-03-03, set: {incubator: all}}',
      ],
      '2026-03-04',
    );
    expect(prospects.find(laid)).toMatchObject({ pair: null, housing: 'incubator' });
  });
});
