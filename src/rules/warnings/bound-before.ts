import { type Day, shortDay } from '../../days.ts';
import { type Pair, together } from '../../room/model.ts';
import { isDown } from '../../room/nests-down.ts';
import { signsIn } from '../illness.ts';
import { onlyOf } from '../stock/names.ts';
import type { Found, View, Warning } from './warning.ts';

interface BoundBefore extends Found {
  hen: string;
  /** The day on which she was last seen unable to pass an egg. */
  bound: Day;
  again: 'nest' | 'mate' | 'egg';
}

/** How long a hen is spared that could not pass an egg: the rest of a season. */
const SEASON = 180;
/** An egg so soon after is the one that she could not pass. */
const THAT_EGG = 4;
/** Days for which it is said. */
const SHOWN = 14;

export const boundBefore: Warning<BoundBefore> = {
  kind: 'bound-before',
  levels: ['watch'],
  health: true,
  when: `a hen that strained or was egg bound in the last ${SEASON} d is offered a nest or a mate, or lays again`,
  over: `${SHOWN} d after the nest, the mate or the last egg`,
  explain:
    'A hen that could not pass an egg once is likely to fail again, and the next time she may not be found in time. Keepers let her miss the rest of the season, without a nest and often without the cock, and ask an avian vet before she lays again (common practice). Calcium, light, warmth and room to fly come before the next egg, not with it.',
  find: (view) => view.room.pairs.flatMap((pair) => again(view, pair) ?? []),
  say: ({ hen, bound, again, date }) => ({
    text: `The hen ${hen} could not pass an egg on ${shortDay(bound)}. ${
      again === 'egg'
        ? `She laid again on ${shortDay(date)}`
        : `She has ${again === 'nest' ? 'a nest' : 'a mate'} again since ${shortDay(date)}`
    }; it can come back.`,
    check:
      again === 'egg'
        ? 'look at her morning and evening while she lays: bright, perching, droppings as usual? Fluffed or straining: the avian vet at once'
        : 'whether she had better miss this season; ask an avian vet before she lays. If she stays: calcium on offer, no cold nights, and a look morning and evening',
  }),
};

function again({ day, find }: View, pair: Pair): BoundBefore | null {
  const [hen = ''] = pair.hen;
  const bird = onlyOf(pair.hen, find);
  if (bird === null || bird.fate !== null || !together(pair)) return null;
  const bound = bird.unwell.findLast(({ text }) => signsIn(text).includes('straining'))?.day;
  if (bound === undefined || day - bound > SEASON) return null;
  const nests = pair.nestStates.filter(({ state }) => !isDown(state));
  const eggs = pair.clutches.flatMap((clutch) => clutch.eggs);
  const since = [
    ...eggs.filter(({ laid }) => laid.from > bound + THAT_EGG).map(({ laid }) => ['egg', laid.to] as const),
    ...nests.filter((nest) => nest.day > bound).map((nest) => ['nest', nest.day] as const),
    // Whoever is together now was put together last: a parting before that is no later.
    ...pair.partings.filter((one) => one.day > bound).map((one) => ['mate', one.day] as const),
  ];
  const last = since.reduce<(typeof since)[number] | null>(
    (a, b) => (a === null || b[1] > a[1] ? b : a),
    null,
  );
  if (last === null || day - last[1] > SHOWN) return null;
  const [what, date] = last;
  return { level: 'watch', pair: pair.id, bird: null, clutch: null, date, hen, bound, again: what };
}
