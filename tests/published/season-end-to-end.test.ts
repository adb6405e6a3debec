/**
 * A season whose every fate is known, written as journals; every figure of it is worked out by hand below and compared
 * with what `nestlog season --json` gives. Intervals are Wilson's (Newcombe 1998), recomputed here from k and n.
 *
 * Lavender waxbills: candling from day 5 of sitting, independence until day 40.
 *
 * LW-1, clutch 1. Five eggs; e5, laid a day after sitting began, reaches its own fifth day on 10 Mar, the day of the
 *   lamp. Fertile e1–e4, clear e5: 4 of 5. Hatched e1–e3, e4 dead in shell: 3 of 4 fertile, 3 of 5 laid. c3 dies at the
 *   age of 3 days; c1 and c2 fledge, 2 of 3, and feed themselves, 2 of 2. Of 5 eggs 2.
 * LW-1, clutch 2. Four eggs; e1 is broken on the second day of sitting, before the lamp could tell: neither fertile nor
 *   clear. Fertile e2 and e3, clear e4: 2 of 3. e3 goes to LW-2. Both hatch: 2 of 2 fertile, 2 of 4 laid. Both fledge,
 *   2 of 2; the one that LW-2 feeds dies at 26 days, before it feeds itself: 1 of 2. Of 4 eggs 1.
 * LW-2, clutch 1. Four eggs; e2 is sold: in no denominator. e3 was unsure and is lost as addled: its clutch cannot be
 *   judged, neither for fertility nor for hatching of fertile eggs. Hatched e1: 1 of the 3 that were not sold. It dies
 *   at 3 days: 0 of 1 fledged. Of 3 eggs 0.
 * LW-3, clutch 1. Four eggs, all judged on the sixth day: 2 of 4. The rest is open.
 * LW-4, clutch 1. Two chicks found in a nest nobody had looked into: no egg rates. Both fledge, 2 of 2; one is sold
 *   before it feeds itself, neither; the other does: 1 of 1.
 */
import { describe, expect, it } from 'vitest';
import { run } from '../../src/commands/season.ts';
import { wilson } from '../../src/statistics/proportions.ts';
import { runCommand } from '../commands/run.ts';
import { ON, room } from './known-season.ts';

const book = JSON.parse((await runCommand({ run }, room, { on: ON, json: true, arguments: ['2026'] })).text);

/** k of n with its simple interval. */
function of(k: number, n: number, open = 0) {
  const { low, high } = wilson({ k, n }) ?? { low: null, high: null };
  return { k, n, open, rate: n === 0 ? null : k / n, low, high, designEffect: n === 0 ? null : 1 };
}

describe('the room', () => {
  it('is counted egg by egg: 5 + 4 + 4 + 4, and the two that must have been in the nest found late', () => {
    const { pairs, clutches, eggs } = book.totals;
    expect([pairs, clutches]).toEqual([4, 5]);
    expect(eggs).toEqual({
      laid: 19,
      // 4 + 2 + 1 (the sold one is in none of the three) + 2 + 2; 1 + 1 + 1 + 2; the broken and the addled one
      fertile: 11,
      clear: 5,
      unknown: 2,
      hatched: 8,
      lost: { clear: 3, addled: 1, broken: 1, 'dead-in-shell': 1 },
      taken: 1,
      open: 4,
    });
  });

  it('and chick by chick: 3 + 2 + 1 + 2', () => {
    expect(book.totals.chicks).toEqual({
      hatched: 8,
      fledged: 6,
      independent: 4,
      died: { cold: 2, window: 1 },
      gone: 1,
      open: 0,
    });
  });

  // The design effects, k − p·n squared and added up, times m/(m − 1), over n·p·(1 − p):
  // fertility ((2/3)² + 0 + (2/3)²)·3/2 / (12·2/9) = 1/2; hatching of fertile (1/9 + 1/9)·2 / (6·5/36) = 8/15;
  // hatching of laid (1/4 + 0 + 1/4)·3/2 / (12/4) = 1/4; independence (4/25 + 9/25 + 0 + 1/25)·3/2 / (5·4/25) = 21/20
  // (three clutches had fledglings); overall (9/16 + 0 + 9/16)·3/2 / (12·3/16) = 3/4. An effect below 1 is taken as 1.
  // Fledging: (1/16 + 1/4 + 9/16 + 1/4)·4/3 / (8·3/16) = 1 exactly.
  it('has these rates', () => {
    const { rates } = book.totals;
    expect(rates.fertility).toEqual(of(8, 12));
    expect(rates.hatchOfFertile).toEqual(of(5, 6, 2));
    expect(rates.hatchOfLaid).toEqual(of(6, 12, 4));
    const fledge = of(6, 8);
    expect(rates.fledge).toMatchObject({ k: 6, n: 8, open: 0, rate: 0.75 });
    expect(rates.fledge.low).toBeCloseTo(fledge.low ?? 0, 10);
    expect(rates.overall).toEqual(of(3, 12, 4));
    const { k, n, low, high, designEffect } = rates.independence;
    expect([k, n]).toEqual([4, 5]);
    expect(designEffect).toBeCloseTo(21 / 20, 12);
    const effective = wilson({ k: 4 / 1.05, n: 5 / 1.05 });
    expect(low).toBeCloseTo(effective?.low ?? 0, 12);
    expect(high).toBeCloseTo(effective?.high ?? 0, 12);
  });

  it('left beside each rate what cannot be judged', () => {
    // The three unsold eggs of LW-2 and the two of LW-4; of fertile eggs the clear one of LW-2 is no candidate.
    expect(book.outside).toEqual({
      fertility: 5,
      hatchOfFertile: 4,
      hatchOfLaid: 2,
      fledge: 0,
      independence: 0,
      overall: 1,
    });
  });

  // At 3 days all 8 are followed and 2 die: 6/8. At 26 days five are: the one sold at 25 days is no longer: 3/4 · 4/5.
  it('has this survival of chicks', () => {
    const figures = book.totals.survival.map(({ age, atRisk, died, surviving }: Record<string, number>) => [
      age,
      atRisk,
      died,
      surviving,
    ]);
    expect(figures).toEqual([
      [3, 8, 2, 0.75],
      [26, 5, 1, expect.closeTo(0.6, 12)],
    ]);
  });

  // Laying 3 + 3 + 3 + 3 d. Sitting 12 + 12 + 12 d and 6 d to the last look of LW-3; LW-4 was found hatched.
  // Nest 19 + 19 + 19 d, and LW-2 from 23 May to the middle of 25 and 26 May, when all of it was lost. Fledged
  // 21 + 18 + 16 d. The nest's day: 1 − 1/59.5.
  it('has these days of exposure', () => {
    const rows = book.totals.stages.map(({ stage, exposure, losses }: Record<string, unknown>) => [
      stage,
      exposure,
      losses,
    ]);
    expect(rows).toEqual([
      ['laying', 12, 0],
      ['sitting', 42, 0],
      ['nest', 59.5, 1],
      ['fledged', 55, 0],
    ]);
    expect(book.totals.stages[2].daily).toBeCloseTo(1 - 1 / 59.5, 12);
    expect(book.totals.stages[2].se).toBeCloseTo(Math.sqrt(((1 / 59.5) * (1 - 1 / 59.5)) / 59.5), 12);
    // Nothing was lost in sitting, usually 12 d: the lower limit is 0.025^(12/42).
    expect(book.totals.stages[1]).toMatchObject({ daily: 1, se: 0, period: 1, high: 1 });
    expect(book.totals.stages[1].low).toBeCloseTo(0.025 ** (12 / 42), 12);
  });
});

