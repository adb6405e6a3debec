import type { Day } from '../days.ts';
import type { ClutchStory } from '../rules/season/story.ts';

/** The longest course that is drawn, in days: what nobody wrote an end of does not go on for years. */
export const LONGEST = 120;

/**
 * The last day that is drawn of a clutch: that on which it was over, or the day stood on. Young of which nobody wrote that
 * they feed themselves are not drawn as fed past the days on which they should have begun to.
 */
export function lastDrawn(
  { begun, over, fledged, foreseen }: Pick<ClutchStory, 'begun' | 'over' | 'fledged' | 'foreseen'>,
  day: Day,
): Day {
  const grown = Math.max(foreseen.independent?.to ?? Number.POSITIVE_INFINITY, fledged?.to ?? begun);
  return Math.max(begun, Math.min(over ?? grown, day, begun + LONGEST));
}
