import { describe, expect, it } from 'vitest';
import { LEGEND, timelineLines } from '../../../../src/report/terminal/pair/timeline.ts';
import { day } from '../../../rooms.ts';
import { FOUR, page, story, waxbills } from '../../seasons.ts';

function timeline(log: string, on: string, width = 80): string[] {
  const [clutch] = story('LW-1', { 'LW-1': waxbills(log) }, on).clutches;
  return clutch === undefined ? [] : timelineLines(clutch, day(on), page(width));
}

const all = `${FOUR}\n date: 2026-03-15, checked\n date: 2026-03-16, hatched: [e1, e2, e3]\n date: 2026-03-25, lost: {clear: e4}\n date: 2026-04-03, fledged: all\n date: 2026-04-22, independent: all`;

describe('a timeline', () => {
  // Laid from 1 March, sat on from the 4th, hatched on the 16th, out on 3 April, independent on the 22nd.
  it('has a letter for each day', () => {
    const [real, foreseen] = timeline(all, '2026-07-01');
    expect(real).toBe(`    eee${'s'.repeat(12)}${'n'.repeat(18)}${'f'.repeat(19)}i`);
    expect(foreseen?.trimStart()).toMatch(/^h+ +f+ +i+$/);
  });

  it('ends with the day stood on while it is not over', () => {
    expect(timeline(all, '2026-03-20')[0]).toBe(`    eee${'s'.repeat(12)}nnnn|`);
  });

  it('on a narrow page gives several days a letter, and says so', () => {
    const lines = timeline(all, '2026-07-01', 34);
    expect(lines.at(-1)).toBe('    a letter stands for 2 d');
    expect(lines[0]).toMatch(/^ {4}ee?s{5,6}n{9}f{9,10}i?$/);
  });

  it('explains its letters', () => {
    for (const letter of ['e', 's', 'n', 'f', 'i', 'h', '|']) expect(` ${LEGEND}`).toContain(` ${letter} `);
  });
});
