import { formatDay } from '../../days.ts';
import { clutchId } from '../../room/model.ts';
import type { KindRecord } from '../../rules/species/records.ts';
import type { OwnExperience, SpeciesView } from '../../rules/species/view.ts';
import type { Profile } from '../../species/profile.ts';
import { traitKeys, traits } from '../../species/traits.ts';
import { jsonText } from './text.ts';

/** One species for programs: every value with source and grade, and this room's own experience. */
export function speciesJson({ profile, pairs, own }: SpeciesView): string {
  return jsonText({
    nestlog: 1,
    species: profile.species,
    scientific: profile.scientific === '' ? null : profile.scientific,
    also: profile.also,
    pairs,
    values: Object.fromEntries(traitKeys.map((key) => [traits[key].name, profile[key]])),
    own: { incubation: experienceData(own.incubation), fledging: experienceData(own.fledging) },
  });
}

function experienceData(own: OwnExperience | null) {
  if (own === null) return null;
  const { n, observed, duration, past, record } = own;
  return {
    n,
    observed,
    forecast: { mean: duration.mean, variance: duration.variance },
    record,
    past: past.map(({ clutch, from, likely, to, happened, crps, book }) => ({
      clutch: clutchId(clutch),
      from: formatDay(from),
      likely: formatDay(likely),
      to: formatDay(to),
      happened: formatDay(happened),
      crps,
      book: { likely: formatDay(book.likely), crps: book.crps },
    })),
  };
}

/** The list of species for programs. */
export function speciesListJson(profiles: readonly Profile[]): string {
  return jsonText({
    nestlog: 1,
    species: profiles.map(({ species, scientific, incubation, fledging, liveFood }) => ({
      species,
      scientific: scientific === '' ? null : scientific,
      incubation: incubation?.value ?? null,
      fledging: fledging?.value ?? null,
      liveFood: liveFood?.value ?? null,
    })),
  });
}

/** How good the forecasts of all species were, for programs. */
export function roomRecordJson(records: readonly KindRecord[]): string {
  return jsonText({
    nestlog: 1,
    records: Object.fromEntries(records.map(({ kind, species, all }) => [kind, { species, all }])),
  });
}
