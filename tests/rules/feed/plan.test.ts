import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { factsOf } from '../../../src/rules/feed/facts.ts';
import { nestFamilies } from '../../../src/rules/feed/families.ts';
import { type Food, foods } from '../../../src/rules/feed/foods.ts';
import {
  adultFoods,
  type Mouth,
  mouthFoods,
  parentFoods,
  rearingOf,
} from '../../../src/rules/feed/mouths.ts';
import { feedPlan } from '../../../src/rules/feed/plan.ts';
import { findSpecies } from '../../../src/species/find.ts';
import { dateOf } from '../../generators/lines.ts';
import { filesOf, plausible, wild } from '../../generators/rooms.ts';
import { day, type Files } from '../../rooms.ts';
import { HATCHED, pairRoom, place, plan, SITTING, sources } from './rooms.ts';

const waxbills = (lines: readonly string[], more: Files = {}) => pairRoom('lavender waxbill', lines, more);
const high = (files: Files, on: string, food: Food, days = 7) =>
  place(plan(files, on, days), 'flight 2').days.map((one) => one.foods[food].high);

describe('live food', () => {
  it('stands ready two days before the hatch window of 14 March, and not before', () => {
    const grams = high(waxbills(SITTING), '2026-03-10', 'live');
    // 10 and 11 March nothing, 12 and 13 a little for the parents, then as if all had hatched.
    expect(grams.slice(0, 2)).toEqual([0, 0]);
    expect(grams[2]).toBeGreaterThan(0);
    expect(grams[3]).toBe(grams[2]);
    expect(grams[4]).toBeGreaterThan(grams[3] as number);
  });

  it('fits the smallest chick of the flight where broods differ in age', () => {
    const nest = (id: string, from: string, lines: readonly string[]) =>
      pairRoom(
        'lavender waxbill',
        lines.map((line) => line.replaceAll('2026-03-', from)),
      )['LW-1']?.replaceAll('LW-1', id) ?? '';
    // The one hatched on 15 March, the other on 15 April.
    const files = (...ids: readonly ('LW-1' | 'LW-2')[]) =>
      Object.fromEntries(
        ids.map((id) => [
          id,
          nest(id, id === 'LW-1' ? '2026-03-' : '2026-04-', HATCHED).replace(
            /cock: A\nhen: B/,
            `cock: ${id}a\nhen: ${id}b`,
          ),
        ]),
      );
    const size = (...ids: readonly ('LW-1' | 'LW-2')[]) =>
      place(plan(files(...ids), '2026-04-15'), 'flight 2').days[0]?.size?.upTo;
    expect([size('LW-1'), size('LW-2'), size('LW-1', 'LW-2')]).toEqual([10, 4, 4]);
  });

  it('fits the hatchling from the first day, and grows with the chicks', () => {
    const sizes = place(plan(waxbills(HATCHED), '2026-03-15', 20), 'flight 2').days.map(
      ({ size }) => size?.upTo ?? 0,
    );
    expect(sizes[0]).toBe(4);
    expect(sizes.at(-1)).toBe(10);
    expect([...sizes].sort((a, b) => a - b)).toEqual(sizes);
  });

  it('ends when the last of the young may feed itself', () => {
    const grams = high(waxbills([...HATCHED, 'date: 2026-04-03, fledged: all']), '2026-04-20', 'live', 10);
    // 40 d after 15 March is 24 April.
    expect(grams.map((one) => one > 0)).toEqual([
      true,
      true,
      true,
      true,
      false,
      false,
      false,
      false,
      false,
      false,
    ]);
  });

  it('is not for species that need none, who get soft food instead', () => {
    const files = pairRoom('Bengalese finch', HATCHED);
    expect(high(files, '2026-03-20', 'live')).toEqual([0, 0, 0, 0, 0, 0, 0]);
    expect(Math.min(...high(files, '2026-03-20', 'egg'))).toBeGreaterThan(0);
    expect(plan(files, '2026-03-20').liveBySize).toEqual([]);
  });

  it('of all days adds up to what is to be bought, by size as well', () => {
    const planned = plan(waxbills(HATCHED), '2026-03-16', 14);
    const perDay = place(planned, 'flight 2').days.map(({ foods: each }) => each.live.likely);
    expect(planned.totals.live.likely).toBeCloseTo(
      perDay.reduce((a, b) => a + b, 0),
      9,
    );
    expect(planned.daily.map(({ foods: each }) => each.live.likely)).toEqual(perDay);
    const bySize = planned.liveBySize.map(({ grams }) => grams.high).reduce((a, b) => a + b, 0);
    expect(bySize).toBeCloseTo(planned.totals.live.high, 9);
    expect(planned.liveBySize.length).toBeGreaterThan(1);
  });
});

