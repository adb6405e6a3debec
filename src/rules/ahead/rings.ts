import type { Day } from '../../days.ts';
import type { Room } from '../../room/fold.ts';
import { incubation } from '../../room/lives.ts';
import { fullRef, together } from '../../room/model.ts';
import type { Range } from '../../species/profile.ts';
import { type Estimate, estimateOf, quantileOf } from '../../statistics/estimate.ts';
import type { Course } from './courses.ts';
import { NEVER, ringAge } from './fate.ts';
import type { Prospect } from './prospects.ts';
import { allows, bySize } from './ring-sizes.ts';

/** Rings of one size: how many will be needed, and what is to be ordered by when. */
export interface RingSize {
  /** Inside diameter, mm; null where no profile gives the species' size. */
  mm: number | null;
  species: { species: string | null; size: Range | null }[];
  /** Chicks in the nests today that are to be ringed. */
  chicks: number;
  needed: Estimate;
  inHand: number;
  /** Enough in nine futures of ten for all that those in hand do not reach and that an order of today does. */
  order: number;
  /** The first day on which one is to be fitted, one future in ten earlier; null where none is needed. */
  first: Day | null;
  /** The last day to order so that they are here before those in hand run out; null where those in hand will do. */
  orderBy: Day | null;
  /** Set where that day is past: when an order of today comes, and how many are then too big to be ringed. */
  late: { arrives: Day; tooLate: Estimate } | null;
  /** Rings of other sizes in hand that nobody else is expected to need, and whose profiles allow them too. */
  spare: { mm: number; rings: number; species: (string | null)[] }[];
}

export interface Rings {
  /** False in a room that rings no birds. */
  wanted: boolean;
  /** Days from ordering to having them; `assumed` where the room does not say. */
  lead: { days: number; assumed: boolean };
  /** The species with the least days from sitting to ringing, where an order takes longer; else null. */
  sooner: { species: string | null; days: number } | null;
  /** Smallest first; the unknown size last. */
  sizes: RingSize[];
  /** Rings in hand of sizes that nobody here is expected to need. */
  unused: { mm: number; rings: number }[];
  /** Chicks without a ring that are too old for a closed one. */
  tooOld: string[];
}

/** Where the room does not say how long an order takes: three weeks (a guess, marked as such where it is used). */
const USUAL_LEAD = 21;

/** The rings that today's eggs and chicks will need, size by size. */
export function ringsAhead(room: Room, courses: readonly Course[], draws: number): Rings {
  const { settings, day } = room;
  const lead = { days: settings.ringLead ?? USUAL_LEAD, assumed: settings.ringLead === null };
  if (!settings.ringing) return { wanted: false, lead, sooner: null, sizes: [], unused: [], tooOld: [] };
  const inHand = ringsInHand(settings.rings);
  const bare = courses.filter(({ prospect }) => wantsRing(prospect));
  const tooOld = bare.filter(({ prospect }) => isTooOld(prospect, day));
  const sizes = bySize(
    bare.filter((course) => !tooOld.includes(course)),
    inHand,
  ).map(([mm, group]) =>
    sizeOf(mm, group, { day, draws, lead: lead.days, inHand: mm === null ? 0 : (inHand.get(mm) ?? 0) }),
  );
  const unused = [...inHand].filter(([mm]) => !sizes.some((size) => size.mm === mm));
  return {
    wanted: true,
    lead,
    sooner: soonerThan(lead.days, room),
    sizes: sizes.map((size) => ({ ...size, spare: spareFor(size, sizes, unused) })),
    unused: unused.map(([mm, rings]) => ({ mm, rings })).sort((a, b) => a.mm - b.mm),
    tooOld: tooOld.flatMap(({ prospect: { is } }) => (is.stage === 'egg' ? [] : [fullRef(is.bird)])),
  };
}

function ringsInHand(rings: Room['settings']['rings']): Map<number, number> {
  const sizes = new Map<number, number>();
  for (const { mm, inHand } of rings) sizes.set(mm, (sizes.get(mm) ?? 0) + inHand);
  return sizes;
}

