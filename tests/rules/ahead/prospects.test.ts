import { describe, expect, it } from 'vitest';
import { formatDay } from '../../../src/days.ts';
import { type Prospect, prospectsOf } from '../../../src/rules/ahead/prospects.ts';
import { room } from '../../rooms.ts';
import { layingPair } from './futures.ts';

const of = (log: readonly string[], on: string, species = 'zebra finch', own = '') =>
  prospectsOf(
    room(
      {
        ...(own === '' ? {} : { 'species/own.yaml': `species: ${species}\n${own}\n` }),
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

  it('count as past their time neither eggs that the lamp ruled out, nor those that came to an end, nor younger ones', () => {
    const late = (more: readonly string[], on = '2026-03-01') =>
      of(['{date: 2026-01-01, clutch: 1, laid: 4, sitting}', ...more], on).pastTheirTime;
    expect(late(['{date: 2026-01-10, candled: {clear: [e1, e2]}}'])).toEqual([{ clutch: 'A/1', eggs: 2 }]);
    expect(late(['{date: 2026-01-10, lost: {broken: e1}}', '{date: 2026-01-15, hatched: [e2, e3]}'])).toEqual(
      [{ clutch: 'A/1', eggs: 1 }],
    );
    expect(late(['{date: 2026-01-20, lost: {clear: all}}'])).toEqual([]);
    expect(late([], '2026-01-20')).toEqual([]);
  });

  it('are nobody who is older than any that is still fed, written of or not', () => {
    const log = ['{date: 2026-01-01, clutch: 1, laid: 4, sitting}', '{date: 2026-01-15, hatched: 4}'];
    // Feeds itself at 42 days at the latest (shipped profile): 26 February.
    expect(of(log, '2026-02-26').prospects).toHaveLength(4);
    expect(of(log, '2026-02-27').prospects).toEqual([]);
  });

  it('are with the pair that sits on them or feeds them, and with its clutch', () => {
    const files = {
      A: layingPair('A', 4, [
        '{date: 2026-03-06, fostered: {B: [e1, e2]}}',
        '{date: 2026-03-07, set: {incubator: e3}}',
      ]),
      B: layingPair('B', 1).replaceAll('2026-03-01', '2026-03-02'),
    };
    const where = (on: string, more = {}) =>
      prospectsOf(room({ ...files, ...more }, on))
        .prospects.filter((one) => one.name.startsWith('A/'))
        .map(({ name, pair, home }) => [name, pair?.id ?? null, home?.pair.id ?? null, home?.number ?? null]);
    expect(where('2026-03-08')).toEqual([
      ['A/1/e1', 'B', 'B', 1],
      ['A/1/e2', 'B', 'B', 1],
      ['A/1/e3', null, null, null],
      ['A/1/e4', 'A', 'A', 1],
    ]);
    const hatched = { B: `${files.B}    - {date: 2026-03-18, hatched: A/1/e1}\n` };
    expect(where('2026-03-18', hatched)).toContainEqual(['A/1/c1', 'B', 'B', 1]);
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

  it('are said to be uncounted though the other eggs were counted, once young are heard', () => {
    const { prospects, uncounted } = of(
      ['{date: 2026-03-01, clutch: 1, laid: 4, sitting}', '{date: 2026-03-15, heard}'],
      '2026-03-16',
    );
    expect(prospects.map(({ is }) => is.stage)).toEqual(['egg', 'egg', 'egg', 'nestling']);
    expect(uncounted).toEqual(['A/1']);
  });

  it('are nobody of a nest that nobody looked into long ago, and nothing is said of it', () => {
    expect(of(['{date: 2025-03-01, sitting}'], '2026-03-10')).toMatchObject({ prospects: [], uncounted: [] });
  });

  it('are those that were seen, once one of a clutch that nobody counted came to an end', () => {
    const { prospects, uncounted } = of(
      ['{date: 2026-03-01, clutch: 1, laid: 3+}', '{date: 2026-03-02, lost: {broken: e1}}'],
      '2026-03-02',
    );
    expect(prospects.map(({ name }) => name)).toEqual(['A/1/e2', 'A/1/e3']);
    expect(uncounted).toEqual([]);
  });

  it('are as old as the one that stands for the clutch nobody looked at', () => {
    const { prospects } = of(['{date: 2026-03-01, sitting}'], '2026-03-10');
    expect(new Set(prospects.map((one) => started(one).join())).size).toBe(1);
    expect(prospects.map(({ is }) => is.stage === 'egg' && is.toCome)).toEqual([null, 2, 3, 4, 5, 6, 7]);
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
    expect(toCome(two, '2026-03-04')).toBe(5);
    expect(toCome(two, '2026-03-05')).toBe(0);
    const four = (sitting: string) => [
      ...two,
      '{date: 2026-03-03, laid: 1}',
      `{date: 2026-03-04, laid: 1${sitting}}`,
    ];
    expect(toCome(four(', sitting'), '2026-03-04')).toBe(0);
    expect(toCome(four(''), '2026-03-04')).toBe(3);
  });

  it('are expected of one that sits from her second egg on', () => {
    const sits = ['{date: 2026-03-01, clutch: 1, laid: 1}', '{date: 2026-03-02, laid: 1, sitting}'];
    expect(toCome(sits, '2026-03-02')).toBe(5);
  });

  it('are expected no more of a clutch that came to an end', () => {
    const two = ['{date: 2026-03-01, clutch: 1, laid: 1}', '{date: 2026-03-02, laid: 1}'];
    expect(toCome([...two, '{date: 2026-03-03, lost: {broken: all}}'], '2026-03-03')).toBe(0);
  });

  it('are expected at the days on which the species lays, and their days begin no sooner', () => {
    const eggs = (own: string, on: string, sitting = '') =>
      of(
        ['{date: 2026-03-01, clutch: 1, laid: 1}', `{date: 2026-03-03, laid: 1${sitting}}`],
        on,
        'moonfinch',
        `clutch: 4-5\nlaying-interval: 2\nincubation: 12-14\n${own}`,
      ).prospects.map((one) => [one.name, ...started(one)]);
    // Two have come; the fourth follows on the 7th, the fifth on the 9th. From the last egg on: with the 4th or 5th.
    expect(eggs('sitting-from: last', '2026-03-03')).toEqual([
      ['A/1/e1', '2026-03-07', '2026-03-09'],
      ['A/1/e2', '2026-03-07', '2026-03-09'],
      ['A/1/e3', '2026-03-07', '2026-03-09'],
      ['A/1/e4', '2026-03-07', '2026-03-09'],
      ['A/1/e5', '2026-03-09', '2026-03-09'],
      ['A/1/e6', '2026-03-11', '2026-03-11'],
    ]);
    expect(eggs('sitting-from: 3-4', '2026-03-03').slice(0, 4)).toEqual([
      ['A/1/e1', '2026-03-05', '2026-03-07'],
      ['A/1/e2', '2026-03-05', '2026-03-07'],
      ['A/1/e3', '2026-03-05', '2026-03-07'],
      ['A/1/e4', '2026-03-07', '2026-03-07'],
    ]);
    // She sits already: each is sat on from the day on which it comes.
    expect(eggs('sitting-from: last', '2026-03-03', ', sitting').slice(2)).toEqual([
      ['A/1/e3', '2026-03-05', '2026-03-05'],
      ['A/1/e4', '2026-03-07', '2026-03-07'],
      ['A/1/e5', '2026-03-09', '2026-03-09'],
      ['A/1/e6', '2026-03-11', '2026-03-11'],
    ]);
    // A day later than usual the third has still to come, from today on.
    expect(eggs('sitting-from: last', '2026-03-06')[2]).toEqual(['A/1/e3', '2026-03-07', '2026-03-09']);
  });

  it('follow the last that was laid, of however many; the hen sits with the last where nobody knows of her kind', () => {
    const three = [
      '{date: 2026-03-01, clutch: 1, laid: 1}',
      '{date: 2026-03-03, laid: 1}',
      '{date: 2026-03-05, laid: 1}',
    ];
    const eggs = (own: string) =>
      of(three, '2026-03-05', 'moonfinch', own).prospects.map((one) => [one.name, ...started(one)]);
    expect(eggs('clutch: 4-5\nlaying-interval: 2\nsitting-from: last').slice(2, 4)).toEqual([
      ['A/1/e3', '2026-03-07', '2026-03-09'],
      ['A/1/e4', '2026-03-07', '2026-03-09'],
    ]);
    expect(eggs('clutch: 4-5\nlaying-interval: 2').slice(2, 4)).toEqual([
      ['A/1/e3', '2026-03-07', '2026-03-09'],
      ['A/1/e4', '2026-03-07', '2026-03-09'],
    ]);
    // Three to six eggs, one a day, as small birds lay (common practice).
    expect(eggs('').slice(2, 4)).toEqual([
      ['A/1/e3', '2026-03-05', '2026-03-08'],
      ['A/1/e4', '2026-03-06', '2026-03-08'],
    ]);
  });

  it('are nobody’s whom the lamp has shown fertile or a look has seen', () => {
    const { prospects } = of(['{date: 2026-03-01, clutch: 1, laid: 1}'], '2026-03-01');
    expect(prospects.at(-1)?.is).toMatchObject({ fertile: false, seen: Number.NEGATIVE_INFINITY, toCome: 7 });
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

  it('earlier by the days that they had been sat on before they went into the store', () => {
    const stored = (on: string) => {
      const { prospects } = of(
        ['{date: 2026-03-01, clutch: 1, laid: 1, sitting}', '{date: 2026-03-04, pulled: e1}'],
        on,
        'Gouldian finch',
      );
      return started(prospects.find(laid) as Prospect);
    };
    // Three days behind it; set back after four or five days in store, on 8 or 9 March, or today where that is past.
    expect(stored('2026-03-05')).toEqual(['2026-03-05', '2026-03-06']);
    expect(stored('2026-03-12')).toEqual(['2026-03-09', '2026-03-09']);
  });

  it('from the store also where they came there out of the incubator', () => {
    const { prospects } = of(
      [
        '{date: 2026-03-01, clutch: 1, laid: 1}',
        '{date: 2026-03-02, set: {incubator: e1}}',
        '{date: 2026-03-05, pulled: e1}',
      ],
      '2026-03-06',
      'Gouldian finch',
    );
    // Three days behind it; set back after four or five days in store, on 9 or 10 March.
    expect(started(prospects.find(laid) as Prospect)).toEqual(['2026-03-06', '2026-03-07']);
  });

  it('in the incubator with the day on which they were set', () => {
    const { prospects } = of(
      [
        '{date: 2026-03-01, clutch: 1, laid: 1}',
        '{date: 2026-03-01, pulled: e1}',
        '{date: 2026-03-03, set: {incubator: e1}}',
      ],
      '2026-03-04',
      'Gouldian finch',
    );
    expect(started(prospects.find(laid) as Prospect)).toEqual(['2026-03-03', '2026-03-03']);
  });
});
