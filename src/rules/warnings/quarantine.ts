import { type Day, shortDay } from '../../days.ts';
import { enteredOn } from '../../room/lives.ts';
import { type Bird, type Pair, pairedSince } from '../../room/model.ts';
import { listed } from '../../words.ts';
import { type Found, pairWith, type View, type Warning } from './warning.ts';

interface Mixed extends Found {
  birds: string[];
  with: string[];
  housing: string | null;
  until: Day;
}

/** Days after they came together for which it is said. */
const SHOWN = 7;
/** So many of the others are named. */
const NAMED = 4;

export const quarantine: Warning<Mixed> = {
  kind: 'quarantine',
  levels: ['watch'],
  health: true,
  when: 'a bird whose quarantine is not over shares its housing, or its pair, with a bird that did not come with it',
  over: 'apart again, `released`, or the quarantine is over; 7 d later',
  explain:
    'New and returned birds stay apart for thirty days at least (common practice), because what they carry shows late, and what the room carries may be new to them. When another bird joins, the days begin anew for all of them. An avian vet says whether the time can be shorter or must be longer. Wash hands, and see to the new birds last.',
  find: mixedIn,
  say: ({ birds, with: others, housing, until, date }) => ({
    text: `${listed(birds)}: in quarantine until ${shortDay(until)}, and since ${shortDay(date)} ${housing === null ? 'together' : `in ${housing}`} with ${listed(others)}. What a new bird carries shows late.`,
    check:
      'part them; if they were together, the days begin anew for all. Ask an avian vet before you shorten it; new birds last, and washed hands',
  }),
};

/** One line for birds that came together and sit together. */
function mixedIn(view: View): Mixed[] {
  const here = view.room.birds.filter(({ fate, placeholder }) => fate === null && !placeholder);
  const lines = new Map<string, Mixed>();
  for (const bird of here) {
    const { quarantine: apart } = bird;
    if (apart === null || bird.released !== null || view.day >= apart.until) continue;
    const housing = bird.stays.at(-1)?.housing ?? null;
    const pair = pairWith(view, bird);
    const others = here.filter(
      (other) => other !== bird && isStranger(bird, other, pair) && meet(view, bird, other, pair),
    );
    if (others.length === 0) continue;
    const since = Math.min(...others.map((other) => togetherSince(bird, other, pair)));
    if (view.day - since > SHOWN) continue;
    const key = JSON.stringify([apart.from, housing, pair?.id]);
    const line = lines.get(key);
    lines.set(key, {
      level: 'watch',
      pair: pair?.id ?? null,
      bird: line === undefined ? bird.id : null,
      clutch: null,
      date: Math.min(since, line?.date ?? since),
      birds: [...(line?.birds ?? []), bird.id],
      with: namesOf(others),
      housing,
      until: apart.until,
    });
  }
  return [...lines.values()];
}

/** Neither came with it nor hatched to it. */
function isStranger(bird: Bird, other: Bird, pair: Pair | undefined): boolean {
  if (pair !== undefined && other.clutch?.pair === pair) return false;
  const apart = other.quarantine !== null && other.released === null;
  return !apart || (other.quarantine?.from !== bird.quarantine?.from && enteredOn(other) !== enteredOn(bird));
}

function meet({ find }: View, bird: Bird, other: Bird, pair: Pair | undefined): boolean {
  const housing = bird.stays.at(-1)?.housing ?? null;
  if (housing !== null && other.stays.at(-1)?.housing === housing) return true;
  return pair !== undefined && [...pair.cock, ...pair.hen].some((name) => find(name) === other);
}

/** The later of the days on which the two came to where they are, in quarantine at the earliest. */
function togetherSince(bird: Bird, other: Bird, pair: Pair | undefined): Day {
  const came = [bird, other].flatMap(({ stays }) => stays.at(-1)?.from ?? []);
  return Math.max(
    bird.quarantine?.from ?? 0,
    other.quarantine?.from ?? 0,
    ...came,
    (pair === undefined ? null : pairedSince(pair)) ?? 0,
  );
}

function namesOf(birds: readonly Bird[]): string[] {
  const names = birds.map(({ id }) => id);
  return names.length > NAMED ? [...names.slice(0, NAMED), `${names.length - NAMED} others`] : names;
}
