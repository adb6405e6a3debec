import type { Room } from '../../../src/room/fold.ts';
import { broodsOf } from '../../../src/rules/brood.ts';
import { learnedDurations } from '../../../src/rules/durations.ts';
import { factsOf } from '../../../src/rules/feed/facts.ts';
import type { FeedSources } from '../../../src/rules/feed/families.ts';
import { hatchChances } from '../../../src/rules/feed/hatch-chance.ts';
import { type FeedPlan, feedPlan, type HousingPlan } from '../../../src/rules/feed/plan.ts';
import { stockOf } from '../../../src/rules/stock/stock.ts';
import { type Files, room } from '../../rooms.ts';

/** What a plan is reckoned from, of a room that stands in the test as text. */
export function sources(files: Files, on: string): FeedSources {
  return sourcesOf(room(files, on));
}

export function sourcesOf(known: Room): FeedSources {
  const durations = learnedDurations(known);
  return {
    room: known,
    stock: stockOf(known),
    broods: broodsOf(known, durations),
    durations,
    facts: factsOf(),
    chance: hatchChances(known),
  };
}

export function plan(files: Files, on: string, days = 7): FeedPlan {
  return feedPlan(sources(files, on), days);
}

export function place(planned: FeedPlan, housing: string | null): HousingPlan {
  const found = planned.housings.find((one) => one.housing === housing);
  if (found === undefined) throw new Error(`nobody eats in ${housing}`);
  return found;
}

/** One pair of a species in flight 2, with these lines in its log. */
export function pairRoom(species: string, lines: readonly string[], more: Files = {}): Files {
  const log = lines.map((line) => `  - {${line}}`).join('\n');
  return {
    'LW-1': `pair: LW-1\nspecies: ${species}\ncock: A\nhen: B\nhousing: flight 2\nlog:\n${log}\n`,
    ...more,
  };
}

/** Four eggs sat on from 3 March; the lavender waxbill’s 11–13 days make them hatch from 14 March on. */
export const SITTING = [
  'date: 2026-02-20, paired',
  'date: 2026-03-01, clutch: 1, laid: 1',
  'date: 2026-03-02, laid: 1',
  'date: 2026-03-03, laid: 1, sitting',
  'date: 2026-03-04, laid: 1',
];

/** All four hatched on 15 March. */
export const HATCHED = [...SITTING, 'date: 2026-03-14, checked', 'date: 2026-03-15, hatched: 4'];
