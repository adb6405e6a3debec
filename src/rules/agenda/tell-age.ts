import { shortSpan } from '../../days.ts';
import { hatchedOn } from '../../room/clock.ts';
import type { Bird } from '../../room/model.ts';
import type { Profile } from '../../species/profile.ts';
import { daysRange } from '../../words.ts';
import type { Brood } from '../brood.ts';
import * as anchors from './anchors.ts';
import * as is from './conditions.ts';
import { leftAloneFrom } from './hands-off.ts';
import type { Milestone } from './milestones.ts';
import { RINGS_TRIED } from './state.ts';
import { afterWindow, byProfile, days, rangeOf, SAFE_EARLY } from './windows.ts';

/** Days, from the one on which they were found, in which a keeper can still say what they looked like. */
const REMEMBERED = 2;

/** The days on which rings are tried on. */
export const ringDays = byProfile('ringAge', SAFE_EARLY, RINGS_TRIED);

/**
 * Whether the day of its hatching is known so badly that the nest is left alone, as it may be about to leave it, before the
 * first day on which a ring can be tried on, or before the second day after it was found.
 */
function isTooOldForAll(bird: Bird, profile: Profile | null): boolean {
  const ringAge = profile?.ringAge?.value;
  const fledging = profile?.fledging?.value;
  const hatched = bird.placeholder ? null : hatchedOn(bird);
  if (hatched === null || ringAge === undefined || fledging === undefined) return false;
  const first = Math.max(hatched.from + ringAge.low - RINGS_TRIED, hatched.to + 2);
  return first >= leftAloneFrom(hatched, fledging, ringAge);
}

function isUnsure(bird: Bird): boolean {
  const hatched = hatchedOn(bird);
  return hatched !== null && hatched.from !== hatched.to;
}

function skipsRings({ clutch }: Brood): boolean {
  return clutch?.skipped.some(({ task }) => task === 'ring') ?? false;
}

/** Of young found on a day that says too little of their age: the oldest that they can be must be left alone before the youngest can be ringed. */
export const tellAge = {
  task: 'tell-age',
  when: `the day on which they were found … + ${REMEMBERED} d, where they may be too old for every ring day`,
  doneBy: '`aged`',
  over: 'they wear rings, the room or the clutch has none, or after its days',
  say: 'write how old the chicks are',
  explain:
    'Where nobody looked for long, a chick found in the nest may be a day old or about to leave it, and a nest that may be about to fledge is to be left alone: no ring day is then asked for. Whoever saw the chicks can mostly tell their age within a day or two: `aged: {5: all}` in the line of that look. Do not look again for it.',
  needsLook: false,
  anchors: (brood) =>
    anchors.unringed(brood).flatMap((anchor) => {
      const birds = (anchor.who ?? []).filter((one): one is Bird => !('laid' in one));
      if (!birds.some((bird) => isTooOldForAll(bird, anchor.profile ?? brood.profile))) return [];
      // Of those found on that day all whose age is not known better: they are left alone together.
      const who = birds.filter((bird) => !bird.placeholder && isUnsure(bird));
      const from = Math.min(...who.map((bird) => hatchedOn(bird)?.from ?? anchor.span.to));
      const span = { ...anchor.span, from };
      return [{ ...anchor, who, span, says: `hatched ${shortSpan(span)}` }];
    }),
  window: (anchor, brood) => {
    const age = rangeOf(anchor.profile ?? brood.profile, 'ringAge');
    if (age === null) return null;
    return { ...days(0, REMEMBERED)(anchor), days: '', basis: `rings go on at ${daysRange(age)}` };
  },
  done: () => false,
  moot: is.any(is.noRinging, ({ pair }) => pair.nestLooks === 'never', skipsRings),
  lapses: afterWindow(0),
} as const satisfies Milestone;
