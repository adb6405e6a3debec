import fc from 'fast-check';
import { expect, it } from 'vitest';
import { cheapestAssignment } from '../../src/statistics/assignment.ts';

const sum = (costs: number[][], of: [number, number][]) =>
  of.reduce((total, [row, column]) => total + (costs[row]?.[column] ?? Number.NaN), 0);

/** Every way of giving each row a column of its own. */
function everyWay(rows: number, columns: number[]): [number, number][][] {
  if (rows === 0) return [[]];
  return columns.flatMap((column) =>
    everyWay(
      rows - 1,
      columns.filter((other) => other !== column),
    ).map((rest): [number, number][] => [...rest, [rows - 1, column]]),
  );
}

it('is as cheap as the cheapest of all ways', () => {
  const square = fc.integer({ min: 1, max: 5 }).chain((n) =>
    fc.array(fc.array(fc.integer({ min: 0, max: 30 }), { minLength: n, maxLength: n }), {
      minLength: 1,
      maxLength: n,
    }),
  );
  fc.assert(
    fc.property(square, (costs) => {
      const ways = everyWay(costs.length, [...(costs[0] as number[]).keys()]);
      const least = Math.min(...ways.map((way) => sum(costs, way)));
      expect(sum(costs, cheapestAssignment(costs))).toBe(least);
    }),
  );
});

it('with more rows than columns leaves rows out', () => {
  expect(cheapestAssignment([[3], [1], [2]])).toEqual([[1, 0]]);
});

it('of nobody is nothing', () => {
  expect(cheapestAssignment([])).toEqual([]);
  expect(cheapestAssignment([[], []])).toEqual([]);
});