/** An egg, or a nestling without a ring, in a nest that may be looked into, and not excepted by `skip: ring`. */
function wantsRing({ is, clutch, pair }: Prospect): boolean {
  if (pair?.nestLooks === 'never') return false;
  if (clutch.skipped.some(({ task }) => task === 'ring') || is.stage === 'fledgling') return false;
  return is.stage === 'egg' || is.bird.ring === null;
}

function isTooOld({ is, profile }: Prospect, day: Day): boolean {
  return is.stage === 'nestling' && day > is.start.to + ringAge(profile).high;
}

/** Of the pairs that are together: an order made once they sit would come too late for these. */
function soonerThan(lead: number, { pairs }: Room): Rings['sooner'] {
  const [least] = pairs
    .filter((pair) => pair.profile !== null && together(pair))
    .map(({ species, profile }) => ({
      species,
      days: Math.floor(incubation(profile).low) + ringAge(profile).low,
    }))
    .sort((a, b) => a.days - b.days);
  return least !== undefined && least.days < lead ? least : null;
}

function sizeOf(
  mm: number | null,
  courses: readonly Course[],
  { day, draws, lead, inHand }: { day: Day; draws: number; lead: number; inHand: number },
): Omit<RingSize, 'spare'> {
  // Which ring is whose does not matter: in each future they go on in the order of the days.
  const needs = Array.from({ length: draws }, (_, draw) => needsOf(courses, draw, day));
  const short = needs.map((all) => all.slice(inHand));
  const arrives = day + lead;
  const runOut = dayReached(short.map((all) => all[0]?.from ?? NEVER));
  const orderBy = runOut === null ? null : runOut - lead;
  const tooLate = short.map((all) => all.filter(({ to }) => to < arrives).length);
  return {
    mm,
    species: speciesOf(courses),
    chicks: courses.filter(({ prospect }) => prospect.is.stage !== 'egg').length,
    needed: estimateOf(needs.map(({ length }) => length)),
    inHand,
    order: estimateOf(short.map(({ length }, draw) => length - (tooLate[draw] as number))).high,
    first: dayReached(needs.map((all) => all[0]?.from ?? NEVER)),
    orderBy,
    late: orderBy !== null && orderBy < day ? { arrives, tooLate: estimateOf(tooLate) } : null,
  };
}

/** From the first to the last day on which each chick of one future can be ringed, in the order of the first. */
function needsOf(courses: readonly Course[], draw: number, day: Day): { from: Day; to: Day }[] {
  return courses
    .flatMap(({ ringable, prospect }) => {
      const hatched = ringable[draw] as number;
      if (hatched === NEVER) return [];
      const { low, high } = ringAge(prospect.profile);
      return [{ from: Math.max(day, hatched + low), to: Math.max(day, hatched + high) }];
    })
    .sort((a, b) => a.from - b.from);
}

/** The day that one future in ten has reached; null where fewer ever do. */
function dayReached(days: readonly Day[]): Day | null {
  const day = quantileOf(Int32Array.from(days).sort(), 0.1);
  return day === NEVER ? null : day;
}

function speciesOf(courses: readonly Course[]): RingSize['species'] {
  const profiles = new Map(
    courses.map(({ prospect }) => [prospect.clutch.pair.species, prospect.profile?.ringSize?.value ?? null]),
  );
  return [...profiles].map(([species, size]) => ({ species, size }));
}

/** What lies in the drawer beyond nine futures in ten and would fit some of these species. */
function spareFor(
  { mm, orderBy, species }: Omit<RingSize, 'spare'>,
  sizes: readonly Omit<RingSize, 'spare'>[],
  unused: readonly [number, number][],
): RingSize['spare'] {
  if (orderBy === null) return [];
  const left = sizes.flatMap((size) =>
    size.mm === null || size.mm === mm ? [] : [{ mm: size.mm, rings: size.inHand - size.needed.high }],
  );
  return [...left, ...unused.map(([size, rings]) => ({ mm: size, rings }))]
    .filter(({ rings }) => rings > 0)
    .map((one) => ({
      ...one,
      species: species
        .filter(({ size }) => size !== null && allows(size, one.mm))
        .map(({ species: name }) => name),
    }))
    .filter((one) => one.species.length > 0)
    .sort((a, b) => a.mm - b.mm);
}
