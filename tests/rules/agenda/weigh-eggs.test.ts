import { expect, it } from 'vitest';
import { weighEggs } from '../../../src/rules/agenda/weigh-eggs.ts';
import { pair } from '../warnings/warned.ts';
import { check, hillFinches, lines } from './hill-finch.ts';

/** Set on 2 March: hatching is expected from the 13th, so from the 10th the eggs are left alone. */
const SET = `date: 2026-03-01, laid: 1
  date: 2026-03-01, pulled: e1
  date: 2026-03-02, set: {incubator: e1}`;

check(weighEggs.task, [
  [
    'is offered as they are set, and then let be',
    hillFinches(SET),
    ['03-02 … 03-03 now', '03-04 … 03-05 late'],
  ],
  [
    'comes again three days after each weighing, until three days before the hatch',
    hillFinches(`${SET}, weighed: {e1: 1.20}\ndate: 2026-03-04, weighed: {e1: 1.17}`),
    ['03-07 … 03-08 now', '03-09 late'],
  ],
  [
    'is not begun in the last days',
    hillFinches(
      `${SET}, weighed: {e1: 1.20}\ndate: 2026-03-05, weighed: {e1: 1.15}\ndate: 2026-03-07, weighed: {e1: 1.12}`,
    ),
    [],
  ],
  ['is not for eggs under a hen', hillFinches('date: 2026-03-01, laid: 1, sitting, weighed: {e1: 1.2}'), []],
  ['is over with the eggs', hillFinches(`${SET}\ndate: 2026-03-02, lost: {broken: e1}`), []],
  [
    'is over for an egg that has pipped',
    hillFinches(`${SET}, weighed: {e1: 1.20}\ndate: 2026-03-08, pipped: e1`),
    ['03-05 … 03-06 now', '03-07 late'],
  ],
  [
    'is not for an egg that the lamp showed clear, nor for one that has pipped where nobody knows how long they take',
    {
      ...hillFinches(`${SET}, weighed: {e1: 1.20}\ndate: 2026-03-06, pipped: e1`, { incubation: '' }),
      'HF-2': pair(
        'HF-2',
        'hill finch',
        `${SET}, weighed: {e1: 1.20}\ndate: 2026-03-08, weighed: {e1: 1.20}, candled: {clear: e1}`,
      ),
    },
    ['03-05 now now', '03-06 now', '03-07 late'],
  ],
  [
    'is offered as they are set, also to who weighed them as they were laid',
    hillFinches(SET.replace('laid: 1', 'laid: 1, weighed: {e1: 1.20}')),
    ['03-02 … 03-03 now', '03-04 … 03-05 late'],
  ],
  ['can be skipped', hillFinches(SET.replace('pulled: e1', 'pulled: e1, skip: weigh-eggs')), []],
]);

it('tells where they are heading', () => {
  const log = `${SET}, weighed: {e1: 1.20}\ndate: 2026-03-05, weighed: {e1: 1.15}`;
  const [item] = lines(hillFinches(log), 'weigh-eggs', '2026-03-08');
  expect(item?.why).toBe('weighed 5 Mar + 3–4 d');
  expect(item?.basis).toMatch(/^1\d–\d\d % lost by pipping, as the weights stand; 12\.5–17\.5 % wanted$/);
  expect(item?.housing).toBe('incubator');
});
