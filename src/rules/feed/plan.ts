import type { Day } from '../../days.ts';
import type { Finding } from '../../findings/finding.ts';
import { naturallyNamed } from '../../findings/naturally.ts';
import { keptIn } from '../../grouped.ts';
import { isFedByHand } from '../../room/lives.ts';
import { type Bird, together } from '../../room/model.ts';
import type { Profile } from '../../species/profile.ts';
import { foodOffered } from '../agenda/conditions.ts';
import { isStillFed } from '../stock/life.ts';
import { type Amount, sum } from './amount.ts';
import { type Batch, batchesFor, leadDays } from './batches.ts';
import { byHousing, type Family, type FeedSources, nestFamilies } from './families.ts';
import { type Foods, foodsOf, SPROUTING_GAIN } from './foods.ts';
import { type FeedingHours, feedingHours } from './hours.ts';
import { type LiveSize, liveSizeFor, liveSizes } from './live-size.ts';
import { correctionOf, type Measured, measuredUse } from './measured.ts';
import { adultFoods, mouthFoods, mouthsThere, parentFoods, rearingOf, smallestOn } from './mouths.ts';

/** A day of one housing. */
export interface HousingDay {
  day: Day;
  /** g for all who eat there. */
  foods: Foods;
  /** What fits the smallest chick; null without live food. */
  size: LiveSize | null;
  /** Young there, those included that are expected to hatch by that day. */
  young: { expected: number; most: number };
}

/** Who eats in one housing, and what on each day. */
export interface HousingPlan {
  housing: string | null;
  /** Those that feed themselves, by species, most first. */
  adults: { species: string | null; number: number }[];
  /** Nests with somebody to rear in the days of the plan. */
  families: Family[];
  days: HousingDay[];
}

/** What is given in the days from the one stood on. */
export interface FeedPlan {
  day: Day;
  days: number;
  room: string | null;
  hours: FeedingHours;
  housings: HousingPlan[];
  /** Batches of which a step falls into these days, and those for them that were to be begun before; in order. */
  batches: Batch[];
  /** g in the whole room, day by day. */
  daily: { day: Day; foods: Foods }[];
  /** g in all these days, and of live food by size. */
  totals: Foods;
  liveBySize: { size: LiveSize; grams: Amount }[];
  /** Pairs that are offered live food though there is nobody to rear in these days. */
  offered: string[];
  /** Young fed by hand, for which there is no plan. */
  byHand: Bird[];
  /** Species for which something had to be taken as usual, and what. */
  assumed: { species: string | null; what: string[] }[];
  measured: Measured[];
  /** Of the journals: somebody may be missing who stands in a line that cannot be read. */
  findings: Finding[];
}

/** Reckons what is needed in so many days, the one stood on being the first. */
export function feedPlan(sources: FeedSources, days: number): FeedPlan {
  const { room } = sources;
  const hours = feedingHours(room.settings.feeding);
  const families = nestFamilies(sources);
  const measured = measuredUse(families, sources);
  // A batch that is begun in these days may be for the days after.
  const span = Array.from({ length: days + leadDays(hours) }, (_, i) => room.day + i);
  const eating = families.flatMap((family) => byHousing(family, sources));
  const all = housingsOf(eating, sources).map((place) => planFor(place, span, measured, sources));
  const planned = span.slice(0, days);
  const housings = all.map((place) => ({
    ...place,
    families: place.families.filter((family) => rears(family, planned)),
    days: place.days.slice(0, days),
  }));
  const within = housings.flatMap((place) => place.days);
  const shown = ({ soak }: Batch) => soak.day < room.day + days;
  return {
    day: room.day,
    days,
    room: room.settings.room,
    hours,
    housings,
    batches: batchesFor(seedNeeded(all, span), hours).filter(shown),
    daily: planned.map((day) => ({ day, foods: sumOf(within.filter((one) => one.day === day)) })),
    totals: sumOf(within),
    liveBySize: liveSizes.flatMap((size) => {
      const of = within.filter((one) => one.size === size).map(({ foods }) => foods.live);
      return of.length === 0 ? [] : [{ size, grams: sum(of) }];
    }),
    offered: families
      .filter((family) => !rears(family, planned) && together(family.pair))
      .filter(({ pair }) => foodOffered(pair, room)?.live === true)
      .map(({ pair }) => pair.id),
    byHand: room.birds.filter((bird) => isHandFed(bird, sources)),
    assumed: assumptions(housings, sources),
    measured,
    findings: room.findings,
  };
}

function sumOf(days: readonly HousingDay[]): Foods {
  return foodsOf((food) => sum(days.map(({ foods }) => foods[food])));
}

