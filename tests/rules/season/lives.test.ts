import { describe, expect, it } from 'vitest';
import { chickLife } from '../../../src/rules/season/lives.ts';
import { day } from '../../rooms.ts';
import { clutches, FOUR, pair, waxbills } from './rooms.ts';

const hatched = `${FOUR}\n date: 2026-03-15, checked\n date: 2026-03-16, hatched: [e1, e2]`;

/** `entry left right` of the first chick. */
function life(log: string, on = '2026-07-01') {
  const foster = pair('SF-1', 'star finch', 'date: 2026-02-01, paired');
  const [clutch] = clutches({ 'LW-1': waxbills(log), 'SF-1': foster }, on);
  const [chick] = clutch?.chicks ?? [];
  const found = chick === undefined ? null : chickLife(chick, day(on));
  return found && [found.entry, found.left, found.right];
}

const NEVER = Number.POSITIVE_INFINITY;

describe('the life of a chick by age', () => {
  it('ends with its death, between the last look that found it alive and the one that missed it', () => {
    expect(life(`${hatched}\n date: 2026-03-18, checked\n date: 2026-03-19, died: c1`)).toEqual([-1, 2, 3]);
    expect(life(`${hatched}\n date: 2026-03-19, died: c1`)).toEqual([-1, 0, 3]);
    expect(life(`${hatched}\n date: 2026-03-16, died: c1`)).toEqual([-1, -1, 0]);
  });

  it('does not end before it was last seen alive, by whomever', () => {
    const grown = `${hatched}\n date: 2026-04-03, fledged: all`;
    expect(life(`${grown}\n date: 2026-04-09, died: c1`)).toEqual([-1, 18, 24]);
    expect(life(`${grown}\n date: 2026-04-08, crops: {full: c1}\n date: 2026-04-09, died: c1`)).toEqual([
      -1, 23, 24,
    ]);
  });

  it('is followed to the last look that counted it, not to today', () => {
    expect(life(`${hatched}\n date: 2026-03-20, checked: {chicks: 2}`)).toEqual([-1, 4, NEVER]);
    expect(life(`${hatched}\n date: 2026-04-03, fledged: all`)).toEqual([-1, 18, NEVER]);
  });

  it('is seen by a look of today, and by the first that ever was into its foster parents’ nest', () => {
    expect(life(`${hatched}\n date: 2026-03-20, checked`, '2026-03-20')).toEqual([-1, 4, NEVER]);
    const given = { 'LW-1': waxbills(`${hatched}\n date: 2026-03-18, fostered: {SF-1: c1}`) };
    const foster = pair('SF-1', 'star finch', 'date: 2026-02-01, paired\n date: 2026-03-25, checked');
    const [chick] = clutches({ ...given, 'SF-1': foster }, '2026-07-01')[0]?.chicks ?? [];
    expect(chick && chickLife(chick, day('2026-07-01'))?.left).toBe(9);
  });

  it('is not believed in after a look that counted fewer', () => {
    expect(
      life(`${hatched}\n date: 2026-03-18, checked: {chicks: 2}\n date: 2026-03-22, checked: {chicks: 1}`),
    ).toEqual([-1, 2, NEVER]);
  });

  it('is not watched by looks into a nest that it was taken out of', () => {
    const given = `${hatched}\n date: 2026-03-18, checked, fostered: {SF-1: c1}\n date: 2026-03-25, checked`;
    expect(life(given)).toEqual([-1, 2, NEVER]);
    expect(
      life(`${hatched}\n date: 2026-03-18, checked, fostered: {SF-1: c2}\n date: 2026-03-25, checked`),
    ).toEqual([-1, 9, NEVER]);
  });

  it('is seen by who takes a dead one out, not by who only gives food', () => {
    expect(life(`${hatched}\n date: 2026-03-20, died: c2`)).toEqual([-1, 4, NEVER]);
    expect(life(`${hatched}\n date: 2026-03-20, died: c2\n date: 2026-03-25, food: [live food]`)).toEqual([
      -1,
      4,
      NEVER,
    ]);
  });

  it('is believed in though eggs were missed, or more young than known were counted', () => {
    const looked = (first: string) =>
      `${hatched}\n date: 2026-03-18, checked: {${first}}\n date: 2026-03-22, checked`;
    expect(life(looked('eggs: 1'))).toEqual([-1, 6, NEVER]);
    expect(life(looked('chicks: 3'))).toEqual([-1, 6, NEVER]);
    expect(life(looked('chicks: 9'))).toEqual([-1, 6, NEVER]);
  });

  it('ends with a death on the last day of that age, not with one after it', () => {
    const grown = `${hatched}\n date: 2026-04-03, fledged: all`;
    // Independent at 40 days at the latest (shipped profile): 25 April.
    expect(life(`${grown}\n date: 2026-04-25, died: c1`)).toEqual([-1, 18, 40]);
    expect(life(`${grown}\n date: 2026-04-26, died: c1`)).toEqual([-1, 18, NEVER]);
  });

  it('is followed to the upper age of independence at the most', () => {
    const grown = `${hatched}\n date: 2026-04-03, fledged: all\n date: 2026-04-22, independent: all`;
    expect(life(grown)).toEqual([-1, 37, NEVER]);
    expect(life(`${grown}\n date: 2026-06-20, died: c1`)?.slice(1)).toEqual([37, NEVER]);
  });

  it('ends when it is sold, alive', () => {
    expect(life(`${hatched}\n date: 2026-04-03, fledged: all\n date: 2026-04-10, gone: {sold: c1}`)).toEqual([
      -1,
      25,
      NEVER,
    ]);
  });

  it('begins with the first sight of it', () => {
    const found = 'date: 2026-03-26, hatched: 2, aged: {6: all}\n date: 2026-03-28, checked';
    expect(life(found)).toEqual([6, 8, NEVER]);
  });

  it('is nobody’s where young were only heard', () => {
    expect(life(`${FOUR}\n date: 2026-03-16, heard`)).toBeNull();
  });
});
