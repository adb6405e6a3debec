import { pair } from '../warnings/warned.ts';
import { ALL_OUT, check, hillFinches, type Row, THREE_CHICKS } from './hill-finch.ts';

const PARENTS = 'cock: HF-1-c\nhen: HF-1-h';

check('first-feed', [
  [
    'the two days after the first chick; late for two more',
    hillFinches(THREE_CHICKS),
    ['03-16 … 03-17 now', '03-18 … 03-19 late'],
  ],
  ['is done by begging heard', hillFinches(`${THREE_CHICKS}date: 2026-03-17, heard`), ['03-16 now']],
  ['is done by a crop looked at', hillFinches(`${THREE_CHICKS}date: 2026-03-16, crops: {full: all}`), []],
  ['is done by seeing who feeds', hillFinches(`${THREE_CHICKS}date: 2026-03-15, feeding: {hen: all}`), []],
  ['is over with the last chick', hillFinches(`${THREE_CHICKS}date: 2026-03-17, died: all`), ['03-16 now']],
  [
    'again on the day on which they come home from the hand, and the next',
    hillFinches(
      `${THREE_CHICKS}date: 2026-03-16, crops: {full: all}, fostered: {hand: all}\ndate: 2026-03-20, fostered: {HF-1: all}`,
    ),
    ['03-20 … 03-21 now', '03-22 … 03-24 late'],
  ],
  [
    'and no full crop of that day tells: it may have been filled by hand',
    hillFinches(
      `${THREE_CHICKS}date: 2026-03-16, crops: {full: all}, fostered: {hand: all}\ndate: 2026-03-20, fostered: {HF-1: all}, crops: {full: all}`,
    ),
    ['03-20 … 03-21 now', '03-22 … 03-24 late'],
  ],
  [
    'which is done by seeing who feeds them there',
    hillFinches(
      `${THREE_CHICKS}date: 2026-03-16, crops: {full: all}, fostered: {hand: all}\ndate: 2026-03-20, fostered: {HF-1: all}\ndate: 2026-03-21, feeding: {hen: all}`,
    ),
    ['03-20 now'],
  ],
]);

check('ring', [
  // Ring age 7 … 8, from a day before: 15 March + 6 … + 8; after that it is too late for a closed ring.
  ['from a day before the ring age to its end, never late', hillFinches(THREE_CHICKS), ['03-21 … 03-23 now']],
  [
    'for each day of hatching by itself',
    hillFinches(`${THREE_CHICKS}date: 2026-03-17, after: 2026-03-16, hatched: e4`),
    ['03-21 … 03-22 now', '03-23 now now', '03-24 … 03-25 now'],
  ],
  [
    'is done by the ring',
    hillFinches(`${THREE_CHICKS}date: 2026-03-22, ringed: {c1: HF-01, c2: HF-02, c3: HF-03}`),
    ['03-21 now'],
  ],
  ['not in a room without rings', hillFinches(THREE_CHICKS, {}, { 'nestlog.yaml': 'ringing: no\n' }), []],
  ['is over with the last chick', hillFinches(`${THREE_CHICKS}date: 2026-03-22, died: all`), ['03-21 now']],
]);

const ringed = `${THREE_CHICKS}date: 2026-03-21, ringed: {c1: HF-01, c2: HF-02, c3: HF-03}\n`;
check('ring-check', [
  [
    'the morning after, and on the third day',
    hillFinches(ringed),
    ['03-22 now', '03-23 late', '03-24 now', '03-25 … 03-26 late'],
  ],
  [
    'the first look does for the first only',
    hillFinches(`${ringed}date: 2026-03-22, checked`),
    ['03-24 now', '03-25 … 03-26 late'],
  ],
  [
    'a look on the third day does for both',
    hillFinches(`${ringed}date: 2026-03-24, crops: {full: all}`),
    ['03-22 now', '03-23 late'],
  ],
  ['is over when they have fledged', hillFinches(`${ringed}date: 2026-03-22, fledged: all`), []],
]);

