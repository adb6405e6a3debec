import type { DurationKind } from '../../../rules/forecast/own-durations.ts';
import type { KeptSpecies } from '../../../rules/species/list.ts';
import type { Profile, Range, Sourced } from '../../../species/profile.ts';
import { count } from '../../../words.ts';
import { columns } from '../columns.ts';
import type { Screen } from '../page.ts';
import { styles } from '../style.ts';
import { visible } from '../visible.ts';
import { wrap } from '../width.ts';
import { forecastText, valueText } from './value.ts';

const UNKNOWN = '?';

/** The list of species, one a line. */
export function speciesListText(profiles: readonly Profile[], options: Screen): string {
  const rows = profiles.map(({ species, incubation, fledging, liveFood, scientific }) => [
    species,
    book(incubation),
    book(fledging),
    liveFood?.value ?? UNKNOWN,
    scientific,
  ]);
  const head = ['species', 'sitting', 'fledging', 'live food', 'scientific name'];
  return page([head, ...rows], { cut: 4, right: [] }, 'one with its sources: nestlog species NAME', options);
}

/** The species of this room: what the book says, and what the own clutches made of it. */
export function keptSpeciesText(kept: readonly KeptSpecies[], options: Screen): string {
  const rows = kept.map(({ profile, now }) => [
    profile.species,
    book(profile.incubation),
    ...learned(now.incubation),
    book(profile.fledging),
    ...learned(now.fledging),
  ]);
  const head = ['species', 'sitting', 'now', 'own', 'fledging', 'now', 'own'];
  const close =
    'now: the days, nine in ten, that forecasts use after so many own clutches; nestlog species --record: how good they were';
  return page([head, ...rows], { cut: 0, right: [3, 6] }, close, options);
}

function book(range: Sourced<Range> | null): string {
  return range === null ? UNKNOWN : valueText(range.value, 'days');
}

/** Nothing where the book alone is used. */
function learned(now: KeptSpecies['now'][DurationKind]): [string, string] {
  return now === null || now.n === 0 ? ['', ''] : [forecastText(now.range), `${now.n}`];
}

function page(
  rows: string[][],
  { cut, right }: { cut: number; right: number[] },
  close: string,
  { width, color }: Screen,
): string {
  const number = rows.length - 1;
  if (number === 0) return 'No species fits. Without filters, `nestlog species` lists all there are.\n';
  const look = styles(color);
  const cells = rows.map((row) => row.map(visible));
  const [first = '', ...table] = columns(cells, { width, indent: 0, right, cut });
  const end = wrap(`${count(number, 'species', 'species')}; ${close}`, width).map(look.muted);
  return `${[look.muted(first), ...table, '', ...end].join('\n')}\n`;
}
