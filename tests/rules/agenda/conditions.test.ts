import { describe, expect, it } from 'vitest';
import type { Anchor } from '../../../src/rules/agenda/anchors.ts';
import * as is from '../../../src/rules/agenda/conditions.ts';
import type { Brood } from '../../../src/rules/brood.ts';
import { day, type Files } from '../../rooms.ts';
import { pair } from '../warnings/warned.ts';
import { ALL_OUT, brood, broods, FOUR_EGGS, hillFinches, THREE_CHICKS } from './hill-finch.ts';

const anchorOn = (from: string, to = from): Anchor => ({
  span: { from: day(from), to: day(to) },
  says: '',
  who: null,
});

/** Whether the condition holds on a day, for a task counted from 15 March and due on the 16th. */
function holds(condition: is.Condition, files: Files | string, on: string, from = '2026-03-15'): boolean {
  const known = typeof files === 'string' ? hillFinches(files) : files;
  return condition(brood(known, on), anchorOn(from), day('2026-03-16'));
}

describe('what was recorded', () => {
  const heard = (on: string) => `${THREE_CHICKS}date: 2026-03-${on}, heard\n`;

  it('after the anchor: from the next day', () => {
    expect(holds(is.seenAfter('heard'), heard('15'), '2026-03-20')).toBe(false);
    expect(holds(is.seenAfter('heard'), heard('16'), '2026-03-20')).toBe(true);
    expect(holds(is.seenAfter('crops'), heard('16'), '2026-03-20')).toBe(false);
  });

  it('since the anchor: from that day', () => {
    expect(holds(is.seenSince('heard'), heard('15'), '2026-03-20')).toBe(true);
    expect(holds(is.seenSince('hatched'), THREE_CHICKS, '2026-03-20', '2026-03-16')).toBe(false);
  });

  it('since it fell due', () => {
    expect(holds(is.seenSinceDue('heard'), heard('15'), '2026-03-20')).toBe(false);
    expect(holds(is.seenSinceDue('heard', 'crops'), heard('16'), '2026-03-20')).toBe(true);
  });

  it('of the other of two nests does not count', () => {
    const left = THREE_CHICKS.replaceAll('laid: 1', 'laid: 1, site: left');
    const seen = (site: string) =>
      holds(is.seenSince('food'), `${left}date: 2026-03-17, ${site}food: [egg food]`, '2026-03-20');
    expect(seen('site: left, ')).toBe(true);
    expect(seen('site: right, ')).toBe(false);
    expect(seen('')).toBe(true);
  });

  it('of another clutch does not count', () => {
    const log = `${ALL_OUT}date: 2026-04-20, clutch: 2, laid: 1\ndate: 2026-04-21, clutch: 2, checked\n`;
    expect(holds(is.seenAfter('checked'), log, '2026-04-22')).toBe(false);
    expect(holds(is.seenAfter('checked'), `${log}date: 2026-04-22, clutch: 1, checked`, '2026-04-22')).toBe(
      true,
    );
  });

  it('any of several', () => {
    const either = is.any(is.seenAfter('crops'), is.seenAfter('heard'));
    expect(holds(either, heard('16'), '2026-03-20')).toBe(true);
    expect(holds(either, THREE_CHICKS, '2026-03-20')).toBe(false);
  });
});

/** The condition holds after the first log and not after the second. */
type Row = [name: string, condition: is.Condition, yes: Files | string, no: Files | string];

