import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { formatDay } from '../../../src/days.ts';
import { ringsAhead } from '../../../src/rules/ahead/rings.ts';
import { type Files, room } from '../../rooms.ts';
import { four, NESTLINGS, only, rings } from './drawer.ts';
import { DRAWS, futures, layingPair } from './futures.ts';

describe('rings to order', () => {
  it('are those needed in nine futures of ten, less those in hand', () => {
    const size = only(rings(four, '2026-03-15', 'rings: [{mm: 2.6, in-hand: 1}]\nring-lead: 2\n'));
    expect(size).toMatchObject({ mm: 2.6, chicks: 4, inHand: 1, order: 3, late: null });
    expect(size.needed.high).toBe(4);
  });

  it('are to be ordered so long before they are needed as an order takes', () => {
    // Looked at from a day before the ring age: 15 March + 7 − 1. Those in hand reach for the first.
    const early = only(rings(four, '2026-03-15', 'ring-lead: 2\n'));
    expect([early.first, early.orderBy].map((on) => formatDay(on ?? 0))).toEqual([
      '2026-03-21',
      '2026-03-19',
    ]);
    expect(only(rings(four, '2026-03-15', 'ring-lead: 5\n')).orderBy).toBe((early.orderBy ?? 0) - 3);
  });

  it('go on in the order of the days, whichever nest is written first: those in hand serve the elder brood', () => {
    // B hatched on 15 March, A on the 17th. Four in hand reach for B; A is first looked at for rings on 17 March + 6.
    const files = {
      A: layingPair('A', 4, ['{date: 2026-03-16, checked: {eggs: 4}}', '{date: 2026-03-17, hatched: 4}']),
      B: layingPair('B', 4, NESTLINGS),
    };
    const size = only(rings(files, '2026-03-17', 'rings: [{mm: 2.7, in-hand: 4}]\nring-lead: 2\n'));
    expect([size.first, size.orderBy].map((on) => formatDay(on ?? 0))).toEqual(['2026-03-21', '2026-03-21']);
    expect(size).toMatchObject({ inHand: 4, order: 4 });
  });

  it('are needed from the day that one future in ten has reached', () => {
    const stood = room({ A: layingPair('A', 4) }, '2026-03-06');
    const courses = futures(stood);
    const [size] = ringsAhead(stood, courses, DRAWS).sizes;
    const firsts = Array.from({ length: DRAWS }, (_, draw) =>
      Math.min(...courses.map(({ ringable }) => ringable[draw] as number)),
    );
    const share = (by: number) => firsts.filter((hatched) => hatched + 6 <= by).length / DRAWS;
    const first = size?.first ?? 0;
    expect(share(first)).toBeGreaterThanOrEqual(0.1);
    expect(share(first - 1)).toBeLessThan(0.1);
  });

  it('are not late on the last day to order', () => {
    // Needed from 21 March on: with six days of delivery they are to be ordered on the 15th.
    expect(only(rings(four, '2026-03-15', 'ring-lead: 6\n')).late).toBeNull();
    expect(only(rings(four, '2026-03-15', 'ring-lead: 7\n')).late).not.toBeNull();
  });

  it('that come on the last day of the ring age still fit', () => {
    // Ten days old at the most: hatched on 15 March, the 25th is the last day.
    expect(only(rings(four, '2026-03-15', 'ring-lead: 10\n')).late?.tooLate.high).toBe(0);
    expect(only(rings(four, '2026-03-15', 'ring-lead: 11\n')).late?.tooLate.high).toBe(4);
  });

  it('are counted for eggs that are about to hatch: nothing unhatched is too old for one', () => {
    const { sizes, tooOld } = rings({ A: layingPair('A', 4) }, '2026-03-16');
    expect(sizes.map(({ mm, chicks }) => [mm, chicks])).toEqual([[2.7, 0]]);
    expect(sizes[0]?.needed.mean).toBeGreaterThan(1);
    expect(tooOld).toEqual([]);
  });

  it('are counted for eggs too, and the chicks of today apart', () => {
    const mixed = {
      A: layingPair('A', 4, ['{date: 2026-03-14, checked: {eggs: 4}}', '{date: 2026-03-15, hatched: 3}']),
    };
    expect(only(rings(mixed, '2026-03-15')).chicks).toBe(3);
  });

  it('are none where those in hand will do', () => {
    const size = only(rings(four, '2026-03-15', 'rings: [{mm: 2.7, in-hand: 9}]\n'));
    expect(size).toMatchObject({ mm: 2.7, order: 0, orderBy: null, late: null, spare: [] });
    const others = rings(four, '2026-03-15', 'rings: [{mm: 2.7, in-hand: 9}, {mm: 2.5, in-hand: 6}]\n');
    expect(only(others).spare).toEqual([]);
  });

  it('that come late are said to, and are not ordered for chicks that will be too big', () => {
    const size = only(rings(four, '2026-03-15', 'ring-lead: 21\n'));
    expect(size.order).toBe(0);
    expect(formatDay(size.late?.arrives ?? 0)).toBe('2026-04-05');
    expect(size.late?.tooLate.high).toBe(4);
  });

  it('that come late still serve eggs that hatch later', () => {
    const both = {
      ...four,
      B: layingPair('B', 5).replaceAll('2026-03-0', '2026-03-1'),
    };
    const size = only(rings(both, '2026-03-15', 'ring-lead: 14\n'));
    expect(size.late?.tooLate.high).toBe(4);
    expect(size.order).toBeGreaterThan(0);
    expect(size.order).toBeLessThan(size.needed.high);
  });

  it('are reckoned with three weeks, and it is said, where the room does not tell how long an order takes', () => {
    expect(rings(four, '2026-03-15').lead).toEqual({ days: 21, assumed: true });
    expect(rings(four, '2026-03-15', 'ring-lead: 9\n').lead).toEqual({ days: 9, assumed: false });
  });

  it('are needed sooner than an order of many weeks can come', () => {
    // Zebra finch: 12 days of sitting at the least and a look a day before day 7 (shipped profile).
    const sooner = (lead: number) =>
      rings({ A: layingPair('A', 4) }, '2026-03-05', `ring-lead: ${lead}\n`).sooner;
    expect(sooner(40)).toEqual({ species: 'zebra finch', days: 18 });
    expect(sooner(19)).toEqual({ species: 'zebra finch', days: 18 });
    expect(sooner(18)).toBeNull();
  });

  it('are asked for by the species that needs them soonest, of the pairs that are together', () => {
    // Lavender waxbill: 11 days and a look on day 6 (shipped profile); of the moonfinch nothing is known.
    const kept = (id: string, species: string, log = '{date: 2026-01-01, paired}') => ({
      [id]: `\npair: ${id}\nspecies: ${species}\nlog:\n  - ${log}\n`,
    });
    const files = {
      ...kept('A', 'zebra finch'),
      ...kept('B', 'lavender waxbill'),
      ...kept('C', 'lesser moonfinch'),
    };
    const soonest = (more: Files) => rings({ ...files, ...more }, '2026-03-05', 'ring-lead: 40\n').sooner;
    expect(soonest({})).toEqual({ species: 'lavender waxbill', days: 17 });
    const parted = kept('B', 'lavender waxbill', '{date: 2026-01-01, parted}');
    expect(soonest(parted)?.species).toBe('zebra finch');
    const unknown = rings(kept('C', 'lesser moonfinch'), '2026-03-05', 'ring-lead: 40\n');
    expect(unknown.sooner).toBeNull();
  });
});

