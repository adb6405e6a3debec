import { withoutPlaces } from '../findings/finding.ts';
import { grouped } from '../grouped.ts';
import { birdObservations } from '../journal/bird-observations/index.ts';
import type { BirdRecord } from '../journal/birds.ts';
import type { ObservationDefinition } from '../journal/grammar/observation.ts';
import { observations } from '../journal/observations/index.ts';
import type { Sighting } from './sightings.ts';

/** A sighting, and where the name of its pair or bird stands among the names of all. */
export interface Standing {
  rank: number;
  sighting: Sighting;
}

/**
 * What was seen on one day, in the order in which it happened: by time, what has none first, then by the order of the
 * trade; a count without a time is what the day ended with. Where eggs or young were brought to a nest from another pair's,
 * what is seen of that nest comes after that, unless a time says otherwise: whoever was given eggs in the morning sits on
 * those.
 */
export function ofOneDay(seen: Standing[]): Standing[] {
  if (seen.length < 2) return seen;
  const turns = turnsOf(bringings(seen));
  const left = leavers(seen);
  const timed = timedOf(seen);
  const keyed = seen.map((standing) => whenIn(turns, left, timed, standing));
  return keyed.sort(
    (a, b) =>
      a.time - b.time ||
      a.part - b.part ||
      a.round - b.round ||
      a.order - b.order ||
      a.rank - b.rank ||
      bySigns(said(a.sighting), said(b.sighting)),
  );
}

/** Before all that has a time. */
const UNTIMED = -1;

/** That something is brought from the nest of one pair to that of another. */
interface Bringing {
  from: string;
  to: string;
  time: number | null;
}

function bringings(seen: readonly Standing[]): Bringing[] {
  const brought: Bringing[] = [];
  for (const { sighting } of seen) {
    if (sighting.of === 'bird') continue;
    const { journal, entry, observation } = sighting;
    const { brings } = observations[observation.key] as ObservationDefinition;
    if (brings === undefined) continue;
    const from = journal.pair.text;
    for (const to of brings(observation.value)) if (to !== from) brought.push({ from, to, time: entry.time });
  }
  return brought;
}

/** From when all that was brought to a pair is there, and after how many other pairs it has its turn. */
interface Turn {
  time: number;
  round: number;
}

const FIRST: Turn = { time: UNTIMED, round: 0 };

/** Whoever was brought something comes behind those from whom it came. Those that exchange have one turn. */
function turnsOf(brought: readonly Bringing[]): ReadonlyMap<string, Turn> {
  const turns = new Map<string, Turn>();
  let left = brought;
  for (let round = 1; left.length > 0; round++) {
    const waiting = new Set(left.map(({ to }) => to));
    const free = left.filter(({ from }) => !waiting.has(from));
    const next = new Set(free.length === 0 ? exchanges(left) : free);
    for (const { to } of next) turns.set(to, { time: turns.get(to)?.time ?? UNTIMED, round });
    // Of those that exchange, none's hour hangs on which of them is asked first.
    for (let isLater = true; isLater; ) {
      isLater = false;
      for (const { from, to, time } of next) {
        const arrived = time ?? turns.get(from)?.time ?? UNTIMED;
        const turn = turns.get(to) ?? FIRST;
        if (arrived <= turn.time) continue;
        turns.set(to, { ...turn, time: arrived });
        isLater = true;
      }
    }
    left = left.filter((bringing) => !next.has(bringing));
  }
  return turns;
}

/** Where everyone waits for somebody: what is brought among those that exchange, not on to those who give nothing for it. */
function exchanges(brought: readonly Bringing[]): Bringing[] {
  const comesTo = grouped(brought, ({ to }) => to);
  const givers = new Map([...comesTo.keys()].map((pair) => [pair, giversOf(pair, comesTo)]));
  return brought.filter(({ to }) => [...(givers.get(to) ?? [])].every((giver) => givers.get(giver)?.has(to)));
}

