import { type Day, shortDay } from '../../days.ts';
import type { Bird } from '../../room/model.ts';
import { type Brood, profileIn } from '../brood.ts';
import { about, type Found, type Warning } from './warning.ts';
import { capital, daysRange, names } from './words.ts';

interface FledgedEarly extends Found {
  young: string;
  age: number;
  usual: { low: number; high: number };
  fed: boolean;
}

/** Days after leaving the nest for which it is said, at most until the usual age. */
const SHOWN = 5;

export const fledgedEarly: Warning<FledgedEarly> = {
  kind: 'fledged-early',
  levels: ['act', 'watch'],
  health: true,
  when: 'a chick left the nest more than a day before the youngest usual age',
  over: '`back`, its usual age, or its end; 5 d after it left the nest. Act on its first two days, unless it was seen fed',
  explain:
    'A chick that leaves too early can neither keep warm nor get off the floor, and its parents may not find it. Usually it was frightened out, by a look into the nest or a fright at night. Put back at dusk, and covered with a hand until it is quiet, it often stays (common practice). One that is cold and limp is a matter for warmth and an avian vet.',
  find: ({ day, broods }) => broods.flatMap((brood) => earlyIn(brood, day) ?? []),
  say: ({ young, age, usual, fed, date }) => ({
    text: `${capital(young)} left the nest on ${shortDay(date)} at ${age} d; ${daysRange(usual)} is usual. So young a bird chills on the floor in its first night${fed ? '' : ', and nobody wrote who feeds it since'}.`,
    check:
      'at dusk: warm, off the floor, crop full, and who feeds it? Put it back if it will stay. A cold, limp chick: warmth, and an avian vet',
  }),
};

function earlyIn(brood: Brood, day: Day): FledgedEarly | null {
  const early = brood.young.flatMap((bird) => {
    const usual = profileIn(brood, bird)?.fledging?.value;
    const age = ageAtFledging(bird);
    const left = bird.fledged?.day;
    if (usual === undefined || age === null || left === undefined || age >= usual.low - 1) return [];
    return day - left <= SHOWN && day - left + age < usual.low ? [{ bird, age, left, usual }] : [];
  });
  const [first] = early;
  if (first === undefined) return null;
  const date = Math.max(...early.map(({ left }) => left));
  const fed = early.every(({ bird, left }) => bird.fedBy.some((seen) => seen.day >= left));
  return {
    ...about(brood),
    level: day - date <= 1 && !fed ? 'act' : 'watch',
    date,
    young: names(
      brood,
      early.map(({ bird }) => bird),
    ),
    age: Math.min(...early.map(({ age }) => age)),
    usual: first.usual,
    fed,
  };
}

/** The youngest that it can have been on the day it was found out of the nest. */
function ageAtFledging({ fledged, hatched }: Bird): number | null {
  return fledged === null || hatched === null ? null : fledged.day - hatched.to;
}
