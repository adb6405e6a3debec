import { describe, expect, it } from 'vitest';
import type { AheadPage } from '../../../src/report/ahead.ts';
import { aheadText } from '../../../src/report/terminal/ahead.ts';
import { widthOf } from '../../../src/report/terminal/width.ts';
import { aheadOf } from '../../../src/rules/ahead/ahead.ts';
import { exampleRoom } from '../../example/room.ts';
import { expectGolden } from '../../golden.ts';
import { type Files, room } from '../../rooms.ts';
import { layingPair } from '../../rules/ahead/futures.ts';

function pageOf(stood: ReturnType<typeof room>, weeks = 8, draws = 500): AheadPage {
  return { ...aheadOf(stood, { weeks, draws }), findings: stood.findings };
}

const text = (files: Files, on: string, width = 80) =>
  aheadText(pageOf(room(files, on)), { width, color: false });

/** The text in one line, so that a sentence can be looked for wherever it is broken. */
const flat = (...call: Parameters<typeof text>) => text(...call).replace(/\s+/g, ' ');

const NESTLINGS = ['{date: 2026-03-14, checked: {eggs: 4}}', '{date: 2026-03-15, hatched: 4}'];
const nestlings = { A: layingPair('A', 4, NESTLINGS) };
const settings = (more: string) => ({ 'nestlog.yaml': `room: the finch room\n${more}\n` });

const example = pageOf(exampleRoom(), 8, 2000);

