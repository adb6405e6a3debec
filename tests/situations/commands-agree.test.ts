import fc from 'fast-check';
import { describe, expect, it, test } from 'vitest';
import { type Day, formatDay, parseDay } from '../../src/days.ts';
import type { Room } from '../../src/room/fold.ts';
import { agendaOf } from '../../src/rules/agenda/agenda.ts';
import { aheadOf } from '../../src/rules/ahead/ahead.ts';
import { mayHatch } from '../../src/rules/brood.ts';
import { feedPlan } from '../../src/rules/feed/plan.ts';
import { matchStock } from '../../src/rules/match/proposals.ts';
import type { StockBird } from '../../src/rules/stock/stock.ts';
import { exampleRoom, TODAY } from '../example/room.ts';
import { dateOf } from '../generators/lines.ts';
import { filesOf, plausible } from '../generators/rooms.ts';
import { room } from '../rooms.ts';
import { sourcesOf } from '../rules/feed/rooms.ts';

const WEEK = 7;
const FED = ['chick', 'fledgling'];

/** What the commands tell of one room, in the same terms. */
function told(known: Room) {
  const sources = sourcesOf(known);
  const { stock, broods } = sources;
  const ahead = aheadOf(known, { weeks: 2, draws: 20 });
  const plan = feedPlan(sources, WEEK);
  const here = stock.birds.filter(({ status }) => status === 'here');
  // A chick that came from outside is in nobody's nest here.
  const grown = here.filter(({ bird, age }) => bird.ref === null || !FED.includes(age as string));
  return { known, here, grown, ahead, plan, tasks: agendaOf(known, broods, WEEK), stock };
}

type Told = ReturnType<typeof told>;

const ids = (birds: readonly StockBird[]) => birds.map(({ id }) => id).sort();

/** How many birds live in each housing that somebody wrote. */
function byHousing(birds: readonly StockBird[]): Record<string, number> {
  const numbers: Record<string, number> = {};
  for (const { housing } of birds) if (housing !== null) numbers[housing] = (numbers[housing] ?? 0) + 1;
  return numbers;
}

const agreements: Record<string, (of: Told) => void> = {
  'whom the stock has here eats once: as one that feeds itself, in a nest, or by hand': ({
    here,
    grown,
    plan,
  }) => {
    const adults = plan.housings.flatMap((place) => place.adults.map(({ number }) => number));
    expect(adults.reduce((sum, one) => sum + one, 0)).toBe(grown.length);
    const fed = plan.housings.flatMap(({ families }) => families.flatMap(({ young }) => young));
    const named = [...fed, ...plan.byHand].filter(({ placeholder }) => !placeholder).map(({ id }) => id);
    expect(named.sort()).toEqual(ids(here.filter((one) => !grown.includes(one))));
  },
  'the weeks ahead wait for exactly the young that are still fed': ({ known, here, grown, ahead }) => {
    const heard = known.birds.filter(
      ({ placeholder, fate, independent }) => placeholder && !fate && !independent,
    );
    expect(ahead.chicks).toBeGreaterThanOrEqual(here.length - grown.length);
    expect(ahead.chicks).toBeLessThanOrEqual(here.length - grown.length + heard.length);
  },
  'and for exactly the eggs of which something may come, but for those long past their time': ({
    known,
    ahead,
  }) => {
    const eggs = known.pairs.flatMap(({ clutches }) => clutches.flatMap((clutch) => clutch.eggs));
    const past = ahead.pastTheirTime.reduce((sum, one) => sum + one.eggs, 0);
    expect(ahead.eggs + past).toBe(eggs.filter(mayHatch).length);
  },
  'a housing holds as many that feed themselves as the stock has there, and none that is empty holds one': ({
    here,
    grown,
    ahead,
  }) => {
    const { occupied, empty } = ahead.housing;
    expect(Object.fromEntries(occupied.map(({ housing, now }) => [housing, now]))).toEqual(byHousing(grown));
    expect(Object.keys(byHousing(here)).filter((housing) => empty.includes(housing))).toEqual([]);
  },
  'everyone here is judged once for the coming season: proposed, kept, or left out with a reason': ({
    known,
    stock,
    here,
  }) => {
    for (const anew of [false, true]) {
      const wishes = { keep: new Set<string>(), not: new Set<StockBird>(), anew, maxInbreeding: null };
      const judged = matchStock(known, stock, wishes).flatMap(({ proposals, kept, leftOut }) => [
        ...new Set([...proposals, ...kept].flatMap(({ cock, hen }) => [cock, hen])),
        ...leftOut.map(({ one }) => one),
      ]);
      expect(ids(judged)).toEqual(ids(here));
    }
  },
  'what a morning puts out as live food is in the plan of that day': ({ known, tasks, plan }) => {
    for (const { pair, housing, from } of tasks.filter(({ task }) => task === 'live-food')) {
      const day = Math.max(known.day, from);
      const place = plan.housings.find((one) => one.housing === housing);
      const amount = place?.days.find((one) => one.day === day)?.foods.live.high ?? 0;
      if (day < known.day + WEEK) expect(amount, `${pair} on ${formatDay(day)}`).toBeGreaterThan(0);
    }
  },
  'a hatch that a morning expects ends on the same day in the plan': ({ known, tasks, plan }) => {
    const nests = plan.housings.flatMap(({ families }) => families);
    for (const { pair, clutch, to } of tasks.filter(
      ({ task, state }) => task === 'hatch' && state !== 'late',
    )) {
      const foreseen = nests
        .filter((family) => family.pair.id === pair)
        .flatMap(({ hatching }) => hatching.filter((one) => one.clutch === clutch));
      if (foreseen.length > 0) expect(foreseen[0]?.to, `${pair} on ${formatDay(known.day)}`).toBe(to);
    }
  },
  'quarantines that end and birds that come of age are those of the mornings to come': ({ tasks, ahead }) => {
    const week = (items: Told['tasks']) =>
      items
        .filter(({ task }) => task === 'of-age' || task === 'quarantine-end')
        .map(({ task, bird, from }) => `${from} ${task} ${bird}`)
        .sort();
    expect(week(ahead.events)).toEqual(expect.arrayContaining(week(tasks)));
  },
};

describe('the commands tell one room', () => {
  const first = parseDay('2024-01-05') as Day;
  const days = Array.from({ length: 26 }, (_, i) => first + i * 37);
  // Past the last line of the journals as well: nobody wrote what became of the young then.
  const stood = [
    ...days.filter((day) => day <= TODAY),
    TODAY,
    ...[20, 40, 60, 80].map((more) => TODAY + more),
  ];
  const rooms = stood.map((day) => told(exampleRoom(day)));

  it.each(Object.entries(agreements))('%s', (_, agree) => {
    for (const one of rooms) agree(one);
    expect(rooms.some(({ here }) => here.length > 20)).toBe(true);
  });
});

test('and any other room that a keeper may write', () => {
  const day = fc.integer({ min: 0, max: 260 }).map(dateOf);
  fc.assert(
    fc.property(plausible, day, (logs, on) => {
      const one = told(room(filesOf(logs), on));
      for (const agree of Object.values(agreements)) agree(one);
    }),
    { numRuns: 100 },
  );
});
