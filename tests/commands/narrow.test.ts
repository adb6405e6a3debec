import { describe, expect, it } from 'vitest';
import { daysOption, wantedOf } from '../../src/commands/narrow.ts';
import { openRoom } from '../../src/commands/room.ts';
import { day } from '../rooms.ts';
import { roomFolder } from './run.ts';

const of = (id: string, species: string, housing: string) =>
  `pair: ${id}\nspecies: ${species}\nhousing: ${housing}\nlog:\n  - {date: 2026-03-01, paired}\n`;
const on = day('2026-03-09');
const open = () =>
  openRoom({
    journals: roomFolder({
      'LW-1': of('LW-1', 'lavender waxbill', 'flight 2'),
      'DD-1': of('DD-1', 'diamond dove', 'aviary'),
      'birds.yaml': 'birds:\n  - {id: GF-1, species: Gouldian finch, housing: quarantine}\n',
    }),
    day: on,
    today: on,
  });
const gouldian = { pair: null, bird: 'GF-1' };
const wanted = (options: Parameters<typeof wantedOf>[0]) =>
  ['LW-1', 'DD-1'].filter((pair) => wantedOf(options, open().room)({ pair, bird: null }));

describe('an agenda', () => {
  it('is everybody’s, or of a pair, a housing, a species under any of its names', () => {
    expect(wanted({})).toEqual(['LW-1', 'DD-1']);
    for (const only of [{ pair: 'LW-1' }, { housing: 'flight 2' }, { species: 'Estrilda caerulescens' }])
      expect(wanted(only)).toEqual(['LW-1']);
  });

  it('is of a bird too whose species has no pair yet', () => {
    expect(wantedOf({ species: 'Gouldian finch' }, open().room)(gouldian)).toBe(true);
    expect(wantedOf({ species: 'diamond dove' }, open().room)(gouldian)).toBe(false);
  });

  it('of a name that is not there is wrong usage, with the one that was probably meant', () => {
    expect(() => wanted({ pair: 'LW1' })).toThrow('did you mean `LW-1`?');
    expect(() => wanted({ housing: 'flight 3' })).toThrow('did you mean `flight 2`?');
    expect(() => wanted({ species: 'star finch' })).toThrow('no species `star finch` in this room');
  });

  it('looks so many days ahead', () => {
    const { default: usual, parse } = daysOption(7);
    expect([usual, parse?.('14')]).toEqual([7, 14]);
    expect(() => parse?.('soon')).toThrow('--days takes a number of days');
  });
});
