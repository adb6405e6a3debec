import { type Day, formatDay, type Span } from '../../days.ts';
import type { ClutchStory } from '../../rules/season/story.ts';

/** When what became of a clutch, and what was to be expected; the same in a pair's story and in a season's timeline. */
export function courseData(story: ClutchStory) {
  const { clutch, season, foreseen, sitting } = story;
  const window = (one: { from: Day; likely: Day; to: Day } | null) =>
    one === null ? null : { ...spanData(one), likely: formatDay(one.likely) };
  return {
    clutch: clutch.number,
    season,
    counted: clutch.counted,
    laid: spanData(story.laid),
    sitting: sitting === null ? null : { ...spanData(sitting.span), inferred: sitting.inferred },
    hatched: spanData(story.hatched),
    fledged: spanData(story.fledged),
    independent: spanData(story.independent),
    over: dayData(story.over),
    foreseen: {
      hatch: window(foreseen.hatch),
      fledge: window(foreseen.fledge),
      independent: spanData(foreseen.independent),
    },
  };
}

export function dayData(day: Day): string;
export function dayData(day: Day | null): string | null;
export function dayData(day: Day | null): string | null {
  return day === null ? null : formatDay(day);
}

export function spanData(span: Span): { from: string; to: string };
export function spanData(span: Span | null): { from: string; to: string } | null;
export function spanData(span: Span | null) {
  return span === null ? null : { from: formatDay(span.from), to: formatDay(span.to) };
}
