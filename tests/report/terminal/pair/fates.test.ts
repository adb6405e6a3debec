import { expect, it } from 'vitest';
import { fateLines } from '../../../../src/report/terminal/pair/fates.ts';
import type { ClutchStory } from '../../../../src/rules/season/story.ts';
import { day } from '../../../rooms.ts';
import { known, ON, pair, story, waxbills } from '../../seasons.ts';

function fates(id: string, number: number): string[] {
  const clutch = story(id, known, ON).clutches.find((one) => one.clutch.number === number);
  return clutch === undefined ? [] : fateLines(clutch, day(ON), 100);
}

it('every egg and every chick has its end, and who cared for it', () => {
  expect(fates('LW-1', 1)).toEqual([
    '    e1   hatched 16 Mar as c1',
    '    e2   hatched 16 Mar as c2',
    '    e3   hatched 16 Mar as c3',
    '    e4   fertile · lost 19–22 Mar: dead-in-shell',
    '    e5   clear · lost 19–22 Mar: clear',
    '    c1   fledged 4 Apr · independent 25 Apr',
    '    c2   fledged 4 Apr · independent 25 Apr',
    '    c3   died 19 Mar: cold',
  ]);
  expect(fates('LW-1', 2)).toEqual([
    '    e1   not judged · lost 14–15 May: broken',
    '    e2   hatched 22–25 May as c1',
    '    e3   under LW-2 · hatched 24–25 May as c2',
    '    e4   clear · lost 26–30 May: clear',
    '    c1   fledged 13 Jun · independent 1 Jul',
    '    c2   fed by LW-2 · fledged 14 Jun · died 20 Jun: window',
  ]);
});

it('young that nobody wrote of again are in the nest or fed only as long as their kind is', () => {
  const brood = {
    P: waxbills(
      'date: 2026-03-01, laid: 3, sitting\ndate: 2026-03-15, hatched: 2\ndate: 2026-04-02, fledged: c1',
    ),
  };
  const on = (date: string) =>
    fateLines(story('LW-1', brood, date).clutches[0] as ClutchStory, day(date), 100).slice(-2);
  expect(on('2026-04-03')).toEqual(['    c1   fledged 2 Apr · being fed', '    c2   in the nest']);
  const late = { P: `${brood.P}\n  - {date: 2026-09-01, feeding: {cock: c1}}` };
  const [c1] = fateLines(
    story('LW-1', late, '2026-09-03').clutches[0] as ClutchStory,
    day('2026-09-03'),
    100,
  ).slice(-2);
  expect(c1).toBe('    c1   fledged 2 Apr · being fed');
  expect(on('2026-09-03')).toEqual(['    c1   fledged 2 Apr · no end written', '    c2   no end written']);
});

it('what we took and what is open', () => {
  expect(fates('LW-2', 1)[1]).toBe('    e2   fertile · sold 18 May');
  expect(fates('LW-3', 1)[0]).toBe('    e1   fertile · open');
  expect(fates('LW-4', 1).slice(2)).toEqual([
    '    c1   fledged 29 Apr · sold 5 May',
    '    c2   fledged 29 Apr · independent 15 May',
  ]);
});

it('an egg in which the lamp saw a dead chick is open, and not as good as its sisters', () => {
  const log = `date: 2026-04-02, laid: 1
    date: 2026-04-05, laid: 3, sitting
    date: 2026-04-13, candled: {fertile: [e1, e2, e4], dead: e3}`;
  const files = { 'VW-1': pair('VW-1', 'violet-eared waxbill', log) };
  const [clutch] = story('VW-1', files, '2026-04-26').clutches;
  expect(clutch === undefined ? [] : fateLines(clutch, day('2026-04-26'), 100).slice(2)).toEqual([
    '    e3   fertile · seen dead 13 Apr · open',
    '    e4   fertile · open',
  ]);
});
