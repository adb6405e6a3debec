import { type Day, shortDay } from '../../days.ts';
import { type Pair, together } from '../../room/model.ts';
import { isDown } from '../../room/nests-down.ts';
import { count } from '../../words.ts';
import { clutchesOfHen, clutchLimit, firstEgg, inYearTo } from '../hen-year.ts';
import { onlyOf } from '../stock/names.ts';
import type { Found, View, Warning } from './warning.ts';

interface OverLimit extends Found {
  hen: string;
  clutches: number;
  limit: number;
  laying: boolean;
  by: 'room' | 'species';
}

/** Days after the egg or the nest for which it is said. */
const SHOWN = 14;

export const overLimit: Warning<OverLimit> = {
  kind: 'over-limit',
  levels: ['watch'],
  health: true,
  when: 'a hen with as many clutches in 365 d as the room’s limit (else the profile’s) allows is offered another nest, or lays again',
  over: `the nest is removed, the pair parted, or every new egg has an end; ${SHOWN} d later`,
  explain:
    'Every clutch costs a hen calcium and flesh; too many eggs are among what goes before egg binding. Two or three clutches a year are what most keepers ask for (a zebra finch stud stops after two, Bird Scene 2018; three is common practice); the limit of the room goes before that of the species. Clutches are counted by the hen, whatever pair she laid them in, from their first egg. A hen that is thin or worn is a matter for an avian vet.',
  find: (view) => view.room.pairs.flatMap((pair) => overIn(view, pair) ?? []),
  say: ({ hen, clutches, limit, laying, by, date }) => ({
    text: `The hen ${hen} ${
      laying
        ? `laid again on ${shortDay(date)}: clutch ${clutches} in a year`
        : `has had ${count(clutches, 'clutch', 'clutches')} in a year and was offered a nest on ${shortDay(date)}`
    }; ${limit} ${by === 'room' ? 'is this room’s limit' : 'is the most for the species'}. Each one costs her calcium and flesh, and the risk of egg binding grows.`,
    check: `${laying ? 'her weight and breast; calcium on offer; let this be the last, without a further nest' : 'take the nest out while it is empty, or part them for a rest'}. A hen that is thin or fluffed: an avian vet`,
  }),
};

function overIn(view: View, pair: Pair): OverLimit | null {
  const [hen = ''] = pair.hen;
  const limit = clutchLimit(view.room, pair.profile);
  const bird = onlyOf(pair.hen, view.find);
  if (bird === null || bird.fate !== null || limit === null || !together(pair)) return null;
  const hers = clutchesOfHen(view.room, bird, view.find);
  const inYear = (day: Day) => inYearTo(hers, day);
  const found = (date: Day, laying: boolean): OverLimit => ({
    level: 'watch',
    pair: pair.id,
    bird: null,
    clutch: laying ? (last?.number ?? null) : null,
    date,
    hen,
    clutches: inYear(date).length,
    limit,
    laying,
    by: view.room.settings.limits.clutchesPerYear === null ? 'species' : 'room',
  });
  const last = hers.at(-1);
  if (last === undefined) return null;
  const laid = firstEgg(last);
  if (inYear(laid).length > limit) {
    const open = last.pair === pair && last.eggs.some(({ fate }) => fate === null);
    return open && view.day - laid <= SHOWN ? found(laid, true) : null;
  }
  const nest = pair.nestStates.at(-1);
  if (nest === undefined || isDown(nest.state)) return null;
  if (view.day - nest.day > SHOWN || nest.day <= laid || inYear(nest.day).length < limit) return null;
  // The nest of a clutch in course is no new offer.
  const busy =
    last.eggs.some(({ fate }) => fate === null) ||
    last.chicks.some(({ fledged, fate }) => fledged === null && fate === null);
  return busy ? null : found(nest.day, false);
}
