import { type Pedigree, UNKNOWN } from './pedigree.ts';

/**
 * How genes at a locus are handed down. On most chromosomes each one has a copy from either parent; where `single` is
 * 1 there is one copy only, from the sire: a hen's Z chromosome (cocks are ZZ, hens ZW).
 */
export type Single = Uint8Array | null;

/** So many groups share one walk: it costs hardly more than one of them. */
export const LANES = 8;

/** Walks through a pedigree from the young to their ancestors, no further than is needed. */
export interface Walk {
  /**
   * What each ancestor gave to each of up to `LANES` groups: a group's members have a weight of 1 together, and half
   * of everyone's goes to either parent. Gives everyone reached, the latest generation first; what they gave stands
   * in `given` until the next walk.
   */
  up(groups: readonly ArrayLike<number>[]): readonly number[];
  /** For bird `i` and group `g` at `i * LANES + g`. */
  given: Float64Array;
  /** Everyone in this list and all their ancestors, the earliest generation first. */
  ancestors(of: ArrayLike<number>): readonly number[];
}

/** A walk keeps its own working memory, however often it is used. */
export function walkOf(pedigree: Pedigree, single: Single = null): Walk {
  const { sires, dams } = pedigree;
  const { enter, gather } = gatheringOf(pedigree);
  const given = new Float64Array(sires.length * LANES);
  let reached: readonly number[] = [];

  function handUp(one: number, parent: number, part: number): void {
    if (parent === UNKNOWN || part === 0) return;
    const from = one * LANES;
    const to = parent * LANES;
    for (let lane = 0; lane < LANES; lane++) {
      given[to + lane] = (given[to + lane] as number) + part * (given[from + lane] as number);
    }
  }

  return {
    given,
    up(groups) {
      for (const one of reached) given.fill(0, one * LANES, one * LANES + LANES);
      groups.forEach((members, lane) => {
        for (let k = 0; k < members.length; k++) {
          const one = members[k] as number;
          enter(one);
          (given[one * LANES + lane] as number) += 1 / members.length;
        }
      });
      reached = gather();
      for (const one of reached) {
        const hasSingle = single !== null && single[one] === 1;
        handUp(one, sires[one] as number, hasSingle ? 1 : 1 / 2);
        handUp(one, dams[one] as number, hasSingle ? 0 : 1 / 2);
      }
      return reached;
    },
    ancestors(of) {
      for (let k = 0; k < of.length; k++) enter(of[k] as number);
      return gather().reverse();
    },
  };
}

/** Everyone who was entered since the last gathering, and their ancestors, each once. */
interface Gathering {
  enter(one: number): void;
  /** The latest generation first: parents are always in an earlier one. */
  gather(): number[];
}

function gatheringOf({ sires, dams, generations }: Pedigree): Gathering {
  const seen = new Uint8Array(sires.length);
  const levels: number[][] = [];

  function enter(one: number): void {
    if (seen[one] === 1) return;
    seen[one] = 1;
    const generation = generations[one] as number;
    while (levels.length <= generation) levels.push([]);
    (levels[generation] as number[]).push(one);
  }

  function gather(): number[] {
    const all: number[] = [];
    for (let generation = levels.length - 1; generation >= 0; generation--) {
      const level = levels[generation] as number[];
      for (const one of level) {
        const sire = sires[one] as number;
        const dam = dams[one] as number;
        if (sire !== UNKNOWN) enter(sire);
        if (dam !== UNKNOWN) enter(dam);
        all.push(one);
      }
      level.length = 0;
    }
    for (const one of all) seen[one] = 0;
    return all;
  }

  return { enter, gather };
}
