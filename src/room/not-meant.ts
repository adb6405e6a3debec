import type { Day } from '../days.ts';
import { type Bird, type Egg, fullRef } from './model.ts';
import type { Scene } from './scene.ts';

/** How an egg or bird ended that a count can have meant, as the sentence of a finding says it, and on which day. */
function endOf(one: Egg | Bird): { did: string; day: Day } | null {
  const { fate } = one;
  if (fate === null) return null;
  return { did: fate.kind === 'taken' ? 'lost' : fate.kind, day: fate.day };
}

function notMeantKey(one: Egg | Bird, did: string, day: Day): string {
  return `${fullRef(one)} ${did} ${day}`;
}

/**
 * Of somebody that ended something else is told later: if it was by count, another was meant. What is told again is the
 * same end told twice.
 */
export function noteNotMeant({ fold }: Scene, one: Egg | Bird, did: string): void {
  const end = endOf(one);
  if (end !== null && end.did !== did) fold.notMeant.add(notMeantKey(one, end.did, end.day));
}

/** Whether a later line names it that cannot be told of one that ended so on that day. */
export function isNotMeant({ fold, day }: Scene, one: Egg | Bird, did: string): boolean {
  return fold.notMeant.size > 0 && fold.notMeant.has(notMeantKey(one, did, day));
}
