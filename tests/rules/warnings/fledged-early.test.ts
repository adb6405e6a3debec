import { describe, expect, it } from 'vitest';
import { line, mixedNest, spell, warned, waxbills } from './warned.ts';

// Lavender waxbill: fledging at 17–21 d (Amniote database: 17; from memory: 17–21).
const brood = `
  date: 2026-03-01, laid: 4
  date: 2026-03-02, sitting: hen
  date: 2026-03-14, hatched: 3
`;
const files = (more: string) => ({ 'LW-1': waxbills(`${brood}\n${more}`) });

describe('a chick that left the nest too early', () => {
  it('may chill today and tomorrow, and is watched until the usual age', () => {
    const room = files('date: 2026-03-28, fledged: c2');
    expect(spell(room, 'fledged-early', '2026-03-20', '2026-04-10')).toEqual([
      '03-28 … 03-29 act',
      '03-30 watch',
    ]);
    expect(line(room, 'fledged-early', '2026-03-28').text).toBe(
      'c2 left the nest on 28 Mar at 14 d; 17–21 d is usual. So young a bird chills on the floor in its first night, and nobody wrote who feeds it since.',
    );
    expect(line(room, 'fledged-early', '2026-03-28').check).toContain('at dusk: warm, off the floor');
  });

  it('is not the one that leaves a day before the usual age', () => {
    expect(warned(files('date: 2026-03-30, fledged: c2'), 'fledged-early', '2026-03-30')).toEqual([]);
    expect(warned(files('date: 2026-03-29, fledged: c2'), 'fledged-early', '2026-03-29')).toHaveLength(1);
  });

  it('is over when it is back in the nest, and presses less once it was seen fed', () => {
    const back = files('date: 2026-03-28, fledged: c2\n date: 2026-03-29, back: c2');
    expect(spell(back, 'fledged-early', '2026-03-20', '2026-04-10')).toEqual(['03-28 act']);
    const fed = files('date: 2026-03-28, fledged: c2, feeding: {cock: c2}');
    expect(warned(fed, 'fledged-early', '2026-03-28')).toMatchObject([{ level: 'watch' }]);
  });

  it('is one line for all that left that day', () => {
    const room = files('date: 2026-03-27, fledged: all');
    expect(line(room, 'fledged-early', '2026-03-27').text).toMatch(
      /^c1, c2 and c3 left the nest on 27 Mar at 13 d/,
    );
  });
});

it('guests of another species leave at their own age', () => {
  // Lavender waxbills leave at 17–21 d, Bengalese finches at 21–25 d, each from memory.
  const out = mixedNest('date: 2026-03-31, fledged: all');
  expect(warned(out, 'fledged-early', '2026-03-31')).toMatchObject([
    {
      pair: 'BF-1',
      text: expect.stringMatching(/^c1 and c2 left the nest on 31 Mar at 17 d; 21–25 d is usual/),
    },
  ]);
});
