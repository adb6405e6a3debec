import { type Day, shortDay, wholeMonths } from '../../days.ts';
import { hatchedOn } from '../../room/clock.ts';
import { type Pair, pairedSince } from '../../room/model.ts';
import { count, listed } from '../../words.ts';
import { breedsFrom } from '../stock/life.ts';
import { onlyOf } from '../stock/names.ts';
import type { Found, View, Warning } from './warning.ts';
import { opening } from './words.ts';

interface TooYoung extends Found {
  who: string[];
  months: number;
  hen: boolean;
  laid: Day | null;
}

/** Days after they were put together, or after the first egg, for which it is said. */
const SHOWN = 14;

export const tooYoung: Warning<TooYoung> = {
  kind: 'too-young',
  levels: ['watch', 'note'],
  health: true,
  when: 'a bird was put to a mate, or lays, before the least breeding age of the profile',
  over: `it is old enough, or parted; ${SHOWN} d after they were put together, and after a first egg once more. A note where only the cock is too young`,
  explain:
    'Able to breed is not fit to breed: wild zebra finches breed at two months (Emu 1994), keepers wait for six to nine or more (common practice). A hen that lays before she is grown is prone to egg binding, which is an emergency for an avian vet, and young parents leave their first broods more often.',
  find: (view) => view.room.pairs.flatMap((pair) => youngIn(view, pair) ?? []),
  say: ({ who, months, hen, laid, date }) => ({
    text: `${opening(listed(who))} ${laid === null ? `in a pair since ${shortDay(date)}` : `with a first egg on ${shortDay(laid)}`}; ${months} months is the least for the species. ${
      hen
        ? 'A hen that lays before she is grown is prone to egg binding.'
        : 'Young parents leave their broods more often.'
    }`,
    check: `${laid === null ? 'no nest, or apart, until old enough' : 'calcium on offer, and the hen each morning'}; a hen that is fluffed or straining is an emergency for an avian vet`,
  }),
};

function youngIn(view: View, pair: Pair): TooYoung | null {
  const since = pairedSince(pair);
  const least = pair.profile?.breedingAge;
  if (since === null || least == null) return null;
  const parents = (['cock', 'hen'] as const).flatMap((sex) => {
    const bird = onlyOf(pair[sex], view.find);
    const hatched = bird === null || bird.fate !== null ? null : hatchedOn(bird);
    // Taken for as old as it can be.
    if (bird === null || hatched === null || view.day >= breedsFrom(hatched.from, pair.profile)) return [];
    return [{ sex, bird, months: wholeMonths(hatched.from, view.day) }];
  });
  if (parents.length === 0) return null;
  const clutch = pair.clutches.find(({ opened, eggs }) => opened >= since && eggs.length > 0);
  const date = clutch?.opened ?? since;
  if (view.day - date > SHOWN) return null;
  const hen = parents.some(({ sex }) => sex === 'hen');
  return {
    level: hen ? 'watch' : 'note',
    pair: pair.id,
    bird: null,
    clutch: clutch?.number ?? null,
    date,
    who: parents.map(({ sex, bird, months }) => `the ${sex} ${bird.id} is ${count(months, 'month')} old`),
    months: least.value.low,
    hen,
    laid: clutch?.opened ?? null,
  };
}
