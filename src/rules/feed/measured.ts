import type { Day } from '../../days.ts';
import type { Pair } from '../../room/model.ts';
import { sumBy } from '../../statistics/sums.ts';
import { foodInRoom } from '../food-on-offer.ts';
import { type Amount, about } from './amount.ts';
import { type Family, type FeedSources, mouthsOn } from './families.ts';
import { type Food, foodNamed, foods } from './foods.ts';
import { type Correct, mouthFoods, parentFoods, rearingOf } from './mouths.ts';

/** A measured amount is right to so many times; birds do not eat alike on two days. */
const MEASURED_SPREAD = 1.25;
/** Further than this from what was reckoned, something else was measured than what these birds ate. */
const FARTHEST = 5;
/** Less than this, g, is nothing to compare with. */
const LEAST = 0.2;

/** What a keeper wrote of grams a day, beside what was reckoned for that day. */
export interface Measured {
  /** Null in the room's log: for the whole room. */
  pair: string | null;
  food: Food;
  day: Day;
  grams: number;
  reckoned: number;
  /** Measured over reckoned; null where nothing can be learned from it. */
  factor: number | null;
}

const asReckoned: Correct = (_food, grams) => grams;

/** The latest measured use of each food, of each pair and of the room. */
export function measuredUse(families: readonly Family[], sources: FeedSources): Measured[] {
  const { room } = sources;
  const roomLog = foodInRoom(room.settings, room.day);
  return foods.flatMap((food) => [
    ...families.flatMap((family) => {
      const { id, food: written } = family.pair;
      return latest(food, { pair: id, written, families: [family] }, sources);
    }),
    ...latest(food, { pair: null, written: roomLog, families }, sources),
  ]);
}

/** What a journal, or the room's log where no pair is named, says of food, and who eats of it. */
interface Written {
  pair: string | null;
  written: Pair['food'];
  families: readonly Family[];
}

function latest(food: Food, { pair, written, families }: Written, sources: FeedSources): Measured[] {
  const last = written
    .map(({ day, kinds }) => {
      const of = kinds.filter(({ kind }) => foodNamed(kind) === food);
      return { day, grams: sumBy(of, ({ grams }) => grams ?? 0) };
    })
    .findLast(({ grams }) => grams > 0);
  // Dry seed is always there; what goes from the dish is mostly husks.
  if (last === undefined || food === 'dry') return [];
  const reckoned = sumBy(families, (family) => reckonedOn(family, food, last.day, sources));
  const ratio = last.grams / reckoned;
  const useful = reckoned >= LEAST && ratio <= FARTHEST && ratio >= 1 / FARTHEST;
  return [{ pair, food, ...last, reckoned, factor: useful ? ratio : null }];
}

function reckonedOn(family: Family, food: Food, day: Day, sources: FeedSources): number {
  const mouths = mouthsOn(family.pair, day, sources);
  const rearing = rearingOf(mouths, day);
  const parents = family.parents.length + family.unnamed;
  const young = sumBy(mouths, (mouth) => mouthFoods(mouth, day, asReckoned)[food].likely);
  return young + parents * parentFoods(family.facts, rearing, asReckoned)[food].likely;
}

/** How a family’s amounts are corrected: by what was measured of its own, else of the room. */
export function correctionOf(family: Family, measured: readonly Measured[]): Correct {
  return (food, grams): Amount => {
    const of = (pair: string | null) =>
      measured.find((one) => one.food === food && one.pair === pair)?.factor ?? null;
    const factor = of(family.pair.id) ?? of(null);
    return factor === null ? grams : about(grams.likely * factor, MEASURED_SPREAD);
  };
}
