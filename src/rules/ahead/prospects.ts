import type { Day, Span } from '../../days.ts';
import { eggClock, hatchedOn, sittingStart } from '../../room/clock.ts';
import { fertilityOf } from '../../room/fertility.ts';
import type { Room } from '../../room/fold.ts';
import { feederOf, housingOf, isDependent, layingInterval, takesEggs } from '../../room/lives.ts';
import { type Bird, type Clutch, clutchId, type Egg, fullRef, type Pair } from '../../room/model.ts';
import type { Profile, Range } from '../../species/profile.ts';
import { mayHatch } from '../brood.ts';
import { mayStillHatch } from '../season/fates.ts';
import { statusOf } from '../stock/life.ts';

/** Who may come of what is in the room today: an egg, an egg that is still to be laid, or a young bird. */
export interface Prospect {
  /** `LW-1/2/e3`: also the name of its stream of chance. */
  name: string;
  clutch: Clutch;
  profile: Profile | null;
  /** Who sits on it or feeds it; null in an incubator or by hand. */
  pair: Pair | null;
  housing: string | null;
  is:
    | {
        stage: 'egg';
        /** Days on one of which it was, or will be, begun to be sat on. */
        start: Span;
        fertile: boolean;
        /** The last look that still found it an egg. */
        seen: Day;
        /** The egg's number in its clutch where it is not laid yet. */
        toCome: number | null;
      }
    | { stage: 'nestling' | 'fledgling'; bird: Bird; start: Span };
}

/** Eggs of clutches that cannot be reckoned with, and why. */
export interface LeftOut {
  clutch: string;
  why: 'past their time' | 'not counted';
  eggs: number;
}

/** Where the profile does not say how many eggs a clutch has: the usual of small finches (common practice). */
const USUAL_CLUTCH: Range = { low: 3, high: 6 };

/** Everyone who may come, clutch by clutch; and the eggs of which nothing is expected any more though nobody ended them. */
export function prospectsOf(room: Room): { prospects: Prospect[]; leftOut: LeftOut[] } {
  const clutches = room.pairs.flatMap((pair) => pair.clutches);
  const prospects = clutches.flatMap((clutch) => [
    ...clutch.eggs.flatMap((egg) => eggProspect(egg, room.day) ?? []),
    ...toCome(clutch, room.day),
    ...clutch.chicks.flatMap((bird) => youngProspect(bird, room.day) ?? []),
  ]);
  return { prospects, leftOut: clutches.flatMap((clutch) => leftOutOf(clutch, room.day)) };
}

function leftOutOf(clutch: Clutch, day: Day): LeftOut[] {
  const over = clutch.eggs.filter((egg) => mayHatch(egg) && !mayStillHatch(egg, day));
  const why = (what: LeftOut['why'], eggs: number) => [{ clutch: clutchId(clutch), why: what, eggs }];
  if (over.length > 0) return why('past their time', over.length);
  const uncounted = !clutch.counted && clutch.eggs.length + clutch.chicks.length === 0;
  return uncounted && day - clutch.opened <= UNCOUNTED_SHOWN ? why('not counted', 0) : [];
}

/** So long a clutch whose eggs nobody saw may still bring something. */
const UNCOUNTED_SHOWN = 60;

function eggProspect(egg: Egg, day: Day): Prospect | null {
  if (!mayHatch(egg) || !mayStillHatch(egg, day)) return null;
  const { clutch } = egg;
  const place = egg.places.at(-1)?.place;
  const pair = place?.kind === 'nest' ? place.pair : null;
  return {
    name: fullRef(egg),
    clutch,
    profile: clutch.pair.profile,
    pair,
    housing: pair?.housing ?? (pair === null ? (place?.kind ?? null) : null),
    is: {
      stage: 'egg',
      start: startOf(egg, day),
      fertile: fertilityOf(egg) === 'fertile',
      seen: lastLook(pair ?? clutch.pair, clutch, egg),
      toCome: null,
    },
  };
}

