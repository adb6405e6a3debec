import { cheapestAssignment } from '../../statistics/assignment.ts';
import { isCloser } from '../../statistics/pedigree/relationship.ts';
import type { Stock, StockBird } from '../stock/stock.ts';
import { type Mating, matingOf } from './mating.ts';

/** The free birds of a species, every mating that there could be, and the ones that are best together. */
export interface Field {
  stock: Stock;
  cocks: StockBird[];
  hens: StockBird[];
  /** A row a cock, a column a hen. */
  matings: Mating[][];
  chosen: Mating[];
  /** The highest F of young that is proposed, or null for any. */
  limit: number | null;
  /** Birds that were left out of it because there are too many. */
  crowdedOut: ReadonlySet<StockBird>;
}

/** So many of a sex are weighed against each other: an assignment of thousands would take hours. */
const MOST = 250;

/** More than all costs of an assignment together: whom the limit or a fierce chase parts is put together last of all. */
const BEYOND = 1e6;

/** Weighs every cock against every hen. Of a crowd only those with the fewest relatives are looked at. */
export function fieldOf(fit: readonly StockBird[], stock: Stock, limit: number | null): Field {
  const [cocks, hens] = (['cock', 'hen'] as const).map((sex) =>
    rarest(fit.filter(({ bird }) => bird.sex === sex)),
  ) as [StockBird[], StockBird[]];
  const rows = stock.lineage.autosomes.kinshipTable(
    cocks.map(({ ancestor }) => [ancestor.number]),
    hens.map(({ ancestor }) => ancestor.number),
  );
  const matings = cocks.map((cock, row) =>
    hens.map((hen, column) => matingOf(cock, hen, stock, rows[row]?.[column])),
  );
  const looked = new Set([...cocks, ...hens]);
  return {
    stock,
    cocks,
    hens,
    matings,
    chosen: best(matings, limit),
    limit,
    crowdedOut: new Set(fit.filter((one) => !looked.has(one))),
  };
}

function rarest(birds: StockBird[]): StockBird[] {
  if (birds.length <= MOST) return birds;
  return birds.sort((a, b) => (a.meanKinship ?? 0) - (b.meanKinship ?? 0)).slice(0, MOST);
}

/** As many pairs as the limit allows, and of those the set with the least cost. */
function best(matings: Mating[][], limit: number | null): Mating[] {
  const costs = matings.map((row) => row.map((mating) => mating.cost + (mayBe(mating, limit) ? 0 : BEYOND)));
  return cheapestAssignment(costs)
    .map(([row, column]) => matings[row]?.[column] as Mating)
    .filter((mating) => mayBe(mating, limit));
}

/** Two that went for each other's life are not put together again by a proposal. */
function mayBe(mating: Mating, limit: number | null): boolean {
  return mating.chased === null && isWithin(mating, limit);
}

/** Whether the young would be no more inbred than the limit. */
export function isWithin({ inbreeding }: Mating, limit: number | null): boolean {
  return limit === null || !isCloser(inbreeding, limit);
}

/** Every mating that one of the birds could have. */
export function matingsOf(one: StockBird, { cocks, hens, matings }: Field): Mating[] {
  if (one.bird.sex === 'cock') return matings[cocks.indexOf(one)] ?? [];
  const column = hens.indexOf(one);
  return matings.flatMap((row) => row[column] ?? []);
}