// The manual says so.
it('four lavender waxbills and their parents are reckoned to need 7 to 21 g of live food on the dearest days', () => {
  const days = place(plan(waxbills(HATCHED), '2026-03-15', 20), 'flight 2').days.map(
    ({ foods: each }) => each.live,
  );
  expect(Math.round(Math.max(...days.map(({ low }) => low)))).toBe(7);
  const most = Math.max(...days.map(({ high: top }) => top));
  expect(most).toBeGreaterThan(20.5);
  expect(most).toBeLessThan(22);
});

describe('who eats where', () => {
  it('every bird that is here eats once, in its own housing', () => {
    const files = waxbills(HATCHED, {
      'birds.yaml': `
        birds:
          - {id: OLD, species: star finch, log: [{date: 2026-01-01, arrived: cage 1}]}
          - {id: DEAD, species: star finch, log: [{date: 2026-01-01, arrived: cage 1}, {date: 2026-02-01, died: age}]}
      `,
    });
    const planned = plan(files, '2026-03-20');
    expect(planned.housings.map(({ housing }) => housing)).toEqual(['cage 1', 'flight 2']);
    expect(place(planned, 'cage 1').adults).toEqual([{ species: 'star finch', number: 1 }]);
    expect(place(planned, 'cage 1').families).toEqual([]);
    expect(place(planned, 'flight 2').adults).toEqual([{ species: 'lavender waxbill', number: 2 }]);
    expect(place(planned, 'flight 2').days[0]?.young).toEqual({ expected: 4, most: 4 });
  });

  it('one cock of two nests eats once', () => {
    const nest = (id: string, hen: string) =>
      `pair: ${id}\nspecies: lavender waxbill\ncock: A\nhen: ${hen}\nhousing: flight 2\nlog:\n  - {date: 2026-03-01, clutch: 1, laid: 1}\n`;
    const one =
      place(plan({ 'LW-1': nest('LW-1', 'B') }, '2026-03-02'), 'flight 2').days[0]?.foods.dry.likely ?? 0;
    const two = place(
      plan({ 'LW-1': nest('LW-1', 'B'), 'LW-2': nest('LW-2', 'C') }, '2026-03-02'),
      'flight 2',
    );
    expect(two.days[0]?.foods.dry.likely).toBeCloseTo(1.5 * one, 9);
  });

  it('parents that rear eat once, as parents, and their chicks by their own need', () => {
    const reads = sources(waxbills(HATCHED), '2026-03-20');
    const [family] = nestFamilies(reads);
    const [one] = place(feedPlan(reads, 1), 'flight 2').days;
    if (family === undefined || one === undefined) throw new Error('no plan');
    const on = day('2026-03-20');
    const parent = parentFoods(family.facts, rearingOf(family.mouths, on), (_food, grams) => grams);
    const chick = mouthFoods(family.mouths[0] as Mouth, on, (_food, grams) => grams);
    for (const food of foods) {
      expect(one.foods[food].likely, food).toBeCloseTo(2 * parent[food].likely + 4 * chick[food].likely, 9);
    }
  });

  it('a parent whose name nobody wrote eats as the other', () => {
    const both = waxbills(HATCHED);
    const unnamed = { 'LW-1': (both['LW-1'] ?? '').replace('cock: A\n', '') };
    expect(unnamed).not.toEqual(both);
    const eaten = (files: Files) => plan(files, '2026-03-20').totals;
    for (const food of foods) {
      expect(eaten(unnamed)[food].likely, food).toBeCloseTo(eaten(both)[food].likely, 9);
    }
  });

  it('a bird that rears nobody eats by its own species’ need, whatever was weighed for a brood before', () => {
    const files = {
      'birds.yaml':
        'birds:\n  - {id: OLD, species: star finch, log: [{date: 2026-01-01, arrived: cage 1}]}\n',
    };
    const star = adultFoods(factsOf()(findSpecies('star finch', [])));
    expect(place(plan(files, '2026-03-20'), 'cage 1').days[0]?.foods.dry.likely).toBeCloseTo(
      star.dry.likely,
      9,
    );
    const weighed = [
      ...HATCHED,
      'date: 2026-03-23, food: {live food: 2, egg food: 9}',
      'date: 2026-04-03, fledged: all',
      'date: 2026-04-20, independent: all',
      'date: 2026-04-21, moved: {all: cage 4}',
    ];
    const waxbill = adultFoods(factsOf()(findSpecies('lavender waxbill', [])));
    expect(place(plan(waxbills(weighed), '2026-05-01'), 'flight 2').days[0]?.foods.dry.likely).toBeCloseTo(
      2 * waxbill.dry.likely,
      9,
    );
  });

  it('housings are in natural order, those of whom nobody wrote where they live last', () => {
    const bird = (id: string, housing: string) =>
      `  - {id: ${id}, species: star finch, log: [{date: 2026-01-01, arrived: ${housing}}]}\n`;
    const files = {
      'birds.yaml': `birds:\n${bird('X', 'cage 10')}${bird('Y', 'cage 9')}`,
      P: 'pair: P\nspecies: zebra finch\ncock: A\nhen: B\nlog:\n  - {date: 2026-02-01, paired}\n',
      Q: 'pair: Q\nspecies: zebra finch\ncock: C\nhen: D\nhousing: aviary\nlog:\n  - {date: 2026-02-01, paired}\n',
    };
    expect(plan(files, '2026-03-01').housings.map(({ housing }) => housing)).toEqual([
      'aviary',
      'cage 9',
      'cage 10',
      null,
    ]);
  });

  it('the birds of a housing are told by species, the most first', () => {
    const bird = (id: string, species: string) =>
      `  - {id: ${id}, species: ${species}, log: [{date: 2026-01-01, arrived: aviary}]}\n`;
    const files = {
      'birds.yaml': `birds:\n${bird('X', 'star finch')}${bird('Y', 'zebra finch')}${bird('Z', 'zebra finch')}`,
    };
    expect(place(plan(files, '2026-03-01'), 'aviary').adults).toEqual([
      { species: 'zebra finch', number: 2 },
      { species: 'star finch', number: 1 },
    ]);
  });

  it('a nest is named among those that rear from the day on which it will, not before; who sits or waits eats all the same', () => {
    const nests = (on: string, days: number, lines = SITTING) =>
      place(plan(waxbills(lines), on, days), 'flight 2').families.map(({ pair }) => pair.id);
    // Live food stands ready from 12 March on.
    expect(nests('2026-03-10', 2)).toEqual([]);
    expect(nests('2026-03-10', 3)).toEqual(['LW-1']);
    const alone = {
      'X-1':
        'pair: X-1\nspecies: lavender waxbill\nhen: B\nhousing: cage 3\nlog:\n  - {date: 2026-02-01, paired}\n',
    };
    const waiting = place(plan(alone, '2026-03-01'), 'cage 3');
    const adult = adultFoods(factsOf()(findSpecies('lavender waxbill', []))).dry.likely;
    expect(waiting.families).toEqual([]);
    expect(waiting.days[0]?.foods.dry.likely).toBeCloseTo(2 * adult, 9);
  });

  it('a housing whose pair is dead is left out', () => {
    const dead =
      'birds:\n  - {id: A, log: [{date: 2026-02-25, died: age}]}\n  - {id: B, log: [{date: 2026-02-25, died: age}]}\n';
    expect(
      plan(waxbills(['date: 2026-02-20, paired'], { 'birds.yaml': dead }), '2026-03-01').housings,
    ).toEqual([]);
  });

  it('one cock that rears in two nests eats once there as well', () => {
    const nest = (id: string, cock: string) =>
      (waxbills(HATCHED)['LW-1'] ?? '')
        .replace('LW-1', id)
        .replace('cock: A', `cock: ${cock}`)
        .replace('hen: B', `hen: H-${id}`);
    const eaten = (cock: string) =>
      place(plan({ 'LW-1': nest('LW-1', 'A'), 'LW-2': nest('LW-2', cock) }, '2026-03-20', 1), 'flight 2')
        .days[0]?.foods.dry.likely ?? 0;
    const reads = sources(waxbills(HATCHED), '2026-03-20');
    const [family] = nestFamilies(reads);
    if (family === undefined) throw new Error('no family');
    const parent = parentFoods(
      family.facts,
      rearingOf(family.mouths, day('2026-03-20')),
      (_food, grams) => grams,
    );
    expect(eaten('C') - eaten('A')).toBeCloseTo(parent.dry.likely, 9);
  });

  it('live food before the hatch is eaten by nobody where no parent is left, and so of no size', () => {
    const dead = {
      'birds.yaml':
        'birds:\n  - {id: A, log: [{date: 2026-03-09, died: age}]}\n  - {id: B, log: [{date: 2026-03-09, died: age}]}\n',
    };
    const days = place(plan(waxbills(SITTING, dead), '2026-03-12', 3), 'flight 2').days;
    expect(days.map(({ size, foods: each }) => [size?.upTo ?? null, each.live.high > 0])).toEqual([
      [null, false],
      [null, false],
      [4, true],
    ]);
  });

  it('young fed by hand are named and left to the vet and the food’s maker', () => {
    const planned = plan(waxbills([...HATCHED, 'date: 2026-03-17, fostered: {hand: c1}']), '2026-03-18');
    expect(planned.byHand.map(({ id }) => id)).toEqual(['LW-1/1/c1']);
    expect(place(planned, 'flight 2').days[0]?.young.most).toBe(3);
    expect(planned.housings.map(({ housing }) => housing)).toEqual(['flight 2']);
    // For as long as their own kind is fed.
    const slow = pairRoom('cloud finch', [...HATCHED, 'date: 2026-03-17, fostered: {hand: c1}'], {
      'species/own.yaml': 'species: cloud finch\nindependence: 70-80\n',
    });
    expect(plan(slow, '2026-06-03').byHand.map(({ id }) => id)).toEqual(['LW-1/1/c1']);
    expect(plan(slow, '2026-06-04').byHand).toEqual([]);
  });

  it('pairs that are offered live food without anybody to rear are named', () => {
    const offered = ['date: 2026-02-20, paired, food: [dry seed, live food]'];
    expect(plan(waxbills(offered), '2026-03-01').offered).toEqual(['LW-1']);
    expect(plan(waxbills([...HATCHED, 'date: 2026-03-16, food: [live food]']), '2026-03-17').offered).toEqual(
      [],
    );
    // Nor those that are offered none, are parted, or will rear in these days.
    expect(plan(waxbills(['date: 2026-02-20, paired, food: [dry seed]']), '2026-03-01').offered).toEqual([]);
    expect(plan(waxbills([...offered, 'date: 2026-02-25, parted']), '2026-03-01').offered).toEqual([]);
    const sits = [...SITTING, 'date: 2026-03-05, food: [live food]'];
    expect(plan(waxbills(sits), '2026-03-06', 6).offered).toEqual(['LW-1']);
    expect(plan(waxbills(sits), '2026-03-06', 7).offered).toEqual([]);
  });
});