describe('who is ringed', () => {
  it('is nobody in a room that rings no birds', () => {
    const inHand = 'rings: [{mm: 2.7, in-hand: 1}]\n';
    expect(rings(four, '2026-03-30', `ringing: no\n${inHand}`)).toMatchObject({
      wanted: false,
      sizes: [],
      unused: [],
      tooOld: [],
    });
    expect(rings(four, '2026-03-15', inHand)).toMatchObject({ wanted: true, unused: [], tooOld: [] });
  });

  it('is nobody of a clutch that skips it', () => {
    const skipped = { A: layingPair('A', 4, [...NESTLINGS, '{date: 2026-03-16, skip: ring}']) };
    expect(rings(skipped, '2026-03-17').sizes).toEqual([]);
    const other = { A: layingPair('A', 4, [...NESTLINGS, '{date: 2026-03-16, skip: live-food}']) };
    expect(rings(other, '2026-03-17').sizes).toHaveLength(1);
  });

  it('is nobody in a nest that nobody may look into', () => {
    const shy = layingPair('A', 4, NESTLINGS).replace('housing:', 'nest-looks: never\nhousing:');
    expect(rings({ A: shy }, '2026-03-15').sizes).toEqual([]);
  });

  it('is nobody who wears one', () => {
    const ringed = {
      A: layingPair('A', 4, [...NESTLINGS, '{date: 2026-03-22, ringed: {c1: R1, c2: R2, c3: R3}}']),
    };
    expect(only(rings(ringed, '2026-03-22'))).toMatchObject({ chicks: 1 });
  });

  it('is nobody too old for a closed ring; they are named', () => {
    const { sizes, tooOld } = rings(four, '2026-03-26');
    expect(sizes).toEqual([]);
    expect(tooOld).toEqual(['A/1/c1', 'A/1/c2', 'A/1/c3', 'A/1/c4']);
    // Ten days old, the last on which it goes on (shipped profile).
    expect(rings(four, '2026-03-25')).toMatchObject({ tooOld: [], sizes: [{ chicks: 4 }] });
  });

  it('is nobody who has left the nest without one; nor is that said again', () => {
    const out = { A: layingPair('A', 4, [...NESTLINGS, '{date: 2026-04-05, fledged: 4}']) };
    expect(rings(out, '2026-04-05')).toMatchObject({ sizes: [], tooOld: [] });
  });

  it('is whoever is fed by hand or hatches in the incubator', () => {
    const byHand = layingPair('A', 4, [...NESTLINGS, '{date: 2026-03-16, fostered: {hand: all}}']);
    expect(only(rings({ A: byHand }, '2026-03-16')).chicks).toBe(4);
    const set = layingPair('A', 4, ['{date: 2026-03-06, set: {incubator: all}}']);
    expect(only(rings({ A: set }, '2026-03-07')).needed.mean).toBeGreaterThan(0.5);
  });
});

