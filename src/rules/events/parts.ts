import { formatDay } from '../../days.ts';
import type { BirdObservation, BirdObservationKey } from '../../journal/bird-observations/index.ts';
import type { Located } from '../../journal/grammar/values.ts';
import { type Count, only, type Who } from '../../journal/grammar/who.ts';
import type { Observation, ObservationKey, ObservationValue } from '../../journal/observations/index.ts';

/** One statement of an observation: `candled: {fertile: 3, clear: e2}` has two. What is not said is null. */
export interface Part {
  /** A word beside whom: cause, state, sex, kind of food, place, code of a ring, or free text. */
  what: string | null;
  who: Who | null;
  /** A count of a look, where nobody is meant by it. */
  count: Count | null;
  amount: number | null;
  unit: string | null;
  /** What else is said, `key: text`. */
  details: string | null;
}

/** A statement that says no more than its key. */
export const nothing: Part = { what: null, who: null, count: null, amount: null, unit: null, details: null };

const part = (some: Partial<Part>): Part => ({ ...nothing, ...some });
const saying = (what: string | null) => part({ what });
const word = (what: string | null) => [saying(what)];
const sentence = (said: Located | null) => word(said?.text ?? null);
/** A statement a name. */
export const each = (said: readonly Located[]) => said.map(({ text }) => saying(text));
const about = (who: Who) => [part({ who })];

function details(said: Record<string, Located | null>): string | null {
  const parts = Object.entries(said).flatMap(([key, value]) =>
    value === null ? [] : [`${key}: ${value.text}`],
  );
  return parts.length === 0 ? null : parts.join('; ');
}

/** What is offered, a statement a kind. */
export function foods(kinds: readonly { kind: Located; grams: number | null }[]): Part[] {
  return kinds.map(({ kind, grams }) =>
    part({ what: kind.text, amount: grams, unit: grams === null ? null : 'g/d' }),
  );
}

const mates = ({ housing, cock, hen }: ObservationValue<'paired'>) => [
  part({ what: housing?.text ?? null, details: details({ cock, hen }) }),
];

/** How each key of a pair's journal divides into statements. */
const pairParts: { [K in ObservationKey]: (value: ObservationValue<K>) => Part[] } = {
  paired: mates,
  reunited: mates,
  parted: ({ cock, hen }) => [part({ details: details({ cock, hen }) })],
  courting: sentence,
  nest: ({ state, site, height, material }) => [
    part({ what: state, details: details({ site, height, material }) }),
  ],
  laid: about,
  pulled: about,
  set: (sets) => sets.map(({ place, who }) => part({ what: place?.text ?? null, who })),
  sitting: word,
  candled: (seen) => seen.map(part),
  aged: (ages) => ages.map(({ days, who }) => part({ who, amount: days, unit: 'd' })),
  pipped: about,
  hatched: about,
  heard: sentence,
  lost: (losses) => losses.map(({ cause, who }) => part({ what: cause, who })),
  checked: ({ eggs, chicks }) => {
    const counts = Object.entries({ eggs, chicks }).flatMap(([what, count]) =>
      count === null ? [] : [part({ what, count })],
    );
    return counts.length === 0 ? [nothing] : counts;
  },
  ringed: (rings) => rings.map(({ chick, code }) => part({ what: code.text, who: only(chick) })),
  weighed: (weights) => weights.map(({ who, grams }) => part({ who: only(who), amount: grams, unit: 'g' })),
  measured: (eggs) =>
    eggs.flatMap(({ egg, length, breadth }) =>
      Object.entries({ length, breadth }).map(([what, amount]) =>
        part({ what, who: only(egg), amount, unit: 'mm' }),
      ),
    ),
  crops: (seen) => seen.map(part),
  feeding: (fed) => fed.map(({ by, who }) => part({ what: by, who })),
  food: foods,
  fledged: about,
  roosting: (seen) => seen.map(({ where, who }) => part({ what: where, who })),
  independent: about,
  died: (deaths) => deaths.map(({ cause, who }) => part({ what: cause?.text ?? null, who })),
  back: about,
  fostered: (moves) => moves.map(({ place, who }) => part({ what: place.text, who })),
  moved: (moves) => moves.map(({ who, housing }) => part({ what: housing.text, who })),
  gone: (left) => left.map(({ how, who }) => part({ what: how, who })),
  chasing: ({ by, at, level }) => [part({ what: level, details: details({ by, at }) })],
  unwell: (signs) => signs.map(({ who, what }) => part({ what: what.text, who })),
  sexed: (sexes) => sexes.map(({ sex, who }) => part({ what: sex, who })),
  moult: (states) => states.map(part),
  treated: (care) => care.map(({ who, what }) => part({ what: what.text, who })),
  photo: each,
  skip: each,
  done: each,
};

type BirdValue<K extends BirdObservationKey> = Extract<BirdObservation, { key: K }>['value'];

/** How each key of a bird's own log does. */
const birdParts: { [K in BirdObservationKey]: (value: BirdValue<K>) => Part[] } = {
  arrived: sentence,
  quarantine: ({ days, until }) => [
    part({
      amount: days,
      unit: days === null ? null : 'd',
      details: until === null ? null : `until: ${formatDay(until)}`,
    }),
  ],
  released: sentence,
  weighed: (grams) => [part({ amount: grams, unit: 'g' })],
  treated: sentence,
  unwell: sentence,
  moult: word,
  moved: sentence,
  sexed: word,
  died: sentence,
  gone: word,
  back: () => [nothing],
  photo: each,
};

/** The statements of one observation of a pair's journal; there is always one. */
export function partsOf({ key, value }: Observation): Part[] {
  return (pairParts[key] as (value: unknown) => Part[])(value);
}

/** The statements of one observation of a bird's own log. */
export function birdPartsOf({ key, value }: BirdObservation): Part[] {
  return (birdParts[key] as (value: unknown) => Part[])(value);
}
