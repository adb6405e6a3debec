import { grouped } from '../../grouped.ts';
import { daysRange } from '../../words.ts';
import { unringed } from '../agenda/anchors.ts';
import type { Brood } from '../brood.ts';
import { about, type Found, type Warning } from './warning.ts';
import { names, opening } from './words.ts';

interface RingTooLate extends Found {
  chicks: string;
  many: boolean;
  /** Days; of the youngest if it hatched as late as it can have, and of the eldest if as early. */
  age: { low: number; high: number };
  usual: { low: number; high: number };
}

/** Days after the ringing window on which it is said. */
const SHOWN = 2;

export const ringTooLate: Warning<RingTooLate> = {
  kind: 'ring-too-late',
  levels: ['note'],
  health: true,
  when: 'a nestling without a ring is past the ring age of the profile',
  over: '`ringed`, `skip: ring`, or it fledged; said on the two days after the ring age',
  explain:
    'A closed ring passes the toes for a few days only. After that it would have to be forced, and a forced or tight ring costs a foot: never force one. Other marks exist, such as split rings and photographs; whether they will do where a ring is asked for by law or by a society is a matter of your local rules and your ring issuer. A swollen leg under a ring is a job for an avian vet, never for pliers at home.',
  find: ({ day, broods }) => broods.flatMap((brood) => tooLateIn(brood, day)),
  say: ({ chicks, many, age, usual }) => ({
    text: `${opening(chicks)}: ${daysRange(age)} old without a ring; ${daysRange(usual)} is the age for a closed one. It is too late: do not force a ring over the ${many ? 'feet' : 'foot'}.`,
    check:
      'another mark, as your local rules and ring issuer allow (write `skip: ring`). A leg that is swollen or cut under a ring: an avian vet',
  }),
};

/** Each species by itself, as each has its own age; who hatched on several days in one line, the eldest first. */
function tooLateIn(brood: Brood, day: number): RingTooLate[] {
  if (!brood.room.settings.ringing || brood.pair.nestLooks === 'never') return [];
  if (brood.clutch?.skipped.some(({ task }) => task === 'ring')) return [];
  const late = unringed(brood).flatMap(({ span, who, profile }) => {
    const usual = (profile ?? brood.profile)?.ringAge?.value;
    return usual !== undefined && day > span.to + usual.high && day <= span.to + usual.high + SHOWN
      ? [{ hatched: span, who: who ?? [], usual }]
      : [];
  });
  return [...grouped(late, ({ usual }) => usual)].map(([usual, alike]) => {
    const birds = alike.flatMap(({ who }) => who);
    const youngest = Math.max(...alike.map(({ hatched }) => hatched.to));
    return {
      ...about(brood),
      level: 'note',
      date: youngest + usual.high,
      chicks: names(brood, birds),
      many: birds.length > 1,
      age: { low: day - youngest, high: day - Math.min(...alike.map(({ hatched }) => hatched.from)) },
      usual,
    };
  });
}
