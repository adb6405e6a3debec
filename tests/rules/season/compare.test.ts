import { describe, expect, it } from 'vitest';
import type { Block } from '../../../src/rules/season/block.ts';
import { compareGroups, compareWith } from '../../../src/rules/season/compare.ts';
import { differenceOf } from '../../../src/statistics/proportions.ts';
import { book, FOUR, pair } from './rooms.ts';

/** A pair with so many clutches of four, of which so many eggs each are fertile; the rest is clear. */
function fertile(id: string, each: number, number: number): string {
  const clutches = Array.from({ length: number }, (_, i) => {
    const year = 2000 + i;
    const [some, others] = [['e1', 'e2', 'e3', 'e4'].slice(0, each), ['e1', 'e2', 'e3', 'e4'].slice(each)];
    const said = [
      ...(some.length > 0 ? [`fertile: [${some.join(', ')}]`] : []),
      ...(others.length > 0 ? [`clear: [${others.join(', ')}]`] : []),
    ];
    return `${FOUR}\n date: 2026-03-10, candled: {${said.join(', ')}}`.replaceAll('2026-', `${year}-`);
  });
  return pair(id, 'lavender waxbill', clutches.join('\n'));
}

const pairsOf = (files: Record<string, string>): Block[] => book(files, '2026-07-01').byPair;

describe('groups compared', () => {
  it('need at least two', () => {
    expect(compareGroups(pairsOf({ A: fertile('A', 3, 4) }))).toEqual({ rates: [], survival: [] });
    expect(compareGroups([])).toEqual({ rates: [], survival: [] });
  });

  it('with few clutches show nothing', () => {
    const { rates } = compareGroups(pairsOf({ A: fertile('A', 4, 1), B: fertile('B', 2, 1) }));
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
  const reared = (id: string, age: number | null) => {
    const end =
      age === null
        ? 'date: 2026-04-03, fledged: all\n date: 2026-04-22, independent: all'
        : `date: 2026-03-${16 + age}, died: all`;
    return pair(
      id,
      'lavender waxbill',
      `${FOUR}\n date: 2026-03-16, hatched: all\n date: 2026-03-18, checked\n ${end}`,
    );
  };

  it('are compared by the log-rank test', () => {
    const { survival } = compareGroups(pairsOf({ A: reared('A', 3), B: reared('B', null) }));
    expect(survival).toMatchObject([{ group: 'A', observed: 4, expected: 2 }]);
    // Four of four against none of four at one age: χ² = 2² / (4·4·4·4 / (64·7)) = 7, p = 0.0082, and several rates beside it.
    expect(survival[0]?.chiSquare).toBeCloseTo(7, 12);
    expect(survival[0]?.p).toBeCloseTo(0.00815, 5);
    expect(survival[0]?.adjusted).toBeGreaterThan(survival[0]?.p ?? 1);
  });
});

it('a season beside those before is one comparison for each rate that both have', () => {
  const [a, b] = pairsOf({ A: fertile('A', 3, 2), B: fertile('B', 3, 2) });
  if (a === undefined || b === undefined) throw new Error('no blocks');
  expect(compareWith(a, b).rates).toMatchObject([{ measure: 'fertility', difference: 0, shown: false }]);
});