check('warm-nights', [
  ['in the days in which the hen stops brooding', hillFinches(THREE_CHICKS), ['03-22 … 03-24 now']],
  [
    'counts from the last of them',
    hillFinches(`${THREE_CHICKS}date: 2026-03-17, after: 2026-03-16, hatched: e4`),
    ['03-24 … 03-26 now'],
  ],
  ['is over with the last chick', hillFinches(`${THREE_CHICKS}date: 2026-03-23, died: all`), ['03-22 now']],
]);

check('fledge', [
  // 15 March + 20 … 22; given up two weeks after the window.
  [
    'in its window, late for two weeks',
    hillFinches(THREE_CHICKS),
    ['04-04 … 04-06 now', '04-07 … 04-20 late'],
  ],
  [
    'from the eldest to the youngest',
    hillFinches(`${THREE_CHICKS}date: 2026-03-17, after: 2026-03-16, hatched: e4`),
    ['04-04 … 04-08 now', '04-09 … 04-22 late'],
  ],
  ['is done when all have left', hillFinches(ALL_OUT), ['04-04 now']],
  [
    'is over with the last chick',
    hillFinches(`${THREE_CHICKS}date: 2026-04-06, died: all`),
    ['04-04 … 04-05 now'],
  ],
]);

// The fourth egg is out of the nest: with an egg in it no nest comes down.
const bare = `${ALL_OUT}date: 2026-04-05, lost: {clear: e4}\n`;
const dusk = (...nights: string[]) => bare + nights.map((night) => `date: 2026-04-${night}\n`).join('');
const empty = dusk('06, roosting: out', '07, roosting: out', '08, roosting: out');
const broken = dusk(
  '06, roosting: out',
  '07, roosting: out',
  '08, roosting: nest',
  '09, roosting: out',
  '10, roosting: out',
  '11, roosting: out',
);
check('nest-down', [
  // The third night is that of the 8th: the morning of the 9th, for three days; 9 April + 60 is 8 June.
  ['the morning after the third night out', hillFinches(empty), ['04-09 … 04-12 now', '04-13 … 06-08 late']],
  [
    'a night in the nest starts the count anew',
    hillFinches(broken),
    ['04-12 … 04-15 now', '04-16 … 06-11 late'],
  ],
  [
    'nights that nobody looked at do not count',
    hillFinches(dusk('06, roosting: out', '08, roosting: out', '10, roosting: out')),
    ['04-15 … 04-18 now', '04-19 … 06-14 late'],
  ],
  [
    'one who went back is enough to wait',
    hillFinches(dusk('06, roosting: out', '07, roosting: out', '08, roosting: {out: [c1, c2], nest: c3}')),
    ['04-15 … 04-18 now', '04-19 … 06-14 late'],
  ],
  [
    'one who sleeps there still when others of its kind no longer do is given three nights more',
    hillFinches(dusk('06, roosting: out', '14, roosting: {out: [c1, c2], nest: c3}')),
    ['04-18 … 04-21 now', '04-22 … 06-17 late'],
  ],
  // Five to ten nights of roosting back after 5 April; 15 April + 60 is 14 June.
  [
    'without looks at dusk, after those nights',
    hillFinches(bare),
    ['04-15 … 04-18 now', '04-19 … 06-14 late'],
  ],
  ['is done when it is taken out', hillFinches(`${empty}date: 2026-04-10, nest: removed`), ['04-09 now']],
  [
    'is done when it is cleaned',
    hillFinches(`${empty}date: 2026-04-11, nest: cleaned`),
    ['04-09 … 04-10 now'],
  ],
  [
    'is over with the next clutch',
    hillFinches(`${empty}date: 2026-04-11, clutch: 2, laid: 1`),
    ['04-09 … 04-10 now'],
  ],
  ...['building', 'lined', 'offered'].map(
    (state): Row => [
      `is over when the nest is ${state} for the next clutch`,
      hillFinches(`${empty}date: 2026-04-11, nest: ${state}`),
      ['04-09 … 04-10 now'],
    ],
  ),
  [
    'is never asked where they built in it before the young were forgotten',
    hillFinches(`${bare}date: 2026-04-08, nest: building`),
    [],
  ],
  [
    'goes on while they build elsewhere, and where they built only for the brood that has left',
    hillFinches(`date: 2026-02-25, nest: building\n${empty}date: 2026-04-11, nest: building, site: gorse`),
    ['04-09 … 04-12 now', '04-13 … 06-08 late'],
  ],
  [
    'waits for the egg that is left',
    hillFinches(`${ALL_OUT}date: 2026-04-17, lost: {clear: e4}`),
    ['04-17 … 04-18 now', '04-19 … 06-14 late'],
  ],
]);