const eggs: Row[] = [
  [
    'all judged',
    is.allJudged,
    `${FOUR_EGGS}date: 2026-03-09, candled: {fertile: [e1, e2, e3], clear: e4}`,
    `${FOUR_EGGS}date: 2026-03-09, candled: {fertile: [e1, e2, e3], unsure: e4}`,
  ],
  [
    'no egg to judge',
    (...args) => !is.allJudged(...args),
    `${FOUR_EGGS}date: 2026-03-09, lost: {eaten: all}`,
    `${FOUR_EGGS}date: 2026-03-09, candled: {fertile: all}`,
  ],
  ['seen sitting', is.sittingSeen, FOUR_EGGS, FOUR_EGGS.replace('both', 'off')],
  [
    'the eggs have ended',
    is.eggsEnded,
    `${FOUR_EGGS}date: 2026-03-09, lost: {eaten: all}`,
    `${FOUR_EGGS}date: 2026-03-05, pulled: all`,
  ],
  ['no egg in this nest', is.noEggHere, `${FOUR_EGGS}date: 2026-03-05, pulled: all`, FOUR_EGGS],
  [
    'none may hatch',
    is.noneMayHatch,
    `${FOUR_EGGS}date: 2026-03-09, candled: {clear: [e1, e2], dead: [e3, e4]}`,
    `${FOUR_EGGS}date: 2026-03-09, candled: {clear: [e1, e2, e3], unsure: e4}`,
  ],
  [
    'laying is over when they sit on a usual clutch',
    is.layingOver,
    FOUR_EGGS.replaceAll('03-0', '03-1'),
    FOUR_EGGS.replaceAll('03-0', '03-1').replace(', sitting: both', ''),
  ],
  [
    'laying is not over while nobody is on',
    (...args) => !is.layingOver(...args),
    FOUR_EGGS.replaceAll('03-0', '03-1').replace('both', 'off'),
    FOUR_EGGS.replaceAll('03-0', '03-1'),
  ],
  [
    'laying is over once they sit, where nobody knows how many are usual',
    is.layingOver,
    hillFinches('date: 2026-03-15, laid: 1, sitting', { clutch: '' }),
    'date: 2026-03-15, laid: 1, sitting',
  ],
  [
    'laying is over once they sit, of a species without a profile',
    is.layingOver,
    { 'HF-1': pair('HF-1', 'ridge finch', 'date: 2026-03-15, laid: 1, sitting') },
    { 'HF-1': pair('HF-1', 'ridge finch', 'date: 2026-03-15, laid: 1') },
  ],
  ['laying is over when one has hatched', is.layingOver, THREE_CHICKS, 'date: 2026-03-15, laid: 1'],
  [
    'laying is over when one has hatched, though the last egg is new and nobody was seen to sit',
    is.layingOver,
    `${FOUR_EGGS.replace(', sitting: both', '')}date: 2026-03-10, laid: 1\ndate: 2026-03-15, hatched: e1`,
    `${FOUR_EGGS.replace(', sitting: both', '')}date: 2026-03-10, laid: 1`,
  ],
  // Six days without an egg do not end a laying, seven do; the day stood on is the 16th.
  [
    'laying is over a week after the last egg',
    is.layingOver,
    'date: 2026-03-09, laid: 1',
    'date: 2026-03-10, laid: 1',
  ],
];

const young: Row[] = [
  ['somebody hatched here', is.hatchedHere, THREE_CHICKS, FOUR_EGGS],
  [
    'no young',
    is.noYoung,
    `${THREE_CHICKS}date: 2026-03-16, died: all`,
    `${THREE_CHICKS}date: 2026-03-16, died: 2`,
  ],
  [
    'all fledged',
    is.allFledged,
    `${THREE_CHICKS}date: 2026-03-16, fledged: all`,
    `${THREE_CHICKS}date: 2026-03-16, fledged: 2`,
  ],
];

const room: Row[] = [
  [
    'live food is offered',
    is.liveFoodOffered,
    `${FOUR_EGGS}date: 2026-03-14, food: [seed, mealworms]`,
    `${FOUR_EGGS}date: 2026-03-14, food: [seed, egg food]`,
  ],
  [
    'no live food is none',
    is.liveFoodOffered,
    `${FOUR_EGGS}date: 2026-03-14, food: [live food]`,
    `${FOUR_EGGS}date: 2026-03-14, food: [no live food]`,
  ],
  [
    'live food in the whole room',
    is.liveFoodOffered,
    hillFinches(FOUR_EGGS, {}, { 'nestlog.yaml': 'log:\n  - {date: 2026-03-10, food: [live food]}\n' }),
    // Written for later than the day stood on.
    hillFinches(FOUR_EGGS, {}, { 'nestlog.yaml': 'log:\n  - {date: 2026-03-17, food: [live food]}\n' }),
  ],
  [
    'live food since this very day',
    is.liveFoodOffered,
    hillFinches(FOUR_EGGS, {}, { 'nestlog.yaml': 'log:\n  - {date: 2026-03-16, food: [live food]}\n' }),
    FOUR_EGGS,
  ],
  [
    'one of the species in the nest needs live food',
    (...args) => !is.needsNoLiveFood(...args),
    {
      ...hillFinches(FOUR_EGGS),
      'species/ridge-finch.yaml': 'species: ridge finch\nlive-food: no\n',
      'RF-1': pair('RF-1', 'ridge finch', `${FOUR_EGGS}date: 2026-03-05, fostered: {HF-1: all}`),
    },
    hillFinches(FOUR_EGGS, { 'live-food': 'no' }),
  ],
  [
    'the species needs no live food',
    is.needsNoLiveFood,
    hillFinches(FOUR_EGGS, { 'live-food': 'no' }),
    hillFinches(FOUR_EGGS, { 'live-food': 'helpful' }),
  ],
  [
    'nobody knows that it needs any',
    is.needsNoLiveFood,
    hillFinches(FOUR_EGGS, { 'live-food': '' }),
    FOUR_EGGS,
  ],
  [
    'no rings in this room',
    is.noRinging,
    hillFinches(FOUR_EGGS, {}, { 'nestlog.yaml': 'ringing: no\n' }),
    FOUR_EGGS,
  ],
  [
    'parted',
    is.parted,
    `${FOUR_EGGS}date: 2026-03-16, parted`,
    `${FOUR_EGGS}date: 2026-03-15, parted\ndate: 2026-03-16, reunited`,
  ],
];

