import type { Day, Span } from '../../../days.ts';
import { type Clutch, hatchedFrom } from '../../../room/model.ts';
import type { ClutchStory, PairStory } from '../../../rules/season/story.ts';
import { count, either, speciesName } from '../../../words.ts';
import { dateSpan, shortDate } from '../dates.ts';
import { visible } from '../visible.ts';

/** Who the pair is: its id, species, parents and housing. */
export function titleOf(story: PairStory): string {
  return `${visible(story.pair.id)} · ${leadOf(story)}`;
}

/** The same without its id. */
export function leadOf({ pair }: PairStory): string {
  const parents = [...pair.cock, ...pair.hen].length === 0 ? 'parents unknown' : parentsOf(pair);
  const parts = [speciesName(pair.species), parents, ...(pair.housing === null ? [] : [pair.housing])];
  return parts.map(visible).join(' · ');
}

/** What stands behind a clutch's number: when it was begun, in which nest, and by whom where that is no longer the pair. */
export function clutchHead({ clutch, begun }: ClutchStory): string {
  const { pair, site } = clutch;
  const parents = parentsOf(clutch);
  return [
    `begun ${shortDate(begun, OTHER_YEAR)}`,
    ...(site === null ? [] : [visible(site)]),
    ...(parents === parentsOf(pair) ? [] : [visible(parents)]),
  ].join(' · ');
}

/** A day of another year than any clutch: beside it a date is written with its year. */
const OTHER_YEAR = 0;

function parentsOf({ cock, hen }: Pick<Clutch, 'cock' | 'hen'>): string {
  return [cock, hen].map((names) => either(names) ?? 'unknown').join(' × ');
}

/** What came of a clutch, step by step, each with its days, how many, and what was foreseen. */
export function clutchFacts(story: ClutchStory): string[][] {
  const day = story.begun;
  const { clutch, hatched, fledged, independent, foreseen, laid, sitting } = story;
  const { eggs, chicks } = clutch;
  const size = clutch.counted ? count(eggs.length, 'egg') : 'unknown size';
  const known = hatchedFrom(clutch) !== null;
  const window = (one: { from: Day; likely: Day; to: Day } | null) =>
    one === null ? '' : `foreseen ${dateSpan(one.from, one.to, day)}, likely ${shortDate(one.likely, day)}`;
  const of = (k: number, n: number) => (n === 0 ? '' : `${k} of ${n}`);
  const rows: [string, Span | null, string, string][] = [
    ['laid', laid, size, ''],
    ['sitting', sitting?.span ?? null, sitting?.inferred === true ? 'inferred' : '', ''],
    [
      'hatched',
      hatched,
      of(chicks.length, clutch.counted && known ? eggs.length : 0),
      window(foreseen.hatch),
    ],
    [
      'fledged',
      fledged,
      of(chicks.filter((bird) => bird.fledged !== null).length, known ? chicks.length : 0),
      window(foreseen.fledge),
    ],
    [
      'independent',
      independent,
      of(chicks.filter((bird) => bird.independent !== null).length, known ? chicks.length : 0),
      foreseen.independent === null
        ? ''
        : `foreseen ${dateSpan(foreseen.independent.from, foreseen.independent.to, day)}`,
    ],
  ];
  return rows
    .filter(([, span, , more]) => span !== null || more !== '')
    .map(([what, span, how, more]) => [
      what,
      span === null ? '–' : dateSpan(span.from, span.to, day),
      how,
      more,
    ]);
}
