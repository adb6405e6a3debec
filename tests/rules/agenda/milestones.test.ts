import { expect, test } from 'vitest';
import { formatDay } from '../../../src/days.ts';
import { milestones } from '../../../src/rules/agenda/milestones.ts';
import { pair } from '../warnings/warned.ts';
import {
  ALL_OUT,
  check,
  FOUR_EGGS,
  hillFinches,
  lines,
  type Row,
  species,
  THREE_CHICKS,
} from './hill-finch.ts';

const [one, two] = ['date: 2026-03-01, laid: 1', 'date: 2026-03-02, laid: 1'];
const hatchedAll = `${FOUR_EGGS}\ndate: 2026-03-15, after: 2026-03-14, hatched: all`;

const named = (log: string) => ({
  ...species({}),
  'HF-1': pair('HF-1', 'hill finch', log, 'cock: HF-20-01\nhen: HF-20-02\nhousing: flight 2'),
});

check('next-egg', [
  // An interval of one day: due on the 2nd, given up two days later.
  [
    'is due the day after the last egg, late for two days',
    hillFinches(one),
    ['03-02 now', '03-03 … 03-04 late'],
  ],
  [
    'is done by an egg of that day, and starts anew',
    hillFinches(`${one}\n${two}`),
    ['03-03 now', '03-04 … 03-05 late'],
  ],
  [
    'is over once they sit on a usual clutch',
    hillFinches(FOUR_EGGS.replace('laid: 1, sitting: both', 'laid: 1').concat('date: 2026-03-05, sitting')),
    [],
  ],
  [
    'goes on while they sit on fewer',
    hillFinches(`${one}\n date: 2026-03-02, laid: 1, sitting`),
    ['03-03 now', '03-04 … 03-05 late'],
  ],
  // Every other day: due on the 3rd.
  [
    'waits for the interval of the species',
    hillFinches(one, { 'laying-interval': '2' }),
    ['03-03 now', '03-04 … 03-05 late'],
  ],
  ['is over with the eggs', hillFinches(`${one}\ndate: 2026-03-02, lost: {broken: e1}`), []],
  ...(['died: hen', 'moved: {hen: cage 4}', 'parted: {hen: cage 4}'] as const).map(
    (away): Row => [
      `is not looked for when the hen lays here no more (${away})`,
      named(`${one}\ndate: 2026-03-02, ${away}`),
      [],
    ],
  ),
  [
    'is looked for when the cock was taken away',
    named(`${one}\ndate: 2026-03-02, moved: {cock: cage 4}`),
    ['03-02 now', '03-03 … 03-04 late'],
  ],
]);

check('confirm-sitting', [
  // e3 is laid on the 3rd; the hatch window begins on the 14th, so the 13th is the last morning.
  [
    'from the egg that is sat on, for two days; late until the hatch window',
    hillFinches(FOUR_EGGS.replace(', sitting: both', '')),
    ['03-03 … 03-05 now', '03-06 … 03-13 late'],
  ],
  ['is done when they were seen sitting', hillFinches(FOUR_EGGS), []],
  [
    'is not done by finding nobody on',
    hillFinches(`${FOUR_EGGS.replace('sitting: both', 'sitting: off')}date: 2026-03-05, sitting`),
    ['03-03 … 03-04 now'],
  ],
  ['waits for that egg', hillFinches(`${one}\n${two}`), []],
  [
    'is over with the last egg',
    hillFinches(`${FOUR_EGGS.replace(', sitting: both', '')}date: 2026-03-05, lost: {eaten: all}`),
    ['03-03 … 03-04 now'],
  ],
]);

