import { type Day, shortDay } from '../../days.ts';
import { hatchedOn } from '../../room/clock.ts';
import { incubation } from '../../room/lives.ts';
import type { Chick } from '../../room/model.ts';
import type { Range } from '../../species/profile.ts';
import { daysRange } from '../../words.ts';
import { type Brood, profileIn } from '../brood.ts';
import { byDay } from '../by-day.ts';
import { about, type Found, type Warning } from './warning.ts';
import { names, opening } from './words.ts';

interface FledgedEarly extends Found {
  /** Who left on which day, in order. */
  left: { young: string; day: Day }[];
  /** The youngest and the oldest that they can have been. */
  age: { low: number; high: number };
  usual: { low: number; high: number };
  /** Whether they were too young even if they hatched on the first day that is possible by what was seen of the nest before. */
  sure: boolean;
  fed: boolean;
}

/** Days after leaving the nest for which it is said, at most until the usual age. */
const SHOWN = 5;

export const fledgedEarly: Warning<FledgedEarly> = {
  kind: 'fledged-early',
  levels: ['act', 'watch'],
  health: true,
  when: 'a chick left the nest more than a day before the youngest usual age. Not said of chicks that were heard or found in the nest where they can have been old enough',
  over: `\`back\`, its usual age, or its end; ${SHOWN} d after it left the nest. Act on its first two days, unless it was seen fed or can have been old enough`,
  explain:
    'A chick that leaves too early can neither keep warm nor get off the floor, and its parents may not find it. Usually it was frightened out, by a look into the nest or a fright at night. Put back at dusk, and covered with a hand until it is quiet, it often stays (common practice). A young bird of the usual age that is chased back into the nest comes to harm: so nothing is said where nobody wrote `hatched` and the chicks can have been old enough, and where `hatched` came days after the last look, or nobody had looked there before and they can have been older, only to watch. One that is cold and limp is a matter for warmth and an avian vet.',
  find: ({ day, broods }) => broods.flatMap((brood) => earlyIn(brood, day) ?? []),
  say: ({ left, age, usual, sure, fed }) => ({
    text: `${opening(leftWords(left))}, at ${daysRange(age)}; ${daysRange(usual)} is usual. ${sure ? 'So young a bird' : 'A bird that leaves too early'} chills on the floor in its first night${fed ? '' : ', and nobody wrote who feeds it since'}.`,
    check: `at dusk: warm, off the floor, crop full, and who feeds it? ${
      sure ? 'Put it back if it will stay' : 'One that flies up by itself is old enough: leave it be'
    }. A cold, limp chick: warmth, and an avian vet`,
  }),
};

/** `c1 and c2 left the nest on 27 Mar, c3 on 28 Mar`. */
function leftWords(left: FledgedEarly['left']): string {
  return left
    .map(({ young, day }, i) => `${young} ${i === 0 ? 'left the nest ' : ''}on ${shortDay(day)}`)
    .join(', ');
}

function earlyIn(brood: Brood, day: Day): FledgedEarly | null {
  const early = brood.young.flatMap((bird) => {
    const usual = profileIn(brood, bird)?.fledging?.value;
    const hatched = hatchedOn(bird);
    const left = bird.fledged?.day;
    if (usual === undefined || left === undefined) return [];
    // The youngest and the oldest that it can have been on the day it was found out of the nest.
    const age = { low: left - hatched.to, high: left - hatched.from };
    if ((hatchingWritten(bird) ? age.low : age.high) >= usual.low - 1) return [];
    const shown = day - left <= SHOWN && day - left + age.low < usual.low;
    return shown
      ? [{ bird, age, left, usual, sure: age.high < usual.low - 1 && isSurelyYoung(bird, usual) }]
      : [];
  });
  // Beside one that is surely too young, of which more is asked, the others wait.
  const said = early.some(({ sure }) => sure) ? early.filter(({ sure }) => sure) : early;
  const [first] = said;
  if (first === undefined) return null;
  const days = byDay(said.map(({ left, bird }) => ({ day: left, bird })));
  const date = Math.max(...said.map(({ left }) => left));
  const fed = said.every(({ bird, left }) => bird.fedBy.some((seen) => seen.day >= left));
  return {
    ...about(brood),
    level: day - date <= 1 && !fed && first.sure ? 'act' : 'watch',
    date,
    left: days.map(({ day: on, all }) => ({
      young: names(
        brood,
        all.map(({ bird }) => bird),
      ),
      day: on,
    })),
    age: {
      low: Math.min(...said.map(({ age }) => age.low)),
      high: Math.max(...said.map(({ age }) => age.high)),
    },
    usual: first.usual,
    sure: first.sure,
    fed,
  };
}

/** Whether somebody wrote that it hatched; else its day follows from begging, or from a count of chicks. */
function hatchingWritten({ clutch, hatched, stays }: Chick): boolean {
  const nests = [clutch.pair, stays[0]?.nest];
  return nests.some((nest) => nest?.events.some(({ key, day }) => key === 'hatched' && day === hatched.to));
}

/**
 * Whether it cannot be older than was written: somebody had seen that nest before. Else it can have been some days old by then,
 * but no older than eggs that were laid once the nest was made ready, or the pair put together.
 */
function isSurelyYoung({ hatched, egg, stays, fledged, clutch }: Chick, usual: Range): boolean {
  const nest = stays[0]?.nest ?? null;
  if (nest === null || hatched.from < hatched.to) return true;
  const wasBroughtThere = egg.places.length > 1;
  if (wasBroughtThere || nest.looks.some(({ day }) => day < hatched.to)) return true;
  const empty = [
    ...nest.nestStates.filter(({ state }) => state !== 'lined'),
    ...nest.events.filter(({ key }) => key === 'paired' || key === 'reunited'),
  ].filter(({ day }) => day < hatched.to);
  const earliest = Math.max(...empty.map(({ day }) => day)) + incubation(clutch.pair.profile).low;
  return (fledged?.day ?? hatched.to) - earliest < usual.low - 1;
}
