import type { OwnExperience, SpeciesView } from '../../rules/species/view.ts';
import type { Range, Sourced } from '../../species/profile.ts';
import { type Trait, traitKeys, traits } from '../../species/traits.ts';
import type { Screen } from './page.ts';
import { recordSentence } from './species/record.ts';
import { forecastText, valueText } from './species/value.ts';
import { type Styles, styles } from './style.ts';
import { visible } from './visible.ts';
import { pad, wrap } from './width.ts';

const KEY = 18;
const VALUE = 13;
/** Narrower than this, what stands in the third column is put on lines of its own. */
const THIRD = 24;

const ABOUT =
  'Ages count from the day of hatching (day 0), incubation from the day full sitting began. Ring sizes: what your ring issuer lists goes before this. Grades: open data (a row of a data set), read (in a document), common practice (what keepers usually do), from memory. Own values, written into species/ of the room, go before these.';

/** A profile with the source of every value, and beside it what this room saw and what its forecasts use. */
export function speciesText(view: SpeciesView, { width, color }: Screen): string {
  const look = styles(color);
  const { profile, pairs } = view;
  const names = [profile.scientific, ...profile.also].filter((name) => name !== '');
  const kept = pairs.length === 0 ? 'not kept in this room' : `in this room: ${visible(pairs.join(', '))}`;
  const lines = [
    ...wrap(visible(profile.species), width).map(look.heading),
    ...(names.length === 0 ? [] : wrap(visible(names.join(', ')), width).map(look.muted)),
    ...wrap(kept, width),
    '',
    ...traitKeys.flatMap((key) => {
      const own = key === 'incubation' || key === 'fledging' ? view.own[key] : null;
      return [
        ...traitLines(traits[key], profile[key], width, look),
        ...experienceOf(own).flatMap(([label, text]) => row(['', label, text], look.coming, width)),
      ];
    }),
    '',
    ...wrap(ABOUT, width).map(look.muted),
  ];
  return `${lines.join('\n')}\n`;
}

function traitLines(
  { name, unit }: Trait,
  sourced: Sourced<string | Range> | null,
  width: number,
  look: Styles,
): string[] {
  if (sourced === null) return [`${pad(name, KEY)}${look.muted('unknown')}`];
  const { grade, source, note } = sourced;
  const origin = source.startsWith(grade) ? source : `${grade} · ${source}`;
  const value = valueText(sourced.value, unit);
  const text = visible(note === undefined ? origin : `${origin}; ${note}`);
  return row([name, value, text], look.muted, width, look.task);
}

/** Key, value and text in three columns; on a narrow terminal the text goes below the value. */
function row(
  [key, value, text]: [string, string, string],
  quiet: (text: string) => string,
  width: number,
  loud: (text: string) => string = quiet,
): string[] {
  const head = pad(key, KEY);
  const room = width - KEY - VALUE;
  if (room < THIRD) {
    return [head + loud(value), ...wrap(text, width - 4).map((line) => `    ${quiet(line)}`)];
  }
  const [first = '', ...rest] = wrap(text, room);
  const gap = pad('', VALUE - value.length);
  return [
    `${head}${loud(value)}${gap}${quiet(first)}`,
    ...rest.map((line) => `${pad('', KEY + VALUE)}${quiet(line)}`),
  ];
}

/** What this room saw, what its forecasts use, and how good they were: label and text. */
function experienceOf(own: OwnExperience | null): [string, string][] {
  if (own === null || own.observed === null) return [];
  const { observed, n, duration, usual, basis, record } = own;
  const mean = `${observed.mean.toFixed(1)} d`;
  const seen = n === 1 ? `1 clutch, ${mean}` : `${n} clutches, mean ${mean}, ${forecastText(observed)}`;
  const now = `${duration.mean.toFixed(1)} d, nine in ten within ${forecastText(usual)} (${basis})`;
  return [
    ['seen here', seen],
    ['forecasts', now],
    ...(record === null ? [] : [['so far', recordSentence(record)] as [string, string]]),
  ];
}
