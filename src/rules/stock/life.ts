import { type Day, monthsAfter } from '../../days.ts';
import { fledging, independence, isDependent } from '../../room/lives.ts';
import type { Bird } from '../../room/model.ts';
import type { Profile } from '../../species/profile.ts';

/** `expected`: on the list, but not yet come or hatched. `unaccounted`: a chick nobody wrote of after its time. */
export type Status = 'here' | 'unaccounted' | 'gone' | 'died' | 'expected';

/** `chick` until it leaves the nest, `fledgling` while it is fed, `young` until it is old enough to breed. */
export const ageClasses = ['chick', 'fledgling', 'young', 'adult'] as const;
export type AgeClass = (typeof ageClasses)[number];

/** So many days after it should feed itself, a chick of whom nothing more was written is unaccounted for. */
const PATIENCE = 30;

/** What became of a bird, as known on the day stood on. `paired`: it was ever put to a mate. */
export function statusOf(
  bird: Bird,
  day: Day,
  { profile, paired }: { profile: Profile | null; paired: boolean },
): Status {
  if (bird.fate !== null) return bird.fate.kind;
  if (isExpected(bird, day)) return 'expected';
  return paired || !isLost(bird, day, profile) ? 'here' : 'unaccounted';
}

function isExpected({ listed, hatched, firstSeen, clutch }: Bird, day: Day): boolean {
  if (hatched !== null && hatched.from > day) return true;
  if (listed === null || firstSeen !== null) return false;
  if (listed.is !== null && clutch === null) return true;
  return listed.log.some(({ saw }) => saw.some(({ key }) => key === 'arrived'));
}

/** Bred here, never seen to feed itself, and no sign of life since it must have. */
function isLost(bird: Bird, day: Day, profile: Profile | null): boolean {
  if (!isDependent(bird) || bird.listed !== null) return false;
  const until = bird.hatched.to + independence(profile).high;
  return day > until + PATIENCE && lastSign(bird) <= until;
}

/** Whether it is still fed: not seen to feed itself, and not past the longest age at which its species is. */
export function isStillFed(bird: Bird, day: Day, profile: Profile | null): boolean {
  return isDependent(bird) && day < fedUntil(bird.hatched.to, profile);
}

/** From when a bird that hatched on that day feeds itself by its age, where nobody wrote that it does. */
export function fedUntil(hatched: Day, profile: Profile | null): Day {
  return hatched + Math.floor(independence(profile).high) + 1;
}

/** The last day on which something was written of it. */
export function lastSign(bird: Bird): Day {
  const days = [
    ...[bird.weights, bird.crops, bird.fedBy, bird.unwell, bird.treated, bird.moult].flatMap((seen) =>
      seen.map(({ day }) => day),
    ),
    ...bird.roosting.map(({ night }) => night),
    ...bird.stays.map(({ from }) => from),
    bird.firstSeen,
    bird.ringed,
    bird.fledged?.day,
    bird.arrived,
    bird.absences.at(-1)?.until,
  ];
  return Math.max(...days.map((day) => day ?? Number.NEGATIVE_INFINITY));
}

/**
 * Its class of age: as was seen, else as its species' usual ages tell, taking it for as young as it can be. A bird of
 * unknown age from outside is an adult.
 */
export function ageClassOf(bird: Bird, day: Day, profile: Profile | null): AgeClass {
  const { hatched } = bird;
  if (hatched === null) return 'adult';
  if (isStillFed(bird, day, profile)) {
    return bird.fledged !== null || day - hatched.to > fledging(profile).high ? 'fledgling' : 'chick';
  }
  // Bought with the year of its ring, it is no chick because it might be.
  if (bird.ref === null && day - hatched.from <= fledging(profile).high) return 'chick';
  return day >= breedsFrom(hatched.to, profile) ? 'adult' : 'young';
}

/** From when a bird of that day may be asked to breed: months by the calendar, a year where the species has no profile. */
export function breedsFrom(hatched: Day, profile: Profile | null): Day {
  return monthsAfter(hatched, profile?.breedingAge?.value.low ?? 12);
}
