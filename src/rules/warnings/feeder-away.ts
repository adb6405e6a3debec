import { shortDay } from '../../days.ts';
import { housingOf } from '../../room/lives.ts';
import type { Bird } from '../../room/model.ts';
import { absencesFrom, type ParentAway } from '../absences.ts';
import type { Brood } from '../brood.ts';
import { isHard } from './chasing.ts';
import { feedersOf, feedingWords, unfedSince } from './feeders.ts';
import { absenceWords, leavesCold, onFoot, unbrooded } from './parents.ts';
import { about, type Found, type View, type Warning } from './warning.ts';
import { opening } from './words.ts';

interface FeederAway extends Found {
  away: string;
  feeding: string;
  /** Whether the one that is away can be put back. */
  parted: boolean;
  /** It chased hard or fiercely in the days before: it stays apart. */
  chased: boolean;
  fedByOther: boolean;
}

/** Days after the parting in which young can starve, and for which it is said. */
const ACT = 2;
const SHOWN = 5;
/** For so long where the parent that stayed was seen feeding all of them before. */
const SHOWN_FED = 1;
/** For so many days after a hard chase the one that chased is not put back. */
const CHASED = 7;

export const feederAway: Warning<FeederAway> = {
  kind: 'feeder-away',
  levels: ['act', 'watch'],
  health: true,
  when: 'a parent was parted, died or left while young still depend on somebody: the one that fed them, or nobody wrote who did',
  over: `each of the young was seen fed or with a full crop on a later day, or feeds itself; the parents are together again; ${SHOWN} d later`,
  explain:
    'Young out of the nest are often fed by one parent only, mostly the cock, while the hen builds again. So do not take the cock before you saw who feeds. When a feeder is away, look at each chick’s crop within hours; put the family together again if the parent that was left neglects or chases some of the young, but never one back that was taken away because it chased hard (common practice). Which parent feeds whom is written with `feeding`. A weak chick is a matter for an avian vet.',
  find: (view) => view.broods.flatMap((brood) => awayFrom(view, brood) ?? []),
  say: ({ away, feeding, parted, chased, fedByOther, date }) => ({
    text: `${opening(away)} on ${shortDay(date)} while the young still depend on being fed: ${feeding}. ${
      fedByOther
        ? 'The one that stayed has to feed them all now'
        : 'Young that nobody feeds starve within a day or two'
    }.`,
    check: `each chick’s crop within hours, and again at dusk; ${
      parted && !chased
        ? 'put the family together again if the parent that stayed neglects or chases some'
        : `another pair or the hand for those that nobody feeds${chased ? '; the one that chased stays apart' : ''}`
    }. A weak chick: an avian vet`,
  }),
};

function awayFrom(view: View, brood: Brood): FeederAway | null {
  if (brood.where !== 'nest' || brood.young.length === 0) return null;
  const absence = absencesFrom(brood).at(-1);
  if (absence === undefined || view.day - absence.day > SHOWN) return null;
  // Naked chicks that are left cold are another warning's.
  const cold = leavesCold(absence) ? unbrooded(brood) : [];
  const waiting = unfedSince(brood, absence).filter(
    (bird) => !onFoot(brood, bird) && !wentAlong(bird, absence) && !cold.includes(bird),
  );
  if (waiting.length === 0) return null;
  const fedByOther = waiting.every((bird) => knownFeeder(bird, absence));
  const ago = view.day - absence.day;
  if (fedByOther && ago > SHOWN_FED) return null;
  const sameDayFull = waiting.every((bird) =>
    bird.crops.some(({ day, crop }) => day === absence.day && crop === 'full'),
  );
  return {
    ...about(brood, waiting),
    level: ago <= ACT && !fedByOther && !(sameDayFull && ago === 0) ? 'act' : 'watch',
    date: absence.day,
    away: absenceWords(absence),
    feeding: feedingWords(brood, waiting, absence.day),
    parted: absence.how === 'parted',
    chased: hasChased(brood, absence),
    fedByOther,
  };
}

/** It lives where that parent does: the two were taken out together, so that the other can begin anew. */
function wentAlong(young: Bird, { bird: parent }: ParentAway): boolean {
  const housing = housingOf(young);
  return parent !== null && parent.fate === null && housing !== null && housing === housingOf(parent);
}

/** The one that is away, or nobody knows who, chased hard or fiercely in the week before. */
function hasChased({ pair }: Brood, { day, parent }: ParentAway): boolean {
  return pair.chasing.some(
    (chase) =>
      isHard(chase) &&
      chase.day <= day &&
      day - chase.day < CHASED &&
      (chase.by === null || parent === null || chase.by === parent),
  );
}

/** Before the parting it was fed by somebody else than the one that is away. */
function knownFeeder(bird: Bird, { day, parent }: ParentAway): boolean {
  const feeders = feedersOf(bird, day)?.who;
  return parent !== null && feeders !== undefined && [...feeders].some((who) => who !== parent);
}