describe('the page of the weeks ahead', () => {
  it('of the example room', () => {
    const page = aheadText(example, { width: 80, color: false });
    expectGolden(import.meta.url, '80.txt', page);
  });

  it.each([40, 60, 80, 100, 200])('keeps to %d columns', (width) => {
    const page = aheadText(example, { width, color: false });
    for (const line of page.split('\n')) expect(widthOf(line)).toBeLessThanOrEqual(Math.max(width, 60));
  });

  it('says the same with colour', () => {
    // biome-ignore lint/suspicious/noControlCharactersInRegex: the escape sequences of colours
    const plain = aheadText(example, { width: 80, color: true }).replace(/\u001B\[[\d;]*m/g, '');
    expect(plain).toBe(aheadText(example, { width: 80, color: false }));
  });

  it('of an empty room is one clear sentence, and no figure that is none', () => {
    expect(flat({}, '2026-05-17')).toBe(
      'Sunday 17 May 2026 No eggs that may hatch and no young in the nests, so none to expect up to Sun 12 Jul. ',
    );
  });

  it('begins the first week with no day where something should have come before it', () => {
    const pair = (log: string) => ({ A: layingPair('A', 4, [log]) });
    // Laid from the 1st on: they hatch before April, and whatever did nobody wrote.
    expect(text(pair('{date: 2026-03-04, sitting}'), '2026-03-26')).toContain('  13    to 29 Mar ');
    expect(text(nestlings, '2026-03-16')).toContain('  12    16–22 Mar ');
  });

  it('names what is in no figure, and what was only guessed', () => {
    const old = 'pair: B\nspecies: zebra finch\nlog:\n  - {date: 2026-01-01, clutch: 1, laid: 3, sitting}\n';
    const unseen = 'pair: C\nspecies: zebra finch\nlog:\n  - {date: 2026-03-10, sitting}\n';
    const page = flat({ ...nestlings, B: old, C: unseen }, '2026-03-16');
    expect(page).toContain('nobody wrote what became of them: B/1 (3 eggs)');
    expect(page).toContain('Nobody counted C/1: eggs are taken for a usual clutch');
  });

  it('shows errors of the journals, because what cannot be read is in no figure', () => {
    const page = text(
      { ...nestlings, B: 'pair: B\nspecies: zebra finch\nlog:\n  - {date: 2026-03-40, laid: 1}\n' },
      '2026-03-16',
    );
    expect(page).toContain('1 error in the journals');
  });

  it('shows no control characters of the journals', () => {
    const evil = { A: layingPair('A', 4).replace('housing: cage A', 'housing: "cage \\e[2J"') };
    expect(text(evil, '2026-03-10')).not.toContain('\u001B');
  });
});

describe('rings', () => {
  it('are told with how many, of which size, by when', () => {
    const page = flat(
      { ...nestlings, ...settings('rings: [{mm: 2.6, in-hand: 1}]\nring-lead: 3') },
      '2026-03-15',
    );
    expect(page).toMatch(
      /2\.6 mm: order 3 by Thu 19 Mar \(in 4 d\)|2\.6 mm: order 3 by Wed 18 Mar \(in 3 d\)/,
    );
    expect(page).toContain('zebra finch 2.5–2.8:');
    expect(page).toContain('3 days from ordering to having them');
    expect(page).toContain('local rules say which');
  });

  it('that come late say so plainly, and never ask to force one', () => {
    const page = flat({ ...nestlings, ...settings('ring-lead: 30') }, '2026-03-15');
    expect(page).toContain('2.7 mm: too late to order');
    expect(page).toContain('ordered today they come about 14 Apr; too big by then for a closed ring:');
    expect(page).toContain('a ring is never forced');
    expect(page).toContain('keep some in hand before they lay');
  });

  it('say that the days of an order were assumed', () => {
    expect(flat(nestlings, '2026-03-15')).toContain(
      '`ring-lead` is not set in nestlog.yaml: reckoned with 21 days',
    );
  });

  it('are not asked for where a room rings no birds', () => {
    expect(flat({ ...nestlings, ...settings('ringing: no') }, '2026-03-15')).toContain(
      'This room rings no birds',
    );
  });

  it('name chicks that are too old, sizes to spare, and a species without a size', () => {
    const more = settings('rings: [{mm: 2.55, in-hand: 5}, {mm: 2.7, in-hand: 1}, {mm: 5.0, in-hand: 2}]');
    expect(flat(nestlings, '2026-03-27')).toContain('too old for a closed one, never force it: A/1/c1');
    const page = flat({ ...nestlings, ...more }, '2026-03-15');
    expect(page).toContain('5 spare of 2.55 mm in hand would fit too, by the profile: zebra finch');
    expect(page).toContain('In hand and needed for nobody here: 5 of 2.55 mm, 2 of 5.0 mm.');
    const unknown = { A: nestlings.A.replace('zebra finch', 'lesser moonfinch') };
    expect(flat(unknown, '2026-03-15')).toContain('size not in the profile: ');
  });
});

describe('room and birds', () => {
  const reared = [...NESTLINGS, '{date: 2026-04-04, fledged: 4}', '{date: 2026-04-20, independent: 4}'];
  const moved = '{date: 2026-04-21, moved: {c1: young flight, c2: young flight}}';
  const next = [
    '{date: 2026-04-20, clutch: 2, laid: 1}',
    '{date: 2026-04-21, laid: 1}',
    '{date: 2026-04-22, laid: 2, sitting}',
  ];

  it('tell who feeds itself beside its parents, and the next hatch', () => {
    const page = text({ A: layingPair('A', 4, [...reared, moved, ...next]) }, '2026-04-23');
    expect(page).toMatch(/A\/1 +cage A +2\b/);
    expect(page).toMatch(/A\/2 +cage A/);
    expect(page).toContain('next clutch');
    expect(page).toContain('cage A: 2 (4) · young flight: 2');
    expect(page).toMatch(/hatches \d/);
  });

  it('tell where the young went before, and when it holds more than ever', () => {
    const page = flat({ A: layingPair('A', 4, [...reared, moved, ...next]) }, '2026-04-23');
    expect(page).toContain(
      'young flight, where 2 of 2 young went so far: 2 birds now, the most it ever held.',
    );
    expect(page).toContain('If all of them go there and nobody leaves it,');
    expect(page).toContain('more than ever from the week to');
  });

  it('tell the hens that will need rest, coming of age and quarantine', () => {
    const birds =
      'birds:\n  - {id: ZF-1, species: zebra finch, sex: hen}\n  - id: ZF-9\n    species: zebra finch\n    hatched: 2025-09-20\n    log:\n      - {date: 2026-03-01, arrived: cage 7}\n';
    const page = flat(
      {
        'nestlog.yaml': 'limits: {clutches-per-year: 1}',
        'birds.yaml': birds,
        A: layingPair('A', 4, NESTLINGS).replace('housing:', 'hen: ZF-1\nhousing:'),
      },
      '2026-03-16',
    );
    expect(page).toMatch(
      /A \(ZF-1\) · cage A: rest from \d+ (Mar|Apr) at the earliest, when the first may fledge; 1 clutch in a year, the limit is 1; free again 1 Mar 2027/,
    );
    expect(page).toContain('Tue 31 Mar: ZF-9 · zebra finch · cage 7: let out of quarantine');
    expect(page).toContain('old enough to breed from now on');
  });
});

it('what the figures rest on is told with the number of own clutches', () => {
  const page = text(nestlings, '2026-03-16');
  expect(page).toMatch(
    /zebra finch +\d+ \(\d+–\d+\) +\d+ \(\d+–\d+\) +\d+ \(\d+–\d+\) +\d+ \(\d+–\d+\) +1$/m,
  );
});
