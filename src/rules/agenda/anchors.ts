import { type Day, foundWords, hullOf, type Span, shortDay, shortSpan, spanOf } from '../../days.ts';
import { grouped } from '../../grouped.ts';
import { hatchedOn } from '../../room/clock.ts';
import { fertilityOf } from '../../room/fertility.ts';
import { housingOf, livesAway } from '../../room/lives.ts';
import { type Bird, type Chick, type Egg, lastPlace, type Pair, refIn } from '../../room/model.ts';
import { broughtOn } from '../../room/where.ts';
import type { Profile } from '../../species/profile.ts';
import { walksOff } from '../../species/walks-off.ts';
import type { Brood, EggTime } from '../brood.ts';
import { byDay } from '../by-day.ts';
import { LOOK_AFTER } from './state.ts';

/** Something that happened or is expected, from which a task's days are counted. */
export interface Anchor {
  span: Span;
  /** What it was and when, for the reason line: `sitting since 4 Mar`. */
  says: string;
  /** Which eggs or young the task is about; null for the whole nest. */
  who: (Egg | Bird)[] | null;
  /** Of the birds that it is about, where a nest may hold several species. */
  profile?: Profile | null;
  likely?: Day;
  /** What a forecast rests on. */
  basis?: string;
}

/** Finds where a task starts from in a brood: no anchor, no task; several, several tasks. */
export type FindAnchors = (brood: Brood) => Anchor[];

const day = (on: Day): Span => ({ from: on, to: on });

const one = (anchor: Anchor): Anchor[] => [anchor];

/** The last egg of a clutch that may still grow. */
export const lastEgg: FindAnchors = ({ clutch, hatched, where, eggs, stored: kept }) => {
  const egg = clutch?.eggs.at(-1);
  if (egg === undefined || clutch?.counted !== true || hatched.length > 0) return [];
  if (where !== 'nest' || eggs.length + kept.length === 0) return [];
  return one({ span: day(egg.laid.to), says: `${egg.ref} laid ${foundWords(egg.laid)}`, who: null });
};

/** The first egg that the species sits on. */
export const sittingEgg: FindAnchors = ({ clutch, profile, where, eggs }) => {
  const from = profile?.sittingFrom?.value;
  if (clutch === null || from === undefined || !clutch.counted) return [];
  // Eggs in an incubator are no hen's to sit on.
  if (where !== 'nest' || eggs.length === 0) return [];
  const egg = from === 'last' ? clutch.eggs.at(-1) : clutch.eggs[from.low - 1];
  if (egg === undefined) return [];
  const set = eggs.includes(egg) ? broughtOn(egg) : null;
  return set === null
    ? one({ span: day(egg.laid.to), says: `${egg.ref} laid ${foundWords(egg.laid)}`, who: null })
    : one({ span: day(set), says: `${egg.ref} ${cameFrom(egg)} ${shortDay(set)}`, who: null });
};

/** How an egg came to the nest in which it lies. */
function cameFrom({ places }: Egg): string {
  return places.at(-2)?.place.kind === 'nest' ? 'brought' : 'set';
}

/** Full sitting; as the lamp told it where it aged them all; for guests and for eggs in an incubator, the clocks of the eggs themselves. */
export const sitting: FindAnchors = ({ sitting: start, clocks, waiting, where }) => {
  if (clocks.length > 0 && clocks.every(({ egg }) => egg.aged !== null)) {
    const span = begunOn(clocks);
    return one({ span, says: `sat on since ${shortSpan(span)} (aged under the lamp)`, who: null });
  }
  if (start !== null && where === 'nest') {
    const how = start.inferred ? ` (inferred${start.eggs === null ? '' : ` from ${start.eggs}`})` : '';
    return one({ span: start.span, says: `sitting since ${shortSpan(start.span)}${how}`, who: null });
  }
  const warmed = waiting.length > 0 ? waiting : clocks;
  if (warmed.length === 0) return [];
  const span = begunOn(warmed);
  return one({ span, says: `warm since ${shortSpan(span)}`, who: null });
};

function begunOn(times: readonly EggTime[]): Span {
  return hullOf(times.map(({ clock }) => clock.start));
}

/** Since when eggs are sat on by their own clocks. */
function satOn(times: readonly EggTime[]): Pick<Anchor, 'span' | 'says'> {
  const span = begunOn(times);
  return { span, says: `sat on since ${shortSpan(span)}` };
}

