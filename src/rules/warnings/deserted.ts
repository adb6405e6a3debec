import { type Day, shortDay } from '../../days.ts';
import { sittingStart } from '../../room/clock.ts';
import type { Clutch } from '../../room/model.ts';
import { count } from '../../words.ts';
import { absencesFrom, type Parent } from '../absences.ts';
import type { Brood } from '../brood.ts';
import { byDay } from '../by-day.ts';
import { eggsToWarm, leavesCold } from './parents.ts';
import { takersFor } from './takers.ts';
import { about, type Found, type View, type Warning } from './warning.ts';

interface Deserted extends Found {
  eggs: number;
  off: Day[];
  seen: Day | null;
  /** The one that is there, where the other was taken away. */
  left: Parent | null;
  takers: string;
}

/** Minutes between two looks of one day that make them two (common practice: some hours). */
const APART = 120;
/** Days after the last look for which it is said. */
const SHOWN = 4;

export const deserted: Warning<Deserted> = {
  kind: 'deserted',
  levels: ['watch'],
  health: true,
  when: '`sitting: off` at two looks in a row, on two days or at least two hours apart, once sitting has begun',
  over: `seen sitting, a chick, or no egg left that may hatch; ${SHOWN} d after the last look`,
  explain:
    'Eggs found cold once are not deserted: light sitters leave them for a day or two and sit again (lavender and orange-cheeked waxbills are known for it). So two looks some hours apart, one of them at dusk (common practice), before anybody calls it so. Cooling slows an embryo and does not at once kill it (Olson, Vleck & Vleck 2006), so even then the eggs are worth a foster pair or an incubator. A bird that leaves its eggs may be ill itself: see it on its perch, and ask an avian vet if it is not well.',
  find: (view) => view.broods.flatMap((brood) => desertedIn(view, brood) ?? []),
  say: ({ eggs, off, seen, left, takers }) => ({
    text: `${count(eggs, 'egg')} found cold or alone ${off.length > 1 ? `on ${off.map(shortDay).join(' and ')}` : `at two looks on ${shortDay(off[0] as Day)}`}; ${
      seen === null ? 'nobody was seen sitting yet' : `sitting was last seen on ${shortDay(seen)}`
    }. Deserted? Cold eggs are not dead at once. ${takers}.`,
    check: `once more at dusk; ${left === null ? 'are both birds' : `is the ${left}, who sits alone now,`} well? A bird that is fluffed or on the floor: an avian vet. If nobody sits at night, a foster pair or an incubator is what saves the eggs`,
  }),
};

function desertedIn(view: View, brood: Brood): Deserted | null {
  const { clutch, hatched, where } = brood;
  const eggs = eggsToWarm(brood);
  if (clutch === null || where !== 'nest' || eggs.length === 0 || hatched.length > 0) return null;
  const off = lastOff(clutch);
  const last = off.at(-1);
  if (last === undefined || view.day - last > SHOWN) return null;
  const away = absencesFrom(brood);
  if (away.some(leavesCold)) return null;
  return {
    ...about(brood),
    level: 'watch',
    date: last,
    eggs: eggs.length,
    off,
    seen: clutch.sittings.findLast(({ by }) => by !== 'off')?.day ?? null,
    left: away.some(({ parent }) => parent === 'cock') ? 'hen' : null,
    takers: takersFor(view, brood),
  };
}

/** The days of two looks in a row that found nobody on; none for fewer, and before sitting has begun. */
function lastOff(clutch: Clutch): Day[] {
  const days = byDay(clutch.sittings);
  const on = days.findLast(({ all }) => all.some(({ by }) => by !== 'off'))?.day ?? Number.NEGATIVE_INFINITY;
  const start = sittingStart(clutch, days.at(-1)?.day ?? clutch.opened);
  if (start === null) return [];
  const off = days.filter(({ day }) => day > on && day >= start.span.to);
  const last = off.at(-1);
  if (last === undefined) return [];
  if (off.length > 1) return off.slice(-2).map(({ day }) => day);
  const times = last.all.flatMap(({ time }) => time ?? []);
  return Math.max(...times) - Math.min(...times) >= APART ? [last.day] : [];
}
