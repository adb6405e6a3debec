import { type Day, formatDay } from '../../days.ts';
import { formatTime } from '../../journal/grammar/time-text.ts';
import { hatchedOn } from '../../room/clock.ts';
import type { Amount } from '../../rules/feed/amount.ts';
import type { Moment } from '../../rules/feed/batches.ts';
import type { Family } from '../../rules/feed/families.ts';
import type { Foods } from '../../rules/feed/foods.ts';
import type { FeedPlan } from '../../rules/feed/plan.ts';
import { findingData } from './finding.ts';
import { jsonText } from './text.ts';

/** The plan for programs. Amounts are g: `low`, `likely`, `high`. */
export function feedJson(plan: FeedPlan): string {
  const { day, days, room, hours, housings, batches, daily, totals, liveBySize } = plan;
  return jsonText({
    nestlog: 1,
    date: formatDay(day),
    room,
    days,
    portions: hours.portions.map(formatTime),
    soakHours: hours.soak / 60,
    sproutHours: hours.sprout / 60,
    assumedHours: hours.assumed,
    housings: housings.map((place) => ({
      housing: place.housing,
      adults: place.adults,
      nests: place.families.map((family) => familyData(family, day)),
      days: place.days.map((one) => ({
        date: formatDay(one.day),
        young: { expected: rounded(one.young.expected), most: Math.ceil(one.young.most - 1e-9) },
        ...foodsData(one.foods),
        liveFoodPortion: amountData(one.foods.live, hours.portions.length),
        liveFoodUpTo: one.size?.upTo ?? null,
      })),
    })),
    batches: batches.map(({ for: on, dry, soak, drain, ready }) => ({
      for: formatDay(on),
      drySeed: rounded(dry),
      soak: momentData(soak),
      drain: momentData(drain),
      ready: momentData(ready),
    })),
    daily: daily.map(({ day: on, foods }) => ({ date: formatDay(on), ...foodsData(foods) })),
    totals: foodsData(totals),
    liveFoodBySize: liveBySize.map(({ size, grams }) => ({ upTo: size.upTo, ...amountData(grams) })),
    offeredWithoutYoung: plan.offered,
    byHand: plan.byHand.map(({ id }) => id),
    assumed: plan.assumed,
    measured: plan.measured.map(({ day: on, ...one }) => ({
      ...one,
      date: formatDay(on),
      reckoned: rounded(one.reckoned),
    })),
    findings: plan.findings.map(findingData),
  });
}

function familyData({ pair, young, hatching, facts, parents, unnamed }: Family, day: Day) {
  return {
    pair: pair.id,
    species: pair.species,
    need: facts.liveFood,
    parents: parents.length + unnamed,
    young: young.map((bird) => ({
      bird: bird.id,
      age: day - (hatchedOn(bird)?.to ?? day),
      fledged: bird.fledged !== null,
      counted: !bird.placeholder,
    })),
    hatching: hatching.map(({ clutch, from, likely, to, eggs, counted, expected }) => ({
      clutch,
      from: formatDay(from),
      likely: formatDay(likely),
      to: formatDay(to),
      eggs,
      counted,
      expected: rounded(expected),
    })),
  };
}

function foodsData({ live, egg, sprouted, dry }: Foods) {
  return {
    liveFood: amountData(live),
    eggFood: amountData(egg),
    sproutedSeed: amountData(sprouted),
    drySeed: amountData(dry),
  };
}

function amountData({ low, likely, high }: Amount, among = 1): Amount {
  return { low: rounded(low / among), likely: rounded(likely / among), high: rounded(high / among) };
}

const rounded = (grams: number) => Number(grams.toFixed(2));

const momentData = ({ day, minute }: Moment) => `${formatDay(day)}T${formatTime(minute)}`;