/** As {@link sitting} of eggs that are all of another pair: whose they are, and since when those are sat on. */
function guestSitting(brood: Brood, times: readonly EggTime[]): Anchor | null {
  const guests = times.filter(({ egg }) => egg.clutch.pair !== brood.pair);
  if (guests.length === 0 || guests.length < times.length) return null;
  const who = guests.map(({ egg }) => egg);
  return { ...satOn(guests), who, profile: who[0]?.clutch.pair.profile ?? null };
}

/** Eggs that came to lie here, from store or another nest, after sitting began: their own clocks are behind the clutch's. */
function broughtLater(times: readonly EggTime[], start: Anchor): EggTime[] {
  return times.filter(({ egg, clock }) => egg.places.length > 1 && clock.start.to > start.span.to);
}

/** Since when these eggs are sat on: as their clutch is; of guests by themselves, or where all came later, their own days. */
function startOf(brood: Brood, times: readonly EggTime[]): Anchor | null {
  const guests = guestSitting(brood, times);
  const start = sitting(brood)[0] ?? null;
  if (guests !== null || start === null) return guests;
  if (times.length === 0 || broughtLater(times, start).length < times.length) return start;
  return { ...satOn(times), who: null };
}

/** Since when all that lies here is sat on. */
export const eggTerm: FindAnchors = (brood) => {
  const start = startOf(brood, brood.clocks);
  return start === null ? [] : one(start);
};

/**
 * From when the lamp is counted: sitting, and for eggs that were brought later, set from store or fostered, their own
 * clocks.
 */
export const lamp: FindAnchors = (brood) => {
  const [start] = sitting(brood);
  if (start === undefined) return [];
  const unknown = brood.clocks.filter(({ egg }) => fertilityOf(egg) === null);
  const brought = broughtLater(unknown, start);
  if (brought.length === 0) return [start];
  const guests = guestSitting(brood, brought);
  const who = brought.length < brood.eggs.length ? brought.map(({ egg }) => egg) : null;
  const later = { ...satOn(brought), who, profile: guests?.profile ?? null };
  return brought.length < unknown.length ? [start, later] : [later];
};

/** Eggs lying in the cool store, from the day the first of them was taken. */
export const stored: FindAnchors = ({ stored: eggs }) => {
  if (eggs.length === 0) return [];
  const pulled = spanOf(eggs.map((egg) => lastPlace(egg).from));
  return one({
    // They go back together, so that they hatch together: by the day of the eldest.
    span: day(pulled.from),
    says: `${eggs.map((egg) => egg.ref).join(', ')} pulled ${shortSpan(pulled)}`,
    who: eggs,
  });
};

/** The days on which the eggs here are expected to hatch. */
export const hatchWindow: FindAnchors = (brood) => {
  const { hatch } = brood;
  if (hatch === null) return [];
  // What makes the first day of the window gives the reason; the whole nest is asked after, whoever comes later.
  const first = brood.waiting.filter(({ duration }) => duration === hatch.duration);
  const guests = guestSitting(brood, first);
  const start = startOf(brood, first)?.says ?? `hatch ${shortSpan(hatch)}`;
  return one({
    ...(guests !== null && { profile: guests.profile ?? null }),
    span: { from: hatch.from, to: hatch.to },
    likely: hatch.likely,
    says: [
      start,
      ...(hatch.whole === null ? [] : [`still eggs on ${shortDay(hatch.whole)}`]),
      ...(hatch.pipped === null ? [] : [`${refIn(brood, hatch.pipped)} pipped ${shortDay(hatch.from)}`]),
    ].join(', '),
    who: first.length < brood.waiting.length ? null : (guests?.who ?? null),
  });
};

/** The first and the last hatching among those who are or were in this nest. */
export const firstHatching: FindAnchors = ({ hatched }) => hatching(hatched, Math.min, 'first hatched');
export const lastHatching: FindAnchors = ({ hatched }) => hatching(hatched, Math.max, 'last hatched');

/** The last hatching of each species in this nest that has young in it: their nights are cold at their own age. */
export const brooded: FindAnchors = ({ hatched, young }) => {
  const groups = [...bySpecies(hatched)].filter(([, birds]) => birds.some((bird) => young.includes(bird)));
  return groups.flatMap(([profile, birds]) => {
    const who = groups.length > 1 ? birds.filter((bird) => young.includes(bird)) : null;
    return hatching(birds, Math.max, 'last hatched').map((anchor) => ({ ...anchor, who, profile }));
  });
};

/** The hatching of these birds that comes first or last: the days on which it can have been. */
export function hatching(
  birds: readonly Chick[],
  pick: (...days: number[]) => number,
  words: string,
): Anchor[] {
  const known = birds.map((bird) => hatchedOn(bird));
  if (known.length === 0) return [];
  const chosen = pick(...known.map((span) => span.to));
  const span = known.find((one) => one.to === chosen) as Span;
  return [{ span, says: `${words} ${shortSpan(span)}`, who: null }];
}

