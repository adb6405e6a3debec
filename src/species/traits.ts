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
}

const range = (unit: string, sign: Trait['sign'] = 'positive') => ({
  words: null,
  numbers: true,
  unit,
  sign,
});
const word = (...words: string[]) => ({ words, numbers: false, unit: '', sign: 'any' as const });

/** Every key, in the order in which a profile is written. */
const table = {
  sexes: word('alike', 'differ'),
  clutch: range('eggs'),
  layingInterval: range('days'),
  sittingFrom: { ...range('egg'), words: ['last'] },
  incubation: range('days'),
  candling: range('days'),
  nestLooks: word('freely', 'sparingly', 'never'),
  liveFood: word('required', 'advised', 'helpful', 'no'),
  liveFoodLead: range('days', 'zero or more'),
  brooding: range('days', 'zero or more'),
  ringSize: range('mm'),
  ringAge: range('days'),
  fledging: range('days', 'zero or more'),
  roostingBack: range('nights', 'zero or more'),
  restart: range('days', 'any'),
  independence: range('days'),
  moult: range('days'),
  breedingAge: range('months'),
  clutchesPerYear: range('clutches'),
  adultMass: range('g'),
  hatchMass: range('g'),
} satisfies Record<TraitKey, Omit<Trait, 'name' | 'property'>>;

export const traitKeys = Object.keys(table) as TraitKey[];

/** `layingInterval` is written `laying-interval`. */
function written(property: TraitKey): string {
  return property.replace(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`);
}

export const traits = Object.fromEntries(
  traitKeys.map((property) => [property, { ...table[property], property, name: written(property) }]),
) as Record<TraitKey, Trait>;

const byName = new Map(traitKeys.map((key) => [traits[key].name, traits[key]]));

/** The trait that a profile file calls `name`, or null. */
export function traitByName(name: string | undefined): Trait | null {
  return byName.get(name ?? '') ?? null;
}