check('watch-restart', [
  // 5 April + 5, until the young feed themselves.
  [
    'from the first fledging on, with no end',
    hillFinches(`${ALL_OUT}date: 2026-04-20, independent: all`),
    ['04-10 … 04-19 now'],
  ],
  [
    'is not watched for young that nobody wrote of any more: 60 days after they must feed themselves',
    hillFinches(ALL_OUT),
    ['04-10 … 06-23 now'],
  ],
  ['is done by parting', hillFinches(`${ALL_OUT}date: 2026-04-12, parted`), ['04-10 … 04-11 now']],
  [
    'is done by the next clutch',
    hillFinches(`${ALL_OUT}date: 2026-04-12, clutch: 2, laid: 1`),
    ['04-10 … 04-11 now'],
  ],
  [
    'is over when one of the two has died',
    {
      ...hillFinches(''),
      'HF-1': pair('HF-1', 'hill finch', `${ALL_OUT}date: 2026-04-12, died: hen`, PARENTS),
    },
    ['04-10 … 04-11 now'],
  ],
  [
    'goes on with a new mate, who never fed these young',
    {
      ...hillFinches(''),
      'HF-1': pair(
        'HF-1',
        'hill finch',
        `${ALL_OUT}date: 2026-04-12, died: cock\ndate: 2026-04-14, paired: {cock: HF-9}\ndate: 2026-04-20, independent: all`,
        PARENTS,
      ),
    },
    ['04-10 … 04-11 now', '04-14 … 04-19 now'],
  ],
  // Hill finches begin anew five days after, whoever was put to them; long finches would after nine.
  [
    'counts the days of the foster parents, not of the young that they rear',
    {
      ...hillFinches(
        'date: 2026-03-01, paired\ndate: 2026-04-05, fledged: all\ndate: 2026-04-20, independent: all',
      ),
      'species/long-finch.yaml':
        'species: long finch\nincubation: 11-13\nfledging: 20-22\nrestart: 9\nindependence: 30-40\n',
      'LF-1': pair('LF-1', 'long finch', `${THREE_CHICKS}date: 2026-03-20, fostered: {HF-1: all}`),
    },
    ['04-10 … 04-19 now'],
  ],
  // Nobody has fledged yet: three days before the window of 4 April.
  [
    'begins before the fledging where the species drives early',
    hillFinches(`${THREE_CHICKS}date: 2026-04-02, died: all`, { restart: '-3' }),
    ['04-01 now'],
  ],
]);

check('independent', [
  // 15 March + 30 … 40, late for sixty days.
  ['from the lowest age to the highest', hillFinches(ALL_OUT), ['04-14 … 04-24 now', '04-25 … 06-23 late']],
  [
    'waits for the youngest',
    hillFinches(
      `${THREE_CHICKS}date: 2026-03-17, after: 2026-03-16, hatched: e4\ndate: 2026-04-06, fledged: all`,
    ),
    ['04-14 … 04-26 now', '04-27 … 06-25 late'],
  ],
  [
    'is done when all are',
    hillFinches(`${ALL_OUT}date: 2026-04-16, independent: all`),
    ['04-14 … 04-15 now'],
  ],
  ['is over when none is left', hillFinches(`${ALL_OUT}date: 2026-04-16, died: all`), ['04-14 … 04-15 now']],
]);