describe('credit', () => {
  const pair = (id: string) => book.byPair.find((block: { pair: string }) => block.pair === id);

  // LW-1 laid 6 fertile of 8 judged. It sat on 5 + 3 eggs, not on the one it gave away: 3/4 and 1/1 of fertile ones,
  // 3/5 and 1/3 of all. It fed 3 + 1 chicks: 2/3 and 1/1 fledged, 2/2 and 1/1 independent. Of the 9 eggs it laid, 3.
  it('goes to the pair that laid, sat and fed: LW-1', () => {
    const { rates, reared, eggs } = pair('LW-1');
    expect(eggs.laid).toBe(9);
    expect([rates.fertility.k, rates.fertility.n]).toEqual([6, 8]);
    expect([rates.hatchOfFertile.k, rates.hatchOfFertile.n]).toEqual([4, 5]);
    expect([rates.hatchOfLaid.k, rates.hatchOfLaid.n]).toEqual([4, 8]);
    expect([rates.fledge.k, rates.fledge.n]).toEqual([3, 4]);
    expect([rates.independence.k, rates.independence.n]).toEqual([3, 3]);
    expect([rates.overall.k, rates.overall.n]).toEqual([3, 9]);
    expect(reared).toEqual({ taken: 0, hatched: 4, fledged: 3, independent: 3, died: 1 });
  });

  // LW-2 sat on 3 unsold eggs of its own and the guest: 2 of 4 hatched; it fed 2, of which the guest fledged.
  it('goes to the foster pair for what it did: LW-2', () => {
    const { rates, reared } = pair('LW-2');
    expect(rates.fertility).toEqual(of(0, 0));
    expect(rates.hatchOfFertile.n).toBe(0);
    expect([rates.hatchOfLaid.k, rates.hatchOfLaid.n]).toEqual([2, 4]);
    expect([rates.fledge.k, rates.fledge.n]).toEqual([1, 2]);
    expect([rates.independence.k, rates.independence.n]).toEqual([0, 1]);
    expect([rates.overall.k, rates.overall.n]).toEqual([0, 3]);
    expect(reared).toEqual({ taken: 1, hatched: 2, fledged: 1, independent: 0, died: 2 });
  });

  it('counts each individual once in the room: what the pairs sat on and fed adds up', () => {
    const sum = (name: string) =>
      book.byPair.reduce(
        (total: number, block: { reared: Record<string, number> }) => total + (block.reared[name] ?? 0),
        0,
      );
    expect([sum('hatched'), sum('fledged'), sum('independent'), sum('died')]).toEqual([8, 6, 4, 3]);
  });
});

it('the page tells the same', async () => {
  const { text } = await runCommand({ run }, room, { on: ON, arguments: ['2026'] });
  expect(text).toContain('5 clutches of 4 pairs');
  expect(text).toMatch(/fertile +8 of 12 +67 % +39–86 %/);
  expect(text).toMatch(/day 3 +2 of 8 died +75 % left/);
  expect(text).toMatch(/in the nest +59\.5 +1 +98\.3 %/);
});
