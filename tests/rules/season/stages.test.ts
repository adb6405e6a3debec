import { describe, expect, it } from 'vitest';
import { stageNames, stagesOf } from '../../../src/rules/season/stages.ts';
import { day } from '../../rooms.ts';
import { clutches, FOUR, pair, waxbills } from './rooms.ts';

/** `exposure losses` of each stage, as text. */
function stages(log: string, on = '2026-07-01'): string[] {
  return stagesOf(clutches({ 'LW-1': waxbills(log) }, on), day(on))
    .filter(({ exposure, losses }) => exposure + losses !== 0)
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
    const later = 'date: 2026-03-03, lost: {broken: all}\n date: 2026-03-20, checked';
    expect(stages(`date: 2026-03-01, laid: 1\n date: 2026-03-02, laid: 1\n ${later}`)).toEqual([
      'laying 1.5 1',
    ]);
  });

  it('of a clutch of one egg that was deserted', () => {
    expect(
      stages(
        'date: 2026-03-01, laid: 1, sitting\n date: 2026-03-05, checked\n date: 2026-03-09, lost: {deserted: all}',
      ),
    ).toEqual(['sitting 6 1']);
  });

  it('of a clutch whose eggs broke before she sat, on clear ones only', () => {
    const broken = FOUR.replace('03-03, laid: 1', '03-03, laid: 1, lost: {broken: [e1, e2]}');
    expect(stages(`${broken}\n date: 2026-03-20, lost: {clear: all}`)).toEqual(['laying 1.5 1']);
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

describe('of a clutch whose members fare apart', () => {
  it('each stage ends with the first that comes to its end', () => {
    const apart = [
      FOUR,
      'date: 2026-03-16, hatched: [e1, e2]',
      'date: 2026-03-18, hatched: [e3, e4]',
      'date: 2026-04-03, fledged: c1',
      'date: 2026-04-06, fledged: [c2, c3, c4]',
      'date: 2026-04-20, independent: c1',
      'date: 2026-04-25, independent: [c2, c3, c4]',
    ].join('\n ');
    expect(stages(apart)).toEqual(['laying 3 0', 'sitting 12 0', 'nest 18 0', 'fledged 17 0']);
  });

  it('a brood is lost with its last, whichever that is', () => {
    for (const [first, last] of [
      ['[c1, c2]', '[c3, c4]'],
      ['[c3, c4]', '[c1, c2]'],
    ]) {
      const died = `${hatched}\n date: 2026-03-20, checked, died: ${first}\n date: 2026-03-24, died: ${last}`;
      // Half way from the look of the 20th to that of the 24th, six days after hatching.
      expect(stages(died).at(-1)).toBe('nest 6 1');
    }
  });

  it('a brood of which one lives is watched to the last look, and no longer', () => {
    const one = `${hatched}\n date: 2026-03-20, died: [c1, c2, c3]\n date: 2026-03-22, checked`;
    expect(stages(one).at(-1)).toBe('nest 6 0');
    expect(stages(one, '2026-03-22').at(-1)).toBe('nest 6 0');
  });

  it('eggs are lost together with the last that had lived', () => {
    const first = `${FOUR}\n date: 2026-03-08, lost: {broken: e4}\n date: 2026-03-10, checked`;
    expect(stages(`${first}\n date: 2026-03-12, lost: {deserted: [e1, e2, e3]}`)).toEqual([
      'laying 3 0',
      'sitting 7 1',
    ]);
    const other = first.replace('e4', 'e1');
    expect(stages(`${other}\n date: 2026-03-12, lost: {deserted: [e2, e3, e4]}`).at(-1)).toBe('sitting 7 1');
    const clear = `${FOUR}\n date: 2026-03-10, checked\n date: 2026-03-12, lost: {deserted: [e1, e2, e3]}`;
    expect(stages(`${clear}\n date: 2026-03-20, lost: {clear: e4}`).at(-1)).toBe('sitting 7 1');
    expect(stages(`${clear}\n date: 2026-03-20, lost: {undeveloped: e4}`).at(-1)).toBe('sitting 7 1');
  });

  it('eggs are not lost together while one is open, or where one hatched', () => {
    expect(
      stages(`${FOUR}\n date: 2026-03-08, lost: {broken: [e1, e2]}\n date: 2026-03-11, checked`),
    ).toEqual(['laying 3 0', 'sitting 7 0']);
    expect(
      stages(
        `${FOUR}\n date: 2026-03-16, hatched: e1\n date: 2026-03-18, lost: {dead-in-shell: [e2, e3, e4]}`,
      ),
    ).toEqual(['laying 3 0', 'sitting 12 0', 'nest 2 0']);
  });

  it('eggs that were clear throughout are sat on until the last is taken out', () => {
    const clear = `${FOUR}\n date: 2026-03-14, lost: {clear: [e3, e4]}\n date: 2026-03-18, lost: {undeveloped: [e1, e2]}`;
    expect(stages(clear)).toEqual(['laying 3 0', 'sitting 14 0']);
    // However often the empty nest is looked into after it.
    expect(stages(`${clear}\n date: 2026-03-24, checked`)).toEqual(['laying 3 0', 'sitting 14 0']);
    const taken =
      'date: 2026-03-01, laid: 1\n date: 2026-03-02, lost: {sold: all}\n date: 2026-03-10, checked';
    expect(stages(taken)).toEqual(['laying 1 0']);
  });

  it('eggs lost on the day on which she began to sit were lost to sitting, not to laying', () => {
    expect(stages(`${FOUR}\n date: 2026-03-04, lost: {broken: all}`)).toEqual(['laying 3 0', 'sitting 0 1']);
  });
});

describe('of what nobody counted', () => {
  it('no laying is known, only the sitting', () => {
    const unseen = 'date: 2026-03-01, sitting\n date: 2026-03-08, checked';
    expect(stages(unseen).filter((stage) => stage.startsWith('laying'))).toEqual([]);
    expect(
      stages('date: 2026-03-01, laid: 2+\n date: 2026-03-04, sitting\n date: 2026-03-08, checked'),
    ).toEqual(['sitting 4 0']);
  });

  it('no stay in the nest is known where the young were only heard', () => {
    const heard = `${FOUR}\n date: 2026-03-16, heard\n date: 2026-03-20, checked`;
    expect(stages(heard).filter((stage) => stage.startsWith('nest'))).toEqual([]);
  });
});

describe('the usual days of a stage', () => {
  /** Of a species with this profile, whose clutch came through all stages. */
  function usual(profile: string) {
    const log = `${hatched}\n date: 2026-04-03, fledged: all\n date: 2026-04-22, independent: all`;
    const files = {
      'species/own.yaml': `species: moonfinch\n${profile}\n`,
      P: pair('P', 'moonfinch', log),
    };
    return Object.fromEntries(
      stagesOf(clutches(files, '2026-07-01'), day('2026-07-01')).map(({ stage, days }) => [stage, days]),
    );
  }

  it('are the middles of the profile’s ranges', () => {
    expect(usual('incubation: 12-14\nfledging: 18-22\nindependence: 36-44')).toMatchObject({
      sitting: 13,
      nest: 20,
      fledged: 20,
    });
  });

  it('of laying run from the first egg to the one from which the species sits', () => {
    const laying = (profile: string) => usual(`laying-interval: 2\n${profile}`).laying;
    expect(laying('clutch: 4-6\nsitting-from: 3-4')).toBe(5);
    expect(laying('clutch: 4-6\nsitting-from: last')).toBe(8);
    expect(laying('clutch: 4-6')).toBe(8);
    expect(laying('sitting-from: 1')).toBe(1);
    // Four eggs where the profile says nothing: three intervals.
    expect(laying('incubation: 12-14')).toBe(6);
  });

  it('after the nest are 18 where the profile does not say, and one at the least', () => {
    expect(usual('fledging: 18-22').fledged).toBe(18);
    expect(usual('fledging: 20\nindependence: 20').fledged).toBe(1);
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
