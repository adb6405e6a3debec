import type { Day } from '../../days.ts';
import { clutchId } from '../../room/model.ts';
import type { Duration } from '../../rules/forecast/duration.ts';
import type { PastForecast, TrackRecord } from '../../rules/forecast/track-record.ts';
import type { OwnExperience, SpeciesView } from '../../rules/species/view.ts';
import type { Profile, Range, Sourced } from '../../species/profile.ts';
import { type Trait, traitKeys, traits } from '../../species/traits.ts';
import { columns } from './columns.ts';
import { dateSpan, shortDate } from './dates.ts';
import { type Styles, styles } from './style.ts';
import { visible } from './visible.ts';
import { pad, wrap } from './width.ts';
import { count } from './words.ts';

interface Options {
  width: number;
  color: boolean;
}

const KEY = 18;
const VALUE = 12;
/** z of a normal distribution's 90 % point. */
const NINETY = 1.2816;

/** A profile with the source of every value, and beside it what this room saw and what its forecasts use. */
export function speciesText(view: SpeciesView, { width, color }: Options): string {
  const look = styles(color);
  const { profile, pairs } = view;
  const names = [profile.scientific, ...profile.also].filter((name) => name !== '');
  const lines = [
    look.heading(visible(profile.species)),
    ...wrap(visible(names.join(', ')), width).map(look.muted),
    pairs.length === 0 ? 'not kept in this room' : `in this room: ${visible(pairs.join(', '))}`,
    '',
    ...traitKeys.flatMap((key) => {
      const sourced = profile[key] as Sourced<unknown> | null;
      const own = key === 'incubation' || key === 'fledging' ? view.own[key] : null;
      return [...traitLines(traits[key], sourced, width, look), ...experienceLines(own, width, look)];
    }),
    '',
    ...wrap(
      'Ages count from the day of hatching (day 0), incubation from the day full sitting began. Ring sizes: what your ring issuer lists goes before this. Write a correction into species/ of the room; own values go before these.',
      width,
    ).map(look.muted),
  ];
  return `${lines.join('\n')}\n`;
}

function traitLines(trait: Trait, sourced: Sourced<unknown> | null, width: number, look: Styles): string[] {
  const head = pad(trait.name, KEY);
  if (sourced === null) return [`${head}${look.muted('unknown')}`];
  const value = pad(valueText(sourced.value, trait.unit), VALUE);
  const { grade, source } = sourced;
  const more = source.startsWith(grade) ? source.slice(grade.length) : `: ${source}`;
  const origin = `${grade}${more}`;
  const note = sourced.note === undefined ? '' : ` (${sourced.note})`;
  const indent = KEY + VALUE;
  const [first = '', ...rest] = wrap(visible(origin + note), Math.max(20, width - indent));
  return [
    `${head}${look.task(value)}${look.muted(first)}`,
    ...rest.map((line) => ' '.repeat(indent) + look.muted(line)),
  ];
}

/** `11–13 d`, `2.0–2.3 mm`, `last`. */
function valueText(value: unknown, unit: string): string {
  if (typeof value === 'string') return value;
  const { low, high } = value as Range;
  const short = unit === 'days' ? 'd' : unit === 'egg' ? '' : unit;
  const figures = low === high ? `${low}` : low < 0 ? `${low} to ${high}` : `${low}–${high}`;
  return `${unit === 'egg' ? 'egg ' : ''}${figures}${short === '' ? '' : ` ${short}`}`;
}

function experienceLines(own: OwnExperience | null, width: number, look: Styles): string[] {
  if (own === null) return [];
  const { observed, n, duration, basis, record } = own;
  const seen =
    observed === null
      ? 'this room: no clutch of known length yet'
      : `this room: ${count(n, 'clutch', 'clutches')}, mean ${observed.mean.toFixed(1)} d, ${observed.low.toFixed(1)}–${observed.high.toFixed(1)} d`;
  const now = `forecasts use ${daysOf(duration)} (${basis})`;
  const kept = record === null ? [] : [recordSentence(record)];
  return [seen, now, ...kept].flatMap((text) =>
    wrap(text, Math.max(20, width - KEY)).map((line) => ' '.repeat(KEY) + look.coming(line)),
  );
}

