import { familyOf } from './families.ts';
import type { Profile } from './profile.ts';

/** Young below this age at fledging are no nestlings: quails follow the hen. */
const NESTLING_DAYS = 8;

/** Whether the young leave the nest as they hatch and follow the hen; not where no profile or no fledging age is known. */
export function walksOff(profile: Profile | null): boolean {
  if (profile === null) return false;
  const { scientific, fledging } = profile;
  return familyOf(scientific) === 'quails' || (fledging !== null && fledging.value.low < NESTLING_DAYS);
}
