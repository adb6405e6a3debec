import type { Bird, Chick, Egg } from '../../room/model.ts';
import { walksOff } from '../../species/walks-off.ts';
import type { Parent, ParentAway } from '../absences.ts';
import { type Brood, mayHatch, profileIn } from '../brood.ts';
import { mayStillHatch } from '../season/fates.ts';

/** Age up to which a chick is taken to need a parent's warmth by night where the species has no profile, in days. */
const UNKNOWN_BROODING = 10;

/** The other parent. */
export function other(parent: Parent): Parent {
  return parent === 'cock' ? 'hen' : 'cock';
}

/** `the parents`, or who is left of them; null where nobody is. */
export function parentsLeft(away: readonly ParentAway[]): string | null {
  const gone = new Set(away.map(({ parent }) => parent));
  if (gone.size === 0) return 'the parents';
  if (gone.has(null)) return 'the parent that stayed';
  const [left] = (['cock', 'hen'] as const).filter((parent) => !gone.has(parent));
  return left === undefined ? null : `the ${left}`;
}

/** Whether its kind walks off as it hatches: then it feeds itself, and needs nothing of a parent but warmth. */
export function onFoot(brood: Brood, bird: Bird): boolean {
  return walksOff(profileIn(brood, bird));
}

/** Nestlings, and chicks on foot, that still need a parent on them by night. */
export function unbrooded(brood: Brood): Chick[] {
  const until = (bird: Bird) => profileIn(brood, bird)?.brooding?.value.high ?? UNKNOWN_BROODING;
  return brood.young.filter(
    (bird) =>
      (bird.fledged === null || onFoot(brood, bird)) && brood.room.day - bird.hatched.to < until(bird),
  );
}

/** Whether eggs and naked chicks may be left cold by it: of most species the hen sits by night. */
export function leavesCold({ parent, how }: ParentAway): boolean {
  return how !== 'parted' || parent === 'hen';
}

/** Eggs of which a chick may come if they are kept warm; those left over long after their time are cold already. */
export function eggsToWarm({ eggs, room }: Brood): Egg[] {
  return eggs.filter((egg) => mayHatch(egg) && mayStillHatch(egg, room.day));
}

/** Whether a nest cannot do without somebody sitting on it. */
export function needsWarmth(brood: Brood): boolean {
  return eggsToWarm(brood).length > 0 || unbrooded(brood).length > 0;
}

/** `the cock LW-20-04 died`, `the hen was parted`. */
export function absenceWords({ parent, bird, how }: ParentAway): string {
  if (parent === null) return 'the pair was parted';
  const who = bird === null ? `the ${parent}` : `the ${parent} ${bird.id}`;
  if (how === 'parted') return `${who} was taken away`;
  if (how === 'gone') return `${who} left the room`;
  return `${who} died`;
}
