import { familyOf } from './families.ts';
import type { Profile } from './profile.ts';

/** Young below this age at fledging are no nestlings: quails follow the hen. */
const NESTLING_DAYS = 8;

/** Whether the young leave the nest as they hatch and follow the hen; not where no fledging age is known. */
export function walksOff({ scientific, fledging }: Profile): boolean {
  return familyOf(scientific) === 'quails' || (fledging !== null && fledging.value.low < NESTLING_DAYS);
}
