import { munkres } from 'munkres';

/**
 * Gives each row a column of its own, or each column a row where there are fewer columns, so that the costs add up to
 * the least (Kuhn 1955, Nav. Res. Log. Q. 2:83). Of several such assignments it gives one.
 */
export function cheapestAssignment(costs: readonly (readonly number[])[]): [row: number, column: number][] {
  return munkres(costs).map(([row, column]): [number, number] => [row, column]);
}
