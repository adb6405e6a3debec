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

/**
 * A nestling weighs no more than its grown parents, but for a little fat and a full crop; twice as much is more than any
 * exhibition strain brings. The span of an age that is not known to the day does not widen this.
 */
export function isHeavierThanGrown(grams: number, adult: Range): boolean {
  return grams > adult.high * 2;
}

/** How far a mended figure may lie beyond the usual ones. */
const NEAR = 1.4;

/** The same figure with its decimal point one place on or back, where that is near the usual ones; else null. */
export function mended(grams: number, usual: Range): number | null {
  const places = [grams / 10, grams * 10].map((one) => Number(one.toPrecision(6)));
  return places.find((one) => one >= usual.low / NEAR && one <= usual.high * NEAR) ?? null;
}
