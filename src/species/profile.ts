import { byName } from '../grouped.ts';
import { type TraitKey, traitByName, traitKeys } from './traits.ts';
import { absurd, validateProfile } from './validate.ts';
import { type Problem, readValue } from './value.ts';

/** From `low` to `high`, both included; a single figure has both alike. */
export interface Range {
  low: number;
  high: number;
}

/** Where a bird of the species lies as often below as above. */
export function middle({ low, high }: Range): number {
  return (low + high) / 2;
}

/**
 * How far a value can be trusted: a row of an open data set, read in a document, what keepers usually do, or only
 * remembered.
 */
export type Grade = 'open data' | 'read' | 'common practice' | 'from memory';

/** A value with the place it comes from. */
export interface Sourced<T> {
  value: T;
  source: string;
  grade: Grade;
  /** Where sources disagree, what was left out and why, or how to read the value. */
  note?: string;
}

/** The number of the egg from which the pair sits by day and night, or the last egg of the clutch. */
export type SittingFrom = Range | 'last';

export type LiveFood = 'required' | 'advised' | 'helpful' | 'no';

export type NestLooks = 'freely' | 'sparingly' | 'never';

/**
 * What is known of one species' breeding. Ages are days from hatching (the day of hatching is 0), incubation is
 * counted from the day on which full sitting began. Null is unknown.
 */
export interface Profile {
  /** The file's name without `.yaml`. */
  id: string;
  /** Common name. */
  species: string;
  /** Empty where an own profile does not give it. */
  scientific: string;
  /** Further names, common and scientific. */
  also: string[];
  /** Whether cock and hen can be told apart by sight. */
  sexes: Sourced<'alike' | 'differ'> | null;
  /** Eggs. */
  clutch: Sourced<Range> | null;
  /** Days from egg to egg. */
  layingInterval: Sourced<Range> | null;
  sittingFrom: Sourced<SittingFrom> | null;
  /** Days of full sitting until the egg hatches. */
  incubation: Sourced<Range> | null;
  /** Day of sitting. */
  candling: Sourced<Range> | null;
  nestLooks: Sourced<NestLooks> | null;
  /** Whether the young are reared without live food. */
  liveFood: Sourced<LiveFood> | null;
  /** Days before the first day of the hatch window. */
  liveFoodLead: Sourced<Range> | null;
  /** Age in days at which the hen stops brooding by night. */
  brooding: Sourced<Range> | null;
  /** Inside diameter of a closed ring, mm. */
  ringSize: Sourced<Range> | null;
  /** Age in days at which a closed ring goes on. */
  ringAge: Sourced<Range> | null;
  /** Age in days. */
  fledging: Sourced<Range> | null;
  /** Nights in the nest after fledging. */
  roostingBack: Sourced<Range> | null;
  /** Days after the first fledging from which a parent may drive its mate or the young; negative is before it. */
  restart: Sourced<Range> | null;
  /** Age in days. */
  independence: Sourced<Range> | null;
  /** The juvenile moult, from its first to its last day, age in days. */
  moult: Sourced<Range> | null;
  /** Least age for breeding, months: a welfare floor, later than the first age at which they can. */
  breedingAge: Sourced<Range> | null;
  /** The most that a hen should be asked for in a year. */
  clutchesPerYear: Sourced<Range> | null;
  /** g. */
  adultMass: Sourced<Range> | null;
  /** g. */
  hatchMass: Sourced<Range> | null;
}

/** A profile, and what was wrong with its text; wrong values are left out of it, doubtful ones stay. */
export interface ProfileResult {
  profile: Profile;
  problems: Problem[];
}

const nameKeys = ['species', 'scientific', 'also'];

/**
 * Reads one profile file, shipped or a keeper's own.
 *
 * @param data the file as plain objects, arrays and strings (YAML's failsafe schema)
 * @param id the file's name without `.yaml`; also the species' name where the file has none
 * @returns never throws: every mistake is a problem with the path of its key
 */
export function profileFromData(data: unknown, id: string): ProfileResult {
  const problems: Problem[] = [];
  const fields = typeof data === 'object' && data !== null && !Array.isArray(data) ? data : null;
  if (fields === null) problems.push({ path: [], code: 'not-a-mapping', args: {} });
  const profile = emptyProfile(id);
  for (const [key, value] of Object.entries(fields ?? {})) {
    if (nameKeys.includes(key)) readName(profile, key, value, problems);
    else if (!readTrait(profile, key, value, problems)) {
      problems.push({ path: [key], code: 'profile-unknown-key', args: { key } });
    }
  }
  for (const problem of validateProfile(profile)) {
    problems.push(problem);
    if (absurd(problem)) drop(profile, problem);
  }
  return { profile, problems };
}

/**
 * An own profile over the shipped one of the same species: own keys win, key by key, and the names of both count.
 * A file that gives no name of its own keeps the shipped one.
 * An own value that cannot stand beside the shipped ones is a problem, and the shipped value stays.
 */
export function mergeProfiles(own: Profile, shipped: Profile): ProfileResult {
  const species = own.species === nameFrom(own.id) ? shipped.species : own.species;
  const names = [own.species, shipped.species, ...own.also, ...shipped.also, shipped.scientific];
  const scientific = own.scientific || shipped.scientific;
  const merged: Profile = {
    ...shipped,
    species,
    scientific,
    also: [...new Set(names)].filter((name) => name !== species && name !== scientific),
  };
  const ownKeys = traitKeys.filter((key) => own[key] !== null);
  for (const key of ownKeys) assign(merged, key, own[key]);
  const problems = validateProfile(merged, ownKeys);
  for (const { path } of problems.filter(absurd)) {
    const trait = traitByName(path[0]);
    if (trait) assign(merged, trait.property, shipped[trait.property]);
  }
  return { profile: merged, problems };
}

/** What a species is called whose file does not say it. */
function nameFrom(id: string): string {
  return id.replaceAll('-', ' ');
}

function emptyProfile(id: string): Profile {
  return { id, species: nameFrom(id), scientific: '', also: [], ...byName(traitKeys, () => null) };
}

function readName(profile: Profile, key: string, value: unknown, problems: Problem[]): void {
  if (key === 'also') {
    const names = Array.isArray(value) ? value : [value];
    profile.also = names.filter((name) => typeof name === 'string' && name.trim() !== '');
    if (profile.also.length < names.length)
      problems.push({ path: [key], code: 'profile-not-a-name', args: { key } });
  } else if (typeof value === 'string' && value.trim() !== '') {
    profile[key as 'species' | 'scientific'] = value.trim();
  } else problems.push({ path: [key], code: 'profile-not-a-name', args: { key } });
}

function readTrait(profile: Profile, name: string, data: unknown, problems: Problem[]): boolean {
  const trait = traitByName(name);
  if (trait === null) return false;
  const read = readValue(data, trait);
  problems.push(...read.problems);
  assign(profile, trait.property, read.sourced);
  return true;
}

/** The one place that trusts `readValue` to give what its trait asks for. */
function assign(profile: Profile, key: TraitKey, value: Sourced<unknown> | null): void {
  (profile as unknown as Record<TraitKey, Sourced<unknown> | null>)[key] = value;
}

function drop(profile: Profile, problem: Problem): void {
  const trait = traitByName(problem.path[0]);
  if (trait) assign(profile, trait.property, null);
}