/** Nestlings without a ring, by species and the day on which they hatched. */
export const unringed: FindAnchors = ({ young }) => {
  const bare = young.filter((bird) => bird.ring === null && bird.fledged === null);
  return [...bySpecies(bare)].flatMap(([profile, birds]) =>
    onEachDay(birds, ({ hatched }) => hatched.to).map(({ on, who }) => {
      const span = { from: Math.min(...who.map((bird) => hatchedOn(bird).from)), to: on };
      return { span, says: `hatched ${shortSpan(span)}`, who, profile };
    }),
  );
};

/** Guests of another species grow up at their own pace. */
function bySpecies(young: readonly Chick[]): Map<Profile | null, Chick[]> {
  return grouped(young, ({ clutch }) => clutch.pair.profile);
}

/** Of each day those to whom it happened; nobody of whom no day is known. */
function onEachDay(young: readonly Chick[], dayOf: (bird: Chick) => Day | undefined) {
  const known = young.flatMap((bird) => {
    const on = dayOf(bird);
    return on === undefined ? [] : { day: on, bird };
  });
  return byDay(known).map(({ day: on, all }) => ({ on, who: all.map(({ bird }) => bird) }));
}

/** Ringed nestlings, by the day of ringing. */
export const ringing: FindAnchors = ({ young }) => {
  const nestlings = young.filter((bird) => bird.fledged === null);
  return onEachDay(nestlings, ({ ringed }) => ringed ?? undefined).map(({ on, who }) => ({
    span: day(on),
    says: `ringed ${shortDay(on)}`,
    who,
  }));
};

/** The days on which the nestlings are expected to leave the nest. */
export const fledgeWindow: FindAnchors = (brood) => {
  const { fledge, hatched } = brood;
  if (fledge === null) return [];
  const left = lastIn(brood);
  const span = hullOf((left ?? hatched).flatMap((bird) => hatchedOn(bird) ?? []));
  return [
    {
      span: { from: fledge.from, to: fledge.to },
      likely: fledge.likely,
      says: `hatched ${shortSpan(span)}`,
      who: left,
    },
  ];
};

/** Once some are out, those that are not are named; whom nobody counted has no name. */
function lastIn({ hatched, young }: Brood): Bird[] | null {
  const still = young.filter(({ fledged }) => fledged === null);
  if (still.some(({ placeholder }) => placeholder)) return null;
  return hatched.some(({ fledged }) => fledged !== null) ? still : null;
}

/** Days on which young left this very nest; who was brought elsewhere, or into the hand, fledged there. */
function fledgings({ hatched, pair }: Brood): Day[] {
  return hatched.flatMap((bird) =>
    bird.fledged !== null && fedIn(bird, bird.fledged.day) === pair ? [bird.fledged.day] : [],
  );
}

/** In whose nest it was fed on a day, or last before it fed itself; null in the hand. */
function fedIn({ stays, independent }: Bird, day: Day): Pair | null {
  const feedsItself = independent?.day ?? Number.POSITIVE_INFINITY;
  const stay = stays.findLast(({ from, nest }) => from <= day && (nest !== null || from < feedsItself));
  return stay?.nest ?? null;
}

/** The first and the last of the young to leave this nest. */
export const firstFledging: FindAnchors = (brood) => {
  const days = fledgings(brood);
  if (days.length === 0) return [];
  const first = Math.min(...days);
  return [{ span: day(first), says: `first fledged ${shortDay(first)}`, who: null }];
};
export const lastFledging: FindAnchors = (brood) => {
  const days = fledgings(brood);
  if (days.length === 0 || brood.young.some((bird) => bird.fledged === null)) return [];
  const last = Math.max(...days);
  return [{ span: day(last), says: `last fledged ${shortDay(last)}`, who: null }];
};

/** Nights in a row, the last of them seen, in which no fledgling slept in the nest. */
export const NIGHTS_OUT = 3;

/**
 * The morning after the third night in a row with all young out; where nobody looked on so many nights, once roosting
 * back is over, and no sooner than three nights after the last on which one of them was seen in the nest.
 */
