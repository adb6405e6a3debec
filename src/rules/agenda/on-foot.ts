import * as anchors from './anchors.ts';
import * as is from './conditions.ts';
import type { Milestone } from './milestones.ts';

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
    window: ({ span }, { hatched }) => {
      const out = hatched.length > 0;
      const to = out ? span.to + FIRST_DAYS : span.to;
      return {
        from: span.from - 1,
        likely: null,
        to,
        days: out ? `+ ${FIRST_DAYS} d` : '− 1 d',
        basis: null,
      };
    },
    done: is.noneMayComeOrLive,
    moot: is.not(is.onFoot),
    lapses: (_anchor, { to, from }) => to ?? from,
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
    window: ({ span }, { profile }) => {
      const brooding = profile?.brooding?.value;
      if (brooding === undefined) return null;
      const { high } = brooding;
      return { from: span.from, likely: null, to: span.to + high, days: `+ 0–${high} d`, basis: null };
    },
    done: is.noYoung,
    moot: is.not(is.onFoot),
    lapses: (_anchor, { to, from }) => to ?? from,
  },
] as const satisfies readonly Milestone[];
