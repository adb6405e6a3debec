import { describe, expect, it } from 'vitest';
import { kindOf } from '../../src/findings/codes.ts';
import { readFile } from '../../src/journal/record.ts';
import { usualSettings } from '../../src/journal/settings.ts';
import { plain } from './reading.ts';

function settings(text: string) {
  const { says, findings } = readFile('nestlog.yaml', text);
  const { code, at } = findings[0] ?? {};
  return {
    settings: says.settings ?? usualSettings(),
    found: findings.length === 0 ? null : `${at?.line}:${at?.column} ${code}`,
    count: findings.length,
  };
}

describe('the settings of a room', () => {
  it('are the usual ones where nothing is said', () => {
    expect(settings('')).toMatchObject({ settings: usualSettings(), found: null });
    expect(usualSettings()).toMatchObject({
      seasonStart: { month: 1, date: 1 },
      ringing: true,
      limits: { quarantine: 30 },
      routines: [],
      rings: [],
      log: [],
    });
  });

  it('count under a misspelt key of a list, which is told as misspelt', () => {
    const { settings: said, found, count } = settings('rings:s:\n  - {mm: 2.3, in-hand: 12}\n');
    expect(said.rings).toEqual([{ mm: 2.3, inHand: 12 }]);
    expect([found, count]).toEqual(['1:1 unknown-key', 1]);
  });

  it('are read key by key', () => {
    const { settings: said, found } = settings(
      [
        'room: back garden',
        'season-start: 09-01',
        'ringing: no',
        'limits: {quarantine: 45, clutches-per-year: 3, max-inbreeding: 12.5 %}',
        'feeding: {from: 06:00, to: 20:00, every: 3 h}',
        'rings: [{mm: 2.3, in-hand: 12}]',
        'ring-lead: 21',
        'log:',
        '  - {date: 2026-03-01, done: worm flights, food: {egg food: 20}, note: "cold"}',
      ].join('\n'),
    );
    expect(found).toBeNull();
    expect(JSON.parse(plain(said))).toEqual({
      room: 'back garden',
      seasonStart: { month: 9, date: 1 },
      ringing: false,
      limits: { quarantine: 45, clutchesPerYear: 3, maxInbreeding: 0.125 },
      routines: [],
      feeding: { from: 360, to: 1200, every: 180, soak: null, sprout: null },
      rings: [{ mm: 2.3, inHand: 12 }],
      ringLead: 21,
      log: [
        {
          date: 20513,
          done: [{ text: 'worm flights' }],
          food: [{ kind: { text: 'egg food' }, grams: 20 }],
          note: { text: 'cold' },
        },
      ],
    });
  });

  it('may leave lists empty, and have a list twice', () => {
    expect(settings('rings:\nroutines:\nlog:\n')).toMatchObject({ found: null, settings: { rings: [] } });
    const twice = settings('rings: [{mm: 2.3, in-hand: 12}]\nring-lead: 0\nringing: yes\n');
    expect(twice).toMatchObject({ found: null, settings: { ringLead: 0, ringing: true } });
  });

  it('know of no food from a day on which only tasks were done, and of no task from food', () => {
    const { settings: said } = settings(
      'log:\n  - {date: 2026-03-01, done: water}\n  - {date: 2026-03-02, food: egg food}\n',
    );
    expect(said.log.map(({ done, food }) => [done.length, food?.length ?? null])).toEqual([
      [1, null],
      [0, 1],
    ]);
  });

  it('keep the rings that can be read', () => {
    const { settings: said, found } = settings('rings: [{mm: 2.3, in-hand: 12}, 5, {mm: 2.5, in-hand: 0}]\n');
    expect(found).toBe('1:33 not-a-ring');
    expect(said.rings).toEqual([
      { mm: 2.3, inHand: 12 },
      { mm: 2.5, inHand: 0 },
    ]);
  });

  it.each([
    ['rom: x', '1:1 unknown-key'],
    ['season-start: 2026-09-01', '1:15 not-month-and-date'],
    ['ringing: maybe', '1:10 unknown-word'],
    ['limits: {quarantine: long}', '1:22 not-whole'],
    ['limits: {quarantin: 30}', '1:10 unknown-key'],
    ['limits: {max-inbreeding: 12.5}', '1:26 not-a-share'],
    ['feeding: {from: 06:00, every: 3 h}', '1:10 feeding-half'],
    ['feeding: {from: 20:00, to: 06:00, every: 3 h}', '1:10 feeding-reversed'],
    ['feeding: {from: 06:00, to: 20:00, every: 20 h}', '1:10 feeding-interval'],
    ['feeding: {sprout: 240 h}', '1:10 sprout-hours'],
    ['rings: [2.3]', '1:9 not-a-ring'],
    ['rings: [&a {mm: 2.3, in-hand: 12}]', '1:9 yaml-feature'],
    ['rings: [*a]', '1:9 yaml-feature'],
    ['rings: *a', '1:8 yaml-feature'],
    ['rings: [{mm: wide, in-hand: 12}]', '1:14 not-a-number'],
    ['feeding: *a', '1:10 yaml-feature'],
    ['rings: [{mm: 2.3}]', '1:9 not-a-ring'],
    ['rings: [{in-hand: 3}]', '1:9 not-a-ring'],
    ['rings: 12', '1:8 no-list'],
    ['routines: {name: x}', '1:11 no-list'],
    ['ring-lead: soon', '1:12 not-whole'],
    ['log: [{date: 2026-03-01, laid: 1}]', '1:26 unknown-key'],
  ])('%s is one finding, and the rest holds', (text, finding) => {
    const { settings: said, found, count } = settings(`${text}\nroom: mine\n`);
    expect(found).toBe(finding);
    expect(count).toBe(1);
    expect(said.room).toBe('mine');
  });
});

