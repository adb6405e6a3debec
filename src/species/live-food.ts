import type { LiveFood, Profile } from './profile.ts';

const NEEDED: readonly (LiveFood | undefined)[] = ['required', 'advised'];

/** Whether its young must or should be reared on live food; not where nobody knows. */
export function needsLiveFood(profile: Pick<Profile, 'liveFood'> | null): boolean {
  return NEEDED.includes(profile?.liveFood?.value);
}

/** Days before the hatch window from which live food is on offer; two where nobody says otherwise (common practice). */
export function liveFoodLead(profile: Pick<Profile, 'liveFoodLead'> | null): number {
  return profile?.liveFoodLead?.value.high ?? USUAL_LEAD;
}

const USUAL_LEAD = 2;

/** Whether its young are reared on live food at all, be it only as a help; not where nobody knows. */
export function takesLiveFood(profile: Pick<Profile, 'liveFood'> | null): boolean {
  return needsLiveFood(profile) || profile?.liveFood?.value === 'helpful';
}
