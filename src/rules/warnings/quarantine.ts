import { type Day, shortDay } from '../../days.ts';
import { type Bird, together } from '../../room/model.ts';
import type { Found, View, Warning } from './warning.ts';
import { listed } from './words.ts';

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
  find: (view) => mixedIn(view),
  say: ({ birds, with: others, housing, until, date }) => ({
    text: `${listed(birds)}: in quarantine until ${shortDay(until)}, and since ${shortDay(date)} ${housing === null ? 'together' : `in ${housing}`} with ${listed(others)}. What a new bird carries shows late.`,
    check:
      'part them; if they were together, the days begin anew for all. Ask an avian vet before you shorten it; new birds last, and washed hands',
  }),
};

/** One line for birds that came together and sit together. */
function mixedIn({ room, day, find }: View): Mixed[] {
  const here = room.birds.filter(({ fate, placeholder }) => fate === null && !placeholder);
  const lines = new Map<string, Mixed>();
  for (const bird of here) {
    const { quarantine: apart } = bird;
    if (apart === null || bird.released !== null || day >= apart.until || day < apart.from) continue;
    const stay = bird.stays.at(-1);
    const pair = room.pairs.findLast(
      (one) => together(one) && [...one.cock, ...one.hen].some((name) => find(name) === bird),
    );
    const mates = pair === undefined ? [] : [...pair.cock, ...pair.hen].flatMap((name) => find(name) ?? []);
    const others = here.filter(
      (other) =>
        other !== bird &&
        other.quarantine?.from !== apart.from &&
        ((stay?.housing != null && other.stays.at(-1)?.housing === stay.housing) || mates.includes(other)),
    );
    const since = Math.max(apart.from, ...(others.length === 0 ? [] : [Math.min(...others.map((other) => together2(bird, other)))]));
    if (others.length === 0 || day - since > SHOWN) continue;
    const key = `${apart.from} ${stay?.housing} ${pair?.id}`;
    const line = lines.get(key);
    if (line !== undefined) line.birds.push(bird.id);
    else
      lines.set(key, {
        level: 'watch',
        pair: pair?.id ?? null,
        bird: bird.id,
        clutch: null,
        date: since,
        birds: [bird.id],
        with: namesOf(others),
        housing: stay?.housing ?? null,
        until: apart.until,
      });
  }
  return [...lines.values()].map((line) => (line.birds.length > 1 ? { ...line, bird: null } : line));
}
