import { type Day, hullOf, type Span } from '../days.ts';
import { incubation, layingInterval, usualClutch } from './lives.ts';
import type { Bird, Chick, Clutch, Egg, EggPlace, Placed } from './model.ts';
import { lastLook } from './scene.ts';

/** When full sitting on a clutch began, as far as it is known. */
export interface SittingStart {
  span: Span;
  /** Nobody saw it: it follows from the egg with which the species starts to sit. */
  inferred: boolean;
  /** What it was inferred from, for the reason line: `e3`, `e3–e4`, `e1, more may have come`; null where it was seen. */
  eggs: string | null;
}

/** Since when an egg has been sat on, less the days on which it was not. */
export interface EggClock {
  /** The calendar day on which an egg sat on without a break would have been begun. */
  start: Span;
  /** Whether somebody sits on it, or an incubator warms it, today. */
  running: boolean;
}

/**
 * When sitting on this clutch began, as things stood on that day; null while it has not. Pure: a bird that is seen on
 * the eggs later does not move what was known, so that a lamp keeps its meaning.
 */
export function sittingStart(clutch: Clutch, day: Day): SittingStart | null {
  const seen = clutch.sittings.find((sighting) => sighting.by !== 'off' && sighting.day <= day);
  return seen === undefined ? inferredStart(clutch, day) : seenStart(clutch, seen.day);
}

/** Seen sitting: it began after the last look that found nobody on, not before the first egg that is sat on. */
function seenStart(clutch: Clutch, seen: Day): SittingStart {
  const off = clutch.sittings.findLast((sighting) => sighting.day < seen);
  const first =
    clutch.pair.profile?.sittingFrom == null
      ? { low: 1 }
      : (eggNumbers(clutch) ?? { low: clutch.eggs.length });
  const egg = clutch.eggs[first.low - 1] ?? clutch.eggs.at(-1);
  const from = Math.max(
    egg?.laid.from ?? clutch.opened,
    off === undefined ? Number.NEGATIVE_INFINITY : off.day + 1,
  );
  return { span: { from: Math.min(from, seen), to: seen }, inferred: false, eggs: null };
}

/**
 * From the egg with which the species starts to sit; with fewer eggs, once no more are to be expected, the last. Nobody
 * having looked in since, more may have come: it can have begun as late as with the last that would be awaited.
 */
function inferredStart(clutch: Clutch, day: Day): SittingStart | null {
  const [first, last] = [clutch.eggs[0], clutch.eggs.at(-1)];
  if (first === undefined || last === undefined) return null;
  // Of a clutch that nobody counted: some day between its oldest and its newest egg.
  if (!clutch.counted)
    return { span: { from: first.laid.from, to: last.laid.to }, inferred: true, eggs: null };
  const { profile } = clutch.pair;
  const numbers = eggNumbers(clutch);
  const count = clutch.eggs.length;
  if (numbers === null || count < numbers.low) {
    const interval = layingInterval(profile);
    if (day - last.laid.to <= interval + 1) return null;
    const { low, high } = numbers ?? usualClutch(profile);
    const looked = lastLook(clutch.pair, clutch.site, day + 1) ?? last.laid.to;
    if (count >= low || looked - last.laid.to > interval)
      return { span: last.laid, inferred: true, eggs: last.ref };
    const to = Math.min(day, last.laid.to + (high - count) * interval);
    return { span: { from: last.laid.from, to }, inferred: true, eggs: `${last.ref}, more may have come` };
  }
  const low = clutch.eggs[numbers.low - 1] as Egg;
  const high = clutch.eggs[numbers.high - 1] ?? last;
  const eggs = low === high ? low.ref : `${low.ref}–${high.ref}`;
  return { span: { from: low.laid.from, to: Math.max(low.laid.to, high.laid.to) }, inferred: true, eggs };
}

function eggNumbers(clutch: Clutch): { low: number; high: number } | null {
  const from = clutch.pair.profile?.sittingFrom?.value ?? 'last';
  return from === 'last' ? null : from;
}

