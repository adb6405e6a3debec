import type { Day } from '../../../days.ts';
import type { ClutchStory } from '../../../rules/season/story.ts';
import { LONGEST, lastDrawn } from '../../course-end.ts';
import type { Page } from '../page.ts';

/** What the letters of a timeline mean. */
export const LEGEND =
  'e laying, s sitting, n in the nest, f fledged and fed, i independent; below it the foreseen days: h hatching, f leaving the nest, i feeding themselves. | is the day stood on.';

/** A clutch's course, a letter a day or few, and below it what was foreseen; nothing without any day. */
export function timelineLines(story: ClutchStory, day: Day, { width, look }: Page): string[] {
  const marks = foreseenMarks(story);
  const first = Math.min(story.begun, story.laid?.from ?? story.begun);
  const end = lastDrawn(story, day);
  const last = Math.min(first + LONGEST, Math.max(end, ...marks.map(({ to }) => to)));
  const perColumn = Math.max(1, Math.ceil((last - first + 1) / (width - 4)));
  const columns = Math.ceil((last - first + 1) / perColumn);
  const dayOf = (column: number) => first + column * perColumn;
  const real = Array.from({ length: columns }, (_, i) => (dayOf(i) > end ? ' ' : phaseOn(story, dayOf(i))));
  const foreseen = Array.from({ length: columns }, (_, i) => {
    const [from, to] = [dayOf(i), dayOf(i) + perColumn - 1];
    return marks.find((mark) => mark.from <= to && mark.to >= from)?.letter ?? ' ';
  });
  if (story.over === null && end === day) real[Math.floor((day - first) / perColumn)] = '|';
  const scale = perColumn === 1 ? [] : [look.muted(`    a letter stands for ${perColumn} d`)];
  return [
    `    ${real.join('').trimEnd()}`,
    ...(marks.length === 0 ? [] : [look.muted(`    ${foreseen.join('').trimEnd()}`)]),
    ...scale,
  ];
}

function phaseOn({ sitting, hatched, fledged, independent }: ClutchStory, on: Day): string {
  if (independent !== null && on >= independent.from) return 'i';
  if (fledged !== null && on >= fledged.from) return 'f';
  if (hatched !== null && on >= hatched.from) return 'n';
  return sitting !== null && on >= sitting.span.to ? 's' : 'e';
}

interface Mark {
  letter: string;
  from: Day;
  to: Day;
}

function foreseenMarks({ foreseen: { hatch, fledge, independent } }: ClutchStory): Mark[] {
  return [
    ...(hatch === null ? [] : [{ letter: 'h', from: hatch.from, to: hatch.to }]),
    ...(fledge === null ? [] : [{ letter: 'f', from: fledge.from, to: fledge.to }]),
    ...(independent === null ? [] : [{ letter: 'i', from: independent.from, to: independent.to }]),
  ];
}
