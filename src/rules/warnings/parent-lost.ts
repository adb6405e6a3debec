import { type Day, shortDay } from '../../days.ts';
import { count, listed, them } from '../../words.ts';
import { absencesFrom, type ParentAway } from '../absences.ts';
import type { Brood } from '../brood.ts';
import { unfedSince } from './feeders.ts';
import { absenceWords, eggsToWarm, leavesCold, needsWarmth, onFoot, other, unbrooded } from './parents.ts';
import { takersFor } from './takers.ts';
import { about, type Found, type View, type Warning } from './warning.ts';
import { chicksWords, opening } from './words.ts';

interface ParentLost extends Found {
  lost: string[];
  /** Whether one of them is dead, and not only away. */
  died: boolean;
  what: string;
  /** `it` where that is one egg or one chick, else `them`. */
  whom: string;
  left: string;
  /** Whether a parent is left that could go on. */
  alone: boolean;
  /** Chicks that feed themselves, and need nothing but warmth. */
  onFoot: boolean;
  goesOn: boolean;
  /** Who could take them; strange quails would hunt chicks on foot. */
  takers: string | null;
}

/** Days after the loss for which the eggs and chicks are in danger today, and for which it is said. */
const ACT = 3;
const SHOWN = 7;

export const parentLost: Warning<ParentLost> = {
  kind: 'parent-lost',
  levels: ['act', 'watch'],
  health: true,
  when: 'the cock or hen died, left, or the hen was taken away, with eggs that may hatch or chicks that still need warmth by night',
  over: `no such egg or chick is left there; ${SHOWN} d later. Watch instead of act once the other parent was seen sitting or feeding since`,
  explain:
    'Eggs and naked chicks without a parent on them last hours, not days, though cooling alone does not at once kill an egg (Olson, Vleck & Vleck 2006). In many species the one that is left goes on, above all where both sit; so look first, at dusk too. Eggs and young chicks can go to a pair whose own are within two days of them and that has room (common practice). A bird that died for no plain reason concerns the others too: ask an avian vet.',
  find: (view) => view.broods.flatMap((brood) => lostFrom(view, brood) ?? []),
  say: ({ lost, died, what, whom, left, goesOn, takers, alone, onFoot, date }) => ({
    text: `${opening(listed(lost))} on ${shortDay(date)}, with ${what}${onFoot ? ' to keep warm' : ' in the nest'}. ${left}${takers === null ? '' : ` ${takers}.`}`,
    check: goesOn
      ? `at dusk, that the one that is left still sits or broods and feeds; ${died ? 'what the other died of, with an avian vet' : 'an avian vet if it is not well'}`
      : `now: ${whom === 'it' ? 'is it' : 'are they'} warm${alone ? `, and does the other parent ${onFoot ? `brood ${whom}` : 'sit, brood and feed'}` : ''}? If not, ${onFoot ? 'a brooder at once, with a warm place and a cooler one beside it' : `give ${whom} to another pair, or to an incubator and the hand`}. An avian vet if the loss has no plain cause`,
  }),
};

function lostFrom(view: View, brood: Brood): ParentLost | null {
  if (brood.where !== 'nest' || !needsWarmth(brood)) return null;
  const away = absencesFrom(brood);
  const absences = away.filter(leavesCold);
  const last = absences.at(-1);
  if (last === undefined) return null;
  const ago = view.day - last.day;
  if (ago > SHOWN) return null;
  // A cock that was taken away before is not there to go on either.
  const gone = new Set(away.map(({ parent }) => parent));
  const alone = gone.size === 1;
  const goesOn = alone && seenSince(brood, last);
  const eggs = eggsToWarm(brood).length;
  const cold = unbrooded(brood);
  const walking = cold.some((bird) => onFoot(brood, bird));
  const parts = [...(eggs > 0 ? [count(eggs, 'egg')] : []), ...(cold.length > 0 ? [chicksWords(cold)] : [])];
  const counted = cold.every(({ placeholder }) => !placeholder);
  const whom = them(counted ? eggs + cold.length : Number.POSITIVE_INFINITY);
  return {
    ...about(brood),
    level: ago <= ACT && !goesOn ? 'act' : 'watch',
    date: last.day,
    lost: absences.map(absenceWords),
    died: absences.some(({ how }) => how === 'died'),
    what: listed(parts),
    whom,
    left: leftWords(last, { alone, goesOn, cold: coldSince(brood, last), whom }),
    alone,
    goesOn,
    onFoot: walking,
    takers: walking ? null : takersFor(view, brood),
  };
}

function leftWords(
  { parent }: ParentAway,
  { alone, goesOn, cold, whom }: { alone: boolean; goesOn: boolean; cold: Day | null; whom: string },
): string {
  if (!alone || parent === null) return `Nobody is left to keep ${whom} warm.`;
  if (goesOn) return `The ${other(parent)} was seen going on alone.`;
  const hours = `unwarmed ${whom === 'it' ? 'it lasts' : 'they last'} hours`;
  if (cold !== null) return `Nobody was on ${whom} on ${shortDay(cold)}; ${hours}.`;
  return `Nobody wrote yet whether the ${other(parent)} goes on alone; ${hours}.`;
}

/** The day of the last look, where that found nobody on the eggs since the loss. */
function coldSince({ clutch }: Brood, { day }: ParentAway): Day | null {
  const last = clutch?.sittings.at(-1);
  return last !== undefined && last.by === 'off' && last.day >= day ? last.day : null;
}

/** The other parent was seen sitting, or feeding them all, on a later day. */
function seenSince(brood: Brood, absence: ParentAway): boolean {
  if (brood.young.length > 0) return unfedSince(brood, absence).length === 0;
  const { day, parent } = absence;
  return (
    brood.clutch?.sittings.some((seen) => seen.day > day && seen.by !== 'off' && seen.by !== parent) ?? false
  );
}
