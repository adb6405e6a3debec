import type { Day } from '../../days.ts';
import type { Brood } from '../brood.ts';
import { basisOf } from '../forecast/duration.ts';
import { overdueFrom, shareHatchingAfter } from '../forecast/overdue.ts';
import { about, type Found, type Warning } from './warning.ts';
import { names } from './words.ts';

interface Overdue extends Found {
  eggs: string;
  one: boolean;
  /** Fewest and most days of sitting that these eggs have had. */
  sat: { low: number; high: number };
  /** Of such eggs, how many hatch later than today, 0 to 1. */
  share: number;
  basis: string;
}

/** Days for which it is said; after them the task `unhatched` goes on asking. */
const SHOWN = 7;

export const overdue: Warning<Overdue> = {
  kind: 'overdue',
  levels: ['watch'],
  health: false,
  when: 'fewer than 1 in 100 such eggs hatch later than today, and the clutch’s last egg is 4 d past the longest usual incubation',
  over: 'the eggs have a fate; 7 d later. Not said while chicks share the nest: the eggs stay with them until it comes down',
  explain:
    'Incubation is counted from the day of full sitting, and each egg from its own clock. An egg is called overdue late rather than early, under a tail that the own clutches bear out. Sitting that began late or was broken off delays the hatch, so an overdue egg is a question: candle it, and leave it where it is while there is a doubt. Nothing here asks for an egg to be destroyed.',
  find: ({ day, broods }) => broods.flatMap((brood) => overdueIn(brood, day) ?? []),
  say({ eggs, one, sat, share, basis }) {
    const days = sat.low === sat.high ? `day ${sat.high}` : `day ${sat.low}–${sat.high}`;
    return {
      text: `${eggs} ${one ? 'is' : 'are'} overdue: ${days} of sitting (${basis}); ${inThousand(share)} such eggs hatch later than today. Sitting that began late or was broken off delays the hatch.`,
      check:
        'when full sitting really began, and the eggs under a lamp if the nest may be looked into; a doubtful egg stays where it is',
    };
  },
};

function overdueIn(brood: Brood, day: Day): Overdue | null {
  const { clocks, young } = brood;
  if (young.length > 0) return null;
  const late = brood.waiting
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
  const [likeliest] = late;
  if (likeliest === undefined) return null;
  const date = Math.min(...late.map(({ from }) => from));
  if (day > Math.max(...late.map(({ from }) => from)) + SHOWN) return null;
  return {
    ...about(brood),
    level: 'watch',
    date,
    eggs: names(
      brood,
      brood.eggs.filter((egg) => late.some((one) => one.egg === egg)),
    ),
    one: late.length === 1,
    sat: {
      low: Math.min(...late.map(({ start }) => day - start.to)),
      high: Math.max(...late.map(({ start }) => day - start.from)),
    },
    share: likeliest.share,
    basis: basisOf(likeliest.duration.range, likeliest.duration.n),
  };
}

/** `4 in 1,000`, of the eggs for which it is greatest. */
function inThousand(share: number): string {
  const n = Math.round(share * 1000);
  return n < 1 ? 'fewer than 1 in 1,000' : `${n} in 1,000`;
}
