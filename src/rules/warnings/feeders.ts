import { type Day, shortDay } from '../../days.ts';
import { grouped } from '../../grouped.ts';
import type { Bird, Chick } from '../../room/model.ts';
import type { ParentAway } from '../absences.ts';
import { type Brood, stillFed } from '../brood.ts';
import { names } from './words.ts';

export type Feeder = Bird['fedBy'][number]['by'];

/** Who was last seen feeding a young bird by a day: all that were written of that last day. */
export function feedersOf(bird: Bird, by: Day): { day: Day; who: Set<Feeder> } | null {
  const seen = bird.fedBy.filter(({ day }) => day <= by);
  if (seen.length === 0) return null;
  const day = Math.max(...seen.map((one) => one.day));
  return { day, who: new Set(seen.filter((one) => one.day === day).map((one) => one.by)) };
}

/**
 * The young of a nest that nobody who is left was seen feeding on a later day than the loss, nor had a full crop then.
 * Who came out or was counted only after the others were fed asks for no new proof: the parent goes on.
 */
export function unfedSince(brood: Brood, absence: ParentAway): Chick[] {
  const { pair, hatched } = brood;
  const days = hatched.flatMap((bird) => fedDays(bird, absence));
  const last = days.length === 0 ? Number.POSITIVE_INFINITY : Math.max(...days);
  return stillFed(brood).filter((bird) => {
    const here = bird.stays.find(({ nest }) => nest === pair)?.from ?? last;
    return fedDays(bird, absence).length === 0 && here <= last;
  });
}

/** The later days on which it was fed by somebody who is still there, or had a full crop; none before an empty one, or its death. */
export function fedDays(
  { fedBy, crops, fate }: Bird,
  { day, parent }: Pick<ParentAway, 'day' | 'parent'>,
): Day[] {
  if (fate?.kind === 'died') return [];
  const empty = crops.findLast(({ crop }) => crop === 'empty')?.day ?? day;
  const seen = [...fedBy.filter(({ by }) => by !== parent), ...crops.filter(({ crop }) => crop === 'full')];
  return seen.map((one) => one.day).filter((on) => on > Math.max(day, empty));
}

/** `the cock fed c1 and c2 on 3 Apr; nobody wrote who feeds c3`. */
export function feedingWords(brood: Brood, young: readonly Bird[], by: Day): string {
  const feedings = young.map((bird) => {
    const fed = feedersOf(bird, by);
    const who = [...(fed?.who ?? [])]
      .sort()
      .map((one) => (one === 'hand' ? 'your hand' : `the ${one}`))
      .join(' and ');
    return { bird, who, day: fed?.day ?? null };
  });
  const lines = grouped(feedings, ({ who, day }) => `${who} ${day}`);
  return [...lines.values()]
    .sort((a, b) => Number(a[0].day === null) - Number(b[0].day === null))
    .map((some) => {
      const [{ who, day }] = some;
      const whom = names(
        brood,
        some.map(({ bird }) => bird),
      );
      return day === null ? `nobody wrote who feeds ${whom}` : `${who} fed ${whom} on ${shortDay(day)}`;
    })
    .join('; ');
}
