import { shortDay } from '../../days.ts';
import { everReared } from '../../room/family.ts';
import { housingOf } from '../../room/lives.ts';
import { type Bird, fullRef, type Pair } from '../../room/model.ts';
import { walksOff } from '../../species/walks-off.ts';
import { count, them } from '../../words.ts';
import { absencesFrom, type Parent } from '../absences.ts';
import type { WarningLevel } from '../agenda/item.ts';
import { type Brood, stillFed } from '../brood.ts';
import { byDay } from '../by-day.ts';
import { feedersOf, feedingWords } from './feeders.ts';
import { eggsToWarm, other } from './parents.ts';
import { about, type Found, type View, type Warning } from './warning.ts';
import { opening } from './words.ts';

interface Chasing extends Found {
  by: string | null;
  at: string | null;
  /** It was one of the young, and not the mate that sits. */
  atYoung: boolean;
  /** `hard`, `fiercely`; empty where nobody said how. */
  how: string;
  days: number;
  young: number;
  /** Nobody counted the young. */
  uncounted: boolean;
  /** The young walked off as they hatched, and feed themselves. */
  onFoot: boolean;
  eggs: number;
  feeding: string | null;
  /** The parent that may be taken away, and whether the other was seen feeding all of them lately. */
  aggressor: Parent;
  /** It was put to its mate after these young had hatched, and was not seen feeding them. */
  isNew: boolean;
  otherFeeds: boolean;
}

/** Days after the last chase for which it is said. */
const SHOWN = 3;
/** Days for which a feeder that was seen is taken to feed still. */
const LATELY = 2;
/** Chases of so many days before count as one story. */
const STORY = 7;

export const chasing: Warning<Chasing> = {
  kind: 'chasing',
  levels: ['act', 'watch'],
  health: true,
  when: '`chasing` that is hard or fierce, or of no given level where there are eggs or dependent young',
  over: `the pair is parted, or one of them moved or dead; after a chase of the young, none of them lives with the pair any more; ${SHOWN} d after the last chase. Act where it is fierce, or hard with dependent young`,
  explain:
    'A parent that wants the next nest may drive its mate until she cannot rest or feed, and pluck and chase the last young. Cover, a second feeding place and more room help at first; a bird that is hunted to the floor or bleeds is parted at once, whoever feeds, and the injury shown to an avian vet; then somebody else must feed the young within hours. While nobody is hurt and young still depend, see first who feeds them: do not take the cock before you saw who feeds.',
  find: (view) => view.room.pairs.flatMap((pair) => chasingIn(view, pair) ?? []),
  say({
    by,
    at,
    atYoung,
    how,
    days,
    young,
    uncounted,
    onFoot,
    eggs,
    feeding,
    aggressor,
    isNew,
    otherFeeds,
    date,
  }) {
    const times = days > 1 ? `, on ${days} days of the last week` : '';
    const who = [by === null ? 'somebody' : named(by), 'chased', at === null ? '' : named(at), how];
    const cost =
      onFoot && young > 0
        ? ` ${opening(count(young, 'chick needs', 'chicks need'))} warmth, and one parent that broods is enough: the one that chased stays apart.`
        : feeding !== null
          ? ` ${uncounted ? 'The young still depend' : count(young, 'young bird still depends', 'young still depend')} on being fed: ${feeding}. ${isNew ? `The ${aggressor} came after they had hatched and need not be one that feeds them` : otherFeeds ? `If you take the ${aggressor}, see within hours that the ${other(aggressor)} goes on` : `While nobody is hurt, do not take the ${aggressor} before you saw who feeds`}.`
          : eggs > 0 && !atYoung
            ? ` There ${eggs === 1 ? 'is' : 'are'} ${count(eggs, 'egg')} in the nest: a hunted bird does not sit.`
            : ' A hunted bird does not eat and does not rest.';
    return {
      text: `${opening(who.filter((word) => word !== '').join(' '))} on ${shortDay(date)}${times}.${cost}`,
      check: `wounds, plucked places, a bird on the floor: part them now${feeding === null || onFoot ? '' : ', whoever feeds, and see within hours that the young are fed'}; an avian vet for an injury. Otherwise cover, and a second place to feed; look again today`,
    };
  },
};

