import { h } from 'preact';
import { describe, expect, it } from 'vitest';
import { markupOf } from '../../../src/report/page/document.tsx';
import { courseWords, spanOf, stretchesOf } from '../../../src/report/page/timeline/course.ts';
import { wholeMonths } from '../../../src/report/page/timeline/months.tsx';
import { type Lane, Timeline } from '../../../src/report/page/timeline.tsx';
import { clutchStories } from '../../../src/rules/season/story.ts';
import { day, room } from '../../rooms.ts';
import { known, ON } from '../seasons.ts';

const courses = (on = ON) => {
  const understood = room(known, on);
  const clutches = understood.pairs.flatMap((pair) => pair.clutches);
  return [...clutchStories(understood, clutches)].map((story) => ({ ...story, begun: story.clutch.opened }));
};

const lanes = (on = ON): Lane[] =>
  courses(on).map((course, i) => ({ name: `pair ${i}`, clutch: i + 1, course, cells: [i] }));

const drawn = (some: readonly Lane[], on = ON) =>
  markupOf(
    h(Timeline, {
      caption: null,
      heads: { name: 'pair', cells: ['eggs'] },
      lanes: some,
      day: day(on),
      id: 'a',
    }),
  );

describe('the course of a clutch', () => {
  it('has its dates in words, real ones before those foreseen', () => {
    const [first] = courses();
    expect(first && courseWords(first)).toMatch(
      /^laid 1–5 Mar; sitting from 3–4 Mar; hatched 16 Mar; fledged 4 Apr; independent 25 Apr; foreseen hatching \d+–\d+ Mar; foreseen leaving the nest \d+–\d+ Apr; foreseen independence /,
    );
  });

  it('goes from stage to stage without a gap, up to its last day', () => {
    const [first] = courses();
    const stages = first === undefined ? [] : stretchesOf(first, day('2026-04-25'));
    expect(stages.map(({ name, from, to }) => [name, from, to])).toEqual([
      ['laying', day('2026-03-01'), day('2026-03-04')],
      ['sitting', day('2026-03-04'), day('2026-03-16')],
      ['in the nest', day('2026-03-16'), day('2026-04-04')],
      ['out, still fed', day('2026-04-04'), day('2026-04-26')],
    ]);
  });

  it('is drawn no further than to the day stood on; what is foreseen goes on', () => {
    const on = '2026-03-10';
    const [first] = courses(on);
    if (first === undefined) throw new Error('no clutch');
    expect(stretchesOf(first, day(on)).at(-1)).toMatchObject({ name: 'sitting', to: day('2026-03-11') });
    expect(spanOf([first], day(on)).to).toBeGreaterThan(day(on));
  });

  it('does not go on for years where nobody wrote an end', () => {
    const pair =
      'pair: LW-1\nspecies: lavender waxbill\nlog:\n  - {date: 2026-03-01, laid: 4, sitting}\n  - {date: 2026-03-14, hatched: 2}\n';
    const left = room({ 'LW-1': pair }, '2029-01-01');
    const [story] = clutchStories(left, left.pairs[0]?.clutches ?? []);
    if (story === undefined) throw new Error('no clutch');
    const { to } = spanOf([{ ...story, begun: story.clutch.opened }], left.day);
    expect(to - day('2026-03-01')).toBeLessThanOrEqual(120);
  });
});

describe('a timeline', () => {
  it('has a row a clutch, each drawn and each in words', () => {
    const text = drawn(lanes());
    expect(text.match(/<tr/g)).toHaveLength(1 + lanes().length);
    for (const course of courses()) expect(text).toContain(courseWords(course));
  });

  it('marks where a clutch ended with young, and where with none', () => {
    const [first, ...rest] = lanes();
    expect(drawn(first === undefined ? [] : [first])).toContain('class="good"');
    const failed = rest.filter(({ course }) => course.over !== null && course.independent === null);
    expect(failed.length).toBeGreaterThan(0);
    expect(drawn(failed)).not.toContain('class="good"');
    expect(drawn(failed)).toContain('×');
  });

  it('shows names as text, and nothing without clutches', () => {
    const [first] = lanes();
    const name = '<script>alert(1)</script>';
    expect(first && drawn([{ ...first, name }])).not.toContain('<script');
    expect(drawn([])).toBe('');
  });

  it('names each month once, with its year at the first of a year', () => {
    const range = { from: day('2025-11-01'), to: day('2026-02-28') };
    const text = markupOf(
      h(Timeline, {
        caption: null,
        heads: { name: '', cells: [] },
        lanes: lanes(),
        day: day(ON),
        range,
        id: 'a',
      }),
    );
    expect([...text.matchAll(/class="month(?: odd)?"[^>]*>([^<]*)</g)].map((match) => match[1])).toEqual([
      '2025',
      'Nov',
      'Dec',
      '2026',
      'Jan',
      'Feb',
    ]);
  });

  it('covers whole months, also over New Year', () => {
    expect(wholeMonths({ from: day('2025-12-31'), to: day('2025-12-31') })).toEqual({
      from: day('2025-12-01'),
      to: day('2025-12-31'),
    });
  });
});
