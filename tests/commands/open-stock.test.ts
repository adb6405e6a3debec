import { describe, expect, it } from 'vitest';
import { birdNamed, openStock } from '../../src/commands/open-stock.ts';
import { UsageError } from '../../src/commands/usage-error.ts';
import { FAMILY_DAY, family } from '../report/family.ts';
import { day } from '../rooms.ts';
import { roomFolder } from './run.ts';

describe('what a keeper names on the command line', () => {
  const on = day(FAMILY_DAY);
  const open = () => openStock({ journals: roomFolder(family), day: on, today: on });

  it('is found by every name that it has', () => {
    const room = open();
    expect(birdNamed('SF 23 11', room.stock).id).toBe('SF-23-11');
    expect(birdNamed('sf-23-11', room.stock).id).toBe('SF-23-11');
  });

  it('is wrong usage where there is none, with the nearest one', () => {
    const room = open();
    expect(() => birdNamed('SF-23-1l', room.stock)).toThrow(UsageError);
  });
});
