/** Kinds of live food by size, mm from end to end, the smallest first (common practice). */
export const liveSizes = [
  { upTo: 3, words: 'fruit flies, greenfly, the smallest ant pupae' },
  { upTo: 4, words: 'ant pupae, just hatched crickets' },
  { upTo: 7, words: 'small crickets, small mealworms just moulted' },
  { upTo: 10, words: 'half-grown crickets, small mealworms' },
  { upTo: 15, words: 'crickets and mealworms' },
] as const;

export type LiveSize = (typeof liveSizes)[number];

/**
 * The largest live food that fits a chick of this mass (g): lengths grow with the cube root of mass, and an 8 g waxbill
 * takes about 10 mm (common practice). What parents crush or take apart can be larger; this is what is safe without.
 */
export function liveSizeFor(mass: number): LiveSize {
  const piece = 5 * Math.cbrt(mass);
  return liveSizes.findLast(({ upTo }) => upTo <= piece) ?? liveSizes[0];
}
