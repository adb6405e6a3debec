import { max, min } from 'd3-array';
import type { Day, Span } from '../../../days.ts';
import type { ClutchStory } from '../../../rules/season/story.ts';
import { LONGEST, lastDrawn } from '../../course-end.ts';
import { dateSpan } from '../../terminal/dates.ts';

/** What became of one clutch and when; and what was to be expected. */
export interface Course
  extends Pick<
    ClutchStory,
    'laid' | 'sitting' | 'hatched' | 'fledged' | 'independent' | 'over' | 'foreseen'
  > {
  begun: Day;
}

/** From the first to the last day of anything that is drawn of some clutches. */
export function spanOf(courses: readonly Course[], day: Day): Span {
  const ends = courses.map((course) => {
    const foreseen = Math.max(...windowsOf(course).map(({ to }) => to), course.begun);
    return Math.max(lastDrawn(course, day), Math.min(course.begun + LONGEST, foreseen));
  });
  return { from: min(courses, ({ begun }) => begun) ?? day, to: max(ends) ?? day };
}

/** The four stages in which a clutch is kept, each with its step of the common colours and its letter. */
export const STAGES = [
  { name: 'laying', step: 'step-1', letter: '' },
  { name: 'sitting', step: 'step-2', letter: 's' },
  { name: 'in the nest', step: 'step-4', letter: 'n' },
  { name: 'out, still fed', step: 'step-5', letter: 'f' },
] as const;

type Stage = (typeof STAGES)[number];

/** The stages of a course, each up to the day before the next one; none that nobody knows of. */
export function stretchesOf(course: Course, last: Day): (Stage & { from: Day; to: Day })[] {
  const { begun, laid, sitting, hatched, fledged } = course;
  const starts = [laid === null ? null : begun, sitting?.span.to, hatched?.from, fledged?.from];
  return STAGES.flatMap((stage, i) => {
    const from = starts[i];
    const next = starts.slice(i + 1).find((start) => typeof start === 'number');
    const to = Math.min(next ?? last + 1, last + 1);
    return typeof from === 'number' && to > from ? [{ ...stage, from, to }] : [];
  });
}

interface Foreseen extends Span {
  what: string;
  likely: Day | null;
}

/** What was to be expected, as far as anything was known to expect it from. */
export function windowsOf({ foreseen: { hatch, fledge, independent } }: Course): Foreseen[] {
  return [
    ...(hatch === null ? [] : [{ what: 'hatching', ...hatch }]),
    ...(fledge === null ? [] : [{ what: 'leaving the nest', ...fledge }]),
    ...(independent === null ? [] : [{ what: 'independence', ...independent, likely: null }]),
  ];
}

/** The dates of a clutch in words: `laid 1–4 Mar; sitting from 4 Mar; …`. */
export function courseWords(course: Course): string {
  const { begun, laid, sitting, hatched, fledged, independent, over } = course;
  const span = (name: string, one: Span | null) =>
    one === null ? [] : [`${name} ${dateSpan(one.from, one.to, begun)}`];
  const parts = [
    ...span('laid', laid),
    ...span('sitting from', sitting?.span ?? null),
    ...span('hatched', hatched),
    ...span('fledged', fledged),
    ...span('independent', independent),
    ...(over === null || independent !== null
      ? []
      : span('over without independent young', { from: over, to: over })),
    ...windowsOf(course).flatMap((window) => span(`foreseen ${window.what}`, window)),
  ];
  return parts.length === 0 ? 'nothing known to the day' : parts.join('; ');
}
