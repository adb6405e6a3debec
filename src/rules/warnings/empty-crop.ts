import { type Day, shortDay } from '../../days.ts';
import type { Bird } from '../../room/model.ts';
import type { WarningLevel } from '../agenda/item.ts';
import type { Brood } from '../brood.ts';
import { byDay } from '../by-day.ts';
import { about, type Found, type Warning } from './warning.ts';
import { names, opening } from './words.ts';

interface EmptyCrop extends Found {
  young: string;
  many: boolean;
  crop: 'empty' | 'thin' | 'unclear';
  yolk: boolean;
  /** Fed by hand, with nobody else to look to. */
  byHand: boolean;
}

/** Days after the look for which it is said. */
const SHOWN = 2;

export const emptyCrop: Warning<EmptyCrop> = {
  kind: 'empty-crop',
  levels: ['act', 'watch'],
  health: true,
  when: 'the last crop check found the crop empty, or thin at two looks in a row',
  over: `a later full crop, or seen fed on a later day; ${SHOWN} d after the look. Watch on the day of hatching, where one look of that day says full, and for a chick that is fed by hand`,
  explain:
    'A nestling that is fed has food in its crop from an hour after light until night. Empty by day means that it was not fed, and a small chick does not last another day on that; at first light every crop is empty. A chick just hatched lives its first day on its yolk. Look whether the parents carry food in, whether they have what they rear on, and whether it is warm: a cold chick does not beg. A crop of a chick that is fed by hand is empty when the next meal is due, and has to be once in a day (common practice). A weak one is a matter for an avian vet.',
  find: ({ day, broods }) => broods.flatMap((brood) => emptyIn(brood, day)),
  say: ({ young, many, crop, yolk, byHand, date }) => ({
    text:
      crop === 'thin'
        ? `${opening(young)} had a thin crop at two looks in a row, the last on ${shortDay(date)}: fed, but not enough.`
        : `The ${many ? 'crops' : 'crop'} of ${young} ${many ? 'were' : 'was'} empty on ${shortDay(date)}${crop === 'unclear' ? ', though another look of that day says full' : ''}. ${
            yolk
              ? 'A chick lives its first day on its yolk, not its second.'
              : 'A chick that is not fed does not last another day.'
          }`,
    check: byHand
      ? 'was it the time of the next meal? Warm, begging, and does the crop fill at a meal and empty before the next? One that stays full, or a chick that is weak or does not beg: an avian vet'
      : 'look again in an hour (at first light every crop is empty): warm, begging? Do the parents carry food in, and do they have what they rear on? A weak chick: an avian vet',
  }),
};

function emptyIn(brood: Brood, today: Day): EmptyCrop[] {
  const seen = brood.young.flatMap((bird) => {
    const crop = cropOf(bird);
    return crop === null || today - crop.day > SHOWN ? [] : [{ bird, ...crop }];
  });
  const byHand = brood.where !== 'nest';
  return (['empty', 'unclear', 'thin'] as const).flatMap((crop) =>
    byDay(seen.filter((one) => one.crop === crop)).map(({ day: date, all }) => {
      const birds = all.map(({ bird }) => bird);
      const yolk = birds.every(({ hatched }) => date - hatched.to < 1);
      const level: WarningLevel = crop === 'empty' && !yolk && !byHand ? 'act' : 'watch';
      const young = names(brood, birds);
      return { ...about(brood, birds), level, date, young, many: birds.length > 1, crop, yolk, byHand };
    }),
  );
}

/** What the last day's looks say of a chick that is short of food; null for one that is fed. */
function cropOf({ crops, fedBy }: Bird): { day: Day; crop: EmptyCrop['crop'] } | null {
  const days = byDay(crops).map(({ day, all }) => ({ day, saw: new Set(all.map(({ crop }) => crop)) }));
  const [before, last] = [days.at(-2), days.at(-1)];
  if (last === undefined || fedBy.some(({ day }) => day > last.day)) return null;
  if (last.saw.has('empty')) return { day: last.day, crop: last.saw.has('full') ? 'unclear' : 'empty' };
  const thinAgain = last.saw.has('thin') && !last.saw.has('full') && before?.saw.has('full') === false;
  return thinAgain ? { day: last.day, crop: 'thin' } : null;
}
