import * as anchors from './anchors.ts';
import * as is from './conditions.ts';
import type { Milestone } from './milestones.ts';
import { afterWindow, days, plus, rangeOf, SAFE_EARLY } from './windows.ts';

/** Days after the first hatching in which the chicks find out what is food and what is water. */
const FIRST_DAYS = 3;

/** Tasks of species whose chicks run with the hen from the first day: nobody feeds them, but they have to be warm. */
export const onFootTasks = [
  {
    task: 'chicks-on-foot',
    when: `the day before the hatch window … ${FIRST_DAYS} d after the first hatching; only for chicks that walk off at once`,
    doneBy: 'nothing: it is for knowing',
    over: 'after its days',
    say: 'tiny food and shallow water on the floor',
    explain:
      'Chicks that leave the nest as they hatch feed themselves from the first day: crumbs fine enough for them, strewn on the floor. Water so shallow that they cannot drown in it, best between pebbles. They slip through gaps and wide mesh at the floor, and get lost from the hen’s warmth (all common practice).',
    needsLook: false,
    anchors: (brood) => {
      const hatched = anchors.firstHatching(brood);
      return hatched.length > 0 ? hatched : anchors.hatchWindow(brood);
    },
    window: (anchor, { hatched }) =>
      hatched.length > 0
        ? { ...days(-1, FIRST_DAYS, SAFE_EARLY)(anchor), days: plus(FIRST_DAYS, null) }
        : { ...days(-1, 0, SAFE_EARLY)(anchor), days: plus(-1, null) },
    done: is.noneMayComeOrLive,
    moot: is.not(is.onFoot),
    lapses: afterWindow(0),
  },
  {
    task: 'chick-warmth',
    when: 'first hatching … last hatching + the profile’s last day of brooding; only for chicks that walk off at once',
    doneBy: 'nothing: it is for knowing',
    over: 'no chick is alive, or after its days',
    say: 'see that the chicks are kept warm',
    explain:
      'Chicks that run with the hen from the first day are brooded on the floor, by night and again and again by day. One parent that broods them is enough. Where none does, they need a brooder at once: a warm place, and a cooler one beside it, so that they can choose (common practice). Chicks that pipe loudly and crowd together are cold.',
    needsLook: false,
    anchors: anchors.onTheFloor,
    window: (anchor, { profile }) => {
      const brooding = rangeOf(profile, 'brooding');
      return brooding === null ? null : days(0, brooding.high, SAFE_EARLY)(anchor);
    },
    done: is.noYoung,
    moot: is.not(is.onFoot),
    lapses: afterWindow(0),
  },
] as const satisfies readonly Milestone[];
