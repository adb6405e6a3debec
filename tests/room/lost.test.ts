import { describe, expect, it } from 'vitest';
import { room } from '../rooms.ts';
import { pairIn, waxbills } from './facts.ts';

/** How many eggs of each clutch are lost. */
function lost(log: string): number[] {
  return pairIn(room({ P: waxbills(log) }, '2026-07-01'), 'LW-1').clutches.map(
    ({ eggs }) => eggs.filter(({ fate }) => fate?.kind === 'lost').length,
  );
}

describe('an egg that a brood left behind, which no lamp ever showed', () => {
  const brood = `date: 2026-03-05, laid: 4, sitting
    date: 2026-03-18, hatched: 3
    date: 2026-04-06, fledged: all`;
  const next = 'date: 2026-05-10, laid: 3, sitting';

  it('is not the one that is found clear in the nest of today, unless all of that one’s are clear and one more', () => {
    expect(lost(`${brood}\n${next}\ndate: 2026-05-18, lost: {clear: 1}`)).toEqual([0, 1]);
    expect(lost(`${brood}\n${next}\ndate: 2026-05-18, lost: {clear: 4}`)).toEqual([1, 3]);
  });

  it('went with its nest, or is still there where more are lost than were laid since', () => {
    const down = `${brood}\ndate: 2026-04-20, nest: cleaned\n${next}`;
    expect(lost(`${down}\ndate: 2026-05-18, lost: {eaten: 3}`)).toEqual([0, 3]);
    expect(lost(`${down}\ndate: 2026-05-18, lost: {eaten: 4}`)).toEqual([1, 3]);
  });
});
