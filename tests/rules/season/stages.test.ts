import { describe, expect, it } from 'vitest';
import { stageNames, stagesOf } from '../../../src/rules/season/stages.ts';
import { day } from '../../rooms.ts';
import { clutches, FOUR, waxbills } from './rooms.ts';

/** `exposure losses` of each stage, as text. */
function stages(log: string, on = '2026-07-01'): string[] {
  return stagesOf(clutches({ 'LW-1': waxbills(log) }, on), day(on))
    .filter(({ exposure, losses }) => exposure + losses > 0)
    .map(({ stage, exposure, losses }) => `${stage} ${exposure} ${losses}`);
}

const hatched = `${FOUR}\n date: 2026-03-16, hatched: all`;

describe('days of exposure', () => {
  it('of a clutch that came through', () => {
    const all = `${hatched}\n date: 2026-04-03, fledged: all\n date: 2026-04-22, independent: all`;
    expect(stages(all)).toEqual(['laying 3 0', 'sitting 12 0', 'nest 18 0', 'fledged 19 0']);
  });

  it('end half way between the last look and the one that found all lost', () => {
    expect(stages(`${FOUR}\n date: 2026-03-08, checked\n date: 2026-03-12, lost: {deserted: all}`)).toEqual([
      'laying 3 0',
      'sitting 6 1',
    ]);
    expect(stages(`${hatched}\n date: 2026-03-20, died: all`)).toEqual([
      'laying 3 0',
      'sitting 12 0',
      'nest 2 1',
    ]);
  });

  it('of a clutch lost before anybody sat', () => {
    expect(
      stages('date: 2026-03-01, laid: 1\n date: 2026-03-02, laid: 1\n date: 2026-03-03, lost: {broken: all}'),
    ).toEqual(['laying 1.5 1']);
  });

  it('of an open one end with the last look, and not for ever', () => {
    expect(stages(`${FOUR}\n date: 2026-03-10, checked`)).toEqual(['laying 3 0', 'sitting 6 0']);
    expect(stages(`${FOUR}\n date: 2026-06-20, checked`)).toEqual(['laying 3 0', 'sitting 26 0']);
  });

  it('of an open one are not watched by a look into the other nest of the pair', () => {
    const left = FOUR.replace('date: 2026-03-01,', 'date: 2026-03-01, site: left,');
    const looked = (site: string) => stages(`${left}\n date: 2026-03-10, site: ${site}, checked`);
    expect(looked('left')).toEqual(['laying 3 0', 'sitting 6 0']);
    expect(looked('right')).toEqual(['laying 3 0']);
  });

  it('a clutch that was clear throughout, or taken, was not lost', () => {
    expect(stages(`${FOUR}\n date: 2026-03-20, lost: {clear: all}`)).toEqual(['laying 3 0', 'sitting 16 0']);
    expect(stages(`${FOUR}\n date: 2026-03-10, lost: {sold: all}`)).toEqual(['laying 3 0', 'sitting 6 0']);
  });

  it('of a brood that died or left end with the last of them, and are no loss of all', () => {
    const left = `${hatched}\n date: 2026-03-20, died: c1\n date: 2026-03-25, gone: {given: [c2, c3, c4]}`;
    expect(stages(left).at(-1)).toBe('nest 9 0');
  });

  it('of fledged young that all died', () => {
    const lost = `${hatched}\n date: 2026-04-03, fledged: all\n date: 2026-04-07, after: 2026-04-06, died: {rain: all}`;
    expect(stages(lost).at(-1)).toBe('fledged 3.5 1');
  });
});

describe('survival of a stage', () => {
  it('is over the usual length of the species', () => {
    const [, sitting] = stagesOf(clutches({ 'LW-1': waxbills(hatched) }, '2026-07-01'), day('2026-07-01'));
    expect(sitting).toMatchObject({ stage: 'sitting', days: 12, daily: 1, period: 1, high: 1 });
    expect(sitting?.low).toBeCloseTo(0.025, 12);
  });

  it('of nothing has no figures', () => {
    const empty = stagesOf([], day('2026-07-01'));
    expect(empty.map(({ stage }) => stage)).toEqual([...stageNames]);
    for (const { daily, se, period, low, high, days } of empty) {
      expect([daily, se, period, low, high, days]).toEqual([null, null, null, null, null, null]);
    }
  });
});