describe('a size', () => {
  it('of which others will be left over serves a species whose profile allows them too', () => {
    // Star finch 2.3–2.5 mm, zebra finch 2.5–2.8 mm (shipped profiles): of ten of 2.5 the star finches need four.
    const files = {
      A: layingPair('A', 4, NESTLINGS),
      B: layingPair('B', 4, NESTLINGS).replace('zebra', 'star'),
    };
    const spare = (inHand: number) =>
      rings(files, '2026-03-15', `rings: [{mm: 2.7, in-hand: 1}, {mm: 2.5, in-hand: ${inHand}}]\n`).sizes.map(
        (size) => [size.mm, size.spare],
      );
    expect(spare(10)).toEqual([
      [2.5, []],
      [2.7, [{ mm: 2.5, rings: 6, species: ['zebra finch'] }]],
    ]);
    expect(spare(4)).toEqual([
      [2.5, []],
      [2.7, []],
    ]);
  });

  it('has rings of other sizes beside it that would fit and that nobody needs', () => {
    const inHand =
      'rings: [{mm: 3.5, in-hand: 2}, {mm: 2.7, in-hand: 1}, {mm: 2.8, in-hand: 3}, {mm: 2.5, in-hand: 6}]\n';
    const { sizes, unused } = rings(four, '2026-03-15', inHand);
    expect(sizes[0]?.spare).toEqual([
      { mm: 2.5, rings: 6, species: ['zebra finch'] },
      { mm: 2.8, rings: 3, species: ['zebra finch'] },
    ]);
    expect(unused).toEqual([
      { mm: 2.5, rings: 6 },
      { mm: 2.8, rings: 3 },
      { mm: 3.5, rings: 2 },
    ]);
  });

  it('is counted once where the settings list it twice', () => {
    expect(
      only(rings(four, '2026-03-15', 'rings: [{mm: 2.7, in-hand: 1}, {mm: 2.7, in-hand: 2}]\n')).inHand,
    ).toBe(3);
  });
});

it('more chicks never need fewer rings, nor later ones', () => {
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 4 }), fc.integer({ min: 0, max: 4 }), (chicks, inHand) => {
      const settings = `rings: [{mm: 2.6, in-hand: ${inHand}}]\nring-lead: 3\n`;
      const of = (hatched: number) =>
        only(
          rings(
            {
              A: layingPair('A', 6, [
                `{date: 2026-03-17, hatched: ${hatched}}`,
                `{date: 2026-03-18, lost: {clear: ${6 - hatched}}}`,
              ]),
            },
            '2026-03-18',
            settings,
          ),
        );
      const [few, more] = [of(chicks), of(chicks + 1)];
      expect(more.needed.mean).toBeGreaterThanOrEqual(few.needed.mean);
      expect(more.order).toBeGreaterThanOrEqual(few.order);
    }),
    { numRuns: 12 },
  );
});
