import { describe, expect, it, test } from 'vitest';
import { pairText } from '../../../src/report/terminal/pair.ts';
import { widthOf } from '../../../src/report/terminal/width.ts';
import { expectGolden } from '../../golden.ts';
import { withoutColour } from '../hostile.ts';
import { FOUR, story, waxbills } from '../seasons.ts';

describe.each([80, 120])('a pair’s page at %i columns', (width) => {
  test.each(['LW-1', 'LW-2'])('%s', (id) => {
    expectGolden(import.meta.url, `${width}-${id}.txt`, pairText(story(id), { width, color: false }));
  });
});

it.each([60, 80, 120])('keeps to a width of %i', (width) => {
  for (const id of ['LW-1', 'LW-2', 'LW-3', 'LW-4']) {
    for (const line of pairText(story(id), { width, color: false }).split('\n')) {
      expect(widthOf(line)).toBeLessThanOrEqual(width);
    }
  }
});

it('colour says nothing that the words do not', () => {
  const plain = pairText(story('LW-1'), { width: 80, color: false });
  expect(withoutColour(pairText(story('LW-1'), { width: 80, color: true }))).toBe(plain);
});

it('young of months ago of which nobody wrote again are not told as fed, as of the day stood on', () => {
  const flown = `${FOUR}\n date: 2026-03-16, hatched: [e1, e2]\n date: 2026-04-03, fledged: all`;
  const told = (on: string) =>
    pairText(story('LW-1', { 'LW-1': waxbills(flown) }, on), { width: 80, color: false });
  expect(told('2026-04-10')).toContain('c1   fledged 3 Apr · being fed');
  expect(told('2026-09-01')).toContain('c1   fledged 3 Apr · no end written');
});

it('a pair without a clutch is a sentence', () => {
  const files = { 'LW-1': waxbills('date: 2026-01-01, paired') };
  const text = pairText(story('LW-1', files, '2026-03-01'), { width: 80, color: false });
  expect(text).toContain('LW-1 · lavender waxbill · parents unknown');
  expect(text).toContain('No clutch yet.');
  expect(text).toContain('Nothing of it is finished enough to be counted.');
  expect(text).not.toMatch(/NaN|null|undefined/);
});

it('a pair without a clutch that sits on those of another says so', () => {
  const files = {
    'LW-1': waxbills('date: 2026-02-20, laid: 2\ndate: 2026-02-22, fostered: {ZF-1: all}'),
    'ZF-1': 'pair: ZF-1\nspecies: zebra finch\nlog:\n  - {date: 2026-02-22, sitting}\n',
  };
  const told = story('ZF-1', files, '2026-03-01');
  expect(pairText(told, { width: 80, color: false })).toContain(
    'No clutch yet.\n\n  In its care from other pairs: LW-1/1/e1 and LW-1/1/e2.',
  );
});

it('a brood found late is begun in the year of its days, which stands in its head', () => {
  const files = { 'LW-1': waxbills('date: 2025-10-01, paired\ndate: 2026-01-05, clutch: 1, fledged: 3') };
  const text = pairText(story('LW-1', files, '2026-02-01'), { width: 80, color: false });
  expect(text).toMatch(/^CLUTCH 1 · begun \d+ (Nov|Dec) 2025$/m);
  expect(text).toMatch(/^ {2}hatched +\d+–\d+ Dec /m);
});

describe('a pair whose cock has changed', () => {
  const files = {
    'LW-1': waxbills(
      `${FOUR}\ndate: 2026-04-01, died: cock\ndate: 2026-04-10, paired: {cock: LW-22-03}\ndate: 2026-05-01, clutch: 2, laid: 4`,
      'cock: LW-19-04\nhen: LW-20-11',
    ),
  };
  const page = (width: number) => pairText(story('LW-1', files, '2026-05-10'), { width, color: false });

  it('tells of each clutch whose it is, where those are the pair no longer', () => {
    expect(page(80)).toContain('LW-1 · lavender waxbill · LW-22-03 × LW-20-11');
    expect(page(80)).toMatch(/^CLUTCH 1 · begun \d+ \w+ 2026 · LW-19-04 × LW-20-11$/m);
    expect(page(80)).toMatch(/^CLUTCH 2 · begun 28 Apr 2026$/m);
  });

  it('keeps to a narrow page', () => {
    for (const line of page(40).split('\n')) expect(widthOf(line), line).toBeLessThanOrEqual(40);
  });
});

it('control characters of a name are made visible', () => {
  const files = { 'LW-1': waxbills(FOUR, 'housing: "cage\\e[2J 4"') };
  expect(pairText(story('LW-1', files, '2026-03-10'), { width: 80, color: false })).toContain(
    'cage<ESC>[2J 4',
  );
});
