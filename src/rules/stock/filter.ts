import type { AgeClass } from './life.ts';
import type { StockBird } from './stock.ts';

/** Which birds of the stock are asked for; null for all. */
export interface StockFilter {
  species: string | null;
  housing: string | null;
  age: AgeClass | null;
  sex: 'cock' | 'hen' | 'unknown' | null;
}

/** The birds that a filter lets through. */
export function filterStock(
  birds: readonly StockBird[],
  { species, housing, age, sex }: StockFilter,
): StockBird[] {
  return birds.filter(
    (one) =>
      (species === null || one.bird.species === species) &&
      (housing === null || one.housing === housing) &&
      (age === null || one.age === age) &&
      (sex === null || (one.bird.sex ?? 'unknown') === sex),
  );
}
