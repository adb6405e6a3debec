import { shortDay } from '../../days.ts';
import { hatchedOn } from '../../room/clock.ts';
import type { Bird } from '../../room/model.ts';
import { needsLiveFood } from '../../species/live-food.ts';
import { foodOffered } from '../agenda/conditions.ts';
import { type Brood, profileIn } from '../brood.ts';
import { about, type Found, type View, type Warning } from './warning.ts';
import { chicksWords, opening } from './words.ts';

interface LiveFoodMissing extends Found {
  chicks: string;
  species: string;
  required: boolean;
  /** The day of the last `food` line; null where there is none. */
  food: number | null;
}

/** Days without it in which chicks are lost, and for which it is said. */
const ACT = 3;
const SHOWN = 7;

export const liveFoodMissing: Warning<LiveFoodMissing> = {
  kind: 'live-food-missing',
  levels: ['act', 'watch'],
  health: true,
  when: 'chicks are in the nest, the species rears on live food, and the last `food` names none',
  over: `live food is offered, a later look finds every crop full, or no chick is in the nest; ${SHOWN} d later. Act where the profile says required`,
  explain:
    'Parents that rear on live food and have none throw their chicks out or let them starve within days. `food` says what is offered from now on, in the pair’s journal or in the room’s; where it stands only in a note, nestlog cannot know it. Chicks that are seen with full crops without it are doing well enough. A weak chick is a matter for an avian vet.',
  find: (view) => view.broods.flatMap((brood) => missingFor(view, brood) ?? []),
  say: ({ chicks, species, required, food }) => ({
    text: `${opening(chicks)} in the nest, and ${food === null ? 'no `food` was ever written for this pair' : `the food written on ${shortDay(food)} names no live food`}. The ${species} ${
      required
        ? 'rears on live food: without it chicks are thrown out or starve'
        : 'rears far better with live food'
    }.`,
    check:
      'is small live food out, and do the parents carry it in? Look at the crops. If it is out, write `food: [live food, …]`. A weak chick: an avian vet',
  }),
};

function missingFor({ room, day }: View, brood: Brood): LiveFoodMissing | null {
  const inNeed = (bird: Bird) => needsLiveFood(profileIn(brood, bird));
  const isRequired = (bird: Bird) => profileIn(brood, bird)?.liveFood?.value === 'required';
  const nestlings = brood.young.filter((bird) => bird.fledged === null && inNeed(bird));
  const first = nestlings.find(isRequired) ?? nestlings[0];
  if (brood.where !== 'nest' || first === undefined) return null;
  const food = foodOffered(brood.pair, room);
  if (food?.live === true) return null;
  const hatched = Math.min(...brood.hatched.filter(inNeed).map((bird) => hatchedOn(bird).to));
  const date = Math.max(Number.isFinite(hatched) ? hatched : day, food?.day ?? Number.NEGATIVE_INFINITY);
  if (day - date > SHOWN) return null;
  const thrive = nestlings.every(({ crops }) => {
    const last = crops.at(-1);
    return last !== undefined && last.day > date && last.crop === 'full';
  });
  if (thrive) return null;
  const required = isRequired(first);
  return {
    ...about(brood),
    level: required && day - date <= ACT ? 'act' : 'watch',
    date,
    chicks: chicksWords(nestlings),
    species: profileIn(brood, first)?.species ?? '',
    required,
    food: food?.day ?? null,
  };
}
