import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { groupings, whole } from '../../../src/rules/season/groupings.ts';
import { measureNames } from '../../../src/rules/season/measures/index.ts';
import { emptyRates, ratesOf } from '../../../src/rules/season/rates.ts';
import { day } from '../../rooms.ts';
import { anyRoom, book, clutches, FOUR, LATER, pair, short, waxbills } from './rooms.ts';

const settings = { seasonStart: { month: 1, date: 1 }, log: [] };

describe('rates', () => {
  it('of nothing are counts of nothing', () => {
    for (const name of measureNames) {
      expect(emptyRates()[name]).toEqual({
        k: 0,
        n: 0,
        rate: null,
        low: null,
        high: null,
        designEffect: null,
        open: 0,
        outside: 0,
        clusters: [],
      });
    }
    expect(ratesOf({ clutches: [], day: day(LATER), settings }, whole).size).toBe(0);
  });

  it('are numbers wherever there is an n, inside their intervals, and null where there is none', () => {
    fc.assert(
      fc.property(anyRoom, (files) => {
        for (const rates of ratesOf(
          { clutches: clutches(files, LATER), day: day(LATER), settings },
          groupings.pair,
        ).values()) {
          for (const name of measureNames) {
            const { k, n, rate, low, high, designEffect, open, outside } = rates[name];
            expect(k).toBeLessThanOrEqual(n);
            expect(Math.min(k, open, outside)).toBeGreaterThanOrEqual(0);
            if (rate === null || low === null || high === null)
              expect([n, rate, low, high, designEffect]).toEqual([0, null, null, null, null]);
            else {
              expect(rate).toBeCloseTo(k / n, 12);
              expect(low).toBeLessThanOrEqual(rate + 1e-12);
              expect(high).toBeGreaterThanOrEqual(rate - 1e-12);
              expect(designEffect).toBeGreaterThanOrEqual(1);
            }
          }
        }
      }),
      { numRuns: 60 },
    );
  });

  it('of the whole are the sums of those of species and of years', () => {
    fc.assert(
      fc.property(anyRoom, (files) => {
        const whole = book(files, LATER);
        for (const name of measureNames) {
          const sums = whole.bySpecies.reduce((sum, { rates }) => sum + rates[name].n, 0);
          expect(sums).toBe(whole.totals.rates[name].n);
        }
      }),
      { numRuns: 30 },
    );
  });

  it('take those who were in one nest together, whoever laid them', () => {
    const files = {
      'LW-1': waxbills(
        `${FOUR}\n date: 2026-03-06, fostered: {LW-2: [e1, e2]}\n date: 2026-03-16, hatched: [e3, e4]\n date: 2026-03-20, died: all`,
      ),
      'LW-2': pair(
        'LW-2',
        'lavender waxbill',
        `${FOUR}\n date: 2026-03-16, hatched: [e1, e2, LW-1/1/e1]\n date: 2026-03-25, lost: all`,
      ),
    };
    const blocks = book(files, '2026-07-01').byPair;
    expect(blocks.map((block) => `${block.name} ${short(block, 'hatchOfLaid')}`)).toEqual([
      'LW-1 2/2',
      'LW-2 3/6',
    ]);
    expect(blocks[1]?.rates.hatchOfLaid.clusters).toEqual([{ k: 3, n: 6 }]);
    // Where nobody is credited, a clutch is what one hen laid.
    expect(book(files, '2026-07-01').totals.rates.hatchOfLaid.clusters).toEqual([
      { k: 3, n: 4 },
      { k: 2, n: 4 },
    ]);
  });

  it('credit laying to who laid, hatching to who sat, fledging and independence each to who fed then', () => {
    const files = {
      'LW-1': waxbills(
        [
          FOUR,
          'date: 2026-03-06, fostered: {LW-2: e1}',
          'date: 2026-03-16, hatched: [e2, e3, e4]',
          'date: 2026-03-18, fostered: {LW-2: c1}',
          'date: 2026-04-03, fledged: [c2, c3]',
          'date: 2026-04-05, fostered: {LW-2: c2}',
          'date: 2026-04-22, independent: c3',
        ].join('\n '),
      ),
      'LW-2': pair(
        'LW-2',
        'lavender waxbill',
        [
          FOUR,
          'date: 2026-03-16, hatched: [LW-1/1/e1]',
          'date: 2026-03-25, lost: {clear: [e1, e2, e3, e4]}',
          'date: 2026-04-03, fledged: [LW-1/1/c1, LW-1/1/c4]',
          'date: 2026-04-22, independent: [LW-1/1/c1, LW-1/1/c2, LW-1/1/c4]',
        ].join('\n '),
      ),
    };
    const blocks = book(files, '2026-07-01').byPair;
    const of = (name: (typeof measureNames)[number]) => blocks.map((block) => short(block, name));
    expect(of('fertility')).toEqual(['4/4', '0/4']);
    expect(of('hatchOfLaid')).toEqual(['3/3', '1/5']);
    expect(of('fledge')).toEqual(['2/2', '2/2']);
    expect(of('independence')).toEqual(['1/1', '3/3']);
    expect(of('overall')).toEqual(['4/4', '0/4']);
  });

  it('take the nests of one group apart, and what of a clutch lies in the incubator apart from what is sat on', () => {
    const food = 'date: 2026-02-01, food: dry seed';
    const nests = {
      'LW-1': waxbills(
        `${food}\n${FOUR}\n date: 2026-03-06, fostered: {LW-2: e1}, set: {incubator: e2}\n date: 2026-03-16, hatched: [e3, e4]\n date: 2026-03-25, lost: {clear: e2}`,
      ),
      'LW-2': pair(
        'LW-2',
        'lavender waxbill',
        `${food}\n${FOUR}\n date: 2026-03-16, hatched: LW-1/1/e1\n date: 2026-03-25, lost: {clear: [e1, e2, e3, e4]}`,
      ),
    };
    const blocks = book(nests, '2026-07-01', 'all', 'food').by?.blocks;
    expect(blocks?.map(({ name, rates }) => [name, rates.hatchOfLaid.clusters])).toEqual([
      [
        'dry seed',
        [
          { k: 1, n: 5 },
          { k: 2, n: 2 },
        ],
      ],
      [null, [{ k: 0, n: 1 }]],
    ]);
  });

  it('leave a brood out of a pair’s fledging where it was first seen as it flew', () => {
    const [seen] = book({ 'LW-1': waxbills('date: 2026-04-03, fledged: 2') }, '2026-07-01').byPair;
    expect(seen && short(seen, 'fledge')).toBe('0/0 out 2');
  });

  it('leave a nest out of the hatch rate where it held eggs that nobody counted, whichever pair laid those', () => {
    const nest = (guests: string) => ({
      'LW-1': waxbills(`${FOUR}\n date: 2026-03-16, hatched: all`),
      'LW-2': pair('LW-2', 'lavender waxbill', `${guests}\n date: 2026-03-06, fostered: {LW-1: e1}`),
    });
    const rate = (guests: string) =>
      book(nest(guests), '2026-07-01')
        .byPair.filter(({ name }) => name === 'LW-1')
        .map(({ rates: { hatchOfLaid } }) => [hatchOfLaid.n, hatchOfLaid.outside]);
    expect(rate(FOUR)).toEqual([[5, 0]]);
    expect(rate('date: 2026-03-01, laid: 3+')).toEqual([[0, 5]]);
  });
});
