import { grouped } from '../../grouped.ts';
import { type Pedigree, UNKNOWN } from './pedigree.ts';
import { LANES, type Single, walkOf } from './walk.ts';

/** Kinships are sums of halves of halves: nearer than this, two of them are one. */
const ROUNDING = 1e-12;

/** Whether one kinship, or F, is greater than another by more than rounding. */
export function isCloser(one: number, other: number): boolean {
  return one > other + ROUNDING;
}

/** How all of a pedigree are related, worked out as far as it is asked for. */
export interface Relationship {
  pedigree: Pedigree;
  /** The kinship of each with itself: ½ (1 + F); 1 where there is one copy only. */
  self: Float64Array;
  /**
   * The mean kinship of each group with each of `wanted`, a row a group. Nobody is looked at but them and their
   * ancestors.
   */
  kinshipTable(groups: readonly ArrayLike<number>[], wanted: ArrayLike<number>): Float64Array[];
}

/**
 * Kinship θ of two is the probability that a gene drawn from one and a gene of the same place drawn from the other
 * are copies of one gene of an ancestor; F of their young is the same number (Wright 1922, Am. Nat. 56:330; Malécot
 * 1948). An unknown parent is an unrelated founder.
 *
 * θ is the product T D Tʹ: T hands genes down, D is the sampling at each birth, ½ − ¼ (θ of the sire with itself + θ of
 * the dam with itself) (Henderson 1976, Biometrics 32:69). As Meuwissen & Luo (1992, Genet. Sel. Evol. 24:305) do, F is
 * found from the oldest on without the table of all pairs; all mates of a bird, and several birds of one generation,
 * share a walk, which is the indirect product of Colleau (2002, Genet. Sel. Evol. 34:409).
 *
 * @param single marks those that have one copy, from the sire: hens, for the Z chromosome. Without it: autosomes
 */
export function relate(pedigree: Pedigree, single: Single = null): Relationship {
  const { sires, dams } = pedigree;
  const self = new Float64Array(sires.length);
  const sampling = new Float64Array(sires.length);
  const kinshipTable = kinshipTableOf(pedigree, sampling, single);
  const isSingle = (one: number) => single !== null && single[one] === 1;

  /** Everyone's F, for the young of some sires or dams: the F of a brood is the kinship of its parents. */
  function fillSelf(matings: readonly Matings[]): void {
    const wanted = [...new Set(matings.flatMap(({ broods }) => [...broods.keys()]))];
    const rows = kinshipTable(
      matings.map(({ parent }) => [parent]),
      wanted,
    );
    const column = new Map(wanted.map((mate, k) => [mate, k]));
    matings.forEach(({ broods }, row) => {
      for (const [mate, brood] of broods) {
        const kin = rows[row]?.[column.get(mate) as number] as number;
        for (const one of brood) self[one] = (1 + kin) / 2;
      }
    });
  }

  for (const births of byGeneration(pedigree)) {
    const selfOf = (parent: number) => (parent === UNKNOWN ? 0 : (self[parent] as number));
    for (const one of births) {
      const sire = selfOf(sires[one] as number);
      const dam = selfOf(dams[one] as number);
      sampling[one] = isSingle(one) ? 1 - sire : 1 / 2 - sire / 4 - dam / 4;
      self[one] = isSingle(one) ? 1 : 1 / 2;
    }
    const bred = births.filter((one) => !isSingle(one) && sires[one] !== UNKNOWN && dams[one] !== UNKNOWN);
    const matings = matingsOf(pedigree, bred);
    for (let first = 0; first < matings.length; first += LANES) fillSelf(matings.slice(first, first + LANES));
  }
  return { pedigree, self, kinshipTable };
}

/**
 * The product T D Tʹ, for those of whom it is asked.
 *
 * @param sampling what the drawing at its own birth adds to each: the diagonal of D. A table needs those of whom it is
 * asked and their ancestors; the rest may still be filled in
 */
function kinshipTableOf(
  pedigree: Pedigree,
  sampling: Float64Array,
  single: Single,
): Relationship['kinshipTable'] {
  const { sires, dams } = pedigree;
  const walk = walkOf(pedigree, single);
  /** Kinships with the groups of a walk, as `given` has them; behind the last one the unknown parent's: none. */
  const met = new Float64Array((sires.length + 1) * LANES);
  const lanesOf = (one: number) => (one === UNKNOWN ? sires.length : one) * LANES;

  function meet(wanted: ArrayLike<number>): void {
    for (const one of walk.ancestors(wanted)) {
      const at = lanesOf(one);
      const sire = lanesOf(sires[one] as number);
      const dam = lanesOf(dams[one] as number);
      const drawn = sampling[one] as number;
      const fromSire = single !== null && single[one] === 1 ? 1 : 1 / 2;
      const fromDam = 1 - fromSire;
      for (let lane = 0; lane < LANES; lane++) {
        const handedDown = fromSire * (met[sire + lane] as number) + fromDam * (met[dam + lane] as number);
        met[at + lane] = drawn * (walk.given[at + lane] as number) + handedDown;
      }
    }
  }

  return (groups, wanted) => {
    const rows: Float64Array[] = [];
    for (let first = 0; first < groups.length; first += LANES) {
      const some = groups.slice(first, first + LANES);
      walk.up(some);
      meet(wanted);
      some.forEach((_, lane) => {
        rows.push(Float64Array.from(wanted, (one) => met[lanesOf(one) + lane] as number));
      });
    }
    return rows;
  };
}

/** Inbreeding coefficient F of one: 2 θ(with itself) − 1. */
export function inbreeding({ self }: Relationship, one: number): number {
  return 2 * (self[one] as number) - 1;
}

/** Kinship θ of two, which is the F of their young. */
export function kinship({ kinshipTable }: Relationship, one: number, other: number): number {
  return kinshipTable([[one]], [other])[0]?.[0] as number;
}

/**
 * The mean kinship of each of a group with the group, itself included (Ballou & Lacy 1995): the fewer relatives it has
 * there, the lower. In the order of `members`.
 */
export function meanKinships({ kinshipTable }: Relationship, members: ArrayLike<number>): Float64Array {
  return kinshipTable([members], members)[0] as Float64Array;
}

function byGeneration({ generations }: Pedigree): number[][] {
  const levels: number[][] = [];
  generations.forEach((generation, one) => {
    while (levels.length <= generation) levels.push([]);
    (levels[generation] as number[]).push(one);
  });
  return levels;
}

/** One bird with its mates of a generation, and the young with each. */
interface Matings {
  parent: number;
  broods: Map<number, number[]>;
}

/** By the sex of which fewer bred, for the fewest walks; in their own order, as neighbours have ancestors in common. */
function matingsOf({ sires, dams }: Pedigree, bred: readonly number[]): Matings[] {
  const count = (parents: Int32Array) => new Set(bred.map((one) => parents[one])).size;
  const [parents, mates] = count(sires) <= count(dams) ? [sires, dams] : [dams, sires];
  const byParent = grouped(bred, (one) => parents[one] as number);
  return Array.from(byParent, ([parent, young]) => ({
    parent,
    broods: grouped(young, (one) => mates[one] as number),
  })).sort((a, b) => a.parent - b.parent);
}
