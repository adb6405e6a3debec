import { type Day, shortDay } from '../../days.ts';
import { fertilityOf } from '../../room/fertility.ts';
import type { Clutch, Egg } from '../../room/model.ts';
import type { Profile } from '../../species/profile.ts';
import { count } from '../../words.ts';
import type { Brood } from '../brood.ts';
import { about, type Found, type View, type Warning } from './warning.ts';
import { opening } from './words.ts';

interface TwoHens extends Found {
  signs: string[];
  alike: boolean;
}

interface Sign {
  day: Day;
  text: string;
}

/** Days after the sign for which it is said. */
const SHOWN = 7;
/** More eggs than the usual clutch by so many are more than one hen’s. */
const MORE = 2;

export const twoHens: Warning<TwoHens> = {
  kind: 'two-hens',
  levels: ['watch', 'note'],
  health: false,
  when: `two eggs of one day, a clutch more than ${MORE} over its usual size, or every egg clear where cock and hen look alike`,
  over: `a fertile egg of theirs, or a new mate; ${SHOWN} d after the sign. Watch where the clutch is too large or the species looks alike and two signs agree`,
  explain:
    'A small bird lays one egg a day, parrots and doves one every other (Woodall 1975; common practice). Two in a day, or far more eggs than a hen lays, mean that two hens lay: two birds taken for a pair, or another hen of the flight that uses the nest. In species whose sexes look alike, a first clutch that is all clear asks the same. The plain reason comes first: an egg written down twice. A feather sent away for sexing settles it.',
  find: (view) => view.broods.flatMap((brood) => signsIn(brood, view) ?? []),
  say: ({ signs, alike }) => ({
    text: `${opening(signs.join('; '))}. ${alike ? 'Cock and hen look alike in this species: two hens?' : 'Does another hen lay in this nest?'}`,
    check: `whether an egg was written down twice; ${alike ? 'who sings and who sits, and a feather for sexing' : 'which hens can get at the nest'}`,
  }),
};

function signsIn(brood: Brood, { day }: View): TwoHens | null {
  const { clutch, pair, where } = brood;
  if (clutch === null || where !== 'nest' || pair.hen.length > 1 || !clutch.counted) return null;
  if (clutch.hen.join() !== pair.hen.join() || clutch.cock.join() !== pair.cock.join()) return null;
  const profile = pair.profile;
  const alike = profile?.sexes?.value === 'alike' && pair.clutches.every(({ eggs }) => !eggs.some(isFertile));
  const tooMany = tooManyEggs(clutch, profile);
  const signs = [twoInADay(clutch, profile), tooMany, alike ? allClear(clutch, profile) : null].filter(
    (sign) => sign !== null,
  );
  if (signs.length === 0) return null;
  const date = Math.max(...signs.map((sign) => sign.day));
  if (day - date > SHOWN) return null;
  const sure = tooMany !== null || (alike && signs.length > 1);
  return {
    ...about(brood),
    level: sure ? 'watch' : 'note',
    date,
    signs: signs.map(({ text }) => text),
    alike,
  };
}

/** One clear egg says nothing of who laid it, also in a species that lays a single one. */
const FEWEST = 2;

/** Two eggs of one clutch that no hen can have laid with the species' interval between them. */
function twoInADay({ eggs, pair }: Clutch, profile: Profile | null): Sign | null {
  const interval = profile?.layingInterval?.value.low ?? 1;
  // Where eggs come every other day, one day less may be the hours of two looks.
  const least = Math.max(1, interval - 1);
  const second = eggs.findLast((egg, i) => {
    const before = eggs[i - 1];
    return before !== undefined && !before.assumed && !egg.assumed && egg.laid.to - before.laid.from < least;
  });
  if (second === undefined) return null;
  // Lay dates are counted back from the look that found them, which is the day to speak of.
  const found = pair.events
    .filter(({ key, day }) => key === 'laid' && day >= second.laid.to)
    .map(({ day }) => day);
  const day = found[1] ?? second.laid.to;
  return {
    day,
    text: `two eggs were laid by ${shortDay(day)} where one hen lays one every ${interval === 1 ? 'day' : `${interval} d`}`,
  };
}

function tooManyEggs({ eggs, pair }: Clutch, profile: Profile | null): Sign | null {
  const high = profile?.clutch?.value.high;
  const last = eggs.at(-1);
  if (high === undefined || last === undefined) return null;
  // A hen goes on laying when eggs are taken or lost: only those that lay there together count.
  const there = eggs.filter(
    (egg) =>
      (egg.fate === null || egg.fate.day > last.laid.to) &&
      egg.places.every(
        ({ from, place }) => from > last.laid.to || (place.kind === 'nest' && place.pair === pair),
      ),
  );
  if (there.length <= high + MORE) return null;
  return {
    day: last.laid.to,
    text: `${count(there.length, 'egg')} lie in one clutch; ${high} is a large one`,
  };
}

function allClear({ eggs }: Clutch, profile: Profile | null): Sign | null {
  const known = eggs.map(clearOn).filter((day) => day !== null);
  if (known.length < eggs.length || known.length < Math.max(FEWEST, profile?.clutch?.value.low ?? 0))
    return null;
  return { day: Math.max(...known), text: `all ${eggs.length} eggs are clear` };
}

/** The day on which an egg that is known to be clear was told so. */
function clearOn(egg: Egg): Day | null {
  if (fertilityOf(egg) !== 'clear') return null;
  if (egg.fate?.kind === 'lost' && egg.fate.cause === 'clear') return egg.fate.day;
  return egg.lamp.findLast(({ saw }) => saw === 'clear')?.day ?? null;
}

const isFertile = (egg: Egg) => fertilityOf(egg) === 'fertile';