function chasingIn(view: View, pair: Pair): Chasing | null {
  const broods = view.broods.filter((one) => one.pair === pair && one.where === 'nest');
  const young = broods.flatMap(stillFed);
  const eggs = broods.flatMap(eggsToWarm).length;
  const serious = pair.chasing.filter(
    (chase) => isHard(chase) || (chase.level === null && young.length + eggs > 0),
  );
  const days = byDay(serious);
  const last = days.at(-1);
  if (last === undefined || view.day - last.day > SHOWN) return null;
  const worst =
    last.all.find(({ level }) => level === 'fierce') ??
    last.all.find(({ level }) => level === 'hard') ??
    last.all[0];
  const away = absencesFrom({ pair, clutch: null, room: view.room }).filter(({ day }) => day >= last.day);
  if (away.some(({ parent }) => endsChase(parent, worst))) return null;
  const atYoung = isYoung(pair, worst?.at ?? null);
  if (atYoung && !liveWith(pair)) return null;
  const aggressor = worst?.by === 'hen' ? 'hen' : 'cock';
  const brood = broods.find((one) => stillFed(one).length > 0) ?? null;
  return {
    ...(brood === null ? { pair: pair.id, bird: null, clutch: null } : about(brood)),
    level: levelOf(worst?.level ?? null, young.length),
    date: last.day,
    by: worst?.by ?? null,
    at: worst?.at ?? null,
    atYoung,
    how: worst?.level === 'fierce' ? 'fiercely' : (worst?.level ?? ''),
    days: days.filter(({ day }) => last.day - day < STORY).length,
    young: young.length,
    uncounted: young.some(({ placeholder }) => placeholder),
    onFoot: walksOff(pair.profile),
    eggs,
    aggressor,
    isNew: isNew(pair, aggressor, young),
    otherFeeds: young.every((bird) => {
      const fed = feedersOf(bird, view.day);
      return fed !== null && view.day - fed.day <= LATELY && fed.who.has(other(aggressor));
    }),
    feeding: brood === null ? null : feedingWordsOf(brood, view),
  };
}

/** Hard or fierce: more than the usual driving. */
export function isHard({ level }: Pair['chasing'][number]): boolean {
  return level === 'hard' || level === 'fierce';
}

function levelOf(level: Pair['chasing'][number]['level'], young: number): WarningLevel {
  return level === 'fierce' || (level === 'hard' && young > 0) ? 'act' : 'watch';
}

/** Whether all these young had hatched before it was put to the mate that reared them, and it was not seen feeding them since. */
function isNew({ partings, first, ...pair }: Pair, parent: Parent, young: readonly Bird[]): boolean {
  const now = pair[parent].join(' ');
  const before = partings.findLastIndex((one) => one[parent].join(' ') !== now);
  const came = partings[before + 1];
  if (came === undefined || (before < 0 && first[parent].join(' ') === now)) return false;
  return young.every(
    ({ firstSeen, fedBy }) =>
      firstSeen !== null &&
      firstSeen < came.day &&
      !fedBy.some(({ day, by }) => by === parent && day >= came.day),
  );
}

/** The one that chased is there no more, or the mate that it chased is not; which of them went, nobody need have written. */
function endsChase(gone: Parent | null, chase: Pair['chasing'][number] | undefined): boolean {
  return gone === null || chase?.by == null || gone === chase.by || gone === chase.at;
}

/** What keepers call several of them. */
const YOUNG = /^(?:the )?(?:young|chicks?|nestlings?|fledglings?)$/i;

/** Whether it was one of the young, under any of its names, or several; of any clutch, as nobody need have written which. */
function isYoung(pair: Pair, at: string | null): boolean {
  if (at === null) return false;
  if (YOUNG.test(at)) return true;
  return everReared(pair).some((bird) => [bird.ref, bird.id, bird.ring, fullRef(bird)].includes(at));
}

/** Whether young live where the pair does: who drives one drives the next. */
function liveWith(pair: Pair): boolean {
  return everReared(pair).some((bird) => bird.fate === null && housingOf(bird) === pair.housing);
}

function feedingWordsOf(brood: Brood, { day }: View): string {
  const young = stillFed(brood);
  return young.every((bird) => feedersOf(bird, day) === null)
    ? `nobody wrote who feeds ${young.some(({ placeholder }) => placeholder) ? 'them' : them(young.length)}`
    : feedingWords(brood, young, day);
}

/** `the cock`, `the young`; anybody else by the name that stands there. */
function named(who: string): string {
  return who === 'cock' || who === 'hen' || YOUNG.test(who) ? `the ${who.replace(/^the /i, '')}` : who;
}