/** g of dry seed that make what is likely to be eaten sprouted; too much of it turns sour. */
function seedNeeded(housings: readonly HousingPlan[], span: readonly Day[]): { day: Day; dry: number }[] {
  return span.map((day, index) => {
    const sprouted = sum(housings.map((place) => (place.days[index] as HousingDay).foods.sprouted));
    return { day, dry: sprouted.likely / SPROUTING_GAIN };
  });
}

interface Place {
  housing: string | null;
  adults: Bird[];
  families: Family[];
}

/** Everyone who is here by where they eat; places where nobody does are left out. */
function housingsOf(families: readonly Family[], sources: FeedSources): Place[] {
  const places = new Map<string | null, Place>();
  const placeOf = (housing: string | null) =>
    keptIn(places, housing, () => ({ housing, adults: [], families: [] }));
  const young = new Set(families.flatMap((family) => family.young));
  for (const { bird, status, housing } of sources.stock.birds) {
    if (status === 'here' && !young.has(bird) && !isHandFed(bird, sources))
      placeOf(housing).adults.push(bird);
  }
  for (const family of families) {
    if (family.mouths.length + family.unnamed > 0) placeOf(family.housing).families.push(family);
  }
  return [...places.values()].sort((a, b) => naturallyNamed(a.housing, b.housing));
}

function isHandFed(bird: Bird, { room, stock }: FeedSources): boolean {
  return isFedByHand(bird) && isStillFed(bird, room.day, stock.of(bird)?.profile ?? null);
}

const rears = ({ young, mouths }: Family, span: readonly Day[]) =>
  young.length > 0 || span.some((day) => rearingOf(mouths, day).part > 0);

function planFor(
  { housing, adults, families }: Place,
  span: readonly Day[],
  measured: readonly Measured[],
  sources: FeedSources,
): HousingPlan {
  const days = span.map((day): HousingDay => {
    const busy = new Set<Bird>();
    const eaten = families.flatMap((family) => {
      const rearing = rearingOf(family.mouths, day);
      const correct = correctionOf(family, measured);
      // A cock with two hens eats once.
      const parents = rearing.part === 0 ? [] : family.parents.filter((bird) => !busy.has(bird));
      for (const bird of parents) busy.add(bird);
      const each = parentFoods(family.facts, rearing, correct);
      return [
        ...Array.from({ length: parents.length + family.unnamed }, () => each),
        ...family.mouths.map((mouth) => mouthFoods(mouth, day, correct)),
      ];
    });
    const others = adults
      .filter((bird) => !busy.has(bird))
      .map((bird) => adultFoods(factsOfBird(bird, sources)));
    const foods = foodsOf((food) => sum([...eaten, ...others].map((one) => one[food])));
    const mouths = families.flatMap((family) => family.mouths);
    return {
      day,
      foods,
      // Nobody eats it before the hatch where no parent is left.
      size: foods.live.high > 0 ? sizeOn(families, day) : null,
      young: mouthsThere(mouths, day),
    };
  });
  return { housing, adults: bySpecies(adults), families, days };
}

/** What fits the smallest of those that are given live food; before the hatch, the hatchling. */
function sizeOn(families: readonly Family[], day: Day): LiveSize | null {
  const masses = families.flatMap(({ mouths }) => mouths.flatMap((mouth) => smallestOn(mouth, day) ?? []));
  return masses.length === 0 ? null : liveSizeFor(Math.min(...masses));
}

function factsOfBird(bird: Bird, { stock, facts }: FeedSources) {
  return facts(stock.of(bird)?.profile ?? null);
}

function bySpecies(birds: readonly Bird[]): HousingPlan['adults'] {
  const numbers = new Map<string | null, number>();
  for (const { species } of birds) numbers.set(species, (numbers.get(species) ?? 0) + 1);
  return Array.from(numbers, ([species, number]) => ({ species, number })).sort(
    (a, b) => b.number - a.number,
  );
}

function assumptions(housings: readonly HousingPlan[], sources: FeedSources): FeedPlan['assumed'] {
  const profiles = new Map<string | null, Profile | null>(
    sources.room.pairs.map(({ species, profile }) => [species, profile]),
  );
  for (const { bird, profile } of sources.stock.birds) profiles.set(bird.species, profile);
  const kept = new Set(
    housings.flatMap(({ adults, families }) => [
      ...adults.map(({ species }) => species),
      ...families.map(({ pair }) => pair.species),
    ]),
  );
  return [...kept].flatMap((species) => {
    const { assumed } = sources.facts(profiles.get(species) ?? null);
    return assumed.length === 0 ? [] : [{ species, what: assumed }];
  });
}
