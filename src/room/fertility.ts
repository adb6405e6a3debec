import type { Egg } from './model.ts';

/** For a count that hatched or pipped: eggs seen pipped or fertile come first, clear ones last. */
export function clearRank(egg: Egg): number {
  if (egg.pipped !== null) return 0;
  const saw = egg.lamp.at(-1)?.saw;
  return saw === 'fertile' ? 1 : saw === undefined || saw === 'unsure' ? 2 : saw === 'dead' ? 3 : 4;
}
