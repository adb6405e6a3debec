import { inbreeding, type Relationship } from './relationship.ts';
import { LANES, walkOf } from './walk.ts';

/** One ancestor through whom two are related. */
export interface CommonAncestor {
  ancestor: number;
  /** Its part of their kinship, which is the F of their young. */
  share: number;
}

/** Beneath this a share is what rounding left over. */
const NOTHING = 1e-13;

/**
 * The common ancestors that make two related, the greatest share first; the shares add up to the kinship. Wright
 * (1922): F = Σ (½)^(n₁ + n₂ + 1) (1 + F_A), over every pair of lines that lead from the two to A and share nobody
 * else. The lines are not walked one by one: all pairs of lines to A have the weight given₁(A) · given₂(A), and those
 * that have met before, in a younger ancestor B, have met(B) · given_B(A)², which is taken off.
 */
export function commonAncestors(relationship: Relationship, one: number, other: number): CommonAncestor[] {
  const walk = walkOf(relationship.pedigree);
  const given = (ancestor: number, group: number) => walk.given[ancestor * LANES + group] as number;
  // A map keeps the order of the walk: the latest generation first.
  const met = new Map(walk.up([[one], [other]]).map((each) => [each, given(each, 0) * given(each, 1)]));
  const found: CommonAncestor[] = [];
  for (const [ancestor, weight] of met) {
    if (weight < NOTHING) continue;
    found.push({ ancestor, share: (weight * (1 + inbreeding(relationship, ancestor))) / 2 });
    for (const each of walk.up([[ancestor]])) {
      met.set(each, (met.get(each) as number) - weight * given(each, 0) ** 2);
    }
  }
  return found.sort((a, b) => b.share - a.share || a.ancestor - b.ancestor);
}
