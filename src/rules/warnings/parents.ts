import type { Day } from '../../days.ts';
import { type Bird, type Pair, together } from '../../room/model.ts';
import { type Brood, mayHatch, profileIn } from '../brood.ts';
import { walksOff } from '../growth/curve.ts';
import type { View } from './warning.ts';

export type Parent = 'cock' | 'hen';

/** A parent that is no longer with its nest. */
export interface Absence {
  /** Null where the journal does not say which of the two was taken away. */
  parent: Parent | null;
  bird: Bird | null;
  day: Day;
  how: 'died' | 'gone' | 'parted';
}

/** Age up to which a chick is taken to need a parent's warmth by night where the species has no profile, in days. */
const UNKNOWN_BROODING = 10;

/** Which parents of a nest are dead, gone or parted from it, oldest first. */
export function absencesFrom(view: View, { pair, clutch }: Brood): Absence[] {
  const away: Absence[] = [];
  const since = clutch?.opened ?? Number.NEGATIVE_INFINITY;
  const parting = together(pair) ? undefined : pair.partings.at(-1);
  for (const parent of ['cock', 'hen'] as const) {
    for (const bird of parentBirds(view, parent, pair, clutch?.[parent] ?? [])) {
      if (bird.fate !== null && bird.fate.day >= since) {
        away.push({ parent, bird, day: bird.fate.day, how: bird.fate.kind });
      } else if (parting !== undefined && parting.day >= since && livesElsewhere(bird, pair, parting.day)) {
        away.push({ parent, bird, day: parting.day, how: 'parted' });
      }
    }
  }
  if (parting !== undefined && parting.day >= since && away.every(({ how }) => how !== 'parted')) {
    away.push({ parent: null, bird: null, day: parting.day, how: 'parted' });
  }
  return away.sort((a, b) => a.day - b.day);
}

/** The birds of that parent's name, now and when the clutch was laid; one of several is nobody in particular. */
function parentBirds(view: View, parent: Parent, pair: Pair, atLaying: readonly string[]): Set<Bird> {
  const birds = [pair[parent], atLaying].flatMap((names) => {
    const bird = names.length === 1 ? view.find(names[0] as string) : null;
    return bird === null ? [] : [bird];
  });
  return new Set(birds);
}

function livesElsewhere(bird: Bird, pair: Pair, since: Day): boolean {
  const last = bird.stays.at(-1);
  return last !== undefined && last.from >= since && last.housing !== pair.housing;
}

/** The other parent. */
export function other(parent: Parent): Parent {
  return parent === 'cock' ? 'hen' : 'cock';
}

/** Whether its kind walks off as it hatches: then it feeds itself, and needs nothing of a parent but warmth. */
export function onFoot(brood: Brood, bird: Bird): boolean {
  const profile = profileIn(brood, bird);
  return profile !== null && walksOff(profile);
}

/** Nestlings, and chicks on foot, that still need a parent on them by night. */
export function unbrooded(brood: Brood): Bird[] {
  const until = (bird: Bird) => profileIn(brood, bird)?.brooding?.value.high ?? UNKNOWN_BROODING;
  return brood.young.filter(
    (bird) =>
      (bird.fledged === null || onFoot(brood, bird)) &&
      bird.hatched !== null &&
      brood.room.day - bird.hatched.to < until(bird),
  );
}

/** Whether a nest cannot do without somebody sitting on it. */
export function needsWarmth(brood: Brood): boolean {
  return brood.eggs.some(mayHatch) || unbrooded(brood).length > 0;
}

/** `the cock LW-20-04 died`, `the hen was parted`. */
export function absenceWords({ parent, bird, how }: Absence): string {
  if (parent === null) return 'the pair was parted';
  const who = bird === null ? `the ${parent}` : `the ${parent} ${bird.id}`;
  if (how === 'parted') return `${who} was taken away`;
  if (how === 'gone') return `${who} left the room`;
  return `${who} died`;
}
