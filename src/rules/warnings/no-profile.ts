import { type Day, hullOf, type Span, shortSpan } from '../../days.ts';
import { hatchedOn } from '../../room/clock.ts';
import { fledging, incubation } from '../../room/lives.ts';
import type { Chick, Egg } from '../../room/model.ts';
import { count, daysRange, listed } from '../../words.ts';
import { type Brood, mayHatch } from '../brood.ts';
import { about, type Found, type Warning } from './warning.ts';
import { opening } from './words.ts';

interface NoProfile extends Found {
  species: string;
  eggs: number;
  nestlings: boolean;
  /** The days on which such eggs may hatch if they take as long as any of a small cage bird; null where none is sat on. */
  hatch: Span | null;
}

/** Days for which it is said after the last on which the eggs might hatch, or the nestlings leave the nest. */
const SHOWN = 7;

const widest = incubation(null);

export const noProfile: Warning<NoProfile> = {
  kind: 'no-profile',
  levels: ['watch'],
  health: false,
  when: 'eggs or nestlings are of a species for which no incubation or no fledging age is known',
  over: `a profile in \`species/\` says it; the eggs have a fate and the young are out; ${SHOWN} d after the last day on which the eggs of any small cage bird would hatch, or its young leave the nest`,
  explain: `Tasks and dates come from the species' profile. Without one no hatching is expected, and the morning looks quiet while chicks may hatch. Eggs of small cage birds hatch after ${daysRange(widest)} of sitting (common practice): the days that are given are those, and live food must be there before the first of them if the species rears on it. Three lines in a file of \`species/\` are enough to be told more closely.`,
  find: ({ day, broods }) => broods.flatMap((brood) => unknownIn(brood, day) ?? []),
  say({ species, eggs, nestlings, hatch }) {
    const whose = [...(eggs === 0 ? [] : [count(eggs, 'egg')]), ...(nestlings ? ['nestlings'] : [])];
    const what = [...(eggs === 0 ? [] : ['hatching']), ...(nestlings ? ['leaving the nest'] : [])];
    const days = `${daysRange(widest)} of sitting, as of any small cage bird`;
    return {
      text: `${opening(listed(whose))}, and no profile says how long the ${species} takes: no day of ${listed(what)} is expected, and tasks that hang on it are not given.${hatch === null ? '' : ` Hatching may fall on ${shortSpan(hatch)} (${days}).`}`,
      check: `the nest and the live food by your own count of days; what you know of it goes into a file of species/ that begins with \`species: ${species}\`, then its figures, such as \`incubation: 12-14\``,
    };
  },
};

function unknownIn(brood: Brood, day: Day): NoProfile | null {
  const { eggs, young } = brood;
  const profileOf = (one: Egg | Chick) => one.clutch.pair.profile;
  const waiting = eggs.filter((egg) => mayHatch(egg) && profileOf(egg)?.incubation === undefined);
  const nestlings = young.filter(
    (bird) =>
      bird.fledged === null &&
      profileOf(bird)?.fledging === undefined &&
      day <= hatchedOn(bird).to + fledging(null).high + SHOWN,
  );
  const starts = brood.waiting.flatMap(({ clock, duration }) => (duration === null ? clock.start : []));
  const begun = starts.length === 0 ? null : hullOf(starts);
  const hatch = begun === null ? null : { from: begun.from + widest.low, to: begun.to + widest.high };
  const over = hatch !== null && day > hatch.to + SHOWN;
  const unknown = [...(over ? [] : waiting), ...nestlings];
  if (unknown.length === 0) return null;
  return {
    ...about(brood),
    level: 'watch',
    date: brood.clutch?.opened ?? day,
    species: unknown[0]?.clutch.pair.species ?? 'species',
    eggs: over ? 0 : waiting.length,
    nestlings: nestlings.length > 0,
    hatch: over ? null : hatch,
  };
}
