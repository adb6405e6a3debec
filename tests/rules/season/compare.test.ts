import { describe, expect, it } from 'vitest';
import type { Block } from '../../../src/rules/season/block.ts';
import { compareGroups, compareWith } from '../../../src/rules/season/compare.ts';
import { differenceOf } from '../../../src/statistics/proportions.ts';
import { book, FOUR, pair } from './rooms.ts';

/** A pair with clutches of four, of which so many eggs are fertile; the rest is clear. */
function judged(id: string, each: readonly number[]): string {
  const clutches = each.map((number, i) => {
    const year = 2000 + i;
    const eggs = ['e1', 'e2', 'e3', 'e4'];
    const [some, others] = [eggs.slice(0, number), eggs.slice(number)];
    const said = [
      ...(some.length > 0 ? [`fertile: [${some.join(', ')}]`] : []),
      ...(others.length > 0 ? [`clear: [${others.join(', ')}]`] : []),
    ];
    return `${FOUR}\n date: 2026-03-10, candled: {${said.join(', ')}}`.replaceAll('2026-', `${year}-`);
  });
  return pair(id, 'lavender waxbill', clutches.join('\n'));
}

/** A pair with so many clutches of four, of which so many eggs each are fertile. */
const fertile = (id: string, each: number, number: number) => judged(id, Array(number).fill(each));

const pairsOf = (files: Record<string, string>): Block[] => book(files, '2026-07-01').byPair;

describe('groups compared', () => {
  it('need at least two', () => {
    expect(compareGroups(pairsOf({ A: fertile('A', 3, 4) }))).toEqual({ rates: [], survival: [] });
    expect(compareGroups([])).toEqual({ rates: [], survival: [] });
  });

  it('of one clutch or two are not compared: what befell them befell them once', () => {
    expect(compareGroups(pairsOf({ A: fertile('A', 4, 2), B: fertile('B', 0, 2) }))).toEqual({
      rates: [],
      survival: [],
    });
  });

  it('with few clutches show nothing', () => {
    const { rates } = compareGroups(pairsOf({ A: fertile('A', 4, 3), B: fertile('B', 3, 3) }));
    expect(rates.map(({ measure, shown }) => [measure, shown])).toEqual([['fertility', false]]);
  });

  it('show what many clutches leave no doubt of', () => {
    const { rates } = compareGroups(pairsOf({ A: fertile('A', 4, 12), B: fertile('B', 1, 12) }));
    const [first] = rates;
    expect(first).toMatchObject({
      measure: 'fertility',
      group: 'A',
      rate: 1,
      other: 0.25,
      shown: true,
      confidence: 0.95,
    });
    const simple = differenceOf({ k: 48, n: 48 }, { k: 12, n: 48 });
    expect(first?.low).toBeCloseTo(simple?.low ?? 0, 12);
  });

  it('show what one does worse as well as what it does better', () => {
    const { rates } = compareGroups(pairsOf({ A: fertile('A', 1, 12), B: fertile('B', 4, 12) }));
    expect(rates).toMatchObject([{ group: 'A', rate: 0.25, other: 1, shown: true }]);
  });

  it('show nothing where whole clutches fail or succeed: they are few, however many the eggs', () => {
    const { rates } = compareGroups(pairsOf({ A: judged('A', [4, 4, 4, 0]), B: judged('B', [4, 0, 0, 0]) }));
    expect(rates).toMatchObject([{ measure: 'fertility', rate: 0.75, other: 0.25, shown: false }]);
    // As sixteen eggs each of which fares by itself, twelve against four would leave no doubt.
    expect(differenceOf({ k: 12, n: 16 }, { k: 4, n: 16 })?.low).toBeGreaterThan(0);
  });

  it('of which one fared evenly so far are as unsure as the others show clutches to be', () => {
    const { rates } = compareGroups(pairsOf({ A: judged('A', [4, 4, 4]), B: judged('B', [4, 4, 0, 0]) }));
    expect(rates).toMatchObject([{ measure: 'fertility', rate: 1, other: 0.5, shown: false }]);
  });

  it('of which there are many have to differ more: each is compared with all others together', () => {
    const { rates } = compareGroups(
      pairsOf({ A: fertile('A', 4, 3), B: fertile('B', 3, 3), C: fertile('C', 2, 3) }),
    );
    expect(rates.map(({ group }) => group)).toEqual(['A', 'B', 'C']);
    for (const { confidence } of rates) expect(confidence).toBeCloseTo(1 - 0.05 / 3, 12);
    expect(rates[0]?.other).toBeCloseTo(15 / 24, 12);
  });
});

describe('chicks of two groups', () => {
  /** A pair with clutches of four chicks: of each, so many die at the age of 3 days. */
  const reared = (id: string, die: readonly number[]) => {
    const clutches = die.map((number, i) => {
      const dead = ['c1', 'c2', 'c3', 'c4'].slice(0, number);
      const lost = dead.length === 0 ? '' : `date: 2026-03-19, checked, died: [${dead.join(', ')}]`;
      const rest = number === 4 ? '' : 'date: 2026-04-03, fledged: all\n date: 2026-04-22, independent: all';
      const log = `${FOUR}\n date: 2026-03-16, hatched: all\n date: 2026-03-18, checked\n ${lost}\n ${rest}`;
      return log.replaceAll('2026-', `${2020 + i}-`);
    });
    return pair(id, 'lavender waxbill', clutches.join('\n'));
  };

  // Twelve of twelve against none of twelve at one age: 12 seen, 6 expected, variance 12⁴ / (24²·23) = 36/23, so that
  // χ² = 6² · 23/36 = 23. Clutches are all alike in either group: no design effect.
  it('are compared by the log-rank test', () => {
    const { survival, rates } = compareGroups(
      pairsOf({ A: reared('A', [4, 4, 4]), B: reared('B', [0, 0, 0]) }),
    );
    expect(survival).toMatchObject([{ group: 'A', observed: 12, expected: 6, designEffect: 1, shown: true }]);
    expect(survival[0]?.chiSquare).toBeCloseTo(23, 12);
    expect(survival[0]?.adjusted).toBeCloseTo((survival[0]?.p ?? 1) * (rates.length + 1), 12);
  });

  it('allowing for chicks of one clutch sharing their fate', () => {
    const { survival } = compareGroups(pairsOf({ A: reared('A', [4, 0, 2]), B: reared('B', [0, 0, 0]) }));
    // 4/4, 0/4 and 2/4 about 1/2 leave 8, a simple proportion of 12 would leave 3; six clutches less two groups: 8/3 · 6/4.
    expect(survival[0]?.designEffect).toBeCloseTo(4, 12);
    expect(survival[0]?.shown).toBe(false);
  });

  it('one bad brood is no bad cage', () => {
    const { survival, rates } = compareGroups(
      pairsOf({ A: reared('A', [4, 0, 0]), B: reared('B', [0, 1, 0, 0]) }),
    );
    expect([...survival, ...rates].filter(({ shown }) => shown)).toEqual([]);
  });
});

it('a season beside those before is one comparison for each rate that both have', () => {
  const [a, b] = pairsOf({ A: fertile('A', 3, 3), B: fertile('B', 3, 3) });
  if (a === undefined || b === undefined) throw new Error('no blocks');
  expect(compareWith(a, b).rates).toMatchObject([{ measure: 'fertility', difference: 0, shown: false }]);
});
