import { describe, expect, it } from 'vitest';
import { type Care, lastFeederOf, layerOf, nestFeederOf, sitterOf } from '../../../src/rules/season/care.ts';
import { day } from '../../rooms.ts';
import { clutches, FOUR, pair, waxbills } from './rooms.ts';

const ON = '2026-07-01';
const FOSTER = pair('SF-1', 'star finch', `${FOUR}\n date: 2026-03-10, checked`, 'housing: cage 4');
const fostered = (log: string, foster = FOSTER) =>
  clutches({ 'LW-1': waxbills(`${FOUR}\n${log}`, 'housing: flight 2'), 'SF-1': foster }, ON).find(
    (clutch) => clutch.pair.id === 'LW-1',
  );
const who = (care: Care | null | undefined) => [care?.pair?.id ?? null, care?.housing];

describe('an egg', () => {
  it('is credited to the pair that laid it, and to the pair that sat on it last', () => {
    const [e1, e2] = fostered('date: 2026-03-08, fostered: {SF-1: e1}')?.eggs ?? [];
    expect(e1 && [who(layerOf(e1)), who(sitterOf(e1))]).toEqual([
      ['LW-1', 'flight 2'],
      ['SF-1', 'cage 4'],
    ]);
    expect(e2 && who(sitterOf(e2))).toEqual(['LW-1', 'flight 2']);
  });

  it('in an incubator or in store is sat on by no pair', () => {
    const [e1, e2] =
      fostered('date: 2026-03-05, pulled: [e1, e2]\n date: 2026-03-08, set: {incubator: e1}')?.eggs ?? [];
    expect(e1 && who(sitterOf(e1))).toEqual([null, 'incubator']);
    expect(e2 && who(sitterOf(e2))).toEqual([null, 'store']);
  });
});

describe('a chick', () => {
  const hatched = 'date: 2026-03-16, hatched: [e1, e2]';

  it('is credited to the pair that fed it then, wherever it went later', () => {
    const clutch = fostered(
      `${hatched}\n date: 2026-04-03, fledged: all\n date: 2026-04-05, fostered: {SF-1: c1}\n date: 2026-04-20, independent: c2`,
      `${FOSTER}\n  - {date: 2026-04-22, independent: LW-1/1/c1}`,
    );
    const [c1, c2] = clutch?.chicks ?? [];
    expect(c1 && [who(nestFeederOf(c1, day(ON))), who(lastFeederOf(c1, day(ON)))]).toEqual([
      ['LW-1', 'flight 2'],
      ['SF-1', 'cage 4'],
    ]);
    expect(c2 && who(lastFeederOf(c2, day(ON)))).toEqual(['LW-1', 'flight 2']);
  });

  it('that died is credited to whoever fed it until then', () => {
    const [c1] =
      fostered(
        `${hatched}\n date: 2026-03-17, fostered: {SF-1: c1}`,
        `${FOSTER}\n  - {date: 2026-03-19, died: LW-1/1/c1}`,
      )?.chicks ?? [];
    expect(c1 && who(nestFeederOf(c1, day(ON)))[0]).toBe('SF-1');
  });

  it('fed by hand is credited to no pair', () => {
    const [c1, c2] =
      fostered(`${hatched}\n date: 2026-03-17, fostered: {hand: c1}\n date: 2026-03-18, feeding: {hand: c2}`)
        ?.chicks ?? [];
    expect(c1 && who(nestFeederOf(c1, day(ON)))).toEqual([null, 'hand']);
    expect(c2 && who(nestFeederOf(c2, day(ON)))[0]).toBeNull();
  });
});
