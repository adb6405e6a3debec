import { shortDay } from '../../days.ts';
import { hostClutch } from '../../room/lives.ts';
import type { Clutch, Pair } from '../../room/model.ts';
import type { Found, View, Warning } from './warning.ts';

interface CountsDiffer extends Found {
  what: 'eggs' | 'chicks';
  known: number;
  seen: number;
}

/** Days after the look for which it is said. */
const SHOWN = 10;

export const countsDiffer: Warning<CountsDiffer> = {
  kind: 'counts-differ',
  levels: ['watch', 'note'],
  health: false,
  when: 'a look counted other eggs or chicks than the journal knows of',
  over: `a later look, or a line that says what became of the rest, agrees, or nobody is left to be counted; ${SHOWN} d after the look. Watch where chicks are missing, or more were seen than can be`,
  explain:
    'Counts disagree when something happened that nobody wrote (an egg thrown out, a chick that died and was carried off), when one look missed one under the hen, or when two helpers wrote of two nests. nestlog keeps what it knew: it does not guess which egg is gone. Look on the floor below the nest for a chick, then count again, or write what became of it with `lost` or `died`.',
  find: (view) =>
    view.room.pairs.flatMap((pair) => pair.clutches.flatMap((clutch) => differIn(view, pair, clutch))),
  say: ({ what, known, seen, date }) => ({
    text: `${seen} ${seen === 1 ? what.slice(0, -1) : what} seen on ${shortDay(date)} where the journal knows of ${known}. ${
      seen < known
        ? what === 'chicks'
          ? 'A chick may lie on the floor, or have died and been carried off.'
          : 'An egg may have been thrown out, eaten, or missed under the hen.'
        : 'Somebody laid or hatched whom nobody wrote down, or a count slipped.'
    }`,
    check: `${seen < known && what === 'chicks' ? 'the floor below the nest, now; then ' : ''}count again at the next look, or write what became of ${seen < known ? 'the rest' : 'them'} (${what === 'eggs' ? '`lost`, `laid`' : '`died`, `hatched`'})`,
  }),
};

/** The last disagreement of eggs and of chicks, unless something since has settled it. */
function differIn(view: View, pair: Pair, clutch: Clutch): CountsDiffer[] {
  return (['eggs', 'chicks'] as const).flatMap((what) => {
    const last = clutch.mismatches.findLast((one) => one.what === what);
    if (last === undefined || view.day - last.day > SHOWN) return [];
    const looked = pair.events.some(({ key, day }) => key === 'checked' && day > last.day);
    const now =
      what === 'eggs'
        ? pair.here.eggs.size
        : [...pair.here.young].filter(({ fledged }) => fledged === null).length;
    if (looked || now === last.seen || (last.known > 0 && nobodyLeft(pair, clutch, what))) return [];
    const level = what === 'chicks' || last.seen > last.known ? ('watch' as const) : ('note' as const);
    const { known, seen } = last;
    return [{ level, pair: pair.id, bird: null, clutch: clutch.number, date: last.day, what, known, seen }];
  });
}

/** Whether no egg of this clutch's nest is left, or none of its young, those that left the nest and are fed included. */
function nobodyLeft({ here }: Pair, clutch: Clutch, what: CountsDiffer['what']): boolean {
  return [...(what === 'eggs' ? here.eggs : here.young)].every((one) => hostClutch(one) !== clutch);
}