check('candle', [
  // Sitting on the 3rd + 5 … 6; two days before the hatch window of the 14th the nest is left alone.
  [
    'on its days of sitting, late until the hands-off days',
    hillFinches(FOUR_EGGS),
    ['03-08 … 03-09 now', '03-10 … 03-11 late'],
  ],
  [
    'is done by a lamp in those days',
    hillFinches(`${FOUR_EGGS}date: 2026-03-09, candled: {fertile: [e1, e2], unsure: [e3, e4]}`),
    ['03-08 now'],
  ],
  [
    'is not done by a lamp too early that left doubts',
    hillFinches(`${FOUR_EGGS}date: 2026-03-06, candled: {unsure: all}`),
    ['03-08 … 03-09 now', '03-10 … 03-11 late'],
  ],
  [
    'is done by an early lamp that told every egg fertile',
    hillFinches(`${FOUR_EGGS}date: 2026-03-07, candled: {fertile: all}`),
    [],
  ],
  [
    'is over with the eggs',
    hillFinches(`${FOUR_EGGS}date: 2026-03-09, lost: {deserted: all}`),
    ['03-08 now'],
  ],
  [
    'counts from the latest day on which sitting can have begun',
    hillFinches(FOUR_EGGS.replace(', sitting: both', '').concat('date: 2026-03-05, sitting')),
    // Seen on the 5th, possible from the 3rd. One start of three puts 20 % by the 14th, all together 7 %: the window
    // begins on the 15th, and the last morning before the hands-off days is the 12th.
    ['03-10 … 03-11 now', '03-12 late'],
  ],
]);

check('set-back', [
  [
    'four to five days after the first was pulled, late until the tenth',
    hillFinches('date: 2026-03-01, laid: 1, pulled: e1\ndate: 2026-03-03, laid: 1, pulled: e2'),
    ['03-05 … 03-06 now', '03-07 … 03-11 late'],
  ],
  [
    'is done when they are set',
    hillFinches('date: 2026-03-01, laid: 1, pulled: e1\ndate: 2026-03-06, set: all'),
    ['03-05 now'],
  ],
  [
    'is over when the egg has ended',
    hillFinches('date: 2026-03-01, laid: 1, pulled: e1\ndate: 2026-03-06, lost: {broken: e1}'),
    ['03-05 now'],
  ],
]);

check('live-food', [
  // Hatch from the 14th, two days before is the 12th; the window ends on the 17th, and e4 may have hatched unseen by the 31st.
  [
    'before the first can hatch; late until a fortnight past the longest sitting, while nobody looks',
    hillFinches(FOUR_EGGS),
    ['03-12 … 03-14 now', '03-15 … 03-31 late'],
  ],
  [
    'until a look past the window found eggs: then it is asked what became of them',
    hillFinches(`${FOUR_EGGS}date: 2026-03-16, checked: {eggs: 4}\ndate: 2026-03-20, checked: {eggs: 4}`),
    ['03-12 … 03-14 now', '03-15 … 03-19 late'],
  ],
  [
    'until the window is past where some hatched: of chicks without live food there is a warning',
    hillFinches(`${FOUR_EGGS}date: 2026-03-15, hatched: [e1, e2]`),
    ['03-12 … 03-14 now', '03-15 … 03-18 late'],
  ],
  [
    'where it only helps, nobody is told that it is late',
    hillFinches(FOUR_EGGS, { 'live-food': 'helpful' }),
    ['03-12 … 03-14 now'],
  ],
  ['not where the species needs none', hillFinches(FOUR_EGGS, { 'live-food': 'no' }), []],
  [
    'not for eggs in an incubator, where no parent carries it in',
    hillFinches(`${FOUR_EGGS}date: 2026-03-06, fostered: {incubator: all}`),
    [],
  ],
  [
    'with the lead of the species',
    hillFinches(FOUR_EGGS, { 'live-food-lead': '4' }),
    ['03-10 … 03-14 now', '03-15 … 03-31 late'],
  ],
  [
    'where it is advised as where it is required',
    hillFinches(FOUR_EGGS, { 'live-food': 'advised' }),
    ['03-12 … 03-14 now', '03-15 … 03-31 late'],
  ],
  [
    'at once when an egg is seen pipped before its time',
    hillFinches(`${FOUR_EGGS}date: 2026-03-10, pipped: e1`),
    ['03-10 now', '03-11 … 03-31 late'],
  ],
  // Found on the 1st, they may have been sat on for as long as 13 d.
  [
    'at once for eggs that were found and not counted',
    hillFinches('date: 2026-03-01, laid: some'),
    ['03-01 now', '03-02 … 03-28 late'],
  ],
  [
    'at once for eggs that nobody wrote as laid, found at a first look',
    hillFinches('date: 2026-03-01, checked: {eggs: 4}'),
    ['03-01 … 03-28 late'],
  ],
  [
    'is done when it is offered',
    hillFinches(`${FOUR_EGGS}date: 2026-03-13, food: [seed, live food]`),
    ['03-12 now'],
  ],
  [
    'is to be done again when the latest food leaves it out',
    hillFinches(`${FOUR_EGGS}date: 2026-03-10, food: [live food]\ndate: 2026-03-14, food: [seed]`),
    ['03-14 now', '03-15 … 03-31 late'],
  ],
  ['not for eggs that are all clear', hillFinches(`${FOUR_EGGS}date: 2026-03-09, candled: {clear: all}`), []],
]);

