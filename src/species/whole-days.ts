import type { Profile, Range, Sourced } from './profile.ts';
import { traitKeys, traits } from './traits.ts';

/** What a calendar or a nest has only whole ones of. */
const WHOLE = new Set(['days', 'nights', 'eggs', 'egg']);

/**
 * The profile as a calendar can use it: `12.3-13.6` days are 12 to 14, never fewer than what was written. Without
 * parts of days it is the very same profile.
 */
export function inWholeDays(profile: Profile): Profile {
  const widened = traitKeys.flatMap((key) => {
    const { unit, sign } = traits[key];
    const sourced = profile[key] as Sourced<unknown> | null;
    if (sourced === null || !WHOLE.has(unit) || !isRange(sourced.value)) return [];
    const { low, high } = sourced.value;
    if (Number.isInteger(low) && Number.isInteger(high)) return [];
    const least = sign === 'positive' ? 1 : Number.NEGATIVE_INFINITY;
    return [[key, { ...sourced, value: { low: Math.max(least, Math.floor(low)), high: Math.ceil(high) } }]];
  });
  return widened.length === 0 ? profile : { ...profile, ...Object.fromEntries(widened) };
}

function isRange(value: unknown): value is Range {
  return typeof value === 'object' && value !== null;
}
