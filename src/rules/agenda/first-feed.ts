import { type Day, formatDay, shortDay } from '../../days.ts';
import { grouped } from '../../grouped.ts';
import type { Bird, Chick } from '../../room/model.ts';
import { broughtOn } from '../../room/where.ts';
import { type Brood, profileIn } from '../brood.ts';
import { type Anchor, hatching } from './anchors.ts';
import * as is from './conditions.ts';
import { latecomers } from './latecomers.ts';
import type { Milestone } from './milestones.ts';
import { afterAnchor, days } from './windows.ts';

/** A chick lives a day on its yolk. */
const HATCHED = { from: 1, to: 2 };
/** Who was fed elsewhere has none left. */
const BROUGHT = { from: 0, to: 1 };

/** Days after the hatching or the bringing for which it is asked. */
const SHOWN = 4;

/** Since when somebody is to be fed anew, and whether they came from elsewhere. */
type Mouths = Anchor & { brought?: true };

/**
 * The first hatching of these chicks, and that of each other clutch of which chicks came when nobody looked after those
 * before them any more: small ones beside big ones are easily passed over. Where they are not the whole brood they are named.
 */
function hatchings(brood: Brood, hatched: readonly Chick[]): Mouths[] {
  const told: Mouths[] = [];
  const clutches = [...grouped(hatched, ({ clutch }) => clutch).values()].flatMap((birds) =>
    hatching(birds, Math.min, 'first hatched').map((anchor) => ({ anchor, birds })),
  );
  for (const { anchor, birds } of clutches.sort((a, b) => a.anchor.span.to - b.anchor.span.to)) {
    const before = told.at(-1);
    const who = birds.filter((bird) => brood.young.includes(bird));
    if (before === undefined && hatched.length === brood.hatched.length) told.push(anchor);
    else if ((before === undefined || anchor.span.to > before.span.to + HATCHED.to) && who.length > 0)
      told.push({ ...anchor, who, profile: profileIn(brood, who[0] as Bird) });
  }
  return told;
}

/** Since they hatched, or since nestlings were brought here from another nest or from the hand; of both, where the days meet. */
function newMouths(brood: Brood): Mouths[] {
  const nestlings = brood.where === 'nest' ? brood.young.filter(({ fledged }) => fledged === null) : [];
  const last: Day = Math.max(...nestlings.map((bird) => broughtOn(bird) ?? Number.NEGATIVE_INFINITY));
  if (!Number.isFinite(last)) return hatchings(brood, brood.hatched);
  const who = nestlings.filter((bird) => broughtOn(bird) === last);
  const others = brood.hatched.filter((bird) => !who.includes(bird));
  const hatched = hatchings(brood, others).filter(({ span }) => span.to + HATCHED.to >= last);
  const span = { from: last, to: last };
  const profile = profileIn(brood, who[0] as Bird);
  return [...hatched, { span, says: `brought here ${shortDay(last)}`, who, profile, brought: true }];
}

export const firstFeed = {
  task: 'first-feed',
  when: `first hatching + ${HATCHED.from} … ${HATCHED.to} d, and that of another clutch that hatches in the nest later; the day on which nestlings are brought to the nest … + ${BROUGHT.to} d`,
  doneBy: '`feeding`; from the day after the hatching or the bringing also `crops`, `checked` or `heard`',
  over: `no chick is alive, or ${SHOWN} d after that`,
  say: 'see that the chicks are fed',
  explain:
    'A chick lives a day on its yolk. On the first and second day after the first hatching listen for begging, look for a full crop or for parents that carry food in. Small ones that hatch days later beside those of another clutch are easily passed over. Chicks brought from another nest or from the hand have no yolk left: watch on the same day and the next that they are taken on, and take back at once those that are not (common practice). A crop that is full on that day may have been filled where they came from: once you saw that they are fed here, write `feeding`.',
  needsLook: false,
  anchors: newMouths,
  // Some may hatch on the very day on which others are brought.
  each: (mouths: Mouths) => (mouths.brought ? `brought ${formatDay(mouths.span.to)}` : latecomers(mouths)),
  window: (mouths: Mouths) => {
    const { from, to } = mouths.brought ? BROUGHT : HATCHED;
    return days(from, to)(mouths);
  },
  done: is.any(is.seenAfter('crops', 'checked', 'heard'), is.seenSince('feeding')),
  moot: is.any(is.noYoung, is.allFledged, is.onFoot),
  lapses: afterAnchor(SHOWN),
} as const satisfies Milestone;
