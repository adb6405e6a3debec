import { type Day, shortDay } from '../../days.ts';
import { type Egg, lastPlace } from '../../room/model.ts';
import { type Brood, mayHatch } from '../brood.ts';
import { eggLoss, shares, WANTED_WORDS, widest } from '../incubator/loss.ts';
import type { Milestone } from './milestones.ts';
import { afterWindow, days } from './windows.ts';

/** Days from one weighing to the next: less, and the scales' last digit hides the difference. */
const EVERY = 3;
/** Before the hatch window the eggs are left to themselves (common practice: the last three days). */
const LEFT_ALONE = 3;

/** Days for which it is called late, before it is let be. */
const SHOWN_LATE = 2;

/** Eggs in an incubator of which a chick may come. */
function inMachine({ where, eggs }: Brood): Egg[] {
  return where === 'incubator' ? eggs.filter((egg) => mayHatch(egg) && egg.pipped === null) : [];
}

function setOn(egg: Egg): Day {
  return lastPlace(egg).from;
}

/** The last day on which one of them was weighed in the incubator, or null. */
function lastWeighing(live: readonly Egg[]): Day | null {
  const days = live.flatMap((egg) => egg.weights.flatMap(({ day }) => (day >= setOn(egg) ? [day] : [])));
  return days.length === 0 ? null : Math.max(...days);
}

/** The last day on which the eggs are taken out. */
function lastDay({ hatch }: Brood): Day {
  return (hatch?.from ?? Number.POSITIVE_INFINITY) - LEFT_ALONE - 1;
}

/** Where the eggs are heading, as far as the weights tell. */
function headingOf(live: readonly Egg[], { room }: Brood): string | null {
  const forecasts = live.flatMap((egg) => eggLoss(egg, room.day)?.atPip ?? []);
  return forecasts.length === 0
    ? null
    : `${shares(widest(forecasts))} lost by pipping, as the weights stand; ${WANTED_WORDS} wanted`;
}

/**
 * Asked of eggs in an incubator only: no hen's eggs are handled for it. Offered once as they are set; asked again only
 * of a keeper who weighs.
 */
export const weighEggs = {
  task: 'weigh-eggs',
  when: `set in the incubator, that day; then ${EVERY} … ${EVERY + 1} d after the last weighing`,
  doneBy: '`weighed` of eggs',
  over: `${LEFT_ALONE} d before the hatch window; ${SHOWN_LATE} d late; never asked again of eggs that were not weighed at first`,
  say: 'weigh the eggs in the incubator',
  explain:
    'An egg that is to hatch loses about 15 % of its fresh mass by the time it pips (12.5–17.5 %; Ar & Rahn 1980). What it loses is water, and humidity is what the keeper can turn. Weigh on scales that show hundredths of a gram, at the first setting and every three days; `nestlog pair` shows where each egg is heading. Without scales write `skip: weigh-eggs`. Temperature and turning are not judged here: follow the incubator’s maker, and an avian vet where eggs die.',
  needsLook: false,
  anchors: (brood) => {
    const live = inMachine(brood);
    if (live.length === 0) return [];
    const set = Math.min(...live.map(setOn));
    const weighed = lastWeighing(live);
    const day = weighed ?? set;
    const says = weighed === null ? `set ${shortDay(set)}` : `weighed ${shortDay(weighed)}`;
    return [{ span: { from: day, to: day }, says, who: null }];
  },
  window: (anchor, brood) => {
    const live = inMachine(brood);
    const first = lastWeighing(live) === null;
    const window = first ? { ...days(0, 1)(anchor), days: '' } : days(EVERY, EVERY + 1)(anchor);
    return window.from > lastDay(brood) ? null : { ...window, basis: headingOf(live, brood) };
  },
  done: () => false,
  moot: () => false,
  lapses: (anchor, window, brood) => Math.min(afterWindow(SHOWN_LATE)(anchor, window), lastDay(brood)),
} as const satisfies Milestone;