check('hatch', [
  [
    'in its window; a day late, then another question takes over',
    hillFinches(FOUR_EGGS),
    ['03-14 … 03-17 now', '03-18 late'],
  ],
  [
    'until that question takes over, which waits for the youngest egg, also where that is clear',
    hillFinches(`${FOUR_EGGS}date: 2026-03-06, laid: 1\ndate: 2026-03-12, candled: {clear: e5}`),
    ['03-14 … 03-17 now', '03-18 … 03-20 late'],
  ],
  ['is done when no egg is left that may hatch', hillFinches(hatchedAll), ['03-14 now']],
  [
    'goes on for the eggs that are left',
    // e4 alone began on the 4th: 15 … 17.
    hillFinches(THREE_CHICKS),
    ['03-14 … 03-17 now', '03-18 late'],
  ],
  ['not for eggs that are all clear', hillFinches(`${FOUR_EGGS}date: 2026-03-09, candled: {clear: all}`), []],
]);

check('unhatched', [
  // Window to the 17th: 19 … 21; given up sixty days later, 20 May.
  [
    'two to four days after a window without a chick',
    hillFinches(FOUR_EGGS),
    ['03-19 … 03-21 now', '03-22 … 05-20 late'],
  ],
  [
    'asks for clear eggs too',
    hillFinches(`${FOUR_EGGS}date: 2026-03-09, candled: {clear: all}`),
    ['03-19 … 03-21 now', '03-22 … 05-20 late'],
  ],
  [
    'is done when every egg has a fate',
    hillFinches(`${FOUR_EGGS}date: 2026-03-20, lost: {addled: all}`),
    ['03-19 now'],
  ],
  // Out on 5 April, ten nights of roosting back: the nest comes down from the 15th; 18 April + 60 is 17 June.
  [
    'with chicks only when the nest comes down',
    hillFinches(ALL_OUT),
    ['04-15 … 04-18 now', '04-19 … 06-17 late'],
  ],
  // Until then the eggs were to stay with the chicks: nothing is late on that day. 28 March + 60 is 27 May.
  [
    'from the day on which the last of the chicks died',
    hillFinches(`${THREE_CHICKS}date: 2026-03-25, died: all`),
    ['03-25 … 03-28 now', '03-29 … 05-27 late'],
  ],
]);

test('every milestone is tested on its days, here, with the young, or in a file of its own', () => {
  expect([...new Set(milestones.map(({ task }) => task))]).toEqual([
    'next-egg',
    'confirm-sitting',
    'candle',
    'set-back',
    'weigh-eggs',
    'live-food',
    'hatch',
    'first-feed',
    'unhatched',
    'tell-age',
    'ring',
    'ring-check',
    'chicks-on-foot',
    'chick-warmth',
    'warm-nights',
    'fledge',
    'nest-down',
    'watch-restart',
    'independent',
  ]);
});

test('a forecast names its likely day and what it rests on', () => {
  const [hatch] = lines(hillFinches(FOUR_EGGS), 'hatch', '2026-03-10', 7);
  expect(hatch).toMatchObject({
    state: 'coming',
    say: 'hatching expected',
    why: 'sitting since 3 Mar + 11–13 d',
    basis: '11–13 d, book',
  });
  expect([hatch?.from, hatch?.likely, hatch?.to].map((on) => formatDay(on as number))).toEqual([
    '2026-03-14',
    '2026-03-15',
    '2026-03-17',
  ]);
});
