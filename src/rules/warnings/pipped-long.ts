import { type Day, shortDay } from '../../days.ts';
import { grouped } from '../../grouped.ts';
import { familyOf } from '../../species/families.ts';
import { type Brood, profileIn } from '../brood.ts';
import { about, type Found, type Warning } from './warning.ts';
import { names, opening } from './words.ts';

interface PippedLong extends Found {
  eggs: string;
  many: boolean;
  usual: number;
}

/** Days from the first crack to hatching that are nothing unusual (from memory: a day; parrots up to two). */
const USUAL = { parrots: 2, others: 1 };
/** Days for which it is said. */
const SHOWN = 3;

export const pippedLong: Warning<PippedLong> = {
  kind: 'pipped-long',
  levels: ['watch'],
  health: true,
  when: 'an egg was pipped more than a day ago (parrots: two) and no chick came',
  over: `hatched, or the egg has an end; ${SHOWN} d later`,
  explain:
    'From the first crack to the chick a small bird needs about a day, a parrot up to two. The chick rests for most of that time and takes in the yolk, so help that comes too early bleeds it. It needs warmth and moist air. One that has stopped and is still alive is a matter for an avian vet or a very experienced hand.',
  find: ({ day, broods }) => broods.flatMap((brood) => pippedIn(brood, day)),
  say: ({ eggs, many, usual, date }) => ({
    text: `${opening(eggs)} pipped on ${shortDay(date)} and ${many ? 'have' : 'has'} not hatched; ${usual === 1 ? 'a day' : `${usual} days`} is usual. A chick that dries in its shell cannot turn.`,
    check:
      'listen first, without opening the nest: did it hatch unseen? Warm and moist enough? Do not peel it; ask an avian vet or a very experienced keeper',
  }),
};

/** One line for those that pipped on one day. */
function pippedIn(brood: Brood, day: Day): PippedLong[] {
  const late = brood.eggs.flatMap((egg) => {
    const { pipped } = egg;
    const usual =
      familyOf(profileIn(brood, egg)?.scientific ?? '') === 'parrots' ? USUAL.parrots : USUAL.others;
    return pipped === null || day - pipped <= usual || day - pipped > usual + SHOWN
      ? []
      : [{ egg, pipped, usual }];
  });
  return [...grouped(late, ({ pipped, usual }) => `${pipped} ${usual}`).values()].map((some) => {
    const [{ pipped: date, usual }] = some;
    const eggs = some.map(({ egg }) => egg);
    return { ...about(brood), level: 'watch', date, eggs: names(brood, eggs), many: eggs.length > 1, usual };
  });
}