describe('what is typed otherwise in the settings', () => {
  it.each([
    ['season-start: 2026-09-01', 'write 09-01'],
    ['season-start: 1 September', 'write 09-01'],
    ['season-start: 1.9.', 'write 09-01'],
    ['season-start: 1/9', 'write 01-09 or 09-01'],
    ['ringing: true', 'did you mean `yes`?'],
    ['ringing: no rings', 'did you mean `no`?'],
    ['limits: {quarantine: 4 weeks}', 'write 28'],
    ['ring-lead: 21 days', 'write 21'],
    ['feeding: {from: 06:00, to: 20:00, every: 2 hours}', 'write 2 h'],
    ['feeding: {soak: 1 day}', 'write 24 h'],
    ['rings: [{mm: 2.3 mm, in-hand: 12}]', 'write 2.3'],
    ['rings: [{mm: 2.3, in-hand: two}]', 'write 2'],
    ['routines: [{name: x, every: 2 weeks}]', 'write 14'],
    ['routines: [{name: x, every: 3 months}]', 'such as `every: 2`'],
    [
      'routines: {name: x, every: 2}',
      'each item begins with a dash on a line of its own:\n- {name: x, every: 2}',
    ],
    ['rings: {2.3: 12, mm: 2}', 'each item begins with a dash on a line of its own'],
    ['rings: 12', 'each item begins with a dash on a line of its own'],
  ])('%s', (text, meant) => {
    const [finding] = readFile('nestlog.yaml', text).findings;
    expect(finding && kindOf(finding).hint(finding.args)).toBe(meant);
  });

  it('rings under another word are no answer to whether there is ringing', () => {
    const { says, findings } = readFile('nestlog.yaml', 'ring: [{mm: 2.3, in-hand: 12}]');
    expect(findings.map(({ code, args }) => [code, args.suggestion])).toEqual([['unknown-key', 'rings']]);
    expect(says.settings?.rings).toEqual([{ mm: 2.3, inHand: 12 }]);
  });
});