describe('batches', () => {
  it('are begun for days after the plan as well, and those that stand already are named', () => {
    const { batches } = plan(waxbills(HATCHED), '2026-03-20', 2);
    expect(batches.map((batch) => batch.for - day('2026-03-20'))).toEqual([0, 1, 2, 3]);
    expect(batches.map(({ soak }) => soak.day - day('2026-03-20'))).toEqual([-2, -1, 0, 1]);
  });

  // Common practice: a gram of dry seed makes 1.7 g drained and sprouted.
  it('are of the dry seed that makes what is likely to be eaten', () => {
    const planned = plan(waxbills(HATCHED), '2026-03-20', 2);
    const eaten = place(planned, 'flight 2').days.map(({ foods: each }) => each.sprouted.likely);
    expect(planned.batches.slice(0, 2).map(({ dry }) => dry * 1.7)).toEqual(
      eaten.map((grams) => expect.closeTo(grams, 9)),
    );
    expect(eaten[0]).toBeGreaterThan(1);
  });

  it('are none where nobody is reared', () => {
    expect(plan(waxbills(['date: 2026-02-20, paired']), '2026-03-01').batches).toEqual([]);
  });
});

describe('what is missing', () => {
  it('an empty room has an empty plan', () => {
    expect(plan({}, '2026-03-01')).toMatchObject({ housings: [], batches: [], liveBySize: [], assumed: [] });
  });

  it('a species without masses is taken for a small finch, by name', () => {
    const files = pairRoom('cloud finch', HATCHED, {
      'species/cloud-finch.yaml': 'species: cloud finch\nincubation: 12\nlive-food: required\n',
    });
    const planned = plan(files, '2026-03-20');
    expect(planned.assumed).toEqual([
      { species: 'cloud finch', what: ['adult-mass 12 g', 'fledging 18–22 d', 'independence 30–60 d'] },
    ]);
    expect(planned.totals.live.likely).toBeGreaterThan(0);
  });

  it('nothing is taken as usual of a species whose profile says it all, though no bird of it has a name', () => {
    expect(plan(waxbills(HATCHED), '2026-03-20').assumed).toEqual([]);
    const nameless =
      'pair: X\nspecies: zebra finch\nhousing: cage 3\nlog:\n  - {date: 2026-02-01, paired}\n  - {date: 2026-02-10, clutch: 1, laid: 1}\n';
    expect(plan({ X: nameless }, '2026-02-20', 9).assumed).toEqual([]);
  });

  it('a species that nobody knows is planned without live food, and that is said', () => {
    const planned = plan(pairRoom('who knows', HATCHED), '2026-03-20');
    expect(planned.assumed[0]?.what).toContain('live-food unknown, so none is planned');
    expect(planned.totals.live.high).toBe(0);
    expect(planned.totals.egg.likely).toBeGreaterThan(0);
  });
});

