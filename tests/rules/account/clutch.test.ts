import { expect, it } from 'vitest';
import { accountClutch } from '../../../src/rules/account/clutch.ts';
import { pairStory } from '../../../src/rules/season/story.ts';
import { day, room } from '../../rooms.ts';

function clutch(lines: string, on = '2026-06-01') {
  const understood = room(
    {
      'LW-1': `pair: LW-1\nspecies: lavender waxbill\nlog:\n${lines.replace(/^ +/gm, '  ')}`,
      'LW-2': 'pair: LW-2\nlog: []\n',
    },
    on,
  );
  const [pair] = understood.pairs;
  const [story] = pair === undefined ? [] : pairStory(understood, pair).clutches;
  if (story === undefined) throw new Error('no clutch');
  return accountClutch(story, (text) => (text.startsWith('private') ? null : text));
}

it('eggs that nobody counted are no number', () => {
  expect(clutch('- {date: 2026-03-01, sitting}\n').eggs).toBeNull();
});

it('eggs taken by hand, sat on elsewhere and lost stand apart', () => {
  const told = clutch(
    `- {date: 2026-03-01, clutch: 1, laid: 6, sitting}
    - {date: 2026-03-03, lost: {sold: e1, broken: e2}}
    - {date: 2026-03-04, fostered: {LW-2: [e3, e4]}}
    - {date: 2026-03-05, pulled: e5}
    - {date: 2026-03-06, set: {incubator: e5}}
  `,
    '2026-03-10',
  );
  expect(told).toMatchObject({
    eggs: 6,
    taken: 1,
    fostered: 3,
    losses: [{ what: 'egg', cause: 'broken', number: 1 }],
    over: null,
  });
});

// Of five: two hatch elsewhere, one comes back from the cool store, and of the young of the nest one is reared elsewhere.
it('what others sat on or fed is counted once, and what its own pair took back is not counted', () => {
  const told = clutch(`- {date: 2026-03-01, clutch: 1, laid: 5, site: gorse}
    - {date: 2026-03-01, pulled: e5}
    - {date: 2026-03-03, set: e5}
    - {date: 2026-03-03, sitting}
    - {date: 2026-03-04, fostered: {LW-2: e1}}
    - {date: 2026-03-04, pulled: e2}
    - {date: 2026-03-04, set: {incubator: e2}}
    - {date: 2026-03-15, hatched: [e1, e2, e3, e4, e5]}
    - {date: 2026-03-20, fostered: {LW-2: c3}}
    - {date: 2026-03-21, fostered: {hand: c4}}
  `);
  expect(told).toMatchObject({ site: 'gorse', eggs: 5, chicks: 5, fostered: 4 });
});

it('young that died are losses until they feed themselves, with or without a cause', () => {
  const told = clutch(`- {date: 2026-03-01, clutch: 1, laid: 3, sitting}
    - {date: 2026-03-13, hatched: 3}
    - {date: 2026-03-15, died: c3}
    - {date: 2026-04-02, fledged: all}
    - {date: 2026-04-20, independent: all}
    - {date: 2026-05-20, died: {night fright: c1}}
  `);
  expect(told).toMatchObject({ left: 2, fed: 2 });
  expect(told.losses).toEqual([{ what: 'young', cause: 'cause not known', number: 1 }]);
});

it('a cause marked private is not known to others', () => {
  const told = clutch(`- {date: 2026-03-01, clutch: 1, laid: 3, sitting}
    - {date: 2026-03-13, hatched: 3}
    - {date: 2026-03-15, died: {"private: my own fault": 2}}
  `);
  expect(told.losses).toEqual([{ what: 'young', cause: 'cause not known', number: 2 }]);
});

it('what was foreseen is days alone', () => {
  const told = clutch('- {date: 2026-03-01, clutch: 1, laid: 4, sitting}\n', '2026-03-05');
  expect(Object.keys(told.foreseen.hatch ?? {})).toEqual(['from', 'likely', 'to']);
});

it('is begun on the day of its first egg, one a day before the last of those found together', () => {
  expect(clutch('- {date: 2026-03-04, clutch: 1, laid: 4, sitting}\n', '2026-03-05').begun).toBe(
    day('2026-03-01'),
  );
});
