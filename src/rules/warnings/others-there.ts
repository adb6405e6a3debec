import { shortDay } from '../../days.ts';
import type { Brood } from '../brood.ts';
import { about, type Found, type View, type Warning } from './warning.ts';

/** Days after the death for which it is said. */
const SHOWN = 4;

export const othersThere: Warning<Found> = {
  kind: 'others-there',
  levels: ['watch'],
  health: false,
  when: 'a chick died in a nest where young were heard but never counted',
  over: `they are heard, seen or seen fed on a later day, or leave the nest; ${SHOWN} d after the death`,
  explain:
    'One dead chick does not empty a nest that nobody has counted: most broods are of several. Until somebody knows better they are fed and watched as before. Begging is heard best when a parent comes in; parents that still carry food in have somebody to feed. If nobody is heard and no food is carried in for a day, `died: all` on the day you are sure ends it.',
  find: ({ broods, day }: View) => broods.flatMap((brood) => othersIn(brood, day)),
  say: ({ date }) => ({
    text: `A chick died on ${shortDay(date)} in a nest nobody ever counted: others may be there. Their food goes on until somebody knows better.`,
    check: 'listen for begging; do the parents still carry food in?',
  }),
};

function othersIn(brood: Brood, today: number): Found[] {
  const { young, hatched, pair } = brood;
  if (!young.some(({ placeholder, fledged }) => placeholder && fledged === null)) return [];
  const deaths = hatched.flatMap(({ fate }) => (fate?.kind === 'died' ? [fate.day] : []));
  const last = Math.max(...deaths);
  if (deaths.length === 0 || today - last > SHOWN) return [];
  const heard = pair.events.some(
    ({ key, day }) => day > last && (key === 'heard' || key === 'feeding' || key === 'crops'),
  );
  return heard ? [] : [{ ...about(brood), level: 'watch', date: last }];
}
