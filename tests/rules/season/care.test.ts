import { describe, expect, it } from 'vitest';
import { type Care, lastFeederOf, nestFeederOf, ownCare, sitterOf } from '../../../src/rules/season/care.ts';
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
    expect(e1 && [who(ownCare(e1.clutch)), who(sitterOf(e1))]).toEqual([
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

describe('the housing that is credited', () => {
  it('is that in which the clutch was begun, wherever the pair lives now', () => {
    const [e1] =
      fostered('date: 2026-03-08, fostered: {SF-1: e1}', `${FOSTER}\n  - {date: 2026-05-01, moved: cage 9}`)
        ?.eggs ?? [];
    expect(e1 && who(sitterOf(e1))).toEqual(['SF-1', 'cage 4']);
  });

  it('is that of the foster pair where it has no clutch of its own', () => {
    const foster = pair('SF-1', 'star finch', 'date: 2026-02-01, paired', 'housing: cage 4');
    const [e1] = fostered('date: 2026-03-08, fostered: {SF-1: e1}', foster)?.eggs ?? [];
    expect(e1 && who(sitterOf(e1))).toEqual(['SF-1', 'cage 4']);
    expect(e1 && sitterOf(e1).clutch).toBeNull();
  });
});

describe('a chick', () => {
  const hatched = 'date: 2026-03-16, hatched: [e1, e2]';

  it('is credited with the clutch that it lived with, and stays of the one it was laid in', () => {
    const [c1, c2] = fostered(`${hatched}\n date: 2026-03-17, fostered: {SF-1: c1}`)?.chicks ?? [];
    const from = (care: Care | null | undefined) => [care?.origin.pair.id, care?.clutch?.pair.id ?? null];
    expect(c1 && from(nestFeederOf(c1, day(ON)))).toEqual(['LW-1', 'SF-1']);
    expect(c2 && from(nestFeederOf(c2, day(ON)))).toEqual(['LW-1', 'LW-1']);
    const [byHand] = fostered(`${hatched}\n date: 2026-03-17, fostered: {hand: c1}`)?.chicks ?? [];
    expect(byHand && from(nestFeederOf(byHand, day(ON)))).toEqual(['LW-1', null]);
  });

  it('that feeds itself is credited to who fed it until then, though it moves the same day or later', () => {
    const grown = `${hatched}\n date: 2026-04-03, fledged: all`;
    const last = (more: string) => {
      const [c1] = fostered(`${grown}\n ${more}`)?.chicks ?? [];
      return c1 && who(lastFeederOf(c1, day(ON)));
    };
    expect(last('date: 2026-04-22, independent: c1')).toEqual(['LW-1', 'flight 2']);
    expect(last('date: 2026-04-22, independent: c1, moved: {c1: flight 7}')).toEqual(['LW-1', 'flight 2']);
    expect(last('date: 2026-04-22, independent: c1\n date: 2026-04-25, moved: {c1: flight 7}')).toEqual([
      'LW-1',
      'flight 2',
    ]);
    expect(last('date: 2026-04-10, fostered: {hand: c1}\n date: 2026-04-22, independent: c1')).toEqual([
      null,
      'hand',
    ]);
  });

  it('fed by hand only after it left the nest was reared in the nest by its parents', () => {
    const [c1] =
      fostered(`${hatched}\n date: 2026-04-03, fledged: all\n date: 2026-04-10, feeding: {hand: c1}`)
        ?.chicks ?? [];
    expect(c1 && who(nestFeederOf(c1, day(ON)))[0]).toBe('LW-1');
    expect(c1 && who(lastFeederOf(c1, day(ON)))[0]).toBeNull();
    const [same] = fostered(`${hatched}\n date: 2026-04-03, feeding: {hand: c1}, fledged: all`)?.chicks ?? [];
    expect(same && who(nestFeederOf(same, day(ON)))[0]).toBeNull();
  });

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

  it('fed by hand until it was brought to a foster pair is credited to that pair', () => {
    const hand = `${hatched}\n date: 2026-03-18, feeding: {hand: c1}`;
    const [c1] = fostered(`${hand}\n date: 2026-03-19, fostered: {SF-1: c1}`)?.chicks ?? [];
    expect(c1 && who(nestFeederOf(c1, day(ON)))[0]).toBe('SF-1');
    const [moved] = fostered(`${hand}\n date: 2026-03-19, moved: {c1: cage 9}`)?.chicks ?? [];
    expect(moved && who(nestFeederOf(moved, day(ON)))[0]).toBeNull();
  });

  it('brought to a pair and dead on that day was that pair’s; brought and fed by hand on that day, nobody’s', () => {
    const brought = `${hatched}\n date: 2026-03-17, fostered: {SF-1: c1}`;
    const [dead] = fostered(brought, `${FOSTER}\n  - {date: 2026-03-17, died: LW-1/1/c1}`)?.chicks ?? [];
    expect(dead && who(nestFeederOf(dead, day(ON)))[0]).toBe('SF-1');
    const [fed] =
      fostered(brought, `${FOSTER}\n  - {date: 2026-03-17, feeding: {hand: LW-1/1/c1}}`)?.chicks ?? [];
    expect(fed && who(nestFeederOf(fed, day(ON)))[0]).toBeNull();
  });

  it('taken into the hand and given to another pair then is credited to that pair', () => {
    const hand = `${hatched}\n date: 2026-03-17, fostered: {hand: c1}\n date: 2026-03-18, feeding: {hand: c1}`;
    const [c1] = fostered(`${hand}\n date: 2026-03-19, fostered: {SF-1: c1}`)?.chicks ?? [];
    expect(c1 && who(nestFeederOf(c1, day(ON)))[0]).toBe('SF-1');
  });

  it('seen for the first time when it fed itself was reared by the pair in whose nest it was', () => {
    const found = pair(
      'SF-1',
      'star finch',
      'date: 2026-04-20, fledged: 1, independent: 1',
      'housing: cage 4',
    );
    const [c1] = clutches({ 'SF-1': found }, ON)[0]?.chicks ?? [];
    expect(c1 && who(lastFeederOf(c1, day(ON)))).toEqual(['SF-1', 'cage 4']);
  });

  it('taken into the hand and dead on that day was lost to no pair', () => {
    const [c1] =
      fostered(`${hatched}\n date: 2026-03-17, fostered: {hand: c1}\n date: 2026-03-17, died: c1`)?.chicks ??
      [];
    expect(c1 && who(nestFeederOf(c1, day(ON)))).toEqual([null, 'hand']);
  });
});
