import { grouped } from '../../../grouped.ts';
import { formatTime } from '../../../journal/grammar/time-text.ts';
import type { FeedPlan } from '../../../rules/feed/plan.ts';
import { count, stated } from '../../../words.ts';
import { shortDate } from '../dates.ts';
import type { Styles } from '../style.ts';
import { visible } from '../visible.ts';
import { wrap } from '../width.ts';

const WORDS = { live: 'live food', egg: 'egg food', sprouted: 'sprouted seed', dry: 'dry seed' } as const;

/** Said where somebody is reared. */
const REARING = [
  'Live food is the most they may need, as if every egg that may hatch did so on its earliest day; soft food, which spoils, is what is likely. All of it is reckoned from mass and age by formulas from memory (the manual, “What they will eat”), for one species easily wrong by half: what is left in the dish and what is in the crops go before the table. Write what was really eaten in a day, `food: {live food: 12}`, and the plan follows it.',
  'Live food: only from clean cultures or a trusted source, never from a dead or smelling box. Sprouted seed: discard it if it smells sour or shows mould. Fluffed or thin birds, empty crops: an avian vet.',
];

/** What the figures rest on, what was taken for lack of better, what is not in them, and the cautions. */
export function basisLines(plan: FeedPlan, width: number, look: Styles): string[] {
  const texts = [
    ...hoursWords(plan),
    ...plan.assumed.map(
      ({ species, what }) =>
        `${visible(species ?? 'Birds of no recorded species')}: the profile does not say all that is needed; taken: ${what.join(', ')}. A file in species/ with these keys puts it right.`,
    ),
    ...measuredWords(plan),
    ...(plan.offered.length === 0
      ? []
      : [
          `${plan.offered.map(visible).join(', ')}: live food is on offer by the journal, but nobody is there to rear in these days; go on as you give it now.`,
        ]),
    ...(plan.byHand.length === 0
      ? []
      : [
          `${count(plan.byHand.length, 'young bird')} fed by hand (${plan.byHand.map(({ id }) => visible(id)).join(', ')}): no plan here; what the food’s maker and an avian vet say goes.`,
        ]),
    ...(plan.totals.egg.high > 0 ? REARING : []),
  ];
  return texts.flatMap((text) => wrap(text, width)).map(look.muted);
}

function hoursWords({ hours, totals }: FeedPlan): string[] {
  const { assumed, from, to, portions, soak, sprout } = hours;
  if (assumed.length === 0 || totals.egg.high === 0) return [];
  const times = assumed.some((key) => key === 'from' || key === 'to' || key === 'every');
  const taken = [
    times
      ? `${count(portions.length, 'portion')} from lights-on at ${formatTime(from)} to ${formatTime(to)}`
      : null,
    assumed.includes('soak') ? `${soak / 60} h to soak` : null,
    assumed.includes('sprout') ? `${sprout / 60} h to sprout` : null,
  ];
  return [
    `Not in nestlog.yaml, so taken as usual: ${stated(taken, ', ')}. To set them: \`feeding: {from: 07:00, to: 19:00, every: 2 h, soak: 12 h, sprout: 24 h}\`.`,
  ];
}

/** What was measured, pair by pair, and what it changes. */
function measuredWords({ measured, day: standing }: FeedPlan): string[] {
  const groups = grouped(measured, ({ pair, day, factor }) => `${pair} ${day} ${factor === null}`);
  return [...groups.values()].map((some) => {
    const [{ pair, day, factor }] = some;
    const whose = `${pair === null ? 'The whole room' : visible(pair)}, measured on ${shortDate(day, standing)}`;
    const each = some.map(({ food, grams, reckoned, factor: times }) =>
      times === null
        ? `${WORDS[food]} ${grams} g a day`
        : `${WORDS[food]} ${grams} g a day where ${Math.max(1, Math.round(reckoned))} g were reckoned`,
    );
    if (factor !== null) return `${whose}: ${each.join(', ')}. These amounts now follow what was measured.`;
    const why = some.some(({ reckoned }) => reckoned >= 1)
      ? 'That is far from what was reckoned for the birds reared on that day, so something else must have been weighed; it changes nothing.'
      : 'Nobody was reared on that day to compare it with, so it changes nothing.';
    return `${whose}: ${each.join(', ')}. ${why}`;
  });
}
