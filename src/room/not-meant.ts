import type { Day } from '../days.ts';
import { type Bird, type Egg, fullRef } from './model.ts';
import type { Scene } from './scene.ts';

/** How an egg or bird ended that a count can have meant, as the sentence of a finding says it, and on which day. */
function endOf(one: Egg | Bird): { did: string; day: Day } | null {
  const { fate } = one;
  if (fate === null) return null;
  return { did: fate.kind === 'taken' ? 'lost' : fate.kind, day: fate.day };
}

function keyOf(one: Egg | Bird, did: string, day: Day): string {
  return `${fullRef(one)} ${did} ${day}`;
}

/** What ends an egg or a bird, as the sentences of findings say it. */
const ENDS = ['hatched', 'lost', 'died', 'gone'];

/** A count took these for what it says, though it might have meant others. */
export function noteGuess({ fold, day }: Scene, chosen: readonly (Egg | Bird)[], did: string): void {
  if (!ENDS.includes(did)) return;
  for (const one of chosen) fold.guessed.add(keyOf(one, did, day));
}

/**
 * Of somebody that ended something else is told later: if it was a count that it was chosen for, another was meant. What is
 * told again is the same end told twice.
 */
export function noteNotMeant({ fold }: Scene, one: Egg | Bird, did: string): void {
  const end = endOf(one);
  if (end === null || end.did === did) return;
  const key = keyOf(one, end.did, end.day);
  if (fold.guessed.has(key)) fold.notMeant.add(key);
}

/** Whether a later line names it that cannot be told of one that ended so on that day. */
export function isNotMeant({ fold, day }: Scene, one: Egg | Bird, did: string): boolean {
  return fold.notMeant.size > 0 && fold.notMeant.has(keyOf(one, did, day));
}