/** `12.1 d, nine in ten between 10.9 and 13.3`: what the duration says of one egg or chick. */
function daysOf({ mean, variance }: Duration): string {
  const half = NINETY * Math.sqrt(variance);
  return `${mean.toFixed(1)} d, eight in ten within ${(mean - half).toFixed(1)}–${(mean + half).toFixed(1)}`;
}

function recordSentence({ n, medianError, inside, claimed, crps, book }: TrackRecord): string {
  const percent = (share: number) => `${Math.round(share * 100)} %`;
  const figures = `${percent(inside)} inside a window that claims ${percent(claimed)}; mean CRPS ${crps.toFixed(2)} d`;
  return (
    `past forecasts: half within ${medianError} d of the likely day, ${figures} over ${count(n, 'clutch', 'clutches')}` +
    ` (book alone: ${book.medianError} d, ${book.crps.toFixed(2)} d)`
  );
}

/** Every past forecast beside what happened. */
export function recordText(view: SpeciesView, day: Day, { width, color }: Options): string {
  const look = styles(color);
  const lines = (['incubation', 'fledging'] as const).flatMap((kind) => {
    const own = view.own[kind];
    const title = look.heading(kind === 'incubation' ? 'First to hatch' : 'First to fledge');
    if (own === null || own.record === null) return [title, '  no clutch of known length yet', ''];
    const rows = [...own.past].sort((a, b) => a.happened - b.happened).map((past) => recordRow(past, day));
    const head = ['clutch', 'window', 'likely', 'happened', 'off', 'CRPS', ''];
    const [first = '', ...table] = columns([head, ...rows], { width, indent: 2, right: [4, 5], cut: 0 });
    const sentence = wrap(recordSentence(own.record), width - 2).map((line) => `  ${line}`);
    return [title, look.muted(first), ...table, ...sentence, ''];
  });
  const how =
    'Each clutch is forecast anew from all other clutches of the species in this room; its own outcome never teaches its own forecast. CRPS is the distance of the whole forecast from what happened, in days: less is better.';
  const heading = look.heading(`${visible(view.profile.species)}: forecasts and what happened`);
  return `${[heading, '', ...lines, ...wrap(how, width).map(look.muted)].join('\n')}\n`;
}

function recordRow({ clutch, from, to, likely, happened, crps }: PastForecast, day: Day): string[] {
  const off = happened - likely;
  return [
    visible(clutchId(clutch)),
    dateSpan(from, to, day),
    shortDate(likely, day),
    shortDate(happened, day),
    off > 0 ? `+${off}` : `${off}`,
    crps.toFixed(2),
    happened < from ? 'early' : happened > to ? 'late' : '',
  ];
}

/** The list of species, one a line. */
export function speciesListText(profiles: readonly Profile[], { width, color }: Options): string {
  const look = styles(color);
  if (profiles.length === 0)
    return 'No species fits. Without filters, `nestlog species` lists all there are.\n';
  const days = (range: Sourced<Range> | null) => (range === null ? '?' : valueText(range.value, 'days'));
  const rows = profiles.map(({ species, incubation, fledging, liveFood, scientific }) => [
    visible(species),
    days(incubation),
    days(fledging),
    liveFood?.value ?? '?',
    visible(scientific),
  ]);
  const head = ['species', 'sitting', 'fledging', 'live food', 'scientific name'];
  const [first = '', ...table] = columns([head, ...rows], { width, indent: 0, cut: 4 });
  const close = `${count(profiles.length, 'species', 'species')}; one with its sources: nestlog species NAME`;
  return `${[look.muted(first), ...table, '', look.muted(close)].join('\n')}\n`;
}