function lastLook({ looks }: Pair, { site }: Clutch, egg: Egg): Day {
  const here = looks.filter((look) => look.site === null || site === null || look.site === site);
  return here.reduce((last, { day }) => Math.max(last, day), egg.laid.to);
}

/** When its days began to count, or will: once the hen sits, or once it is set back from store. */
function startOf(egg: Egg, day: Day): Span {
  const clock = eggClock(egg, day);
  if (clock?.running) return clock.start;
  const last = egg.places.at(-1);
  if (last?.place.kind === 'store') {
    const warm = clock === null ? 0 : last.from - clock.start.to;
    const { from, to } = SET_BACK;
    return { from: Math.max(day, last.from + from) - warm, to: Math.max(day, last.from + to) - warm };
  }
  return sittingExpected(egg.clutch, egg.laid.to, day);
}

/** Days in store after which eggs are set back, as the agenda asks. */
const SET_BACK = { from: 4, to: 5 };

/** From the egg with which the species starts to sit, laid or to be laid; never before the egg itself. */
function sittingExpected(clutch: Clutch, laid: Day, day: Day): Span {
  const { profile } = clutch.pair;
  const from = profile?.sittingFrom?.value ?? 'last';
  const eggs = from === 'last' ? (profile?.clutch?.value ?? USUAL_CLUTCH) : from;
  const last = clutch.eggs.at(-1)?.laid.to ?? clutch.opened;
  const on = (number: number) =>
    last + Math.max(0, number - clutch.eggs.length) * layingInterval(clutch.pair.profile);
  const earliest = Math.max(laid, on(eggs.low));
  return { from: earliest, to: Math.max(earliest, on(eggs.high), day) };
}

/** Eggs that the clutch may still get: one prospect for each number up to one over the usual. */
function toCome(clutch: Clutch, day: Day): Prospect[] {
  const { pair, eggs, counted } = clutch;
  const last = eggs.at(-1);
  if (last === undefined || !counted || !takesEggs(clutch, day)) return [];
  const usual = usualClutch(clutch);
  const every = layingInterval(pair.profile);
  // A day of grace for an egg that nobody looked for; then she has done.
  const done = day - last.laid.to > every + 1;
  const sat = sittingStart(clutch, day)?.inferred === false;
  if (done || (sat && eggs.length >= usual.low)) return [];
  const number = Math.max(0, Math.floor(usual.high) + 1 - eggs.length);
  return Array.from({ length: number }, (_, i) => {
    const laid = Math.max(day, last.laid.to + Math.round((i + 1) * every));
    const sitting = sittingStart(clutch, day)?.span ?? sittingExpected(clutch, laid, day);
    return {
      name: `${clutchId(clutch)}/e${last.number + i + 1}`,
      clutch,
      profile: pair.profile,
      pair,
      housing: pair.housing,
      is: {
        stage: 'egg',
        start: { from: Math.max(laid, sitting.from), to: Math.max(laid, sitting.to) },
        fertile: false,
        seen: day,
        toCome: last.number + i + 1,
      },
    };
  });
}

/** Eggs usual for the species. */
export function usualClutch({ pair }: Clutch): Range {
  return pair.profile?.clutch?.value ?? USUAL_CLUTCH;
}

function youngProspect(bird: Bird, day: Day): Prospect | null {
  const { clutch, fledged } = bird;
  const start = hatchedOn(bird);
  if (clutch === null || start === null || !isDependent(bird)) return null;
  const { profile } = clutch.pair;
  if (statusOf(bird, day, { profile, paired: false }) !== 'here') return null;
  const stage = fledged === null ? 'nestling' : 'fledgling';
  return {
    name: fullRef(bird),
    clutch,
    profile,
    pair: feederOf(bird),
    housing: housingOf(bird),
    is: { stage, bird, start },
  };
}
