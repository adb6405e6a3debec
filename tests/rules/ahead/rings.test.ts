import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { formatDay } from '../../../src/days.ts';
import { type RingSize, type Rings, ringsAhead } from '../../../src/rules/ahead/rings.ts';
import { type Files, room } from '../../rooms.ts';
import { DRAWS, futures, layingPair } from './futures.ts';

/** The look of the day before tells that nobody hatched earlier. */
const NESTLINGS = ['{date: 2026-03-14, checked: {eggs: 4}}', '{date: 2026-03-15, hatched: 4}'];

function rings(files: Files, on: string, settings = ''): Rings {
  const stood = room({ 'nestlog.yaml': `room: x\n${settings}`, ...files }, on);
  return ringsAhead(stood, futures(stood), DRAWS);
}

/** Four chicks of zebra finches, hatched on 15 March: rings of 2.5–2.8 mm, at an age of 7–10 days (shipped profile). */
const four: Files = { A: layingPair('A', 4, NESTLINGS) };
const only = ({ sizes }: Rings): RingSize => {
  expect(sizes).toHaveLength(1);
  return sizes[0] as RingSize;
};

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

  it('are none where those in hand will do', () => {
    const size = only(rings(four, '2026-03-15', 'rings: [{mm: 2.7, in-hand: 9}]\n'));
    expect(size).toMatchObject({ mm: 2.7, order: 0, orderBy: null, late: null, spare: [] });
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
  });

  it('are needed sooner than an order of many weeks can come', () => {
    // Zebra finch: 11 days of sitting at the least and a look a day before day 7.
    const { sooner } = rings({ A: layingPair('A', 4) }, '2026-03-05', 'ring-lead: 40\n');
    expect(sooner?.species).toBe('zebra finch');
    expect(sooner?.days).toBeLessThan(20);
    expect(rings({ A: layingPair('A', 4) }, '2026-03-05', 'ring-lead: 10\n').sooner).toBeNull();
  });
});

describe('who is ringed', () => {
  it('is nobody in a room that rings no birds', () => {
    expect(rings(four, '2026-03-15', 'ringing: no\n')).toMatchObject({ wanted: false, sizes: [] });
  });

  it('is nobody of a clutch that skips it', () => {
    const skipped = { A: layingPair('A', 4, [...NESTLINGS, '{date: 2026-03-16, skip: ring}']) };
    expect(rings(skipped, '2026-03-17').sizes).toEqual([]);
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
    const { sizes, tooOld } = rings(four, '2026-03-27');
    expect(sizes).toEqual([]);
    expect(tooOld).toEqual(['A/1/c1', 'A/1/c2', 'A/1/c3', 'A/1/c4']);
  });
});

describe('the size', () => {
  const species = (name: string) => ({ A: layingPair('A', 4, NESTLINGS).replace('zebra finch', name) });

  it('is one in hand that the profile allows, the nearest to its middle', () => {
    const inHand = 'rings: [{mm: 2.5, in-hand: 1}, {mm: 2.7, in-hand: 1}, {mm: 3.0, in-hand: 9}]\n';
    expect(only(rings(four, '2026-03-15', inHand)).mm).toBe(2.7);
  });

  it('is the middle of the profile, to a tenth and rather too large, where none is in hand', () => {
    expect(only(rings(four, '2026-03-15')).mm).toBe(2.7);
    expect(only(rings(species('lavender waxbill'), '2026-03-15')).mm).toBe(2.2);
  });

  it('is one for species whose profiles both allow it', () => {
    const both = { ...four, B: layingPair('B', 4, NESTLINGS).replace('zebra finch', 'Gouldian finch') };
    const size = only(rings(both, '2026-03-15'));
    expect(size.mm).toBe(2.6);
    expect(size.species.map((one) => one.species).sort()).toEqual(['Gouldian finch', 'zebra finch']);
  });

  it('is one in hand that the profile allows, whatever size another species gets', () => {
    // Star finch 2.3–2.5 mm, yellow-winged pytilia 2.4–2.5 mm (shipped profiles).
    const both = {
      A: layingPair('A', 4, NESTLINGS).replace('zebra finch', 'star finch'),
      B: layingPair('B', 4, NESTLINGS).replace('zebra finch', 'yellow-winged pytilia'),
    };
    const { sizes, unused } = rings(both, '2026-03-15', 'rings: [{mm: 2.3, in-hand: 2}]\nring-lead: 2\n');
    expect(sizes.map(({ mm, inHand, species: [one] }) => [mm, inHand, one?.species])).toEqual([
      [2.3, 2, 'star finch'],
      [2.5, 0, 'yellow-winged pytilia'],
    ]);
    expect(unused).toEqual([]);
    // A drawer that is empty decides nothing.
    const none = rings(both, '2026-03-15', 'rings: [{mm: 2.3, in-hand: 0}]\nring-lead: 2\n');
    expect(none.sizes.map(({ mm }) => mm)).toEqual([2.5]);
  });

  it('is not known of a species without a profile', () => {
    expect(only(rings(species('lesser moonfinch'), '2026-03-15')).mm).toBeNull();
  });

  it('has rings of other sizes beside it that would fit and that nobody needs', () => {
    const inHand = 'rings: [{mm: 2.7, in-hand: 1}, {mm: 2.5, in-hand: 6}, {mm: 3.5, in-hand: 2}]\n';
    const { sizes, unused } = rings(four, '2026-03-15', inHand);
    expect(sizes[0]?.spare).toEqual([{ mm: 2.5, rings: 6, species: ['zebra finch'] }]);
    expect(unused).toEqual([
      { mm: 2.5, rings: 6 },
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