/** From whom something comes to a pair, be it through others. */
function giversOf(pair: string, comesTo: ReadonlyMap<string, readonly Bringing[]>): ReadonlySet<string> {
  const givers = new Set<string>();
  const ask = [pair];
  for (let to = ask.pop(); to !== undefined; to = ask.pop()) {
    for (const { from } of comesTo.get(to) ?? []) {
      if (!givers.has(from)) ask.push(from);
      givers.add(from);
    }
  }
  return givers;
}

/** The parts of a day: the nest is made ready, what is in it is seen and moved, all else. */
const [READY, NEST, REST] = [0, 1, 2];

/** The birds that left the room on this day, by their own logs. */
function leavers(seen: readonly Standing[]): ReadonlySet<BirdRecord> {
  const left = new Set<BirdRecord>();
  for (const { sighting } of seen)
    if (sighting.of === 'bird' && LEAVES.has(sighting.observation.key)) left.add(sighting.record);
  return left;
}

const LEAVES: ReadonlySet<string> = new Set(['died', 'gone']);

/** What has a time, by the pair whose journal tells it. */
function timedOf(seen: readonly Standing[]): ReadonlyMap<string, Timed[]> {
  const timed = seen.flatMap(({ sighting }) =>
    sighting.of === 'pair' && sighting.entry.time !== null
      ? { pair: sighting.journal.pair.text, order: orderOf(sighting), time: sighting.entry.time }
      : [],
  );
  return grouped(timed, ({ pair }) => pair);
}

interface Timed {
  order: number;
  time: number;
}

/**
 * A look that counted, and the age of those whom it counted, is of what the pair's nest held after all that comes before it
 * in the order of the trade.
 */
function countedAfter(
  timed: ReadonlyMap<string, readonly Timed[]>,
  sighting: Sighting,
  order: number,
): number {
  if (sighting.of !== 'pair' || Math.floor(order) !== observations.checked.order) return UNTIMED;
  const before = (timed.get(sighting.journal.pair.text) ?? []).filter((one) => one.order < order);
  return Math.max(UNTIMED, ...before.map(({ time }) => time));
}

function whenIn(
  turns: ReadonlyMap<string, Turn>,
  left: ReadonlySet<BirdRecord>,
  timed: ReadonlyMap<string, readonly Timed[]>,
  { rank, sighting }: Standing,
) {
  const order = isHomeAgain(sighting, left) ? observations.back.order : orderOf(sighting);
  const part = order < observations.sitting.order ? READY : order > observations.fostered.order ? REST : NEST;
  const own = sighting.of === 'pair' ? turns.get(sighting.journal.pair.text) : undefined;
  const turn = part === READY ? FIRST : (own ?? FIRST);
  const round = part === NEST ? turn.round : FIRST.round;
  return {
    rank,
    sighting,
    order,
    part,
    round,
    time: sighting.entry.time ?? Math.max(turn.time, countedAfter(timed, sighting, order)),
  };
}

/** Who comes home is here for whatever else is told of it that day; who went on the same day comes home after that. */
function isHomeAgain(sighting: Sighting, left: ReadonlySet<BirdRecord>): boolean {
  return sighting.of === 'bird' && sighting.observation.key === 'back' && left.has(sighting.record);
}

/** The same on every machine, whatever its language. */
function bySigns(a: string, b: string): number {
  return a < b ? -1 : Number(a > b);
}

function orderOf(sighting: Sighting): number {
  if (sighting.of === 'bird') return birdObservations[sighting.observation.key].order;
  const { order, orderOf: ask } = observations[sighting.observation.key] as ObservationDefinition;
  return ask?.(sighting.observation.value) ?? order;
}

/** What was said, without where it stands: of two alike it does not matter which comes first. */
function said(sighting: Sighting): string {
  const { key, value } = sighting.observation;
  const text = withoutPlaces(value);
  if (sighting.of === 'bird') return `${key} ${text}`;
  const { clutch, site, after } = sighting.entry;
  return [key, clutch?.number ?? '', site?.text ?? '', after?.day ?? '', after?.time ?? '', text].join(' ');
}
