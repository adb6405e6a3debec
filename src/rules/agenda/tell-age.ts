import type { Day } from '../../days.ts';
import { daysRange } from '../../words.ts';
import type { Brood } from '../brood.ts';
import type { Anchor } from './anchors.ts';
import * as anchors from './anchors.ts';
import * as is from './conditions.ts';
import { inHandsOffDays } from './hands-off.ts';
import type { Milestone } from './milestones.ts';
import { RINGS_TRIED } from './state.ts';
import { afterWindow, byProfile, days, rangeOf, SAFE_EARLY } from './windows.ts';

/** Days, from the one on which they were found, in which a keeper can still say what they looked like. */
const REMEMBERED = 2;

export const ringDays = byProfile('ringAge', SAFE_EARLY, RINGS_TRIED);

/** Whether rings can be tried on at least one day, as far as it is known how old they are. */
function isRingDayLeft(brood: Brood, anchor: Anchor): boolean {
  const window = ringDays(anchor, brood);
  if (window?.to == null) return true;
  for (let day: Day = Math.max(window.from, anchor.span.to); day <= window.to; day++)
    if (!inHandsOffDays(brood, day)) return true;
  return false;
}

/** Of young found on a day that says too little of their age: the oldest that they can be must be left alone before the youngest can be ringed. */
export const tellAge = {
  task: 'tell-age',
  when: `the day on which they were found … + ${REMEMBERED} d, where they may be too old for every ring day`,
  doneBy: '`aged`',
  over: 'a day for rings is left, they wear rings, or the room has none; after its days',
  say: 'write how old the chicks are',
  explain:
    'Where nobody looked for long, a chick found in the nest may be a day old or about to leave it, and a nest that may be about to fledge is to be left alone: no ring day is then asked for. Whoever saw the chicks can mostly tell their age within a day or two: `aged: {5: all}` in the line of that look. Do not look again for it.',
  needsLook: false,
  // Who was only heard was seen by nobody.
  anchors: (brood) =>
    anchors.unringed(brood).filter(({ who }) => who?.some((one) => 'placeholder' in one && !one.placeholder)),
  window: (anchor, brood) => {
    const age = rangeOf(anchor.profile ?? brood.profile, 'ringAge');
    if (age === null) return null;
    return { ...days(0, REMEMBERED)(anchor), days: '', basis: `rings go on at ${daysRange(age)}` };
  },
  done: isRingDayLeft,
  moot: is.any(is.noRinging, ({ pair }) => pair.nestLooks === 'never'),
  lapses: afterWindow(0),
} as const satisfies Milestone;
