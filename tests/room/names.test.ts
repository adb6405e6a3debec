import { describe, expect, it } from 'vitest';
import { room } from '../rooms.ts';
import { birdIn, codes, journal, waxbills } from './facts.ts';

const reared = `
  date: 2025-03-05, laid: 2, sitting
  date: 2025-03-18, hatched: 2
  date: 2025-03-26, ringed: {c1: LW 25 007}
  date: 2025-04-06, fledged: 2
  date: 2025-04-25, independent: 2
`;
const named = (name: string) =>
  room(
    {
      P: waxbills(reared),
      Q: journal(
        'LW-2',
        'lavender waxbill',
        'date: 2026-03-01, paired\ndate: 2026-03-02, unwell: {hen: fluffed}',
        `hen: ${name}`,
      ),
    },
    '2026-03-10',
  );

describe('one bird, whatever it is called', () => {
  it.each(['LW-1/1/c1', 'LW 25 007', "'ring:LW 25 007'"])('by %s', (name) => {
    const known = named(name);
    expect(birdIn(known, 'LW-1/1/c1')).toMatchObject({ sex: 'hen', unwell: [{ text: 'fluffed' }] });
    expect(known.birds.map(({ id }) => id)).toEqual(['LW-1/1/c1', 'LW-1/1/c2']);
  });

  it('named for the first time is a bird of the room from then on', () => {
    expect(birdIn(named('LW-20-11'), 'LW-20-11')).toMatchObject({ ref: null, unwell: [{ text: 'fluffed' }] });
  });

  it('that is one of several is nobody in particular: what befell the hen befell none of them', () => {
    const known = named('[LW-20-11, LW-20-12]');
    expect(['LW-20-11', 'LW-20-12'].flatMap((id) => birdIn(known, id).unwell)).toEqual([]);
    expect(codes(known)).toEqual(['parent-unknown']);
  });
});
