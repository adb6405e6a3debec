/**
 * Eggs as physics. Volume: Hoyt 1979, Auk 96:73–77 (0.51, as three later papers cite it). Incubation time and loss:
 * Rahn & Ar 1974, Condor 76:147–152, and Drent 1970 (constants from memory; they cohere). Wanted loss: Ar & Rahn 1980,
 * American Zoologist 20:373–384. Lengths and breadths of coot eggs: Arnold 1991, Condor 93:19.
 */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { eggVolume, freshMass } from '../../src/rules/incubator/egg-size.ts';
import { type EggLoss, eggLoss } from '../../src/rules/incubator/loss.ts';
import { day, room } from '../rooms.ts';
import { hillFinches } from '../rules/agenda/hill-finch.ts';

const reference = process.env.NESTLOG_REFERENCE;

describe('Hoyt 1979', () => {
  it.each([
    ['zebra finch', 15.5, 11.5, 1.04543625, 1.1233315],
    ['Bengalese finch', 15, 11, 0.92565, 0.99462],
    ['canary', 18.5, 13.5, 1.71952875, 1.8476505],
    ['domestic hen', 57, 43, 53.75043, 57.755364],
    ['coot', 44.3, 31.1, 21.85217553, 0.548 * 4.43 * 3.11 ** 2],
  ])('an egg of the size of a %s’s', (_species, length, breadth, volume, mass) => {
    expect(eggVolume({ length, breadth })).toBeCloseTo(volume, 9);
    expect(freshMass({ length, breadth })).toBeCloseTo(mass, 6);
  });

  const title = 'forty coot eggs';
  it.skipIf(!reference)(reference ? title : `${title} (skipped: NESTLOG_REFERENCE names no folder)`, () => {
    const text = readFileSync(join(reference as string, 'statistics/eggs-coot-40.csv'), 'utf8');
    const [, ...rows] = text.trim().split('\n');
    expect(rows).toHaveLength(40);
    for (const row of rows) {
      const [, , length, breadth, , volume] = row.split(',').map(Number);
      expect(eggVolume({ length: length as number, breadth: breadth as number })).toBeCloseTo(
        volume as number,
        8,
      );
    }
  });
});

/** The track of an egg that was weighed as it was set, on 2 March, and twice after. Incubation is `days`, to the day. */
function track(days: number, masses: [day: number, grams: number][]): EggLoss | null {
  const weighed = masses.map(
    ([on, grams]) => `date: 2026-03-${String(2 + on).padStart(2, '0')}, weighed: {e1: ${grams}}`,
  );
  const log = `date: 2026-03-01, laid: 1\ndate: 2026-03-01, pulled: e1\ndate: 2026-03-02, set: {incubator: e1}\n${weighed.join('\n')}`;
  const profile = {
    incubation: String(days),
    candling: '',
    'adult-mass': String((masses[0]?.[1] ?? 0) * 10),
  };
  const egg = room(hillFinches(log, profile), '2026-03-12').pairs[0]?.clutches[0]?.eggs[0];
  return egg === undefined ? null : eggLoss(egg, day('2026-03-12'));
}

describe('loss of water', () => {
  // 15 % of 1.05 g over 13 d in a straight line: 0.0121153846 g a day.
  it('of the mean species, in a straight line to the thirteenth day, is on track', () => {
    const one = track(14, [
      [0, 1.05],
      [6, 0.9773076923],
      [9, 0.9409615385],
    ]);
    expect(one?.atPip?.likely).toBeCloseTo(0.15, 9);
    expect(one?.verdict).toBe('on track');
    expect(one?.fresh?.grams).toBeCloseTo(1.05, 9);
  });

  // I = 12.03 W^0.217 d, daily loss 0.015 W^0.742 g: the whole loss as a share, from the published table of both.
  it.each([
    [1.0, 12.03, 0.015, 0.18045],
    [1.5, 13.1364322569, 0.0202652037, 0.1774749836],
    [5, 17.0585502162, 0.0495138848, 0.1689270182],
  ])(
    'of an egg of %d g by Rahn & Ar and Drent, carried to its incubation time',
    (mass, days, rate, share) => {
      expect(12.03 * mass ** 0.217).toBeCloseTo(days, 9);
      const whole = Number(days.toFixed(6));
      const one = track(whole + 1, [
        [0, mass],
        [3, Number((mass - 3 * rate).toFixed(6))],
        [6, Number((mass - 6 * rate).toFixed(6))],
      ]);
      // Whole days are used where a profile gives parts of them, so the share is within half a day's loss.
      expect(Math.abs((one?.atPip?.likely ?? 0) - share)).toBeLessThan((0.6 * rate) / mass);
      // A little more than the mean of the 81 species, and still near what is wanted.
      expect(one?.verdict).not.toBe('slow');
    },
  );
});
