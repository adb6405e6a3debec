import { describe, expect, it } from 'vitest';
import { birdNamed, openStock } from '../../src/commands/open-stock.ts';
import { UsageError } from '../../src/commands/usage-error.ts';
import type { Pair } from '../../src/room/model.ts';
import { FAMILY_DAY, family } from '../report/family.ts';
import { day } from '../rooms.ts';
import { roomFolder } from './run.ts';

describe('what a keeper names on the command line', () => {
  const on = day(FAMILY_DAY);
  const open = () => openStock({ journals: roomFolder(family), day: on, today: on });

  it('is found by every name that it has', () => {
    const room = open();
    expect(birdNamed('SF 23 11', room).id).toBe('SF-23-11');
    expect(birdNamed('sf-23-11', room).id).toBe('SF-23-11');
  });

  it('is wrong usage where there is none, with the nearest one', () => {
    const room = open();
    expect(() => birdNamed('SF-23-1l', room)).toThrow(UsageError);
  });

  it('is wrong usage where it is a pair, with the command that tells of pairs', () => {
    const room = { ...open(), room: { pairs: [{ id: 'LW 1' }] as Pair[] } };
    expect(() => birdNamed('lw 1', room)).toThrow('it is a pair: `nestlog pair "LW 1"`');
  });
});