export const nestEmpty: FindAnchors = (brood) => {
  const last = lastFledging(brood)[0];
  const roosting = brood.profile?.roostingBack?.value;
  if (last === undefined) return [];
  const nights = nightsOut(brood);
  if (nights !== null) {
    const morning = nights + 1;
    return [
      {
        span: day(morning),
        says: `${NIGHTS_OUT} nights with nobody in the nest, to ${shortDay(nights)}`,
        who: null,
      },
    ];
  }
  if (roosting === undefined) return [];
  const usual = last.span.to + roosting.high;
  const seen = lastNightIn(brood);
  const from = Math.max(usual, seen + NIGHTS_OUT + 1);
  const late = from > usual ? `, seen in it on ${shortDay(seen)}` : '';
  return [
    {
      span: day(from),
      says: `${last.says} + ${roosting.high} d in which young come back to sleep${late}`,
      who: null,
    },
  ];
};

/** The last night on which one of the young was seen to sleep in the nest. */
function lastNightIn({ hatched }: Brood): Day {
  const nights = hatched.flatMap(({ roosting }) => roosting.filter(({ where }) => where === 'nest'));
  return Math.max(Number.NEGATIVE_INFINITY, ...nights.map(({ night }) => night));
}

/** The third of three nights in a row in which every roosting look found the young out, or null. */
function nightsOut(brood: Brood): Day | null {
  const { hatched } = brood;
  const inNest = lastNightIn(brood);
  const looked = new Set(hatched.flatMap(({ roosting }) => roosting.map(({ night }) => night)));
  const since = [...looked].filter((night) => night > inNest).sort((a, b) => a - b);
  for (let i = NIGHTS_OUT - 1; i < since.length; i++) {
    const [first, third] = [since[i - NIGHTS_OUT + 1] as Day, since[i] as Day];
    if (third - first === NIGHTS_OUT - 1) return third;
  }
  return null;
}

/**
 * Eggs whose time is over: from when the nest comes down; where no young left it, two days after the window, and not
 * before the last of the young died or was taken away, with whom the eggs were to stay.
 */
export const leftOver: FindAnchors = (brood) => {
  const { eggs, young, term, room, profile } = brood;
  if (eggs.length === 0) return [];
  // The hen walks off with her chicks: nobody is disturbed at the eggs that she leaves.
  const left = walksOff(profile);
  const empty = left ? undefined : nestEmpty(brood)[0];
  if (empty !== undefined) return [{ ...empty, who: eggs }];
  if (term === null || room.day <= term.to || (young.length > 0 && !left)) return [];
  const alone = left ? Number.NEGATIVE_INFINITY : lastCare(brood);
  const span = { from: term.to + LOOK_AFTER.from, to: term.to + LOOK_AFTER.to };
  return eggTerm(brood).map((start) => {
    const says = `${start.says}; hatching was expected until ${shortDay(term.to)}`;
    return alone > span.from
      ? { ...start, span: day(alone), says: `${says}, young were here until ${shortDay(alone)}`, who: eggs }
      : { ...start, span, says, who: eggs };
  });
};

/** The day on which the last of the young here died, went elsewhere or fed itself. */
function lastCare({ hatched, pair }: Brood): Day {
  const ends = hatched.flatMap(({ fate, stays }) => {
    const next = stays[stays.findLastIndex(({ nest }) => nest === pair) + 1];
    return next?.from ?? fate?.day ?? [];
  });
  return Math.max(Number.NEGATIVE_INFINITY, ...ends);
}

/** Young that are still fed, from the eldest's hatching to the youngest's; each species, and each place, by itself. */
export const dependents: FindAnchors = ({ pair, young }) => {
  const groups = [...bySpecies(young)].flatMap(([profile, birds]) =>
    [...byHome(pair, birds)].map(([home, some]) => ({ profile, home, some })),
  );
  return groups.map(({ profile, home, some }) => {
    const span = hullOf(some.map((bird) => hatchedOn(bird)));
    const who = groups.length > 1 || home !== pair.housing ? some : null;
    return { span, says: `hatched ${shortSpan(span)}`, who, profile };
  });
};

/** Young that run about, from the first hatching to the last, by where they have to be warm. */
export const onTheFloor: FindAnchors = (brood) => {
  const [first] = firstHatching(brood);
  const [last] = lastHatching(brood);
  if (first === undefined || last === undefined) return [];
  const whole = { ...last, span: { from: first.span.from, to: last.span.to } };
  const homes = byHome(brood.pair, brood.young);
  if ([...homes.keys()].every((home) => home === brood.pair.housing)) return one(whole);
  return [...homes.values()].map((who) => ({ ...whole, who }));
};

/** Those that were taken out of their parents' housing are seen to where they live. */
function byHome({ housing }: Brood['pair'], young: readonly Chick[]): Map<string | null, Chick[]> {
  return grouped(young, (bird) => (livesAway(bird) ? housingOf(bird) : housing));
}
