import { describe, expect, it } from 'vitest';
import { pair } from '../warnings/warned.ts';
import { anchors, beside, found, fourth } from './found.ts';
import { ALL_OUT, brood, FOUR_EGGS, lines, species, THREE_CHICKS } from './hill-finch.ts';

describe('of some of the eggs', () => {
  const machine = `${FOUR_EGGS}date: 2026-03-06, fostered: {incubator: all}\n`;

  it('warmth in an incubator is counted for those that may hatch, and for all where none may', () => {
    const warm = (told: string) => found('sitting', `${machine}${told}`, '2026-03-10', 'incubator');
    expect(warm('date: 2026-03-10, candled: {clear: e4}')).toEqual(['03-03; warm since 3 Mar']);
    expect(warm('date: 2026-03-10, candled: {clear: all}')).toEqual(['03-03…03-04; warm since 3–4 Mar']);
  });

  it('guests in a nest with eggs of its own follow the nest, guests by themselves their own days', () => {
    const brought = (log: string) =>
      beside(log, 'date: 2026-03-06, laid: 1\ndate: 2026-03-08, fostered: {HF-1: e1}');
    expect(found('eggTerm', brought(FOUR_EGGS), '2026-03-09')).toEqual(['03-03; sitting since 3 Mar']);
    const alone = brought('date: 2026-03-01, paired');
    expect(found('eggTerm', alone, '2026-03-09')).toEqual(['03-06…03-08; sat on since 6–8 Mar; HF-2/1/e1']);
    // The nest without an egg was sat on all the same.
    const none = `${FOUR_EGGS}date: 2026-03-05, lost: {eaten: all}`;
    expect(found('eggTerm', none, '2026-03-09')).toEqual(['03-03; sitting since 3 Mar']);
  });

  it('guests of another species, brought later, are candled by their own name', () => {
    const files = {
      ...species(),
      'species/dale-finch.yaml': 'species: dale finch\nscientific: Exemplum vallicola\nincubation: 13-15\n',
      'HF-1': pair('HF-1', 'hill finch', FOUR_EGGS),
      'D-1': pair(
        'D-1',
        'dale finch',
        'date: 2026-03-06, laid: 1\ndate: 2026-03-07, laid: 1\ndate: 2026-03-08, fostered: {HF-1: all}',
      ),
    };
    expect(
      anchors.lamp(brood(files, '2026-03-09')).map(({ says, profile }) => [says, profile?.species]),
    ).toEqual([
      ['sitting since 3 Mar', undefined],
      ['sat on since 8 Mar', 'dale finch'],
    ]);
  });

  it('the hatch is not looked for before the last look that still found eggs, and the line says so', () => {
    // Nobody saw when they were laid; looked at on the 20th they had not hatched.
    const log = 'date: 2026-03-10, laid: 4\ndate: 2026-03-20, checked: {eggs: 4}';
    expect(found('hatchWindow', log, '2026-03-20')).toEqual([
      '03-20…03-22; sitting since 24 Feb–9 Mar (inferred from e3), still eggs on 20 Mar',
    ]);
  });

  it('nothing is left over in a nest without eggs', () => {
    expect(found('leftOver', `${ALL_OUT}date: 2026-04-05, lost: {clear: e4}`, '2026-04-20')).toEqual([]);
  });
});

