import type { Range } from '../../species/profile.ts';

/**
 * A mass so many times beyond what is usual is a slip: a lost decimal point is a factor of ten, while exhibition
 * birds weigh up to twice as much as wild ones, and a chick so far below does not live.
 */
const BEYOND = 2.5;

/** Whether a mass in grams is so far from the usual ones that it must be a slip of the pen. */
export function isSlip(grams: number, usual: Range): boolean {
  return grams < usual.low / BEYOND || grams > usual.high * BEYOND;
}

/** How far a mended figure may lie beyond the usual ones. */
const NEAR = 1.4;

/** The same figure with its decimal point one place on or back, where that is near the usual ones; else null. */
export function mended(grams: number, usual: Range): number | null {
  const places = [grams / 10, grams * 10].map((one) => Number(one.toPrecision(6)));
  return places.find((one) => one >= usual.low / NEAR && one <= usual.high * NEAR) ?? null;
}
