import { shortDay } from '../../days.ts';
import { hatchedOn } from '../../room/clock.ts';
import { housingOf, independence } from '../../room/lives.ts';
import { type Bird, together } from '../../room/model.ts';
import type { Range } from '../../species/profile.ts';
import { daysRange } from '../../words.ts';
import { type Brood, profileIn } from '../brood.ts';
import { fedDays } from './feeders.ts';
import { onFoot } from './parents.ts';
import { about, type Found, folded, type View, type Warning } from './warning.ts';
import { names, opening } from './words.ts';

interface YoungAway extends Found {
  birds: Bird[];
  who: string;
  one: boolean;
  housing: string;
  age: Range;
  /** The least age at which young of the species feed themselves. */
  least: number;
}

/** Days after the move in which young can starve, and for which it is said. */
const ACT = 2;
const SHOWN = 5;

export const youngAway: Warning<YoungAway> = {
  kind: 'young-away',
  levels: ['act', 'watch'],
  health: true,
  when: 'young that are fed by a pair were moved where none of the two lives, younger than the species feeds itself',
  over: `each was seen fed or with a full crop on a later day, feeds itself, or lives with a parent again; ${SHOWN} d later`,
  explain:
    'A young bird that cracks seed still begs for days, and lives on what its parents give it; parted from them too early it sits fluffed before a full dish and starves within a day or two. Young are parted when none of them has begged for a week (common practice). Where they have to go at once, as when they are hunted, the parent that feeds them goes along, or they are fed through the bars, by another pair or by hand; `feeding` tells it. A weak one is a matter for an avian vet.',
  find: (view) => view.broods.flatMap((brood) => awayFrom(view, brood)),
  say: ({ who, one, housing, age, least, date }) => ({
    text: `${opening(who)} ${one ? 'was' : 'were'} moved to ${housing} on ${shortDay(date)}, at ${daysRange(age)}, away from both parents; young of the species feed themselves from ${least} d on. Young that nobody feeds starve within a day or two.`,
    check: `each crop within hours, and again at dusk; if nobody feeds ${one ? 'it' : 'them'} there, back to the parent that did, or another pair or the hand (then write \`feeding\`). A weak one: an avian vet`,
  }),
};

/** One line for those that were moved together. */
function awayFrom(view: View, brood: Brood): YoungAway[] {
  if (brood.where !== 'nest') return [];
  return folded(
    brood.young.flatMap((bird) => away(view, brood, bird) ?? []),
    ({ date, housing, least }) => [date, housing, least],
    (all) => ({
      who: names(
        brood,
        all.flatMap(({ birds }) => birds),
      ),
      one: false,
      age: {
        low: Math.min(...all.map(({ age }) => age.low)),
        high: Math.max(...all.map(({ age }) => age.high)),
      },
    }),
  );
}

function away(view: View, brood: Brood, bird: Bird): YoungAway | null {
  const housing = housingOf(bird);
  const moved = bird.stays.at(-1)?.from;
  const hatched = hatchedOn(bird);
  if (housing === null || moved === undefined || hatched === null || view.day - moved > SHOWN) return null;
  const least = independence(profileIn(brood, bird)).low;
  const age = { low: moved - hatched.to, high: moved - hatched.from };
  if (age.low >= least || onFoot(brood, bird) || isWithFeeder(view, brood, housing)) return null;
  if (fedDays(bird, { day: moved, parent: null }).length > 0) return null;
  return {
    ...about(brood),
    level: view.day - moved <= ACT ? 'act' : 'watch',
    date: moved,
    birds: [bird],
    who: names(brood, [bird]),
    one: !bird.placeholder,
    housing,
    age,
    least,
  };
}

/** The pair, or one of the two, lives there. */
function isWithFeeder({ find }: View, { pair }: Brood, housing: string): boolean {
  if (housing === pair.housing && together(pair)) return true;
  const parents = [...pair.cock, ...pair.hen].flatMap((name) => find(name) ?? []);
  return parents.length === 0
    ? housing === pair.housing
    : parents.some((bird) => bird.fate === null && (housingOf(bird) ?? pair.housing) === housing);
}