/** An egg's clock on a day: it stops in store and goes on under any pair or in an incubator. */
export function eggClock(egg: Egg, day: Day, places: readonly Placed[] = egg.places): EggClock | null {
  let before: Span | null = null;
  let clock: EggClock | null = null;
  places.forEach(({ from, place }, i) => {
    const until = places[i + 1]?.from ?? null;
    if (egg.aged !== null && until !== null && until <= egg.aged.day) return;
    const satOn = satOnFrom(egg, from, place, day);
    // Taken away before anybody sat on it: its clock has not begun.
    if (satOn === null || (until !== null && satOn.span.from >= until)) {
      if (clock !== null) clock.running = false;
      return;
    }
    const start = egg.aged !== null && from <= egg.aged.day ? agedStart(egg.aged) : satOn.span;
    const earlier = before ?? { from: 0, to: 0 };
    clock = {
      start: { from: start.from - earlier.to, to: start.to - earlier.from },
      running: true,
    };
    if (until !== null) {
      before = {
        from: satOn.inferred && !hadGrown(egg, until) ? earlier.from : Math.max(0, until - clock.start.to),
        to: Math.max(0, until - clock.start.from),
      };
    }
  });
  return clock;
}

function agedStart({ day, days }: { day: Day; days: number }): Span {
  return { from: day - Math.round(days), to: day - Math.round(days) };
}

/** Whether the lamp had shown by then that somebody must have sat on it. */
function hadGrown({ lamp, aged }: Egg, day: Day): boolean {
  return aged !== null || lamp.some((look) => look.day <= day && look.saw === 'fertile');
}

/**
 * From when the egg is sat on in this place, or null where nobody sits on it. Where nobody saw it they may not have sat at all:
 * eggs are taken to an incubator because nobody does.
 */
function satOnFrom(egg: Egg, from: Day, place: EggPlace, day: Day): { span: Span; inferred: boolean } | null {
  if (place.kind === 'incubator') return { span: { from, to: from }, inferred: false };
  if (place.kind !== 'nest') return null;
  const home = place.clutch === egg.clutch;
  const [first] = egg.places;
  const arrived: Span = first.from === from && home ? egg.laid : { from, to: from };
  const sitting = place.clutch === null ? null : sittingStart(place.clutch, day);
  if (sitting === null) return home && arrived === egg.laid ? null : { span: arrived, inferred: false };
  const span = { from: Math.max(arrived.from, sitting.span.from), to: Math.max(arrived.to, sitting.span.to) };
  return { span, inferred: sitting.inferred && home };
}

/**
 * The days on which it can have hatched: as the looks tell, but no earlier than a day before the shortest usual
 * sitting, so that a nest looked into once a week does not make its chicks a week older than they can be; nor longer
 * before the others of its clutch than eggs hatch apart.
 */
export function hatchedOn(bird: Chick): Span;
export function hatchedOn(bird: Bird): Span | null;
export function hatchedOn(bird: Bird): Span | null {
  const { hatched, egg } = bird;
  if (hatched === null || egg === null || hatched.from === hatched.to) return hatched;
  const shortest = egg.clutch.pair.profile?.incubation?.value.low;
  const clock = shortest === undefined ? null : eggClock(egg, hatched.to);
  if (clock === null || shortest === undefined) return hatched;
  const from = Math.max(hatched.from, clock.start.from + Math.floor(shortest) - 1, besideMates(egg));
  return { from: Math.min(from, hatched.to), to: hatched.to };
}

/** The days on which some can have hatched. */
export function hatchingOf(young: readonly Chick[]): Span {
  return hullOf(young.map((one) => hatchedOn(one)));
}

/**
 * The day before which an egg cannot have hatched, as another of its clutch hatched later: they were laid one after another,
 * and sat on alike but for what sittings differ. Nothing is known so from one that went another way.
 */
function besideMates(egg: Egg): Day {
  const { eggs, counted, chicks, pair } = egg.clutch;
  const { low, high } = incubation(pair.profile);
  const laid = Math.max(eggs.length, counted ? 0 : usualClutch(pair.profile).high);
  const apart = (laid - 1) * layingInterval(pair.profile) + Math.ceil(high - low);
  const mates = chicks.filter((chick) => wentAlike(chick.egg, egg));
  return Math.max(...mates.map(({ hatched }) => hatched.from)) - apart;
}

/** Whether two eggs of a clutch were moved, or left where they lay, on the same days. */
function wentAlike({ places: one }: Egg, { places: other }: Egg): boolean {
  return one.length === other.length && one.every(({ from }, i) => i === 0 || from === other[i]?.from);
}
