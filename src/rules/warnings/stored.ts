import { type Day, type Span, shortSpan, spanOf } from '../../days.ts';
import { type Egg, lastPlace } from '../../room/model.ts';
import { count } from '../../words.ts';
import type { Brood } from '../brood.ts';
import { about, type Found, type Warning } from './warning.ts';
import { names, opening } from './words.ts';

interface Stored extends Found {
  eggs: string;
  /** Whether it is about a single egg. */
  one: boolean;
  /** Days in store of the youngest and of the eldest. */
  days: { low: number; high: number };
  pulled: Span;
}

/** Days in store after which it is said, said louder, and no longer said. */
const NOTE = 5;
const WATCH = 7;
export const STORED_SHOWN = 14;

export const stored: Warning<Stored> = {
  kind: 'stored',
  levels: ['watch', 'note'],
  health: false,
  when: `an egg has lain in store for ${NOTE} d; watch from ${WATCH} d`,
  over: `\`set\`, or the eggs have a fate; after ${STORED_SHOWN} d in store`,
  explain: `An egg in store loses: in poultry a fall in hatching shows after two or three days, quail eggs keep a week or longer in the cool, and no figure for a finch was ever published. So nestlog prints no chance; it says ${NOTE} and ${WATCH} days, which is common practice. Days in store are counted together when an egg was stored twice. Eggs stored long may also hatch later.`,
  find: ({ day, broods }) => broods.flatMap((brood) => storedIn(brood, day) ?? []),
  say: ({ eggs, one, days, pulled }) => ({
    text: `${opening(eggs)}: ${stretch(days)} in store since ${shortSpan(pulled)}. Every day costs some of ${one ? 'its' : 'their'} chance to hatch${days.high >= WATCH ? '; a week is as long as most keepers wait' : ''}.`,
    check: `set ${one ? 'it' : 'them'} back today, or under another pair; cool, not cold, and turned once or twice a day until then`,
  }),
};

function storedIn(brood: Brood, day: Day): Stored | null {
  const long = brood.stored
    .map((egg) => ({ egg, days: daysInStore(egg, day), pulled: lastPlace(egg).from }))
    .filter(({ days }) => days >= NOTE && days <= STORED_SHOWN);
  if (long.length === 0) return null;
  const high = Math.max(...long.map(({ days }) => days));
  const pulled = spanOf(long.map((egg) => egg.pulled));
  return {
    ...about(brood),
    level: high >= WATCH ? 'watch' : 'note',
    date: pulled.from,
    eggs: names(
      brood,
      long.map(({ egg }) => egg),
    ),
    one: long.length === 1,
    days: { low: Math.min(...long.map(({ days }) => days)), high },
    pulled,
  };
}

/** `5 days`, `5–7 days`. */
function stretch({ low, high }: Stored['days']): string {
  return low === high ? count(high, 'day') : `${low}–${high} days`;
}

/** All its days in store, taken together. */
export function daysInStore({ places }: Egg, today: Day): number {
  return places.reduce((sum, { from, place }, i) => {
    const until = places[i + 1]?.from ?? today;
    return place.kind === 'store' ? sum + until - from : sum;
  }, 0);
}
