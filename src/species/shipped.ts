import { shippedProfiles } from 'virtual:species-profiles';
import { comparable, idFor, namesOf } from './names.ts';
import { type Profile, profileFromData } from './profile.ts';

type Shipped = (typeof shippedProfiles)[number];

const idOf = ({ file }: Shipped) => file.replace(/\.yaml$/, '');

const byId = new Map(shippedProfiles.map((shipped) => [idOf(shipped), shipped]));
const read = new Map<string, Profile>();
let byName: Map<string, Shipped> | null = null;

/** The shipped profile with this name: common, scientific, synonym or id, however it is spelt. Null if there is none. */
export function shippedProfile(name: string): Profile | null {
  const shipped = byId.get(idFor(name)) ?? index().get(comparable(name));
  return shipped === undefined ? null : profileOf(shipped);
}

/** All shipped profiles, in the order of their ids. */
export function allShipped(): Profile[] {
  return shippedProfiles.map(profileOf);
}

/** Every name of every shipped species, as written. */
export function shippedNames(): string[] {
  return shippedProfiles.flatMap(names);
}

/** The common name of every shipped species, without reading a single value. */
export function shippedSpecies(): string[] {
  return shippedProfiles.flatMap((shipped) => names(shipped)[0] ?? []);
}

/** Built for the first name that is not simply a file's: most rooms never need it. */
function index(): Map<string, Shipped> {
  byName ??= new Map(
    shippedProfiles.flatMap((shipped) => names(shipped).map((name) => [comparable(name), shipped] as const)),
  );
  return byName;
}

/** The names alone, without reading a single value. */
function names(shipped: Shipped): string[] {
  return namesOf({ id: idOf(shipped), ...shipped.names });
}

/** Values are read when a species is first asked for: a room keeps a dozen, and its mornings should not wait for all. */
function profileOf(shipped: Shipped): Profile {
  const id = idOf(shipped);
  const known = read.get(id);
  if (known !== undefined) return known;
  const { profile } = profileFromData(shipped.data, id);
  read.set(id, profile);
  return profile;
}