describe.each([
  ['eggs', eggs],
  ['young', young],
  ['pair and room', room],
])('%s', (_what, rows) => {
  it.each(rows)('%s', (_name, condition, yes, no) => {
    expect(holds(condition, yes, '2026-03-16')).toBe(true);
    expect(holds(condition, no, '2026-03-16')).toBe(false);
  });
});

describe('eggs elsewhere', () => {
  it('are neither in the nest nor ended', () => {
    // One is in the nest, one in store.
    const both = hillFinches('date: 2026-03-01, laid: 1, pulled: e1\ndate: 2026-03-02, laid: 1');
    expect(holds(is.eggsEnded, both, '2026-03-02')).toBe(false);
    expect(holds(is.noEggHere, both, '2026-03-02')).toBe(false);
  });

  it('in an incubator have no parents to be watched', () => {
    const warm = hillFinches(`${FOUR_EGGS}date: 2026-03-05, fostered: {incubator: all}`);
    const due = day('2026-03-06');
    expect(is.withoutParents(brood(warm, '2026-03-06', 'incubator'), anchorOn('2026-03-05'), due)).toBe(true);
    expect(holds(is.withoutParents, FOUR_EGGS, '2026-03-06')).toBe(false);
  });

  it('that were brought are judged by themselves', () => {
    const log = `${FOUR_EGGS}date: 2026-03-10, candled: {fertile: [e3, e4]}`;
    const whole = brood(hillFinches(log), '2026-03-16');
    const [, , ...brought] = whole.eggs;
    const due = day('2026-03-16');
    expect(is.allJudged(whole, { ...anchorOn('2026-03-15'), who: brought }, due)).toBe(true);
    expect(is.allJudged(whole, { ...anchorOn('2026-03-15'), who: whole.eggs }, due)).toBe(false);
  });

  it('of guests alone tell nothing of a sitting of this pair', () => {
    const guests = hillFinches(
      'date: 2026-03-01, paired',
      {},
      { 'HF-2': pair('HF-2', 'hill finch', `${FOUR_EGGS}date: 2026-03-05, fostered: {HF-1: all}`) },
    );
    expect(holds(is.sittingSeen, guests, '2026-03-06')).toBe(false);
    expect(holds(is.layingOver, guests, '2026-03-06')).toBe(true);
  });
});

describe('what is offered', () => {
  it('is unknown where nobody wrote it', () => {
    const known = brood(hillFinches(FOUR_EGGS), '2026-03-16');
    expect(is.foodOffered(known.pair, known.room)).toBeNull();
  });

  it('is what was written last, in the journal or for the room', () => {
    const files = hillFinches(
      `${FOUR_EGGS}date: 2026-03-10, food: [live food]`,
      {},
      {
        'nestlog.yaml': 'log:\n  - {date: 2026-03-12, food: [seed]}\n',
      },
    );
    const known = brood(files, '2026-03-16');
    expect(is.foodOffered(known.pair, known.room)).toEqual({ day: day('2026-03-12'), live: false });
  });
});

