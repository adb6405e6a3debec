import { byName } from '../grouped.ts';
import type { Profile } from './profile.ts';

/** The keys of a profile that hold a sourced value. */
export type TraitKey = Exclude<keyof Profile, 'id' | 'species' | 'scientific' | 'also'>;

/** What one key of a profile file holds. */
export interface Trait {
  /** As written in the file. */
  name: string;
  property: TraitKey;
  /** The words it may be, or null for a range of numbers. `last` beside numbers is an egg's number. */
  words: readonly string[] | null;
  numbers: boolean;
  /** What the number counts: `days`, `eggs`, `mm`, `g`, `months`. Empty for words. */
  unit: string;
  /** Which numbers make sense at all. */
  sign: 'positive' | 'zero or more' | 'any';
  /** A value as a profile might have it. */
  example: string;
  /** Other words that keepers use for it, in small letters, their parts parted by blanks (common practice). */
  alsoSaid?: readonly string[];
}

const range = (unit: string, example: string, sign: Trait['sign'] = 'positive') => ({
  words: null,
  numbers: true,
  unit,
  sign,
  example,
});
const word = (...words: [string, ...string[]]) => ({
  words,
  numbers: false,
  unit: '',
  sign: 'any' as const,
  example: words[0],
});

/** Every key, in the order in which a profile is written. */
const table = {
  sexes: word('alike', 'differ'),
  clutch: { ...range('eggs', '4-5'), alsoSaid: ['eggs', 'clutch size'] },
  layingInterval: range('days', '1'),
  sittingFrom: { ...range('egg', '3-4'), words: ['last'] },
  incubation: { ...range('days', '12-14'), alsoSaid: ['incubation period', 'incubation time'] },
  candling: range('days', '5-6'),
  nestLooks: word('freely', 'sparingly', 'never'),
  liveFood: word('required', 'advised', 'helpful', 'no'),
  liveFoodLead: range('days', '2', 'zero or more'),
  brooding: { ...range('days', '7-9', 'zero or more'), alsoSaid: ['brooding time'] },
  ringSize: { ...range('mm', '2.0-2.3'), alsoSaid: ['ring', 'ring diameter', 'band size'] },
  ringAge: { ...range('days', '7-8'), alsoSaid: ['ringing age'] },
  fledging: {
    ...range('days', '17-21', 'zero or more'),
    alsoSaid: ['fledged', 'fledging age', 'fledging time'],
  },
  roostingBack: range('nights', '5-10', 'zero or more'),
  restart: range('days', '5', 'any'),
  independence: { ...range('days', '30-40'), alsoSaid: ['independent', 'weaning', 'weaned'] },
  moult: range('days', '40-120'),
  breedingAge: { ...range('months', '9-12'), alsoSaid: ['maturity'] },
  clutchesPerYear: {
    ...range('clutches', '3'),
    alsoSaid: ['broods', 'broods per year', 'broods a year', 'clutches a year'],
  },
  adultMass: { ...range('g', '8.5'), alsoSaid: ['weight', 'mass', 'adult weight'] },
  hatchMass: { ...range('g', '0.7'), alsoSaid: ['hatch weight'] },
} satisfies Record<TraitKey, Omit<Trait, 'name' | 'property'>>;

export const traitKeys = Object.keys(table) as TraitKey[];

/** `layingInterval` is written `laying-interval`. */
function written(property: TraitKey): string {
  return property.replace(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`);
}

export const traits = byName(
  traitKeys,
  (property): Trait => ({ ...table[property], property, name: written(property) }),
);

const known = new Map(traitKeys.map((key) => [traits[key].name, traits[key]]));

/** The trait that a profile file calls `name`, or null. */
export function traitByName(name: string | undefined): Trait | null {
  return known.get(name ?? '') ?? null;
}
