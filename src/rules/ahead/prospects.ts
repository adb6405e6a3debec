import type { Day, Span } from '../../days.ts';
import { eggClock, hatchedOn, sittingStart } from '../../room/clock.ts';
import { fertilityOf } from '../../room/fertility.ts';
import type { Room } from '../../room/fold.ts';
import { feederOf, layingInterval, takesEggs, usualClutch } from '../../room/lives.ts';
import {
  type Bird,
  type Clutch,
  clutchId,
  type Egg,
  fullRef,
  lastPlace,
  type Pair,
} from '../../room/model.ts';
import { lastLook } from '../../room/scene.ts';
import type { Profile } from '../../species/profile.ts';
import { SET_BACK } from '../agenda/state.ts';
import { mayHatch } from '../brood.ts';
import { mayStillHatch } from '../season/fates.ts';
import { isStillFed } from '../stock/life.ts';

/** Who may come of what is in the room today: an egg, an egg that is still to be laid, or a young bird. */
export interface Prospect {
  /** `LW-1/2/e3`: also the name of its stream of chance. */
  name: string;
  clutch: Clutch;
  profile: Profile | null;
  /** Who sits on it or feeds it, and with which clutch of theirs it lives; null in an incubator or by hand. */
  pair: Pair | null;
  home: Clutch | null;
  is:
    | {
        stage: 'egg';
        /** Days on one of which it was, or will be, begun to be sat on. */
        start: Span;
        fertile: boolean;
        /** The last look that still found it an egg. */
        seen: Day;
        /** The egg's number in its clutch where it is not laid yet, or nobody saw it. */
        toCome: number | null;
      }
    | { stage: 'nestling' | 'fledgling'; bird: Bird; start: Span };
}

/** Who may come, and what of the room is reckoned with only by half or not at all. */
export interface Expected {
  prospects: Prospect[];
  /** Eggs without an end of which, by their age, nothing comes any more. */
  pastTheirTime: { clutch: string; eggs: number }[];
  /** Clutches whose eggs or young nobody counted: eggs are taken for a usual clutch, young that were heard for one. */
  uncounted: string[];
}

/** Everyone who may come, clutch by clutch. */
export function prospectsOf(room: Room): Expected {
  const clutches = room.pairs.flatMap((pair) => pair.clutches);
  const { day } = room;
  const found = clutches.map((clutch) => ({ clutch, members: membersOf(clutch, day) }));
  return {
    prospects: found.flatMap(({ members }) => members),
    pastTheirTime: clutches.flatMap((clutch) => {
      const eggs = clutch.eggs.filter((egg) => mayHatch(egg) && !mayStillHatch(egg, day)).length;
      return eggs === 0 ? [] : [{ clutch: clutchId(clutch), eggs }];
    }),
    uncounted: found
      .filter(({ members }) => members.some(({ is }) => is.stage !== 'egg' && is.bird.placeholder))
      .concat(found.filter(({ clutch, members }) => members.length > 0 && isUnseen(clutch)))
      .map(({ clutch }) => clutchId(clutch)),
  };
}

function membersOf(clutch: Clutch, day: Day): Prospect[] {
  return [
    ...clutch.eggs.flatMap((egg) => eggProspect(egg, day) ?? []),
    ...(isUnseen(clutch) ? unseen(clutch, day) : toCome(clutch, day)),
    ...clutch.chicks.flatMap((bird) => youngProspect(bird, day) ?? []),
  ];
}

/** Eggs that nobody looked at: one of them stands for all, and none has come to an end. */
function isUnseen({ counted, eggs }: Clutch): boolean {
  return !counted && eggs.every(({ fate }) => fate === null);
}

/** The others of a clutch that nobody looked at, as old as the one that stands for it. */
function unseen(clutch: Clutch, day: Day): Prospect[] {
  const last = clutch.eggs.at(-1);
  const known = last === undefined ? null : eggProspect(last, day);
  if (known === null || known.is.stage !== 'egg') return [];
  const { is } = known;
  return furtherEggs(clutch).map((number) => ({
    ...known,
    name: `${clutchId(clutch)}/e${number}`,
    is: { ...is, seen: Number.NEGATIVE_INFINITY, toCome: number },
  }));
}

