import { type Day, shortDay } from '../../days.ts';
import type { ObservationKey } from '../../journal/observations/index.ts';
import { fromTo } from '../../words.ts';
import { type Brood, mayHoldChicksUntil } from '../brood.ts';
import { basisOf } from '../forecast/duration.ts';
import { overdueFrom, shareHatchingAfter } from '../forecast/overdue.ts';
import { about, type Found, type Warning } from './warning.ts';
import { names, opening } from './words.ts';

interface Overdue extends Found {
  eggs: string;
  one: boolean;
  /** Fewest and most days of sitting that these eggs have had. */
  sat: { low: number; high: number };
  /** Of such eggs, how many hatch later than today, 0 to 1. */
  share: number;
  basis: string;
  where: Brood['where'];
  /** Nobody has seen the eggs since they could hatch; the last look before, null where there was none. */
  unseen: { since: Day | null; never: boolean } | null;
}

/** Days for which it is said; after them the task `unhatched` goes on asking, but not where nobody ever looks in. */
const SHOWN = 7;

export const overdue: Warning<Overdue> = {
  kind: 'overdue',
  levels: ['watch'],
  health: false,
  when: 'fewer than 1 in 100 such eggs hatch today or later, and the clutch’s last egg is 4 d past the longest usual incubation',
  over: `the eggs have a fate; ${SHOWN} d later, or, where nobody has looked, once no chick can be in there that nobody has seen. Not said while chicks share the nest: the eggs stay with them until it comes down; nor where chicks were heard or seen and nobody has looked at the eggs since. Where nobody has looked since they could hatch, it asks whether chicks are in there`,
  explain:
    'Incubation is counted from the day of full sitting, and each egg from its own clock. An egg is called overdue late rather than early, under a tail that the own clutches bear out. Sitting that began late or was broken off delays the hatch, so an overdue egg is a question: candle it, and leave it where it is while there is a doubt. Where nobody has looked since the first day of the hatch window, there may be chicks in there: listen, and see whether food is carried in, before anybody looks. Nothing here asks for an egg to be destroyed.',
  find: ({ day, broods }) => broods.flatMap((brood) => overdueIn(brood, day) ?? []),
  say({ eggs, one, sat, share, basis, where, unseen }) {
    const time = `day ${fromTo(sat.low, sat.high)} of ${where === 'nest' ? 'sitting' : 'incubation'} (${basis})`;
    if (unseen !== null) {
      const looked =
        unseen.since === null ? 'nobody has looked yet' : `nobody has looked since ${shortDay(unseen.since)}`;
      return {
        text: `The usual days of hatching are past: ${eggs}, ${time}, and ${looked}. Chicks, or eggs?`,
        check: unseenCheck(unseen.never),
      };
    }
    const late = `${opening(eggs)} ${one ? 'is' : 'are'} overdue: ${time}; ${inThousand(share)} such eggs hatch later than today.`;
    return where === 'nest'
      ? {
          text: `${late} Sitting that began late or was broken off delays the hatch.`,
          check:
            'when full sitting really began, and the eggs under a lamp if the nest may be looked into; a doubtful egg stays where it is',
        }
      : {
          text: `${late} An incubator that ran cool, or warmth that was broken off, delays the hatch.`,
          check:
            'the temperature with a second thermometer, and the eggs under a lamp; a doubtful egg stays where it is',
        };
  },
};

function unseenCheck(never: boolean): string {
  const listen = 'listen for begging, and see whether food is carried in or shells lie about';
  return never
    ? `${listen}; does somebody still sit at dusk? The nest is left alone`
    : `${listen}, before anybody looks in; eggs that are left go under a lamp, and a doubtful one stays where it is`;
}

/** What a keeper writes who saw the eggs, or that they are gone. */
const EGGS_SEEN: readonly ObservationKey[] = [
  'laid',
  'pulled',
  'candled',
  'aged',
  'pipped',
  'lost',
  'checked',
];

/** The last look before the eggs could hatch, where there was none since then or since the last hatching. Whoever brought eggs saw them. */
function unseenIn({ pair, clutch, hatch, hatched, where, eggs }: Brood): Overdue['unseen'] {
  if (where !== 'nest' || hatch === null) return null;
  const from = Math.max(hatch.from, ...hatched.map(({ firstSeen }) => firstSeen));
  const looks = pair.events.filter(
    (event) => EGGS_SEEN.includes(event.key) && (event.clutch === null || event.clutch === clutch),
  );
  if (looks.some(({ day }) => day >= from)) return null;
  const brought = eggs.flatMap(({ places }) => places.slice(1).at(-1)?.from ?? []);
  const seen = [...pair.looks.slice(-1).map((look) => look.day), ...brought];
  return { since: seen.length === 0 ? null : Math.max(...seen), never: pair.nestLooks === 'never' };
}

/** The eggs that are waited for longer than such eggs take, those that may best hatch yet first. */
function lateEggs({ waiting, clocks }: Brood, day: Day) {
  return waiting
    .filter(({ egg }) => egg.pipped === null)
    .flatMap(({ egg, clock: { start }, duration }) => {
      if (duration === null) return [];
      const kin = clocks.filter((one) => one.duration === duration).map(({ clock }) => clock.start);
      const last = kin.reduce((a, b) => (b.to > a.to ? b : a));
      return [{ egg, start, duration, from: overdueFrom(duration, start, last) }];
    })
    .filter(({ from }) => day >= from)
    .map((one) => {
      const latest = { from: one.start.to, to: one.start.to };
      return { ...one, share: shareHatchingAfter(one.duration, latest, day) };
    })
    .sort((a, b) => b.share - a.share);
}

function overdueIn(brood: Brood, day: Day): Overdue | null {
  if (brood.young.length > 0) return null;
  const unseen = unseenIn(brood);
  // Whoever hatched may have brothers in there that nobody has seen.
  if (unseen !== null && brood.hatched.length > 0) return null;
  const late = lateEggs(brood, day);
  const [likeliest] = late;
  if (likeliest === undefined) return null;
  const date = Math.min(...late.map(({ from }) => from));
  const counted = late.every(({ egg }) => egg.clutch.counted);
  const shown = Math.max(...late.map(({ from }) => from)) + SHOWN;
  if (day > Math.max(shown, (unseen && mayHoldChicksUntil(brood)) ?? shown)) return null;
  return {
    ...about(brood),
    level: 'watch',
    date,
    eggs: counted
      ? names(
          brood,
          brood.eggs.filter((egg) => late.some((one) => one.egg === egg)),
        )
      : 'the eggs',
    one: counted && late.length === 1,
    sat: {
      low: Math.min(...late.map(({ start }) => day - start.to)),
      high: Math.max(...late.map(({ start }) => day - start.from)),
    },
    share: likeliest.share,
    basis: basisOf(likeliest.duration.range, likeliest.duration.n),
    where: brood.where,
    unseen,
  };
}

/** `4 in 1,000`, of the eggs for which it is greatest. */
function inThousand(share: number): string {
  const n = Math.round(share * 1000);
  return n < 1 ? 'fewer than 1 in 1,000' : `${n} in 1,000`;
}
