/** What mean kinship says of a group. */
export interface Diversity {
  /** The mean of the kinships of all with all, themselves included. */
  meanKinship: number;
  /** The part of the founders' heterozygosity that is expected in the group: 1 − mean kinship. */
  geneDiversity: number;
  /**
   * How many unrelated founders would hold as much: 1 / (2 × mean kinship) (Ballou & Lacy 1995). Lacy's older
   * definition, 1 / Σ (p² / r), asks how many founder genes are left and gives another number for the same birds.
   */
  founderGenomes: number;
}

/** From the mean kinship of each member with the group, itself included; null for nobody. */
export function diversityOf(meanKinships: ArrayLike<number>): Diversity | null {
  if (meanKinships.length === 0) return null;
  let sum = 0;
  for (let i = 0; i < meanKinships.length; i++) sum += meanKinships[i] as number;
  const meanKinship = sum / meanKinships.length;
  return { meanKinship, geneDiversity: 1 - meanKinship, founderGenomes: 1 / (2 * meanKinship) };
}
