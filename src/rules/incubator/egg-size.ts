/** Length and breadth of an egg, mm. */
export interface EggSize {
  length: number;
  breadth: number;
}

/** Volume over length × breadth²: Hoyt 1979, Auk 96:73–77. */
const VOLUME = 0.51;
/** Fresh mass over length × breadth², g a cm³: the same, for eggs of birds in general (from memory). */
const FRESH_MASS = 0.548;

/** An egg's volume in cm³: 0.51 · L · B², within about 2 % for eggs of the usual shape. */
export function eggVolume(size: EggSize): number {
  return VOLUME * product(size);
}

/** What the egg weighed when it was laid, g: 0.548 · L · B². */
export function freshMass(size: EggSize): number {
  return FRESH_MASS * product(size);
}

/** cm³. */
function product({ length, breadth }: EggSize): number {
  return (length / 10) * (breadth / 10) ** 2;
}