/** The numbers of the eggs that the clutch may have beyond those that are known: up to one over the usual. */
function furtherEggs(clutch: Clutch): number[] {
  const known = clutch.eggs.length;
  return Array.from(
    { length: Math.max(0, Math.floor(usualClutch(clutch.pair.profile).high) + 1 - known) },
    (_, i) => known + i + 1,
  );
}

function eggProspect(egg: Egg, day: Day): Prospect | null {
  if (!mayHatch(egg) || !mayStillHatch(egg, day)) return null;
  const { clutch } = egg;
  const { place } = lastPlace(egg);
  const { pair, clutch: home } = place.kind === 'nest' ? place : { pair: null, clutch: null };
  return {
    name: fullRef(egg),
    clutch,
    profile: clutch.pair.profile,
    pair,
    home,
    is: {
      stage: 'egg',
      start: startOf(egg, day),
      fertile: fertilityOf(egg) === 'fertile',
      seen: Math.max(egg.laid.to, lastLook(pair ?? clutch.pair, clutch.site, day + 1) ?? egg.laid.to),
      toCome: null,
    },
  };
}

/** When its days began to count, or will: once the hen sits, or once it is set back from store. */
function startOf(egg: Egg, day: Day): Span {
  const clock = eggClock(egg, day);
  if (clock?.running) return clock.start;
  const last = lastPlace(egg);
  if (last.place.kind === 'store') {
    const warm = clock === null ? 0 : last.from - clock.start.to;
    const { from, to } = SET_BACK;
    return { from: Math.max(day, last.from + from) - warm, to: Math.max(day, last.from + to) - warm };
  }
  return sittingExpected(egg.clutch, egg.laid.to, day);
}

/** From the egg with which the species starts to sit, laid or to be laid; never before the egg itself. */
function sittingExpected(clutch: Clutch, laid: Day, day: Day): Span {
  const { profile } = clutch.pair;
  const from = profile?.sittingFrom?.value ?? 'last';
  const eggs = from === 'last' ? usualClutch(profile) : from;
  const last = clutch.eggs.at(-1)?.laid.to ?? clutch.opened;
  const on = (number: number) =>
    last + Math.max(0, number - clutch.eggs.length) * layingInterval(clutch.pair.profile);
  const earliest = Math.max(laid, on(eggs.low));
  return { from: earliest, to: Math.max(earliest, on(eggs.high), day) };
}

/** Eggs that the clutch may still get: one prospect for each number. */
function toCome(clutch: Clutch, day: Day): Prospect[] {
  const { pair, eggs, counted } = clutch;
  const last = eggs.at(-1);
  if (last === undefined || !counted || !takesEggs(clutch, day)) return [];
  const every = layingInterval(pair.profile);
  // A day of grace for an egg that nobody looked for; then she has done.
  const done = day - last.laid.to > every + 1;
  const sitting = sittingStart(clutch, day);
  if (done || (sitting?.inferred === false && eggs.length >= usualClutch(pair.profile).low)) return [];
  return furtherEggs(clutch).map((number) => {
    const laid = Math.max(day, last.laid.to + Math.round((number - eggs.length) * every));
    const { from, to } = sitting?.span ?? sittingExpected(clutch, laid, day);
    return {
      name: `${clutchId(clutch)}/e${number}`,
      clutch,
      profile: pair.profile,
      pair,
      home: clutch,
      is: {
        stage: 'egg',
        start: { from: Math.max(laid, from), to: Math.max(laid, to) },
        fertile: false,
        seen: Number.NEGATIVE_INFINITY,
        toCome: number,
      },
    };
  });
}

function youngProspect(bird: Bird, day: Day): Prospect | null {
  const { clutch, fledged } = bird;
  const start = hatchedOn(bird);
  if (clutch === null || start === null || !isStillFed(bird, day, clutch.pair.profile)) return null;
  const { profile } = clutch.pair;
  const stage = fledged === null ? 'nestling' : 'fledgling';
  return {
    name: fullRef(bird),
    clutch,
    profile,
    pair: feederOf(bird),
    home: bird.stays.at(-1)?.clutch ?? null,
    is: { stage, bird, start },
  };
}
