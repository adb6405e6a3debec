import { shortDay } from '../../days.ts';
import { type Pair, pairedSince } from '../../room/model.ts';
import { needsLiveFood } from '../../species/live-food.ts';
import { foodOffered } from '../agenda/conditions.ts';
import type { Found, View, Warning } from './warning.ts';

interface LiveFoodAhead extends Found {
  species: string;
  required: boolean;
}

/** Days after they were put together for which it is said. */
const SHOWN = 14;

export const liveFoodAhead: Warning<LiveFoodAhead> = {
  kind: 'live-food-ahead',
  levels: ['note'],
  health: false,
  when: 'a pair was just put together whose species rears on live food',
  over: `live food is offered, or eggs are laid; ${SHOWN} d after they were put together`,
  explain:
    'Some species rear on live food only, others do far better with it (the profile says which). Without a steady supply their chicks are thrown out or starve in the first days. That is too late to begin looking for a source, so it is said when the pair is put together. The task `live-food` comes later, before the hatch.',
  find: (view) => view.room.pairs.flatMap((pair) => ahead(view, pair) ?? []),
  say: ({ species, required, date }) => ({
    text: `Together since ${shortDay(date)}. The ${species} ${required ? 'rears on live food: without it the chicks are thrown out or starve' : 'rears far better with live food'}.`,
    check:
      'that a steady supply of small live food is there before the first hatch, and that these birds take it',
  }),
};

function ahead({ room, day }: View, pair: Pair): LiveFoodAhead | null {
  const since = pairedSince(pair);
  if (since === null || day - since > SHOWN) return null;
  if (!needsLiveFood(pair.profile)) return null;
  if (pair.here.eggs.size + pair.here.young.size > 0) return null;
  if (pair.clutches.some(({ opened }) => opened >= since)) return null;
  if (foodOffered(pair, room)?.live === true) return null;
  const required = pair.profile?.liveFood?.value === 'required';
  const id = { pair: pair.id, bird: null, clutch: null };
  return { ...id, level: 'note', date: since, species: pair.species ?? '', required };
}