describe('of young that are not all here', () => {
  const words = 'sitting since 3 Mar; hatching was expected until 17 Mar';
  const egg = (log: string) => found('leftOver', beside(`${THREE_CHICKS}${log}`, ''), '2026-04-01');

  it('eggs were left to lie with the young until the last was taken away, whatever became of it there', () => {
    const taken = 'date: 2026-03-22, fostered: {HF-2: [c1, c2, c3]}\n';
    const until = [`03-22; ${words}, young were here until 22 Mar; HF-1/1/e4`];
    expect(egg(taken)).toEqual(until);
    expect(egg(`${taken}date: 2026-03-28, died: c1`)).toEqual(until);
    expect(egg(`${taken}date: 2026-03-28, fostered: {hand: [HF-1/1/c1, HF-1/1/c2]}`)).toEqual(until);
  });

  it('eggs are looked at in the usual days where the last of the young died on the first of them', () => {
    expect(egg('date: 2026-03-19, died: all')).toEqual([`03-19…03-21; ${words}; HF-1/1/e4`]);
    expect(egg('date: 2026-03-20, died: all')).toEqual([
      `03-20; ${words}, young were here until 20 Mar; HF-1/1/e4`,
    ]);
  });

  it('nights are told of those of a species that live', () => {
    const files = {
      ...species(),
      'species/dale-finch.yaml': 'species: dale finch\nscientific: Exemplum vallicola\nbrooding: 12-14\n',
      'HF-1': pair(
        'HF-1',
        'hill finch',
        `${fourth}date: 2026-03-18, fostered: {D-1: [c3, c4]}\ndate: 2026-03-19, died: c1`,
      ),
      'D-1': pair('D-1', 'dale finch', 'date: 2026-03-04, laid: 1, sitting\ndate: 2026-03-17, hatched: 1'),
    };
    const guests = lines(files, 'warm-nights', '2026-03-19', 14);
    expect(guests.map(({ pair: at, species: kind, who }) => [at, kind, who])).toEqual([
      ['D-1', 'dale finch', ['c1']],
      ['D-1', 'hill finch', ['HF-1/1/c3', 'HF-1/1/c4']],
      ['HF-1', 'hill finch', null],
    ]);
    const died = { ...files, 'D-1': `${files['D-1']}\n  - {date: 2026-03-19, died: HF-1/1/c3}` };
    expect(lines(died, 'warm-nights', '2026-03-19', 14).map(({ who }) => who)).toEqual([
      ['c1'],
      ['HF-1/1/c4'],
      null,
    ]);
  });

  it('once some are out, nobody is named of a brood that nobody counted', () => {
    const heard = 'date: 2026-03-01, sitting\ndate: 2026-03-15, heard\ndate: 2026-04-05, fledged: c3';
    expect(found('fledgeWindow', heard, '2026-04-05')[0]).not.toContain('HF-1/1');
  });

  it('the days of hatching are those of all that are awaited, though one look came later than another', () => {
    // e1 hatched on one of the days from the 14th to the 17th, e2 on the 16th.
    const log = `${FOUR_EGGS}date: 2026-03-16, after: 2026-03-15, hatched: e2\ndate: 2026-03-17, after: 2026-03-13, hatched: e1`;
    expect(found('fledgeWindow', log, '2026-03-20')[0]).toMatch(/; hatched 14–17 Mar$/);
  });

  it('all that were moved out of their parents’ housing are named, as it is not where the nest is', () => {
    const moved = (who: string) => `${ALL_OUT}date: 2026-04-12, moved: {${who}: cage 2}`;
    expect(found('dependents', moved('all'), '2026-04-13')).toEqual([
      '03-15; hatched 15 Mar; HF-1/1/c1 HF-1/1/c2 HF-1/1/c3',
    ]);
    expect(found('dependents', moved('c1'), '2026-04-13')).toEqual([
      '03-15; hatched 15 Mar; HF-1/1/c1',
      '03-15; hatched 15 Mar; HF-1/1/c2 HF-1/1/c3',
    ]);
  });

  it('who flew here left this nest, though it was brought to another after; who was brought there that morning did not', () => {
    const brought = (day: string) =>
      beside(
        `${THREE_CHICKS}date: 2026-04-05, fledged: [c2, c3]\ndate: ${day}, fostered: {HF-2: c1}\n`,
        'date: 2026-03-10, paired\ndate: 2026-04-03, fledged: HF-1/1/c1',
      );
    const flown = beside(
      `${THREE_CHICKS}date: 2026-04-03, fledged: c1\ndate: 2026-04-05, fledged: [c2, c3], fostered: {HF-2: c1}\n`,
      'date: 2026-03-10, paired',
    );
    expect(found('firstFledging', flown, '2026-04-06')).toEqual(['04-03; first fledged 3 Apr']);
    expect(found('firstFledging', brought('2026-04-03'), '2026-04-06')).toEqual([
      '04-05; first fledged 5 Apr',
    ]);
  });

  it('who was seen for the first time when it fed itself flew here', () => {
    expect(found('firstFledging', 'date: 2026-04-05, fledged: 2, independent: 2', '2026-04-06')).toEqual([
      '04-05; first fledged 5 Apr',
    ]);
  });
});
