import { sumBy } from '../sums.ts';
import { type Pedigree, UNKNOWN } from './pedigree.ts';
import { LANES, walkOf } from './walk.ts';

/** A founder of a group: one without known parents, or the one unknown parent of somebody. */
export interface Founder {
  /** The founder itself, or the young whose parent is unknown. */
  of: number;
  which: 'itself' | 'its sire' | 'its dam';
  /** Its part of the group's genes, 0 to 1. */
  share: number;
}

/**
 * Founder contributions: which part of a group's genes is expected to come from each founder. They add up to 1.
 * The greatest first.
 */
export function founders(pedigree: Pedigree, members: ArrayLike<number>): Founder[] {
  const { sires, dams } = pedigree;
  const walk = walkOf(pedigree);
  const found: Founder[] = [];
  for (const one of walk.up([members])) {
    const share = walk.given[one * LANES] as number;
    const sireUnknown = sires[one] === UNKNOWN;
    const damUnknown = dams[one] === UNKNOWN;
    if (sireUnknown && damUnknown) found.push({ of: one, which: 'itself', share });
    else if (sireUnknown) found.push({ of: one, which: 'its sire', share: share / 2 });
    else if (damUnknown) found.push({ of: one, which: 'its dam', share: share / 2 });
  }
  return found.sort((a, b) => b.share - a.share || a.of - b.of);
}

/** Founder equivalents: how many founders, all contributing alike, would be as even: 1 / Σ p² (Lacy 1989, Zoo Biol. 8:111). */
export function founderEquivalents(contributions: readonly Founder[]): number {
  return 1 / sumBy(contributions, ({ share }) => share * share);
}