describe('after the fledging', () => {
  const later = (more: string) => `${ALL_OUT}${more}`;
  const on = '2026-04-20';

  it('the pair has laid again', () => {
    expect(holds(is.laidAgain, later('date: 2026-04-18, clutch: 2, laid: 1'), on)).toBe(true);
    expect(holds(is.laidAgain, ALL_OUT, on)).toBe(false);
  });

  it('the pair has laid again after young of others left its nest, which had no clutch of its own', () => {
    const host = (log: string) =>
      hillFinches(
        `date: 2026-03-01, paired\n${log}`,
        {},
        { 'HF-2': pair('HF-2', 'hill finch', `${THREE_CHICKS}date: 2026-03-16, fostered: {HF-1: all}`) },
      );
    const guests = (log: string) => broods(host(log), on).find((one) => one.clutch === null) as Brood;
    const asked = (log: string) => is.laidAgain(guests(log), anchorOn('2026-03-15'), day(on));
    expect(asked('date: 2026-04-18, laid: 1')).toBe(true);
    expect(asked('')).toBe(false);
  });

  it('the other of two nests that were laid in on the same day is not laid again', () => {
    const two = `date: 2026-04-16, clutch: 1, site: left, laid: 1\ndate: 2026-04-16, clutch: 2, site: right, laid: 1`;
    expect(holds(is.laidAgain, two, on)).toBe(false);
  });

  it('elsewhere, where it has two nests', () => {
    const sited = (
      site: string,
    ) => `${ALL_OUT.replaceAll('laid: 1', 'laid: 1, site: left')}date: 2026-04-06, lost: {clear: e4}
      date: 2026-04-18, clutch: 2, site: ${site}, laid: 1`;
    expect(holds(is.laidAgain, sited('right'), on)).toBe(true);
    expect(holds(is.laidAgainHere, sited('right'), on)).toBe(false);
    expect(holds(is.laidAgainHere, sited('left'), on)).toBe(true);
    expect(holds(is.nestInUse, sited('right'), on)).toBe(false);
    expect(holds(is.nestInUse, sited('left'), on)).toBe(true);
  });

  it('a clutch before this one is not laid again', () => {
    const log = later('date: 2026-04-06, lost: {clear: e4}\ndate: 2026-04-18, clutch: 2, laid: 1');
    const second = broods(hillFinches(log), on).find(({ clutch }) => clutch?.number === 2);
    expect(second && is.laidAgain(second, anchorOn('2026-04-18'), day(on))).toBe(false);
  });

  it('a clutch of which nobody wrote the nest may be in this one', () => {
    const left = ALL_OUT.replaceAll('laid: 1', 'laid: 1, site: left');
    expect(holds(is.laidAgainHere, `${left}date: 2026-04-18, clutch: 2, laid: 1`, on)).toBe(true);
    expect(holds(is.laidAgainHere, later('date: 2026-04-18, clutch: 2, site: left, laid: 1'), on)).toBe(true);
  });

  it('the nest was taken out on the day the last left it, though one had died in it', () => {
    const log = `${THREE_CHICKS}date: 2026-03-20, died: c3\ndate: 2026-04-05, fledged: all, nest: removed`;
    expect(holds(is.nestTakenOut, log, on)).toBe(true);
    const between = `${THREE_CHICKS}date: 2026-04-03, fledged: c1\ndate: 2026-04-04, nest: cleaned\ndate: 2026-04-05, fledged: all`;
    expect(holds(is.nestTakenOut, between, on)).toBe(false);
  });

  it('another of the pair’s nests was taken out, not this one', () => {
    const left = ALL_OUT.replaceAll('laid: 1', 'laid: 1, site: left');
    const removed = (site: string) => `${left}date: 2026-04-10, ${site}nest: removed`;
    expect(holds(is.nestTakenOut, removed('site: right, '), on)).toBe(false);
    expect(holds(is.nestTakenOut, removed('site: left, '), on)).toBe(true);
    expect(holds(is.nestTakenOut, removed(''), on)).toBe(true);
  });

  it('the pair builds again in this nest, not in the other of its two', () => {
    const builds = (site: string, log = ALL_OUT.replaceAll('laid: 1', 'laid: 1, site: left')) =>
      holds(is.builtAgainHere, `${log}date: 2026-04-10, ${site}nest: building`, on);
    expect(['site: left, ', '', 'site: right, '].map((site) => builds(site))).toEqual([true, true, false]);
    expect(['', 'site: right, '].map((site) => builds(site, ALL_OUT))).toEqual([true, false]);
  });

  it('one of the young still in it keeps it in use', () => {
    const log = `${THREE_CHICKS}date: 2026-04-04, lost: {clear: e4}, fledged: [c1, c2]`;
    expect(holds(is.nestInUse, log, '2026-04-05')).toBe(true);
    expect(holds(is.nestInUse, `${log}\ndate: 2026-04-06, fledged: c3`, '2026-04-06')).toBe(false);
  });

  it('the nest was taken out after the last left it, not before', () => {
    expect(holds(is.nestTakenOut, later('date: 2026-04-10, nest: removed'), on)).toBe(true);
    expect(holds(is.nestTakenOut, later('date: 2026-04-10, nest: cleaned'), on)).toBe(true);
    expect(holds(is.nestTakenOut, later('date: 2026-03-28, nest: removed'), on)).toBe(false);
    expect(holds(is.nestTakenOut, later('date: 2026-04-10, nest: offered'), on)).toBe(false);
  });

  it('an egg left in the nest keeps it in use', () => {
    expect(holds(is.nestInUse, ALL_OUT, on)).toBe(true);
    expect(holds(is.nestInUse, later('date: 2026-04-06, lost: {clear: e4}'), on)).toBe(false);
    expect(holds(is.nestInUse, `${THREE_CHICKS}date: 2026-03-20, lost: {clear: e4}`, on)).toBe(true);
  });
});
