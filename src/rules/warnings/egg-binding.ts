import { type Day, shortDay } from '../../days.ts';
import { layingInterval } from '../../room/lives.ts';
import type { Bird, Pair } from '../../room/model.ts';
import { isDown } from '../../room/nests-down.ts';
import { breathesBadly, illnessOf, type Sign } from '../illness.ts';
import { onlyOf } from '../stock/names.ts';
import type { Found, View, Warning } from './warning.ts';
import { FOR_PEOPLE } from './words.ts';

interface Binding extends Found {
  hen: string;
  words: string;
  straining: boolean;
  breathing: boolean;
}

/** Days for which it is said; a hen that lives with it longer is a bird that is unwell. */
const SHOWN = 3;
/** So many days after the last egg, the next may still be on its way. */
const AFTER_EGG = 4;
/** So many days after nest building or display, a first egg may be on its way. */
const AFTER_NEST = 21;
/** What may be an egg that presses, about the time of laying (from memory: also hard breathing with a bobbing tail). */
const WITH_AN_EGG: readonly Sign[] = ['down', 'labouring'];

export const eggBinding: Warning<Binding> = {
  kind: 'egg-binding',
  levels: ['act'],
  health: true,
  when: '`unwell` says of a hen that she strains, or, about the time of laying, that she is fluffed, on the floor, breathes hard or cannot perch',
  over: `she laid, was \`treated\`, is \`well again\`, or died; after ${SHOWN} d it is an unwell bird`,
  explain:
    'A hen that cannot pass her egg dies of it quickly, a small one within a day or two. First eggs, very young and old hens, many eggs, cold and little calcium go before it (veterinary and keepers’ pages). It is an emergency for an avian vet. Keep her warm and quiet on the way there; do not press, and do not break the egg. Calcium on offer all the year and a limit to the clutches of a season are what prevents it.',
  find: (view) =>
    view.room.birds.flatMap((bird) => {
      const found = bindingOf(view, bird);
      if (found === null) return [];
      const { pair, day, text, straining, breathing } = found;
      const id = { pair: pair?.id ?? null, bird: bird.id, clutch: null };
      return [{ ...id, level: 'act', date: day, hen: bird.id, words: text, straining, breathing }];
    }),
  say: ({ hen, words, straining, breathing, date }) => ({
    text: `The hen ${hen}: “${words}” on ${shortDay(date)}. ${straining ? 'She may not be able to pass an egg' : 'About the time of laying that can be an egg that she cannot pass'}: egg binding kills small hens within a day or two and is an emergency for an avian vet.`,
    check: `call the avian vet now. On the way keep her warm, quiet and in the dark; do not press, and do not break the egg${breathing ? FOR_PEOPLE : ''}`,
  }),
};

/** The last sign that a hen cannot pass an egg, while that is still to be feared; null for every other bird. */
export function bindingOf(
  view: View,
  bird: Bird,
): { pair: Pair | null; day: Day; text: string; straining: boolean; breathing: boolean } | null {
  const illness = illnessOf(bird, view.day);
  if (illness === null) return null;
  const pairs = view.room.pairs.filter(({ hen }) => onlyOf(hen, view.find) === bird);
  if (pairs.length === 0 && bird.sex !== 'hen') return null;
  const sign = illness.seen.findLast(
    ({ day, signs }) =>
      signs.includes('straining') ||
      (WITH_AN_EGG.some((one) => signs.includes(one)) && pairs.some((pair) => nearLaying(pair, day))),
  );
  if (sign === undefined || view.day - sign.day > SHOWN) return null;
  if (bird.treated.some(({ day }) => day >= sign.day)) return null;
  const laidSince = pairs.some(({ clutches }) =>
    clutches.some(({ eggs }) => eggs.some((egg) => egg.laid.to > sign.day)),
  );
  if (laidSince) return null;
  return {
    pair: pairs.at(-1) ?? null,
    day: sign.day,
    text: sign.text,
    straining: sign.signs.includes('straining'),
    breathing: illness.seen.some(({ signs }) => breathesBadly(signs)),
  };
}

/** Whether an egg may be on its way on this day. */
function nearLaying(pair: Pair, day: Day): boolean {
  const last = pair.clutches.filter(({ eggs }) => eggs.length > 0).at(-1);
  const lastLaid = last?.eggs.at(-1)?.laid.to ?? Number.NEGATIVE_INFINITY;
  if (last?.chicks.length === 0 && day - lastLaid <= AFTER_EGG + layingInterval(pair.profile)) return true;
  if (pair.here.eggs.size > 0) return false;
  const building = [
    ...pair.nestStates.filter(({ state }) => !isDown(state)).map((state) => state.day),
    ...pair.events.filter(({ key }) => key === 'courting').map((event) => event.day),
  ];
  return building.some((on) => on > lastLaid && on <= day && day - on <= AFTER_NEST);
}