// Common practice: a zebra finch of 12 to 13 g eats about 3 to 4 g of seed a day.
it('a zebra finch that rears nobody eats about as much seed as keepers know', () => {
  const pair = place(plan(pairRoom('zebra finch', ['date: 2026-02-20, paired']), '2026-03-01'), 'flight 2');
  const { low, high: most } = pair.days[0]?.foods.dry ?? { low: 0, high: 0 };
  expect(low / 2).toBeLessThan(3);
  expect(most / 2).toBeGreaterThan(3);
  expect(most / 2).toBeLessThan(6);
});

it.each([
  ['plausible', plausible],
  ['wild', wild],
] as const)(
  'in any %s room every amount is a number, from the least to the most',
  (_name, rooms) => {
    fc.assert(
      fc.property(rooms, fc.integer({ min: 20, max: 260 }), (logs, on) => {
        const planned = plan(filesOf(logs), dateOf(on));
        const amounts = [
          planned.totals,
          ...planned.housings.flatMap(({ days }) => days.map((one) => one.foods)),
        ];
        for (const each of amounts) {
          for (const food of foods) {
            const { low, likely, high: most } = each[food];
            expect(low).toBeGreaterThanOrEqual(0);
            expect(likely).toBeGreaterThanOrEqual(low * (1 - 1e-9));
            expect(most).toBeGreaterThanOrEqual(likely * (1 - 1e-9));
            expect(most).toBeLessThan(10_000);
          }
        }
        for (const { days } of planned.housings) {
          for (const one of days) expect(one.foods.live.high > 0).toBe(one.size !== null);
        }
      }),
      { numRuns: 40 },
    );
  },
  30_000,
);
