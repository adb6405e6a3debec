import { describe, expect, it } from 'vitest';
import { line, pair, spell, waxbills } from './warned.ts';

// Lavender waxbills leave the nest at 17–21 d (from memory): hatched on 14 March, until 4 April.
const brood = 'date: 2026-03-01, laid: 4\n date: 2026-03-13, checked\n date: 2026-03-14, hatched: 4';
const days = (log: string) =>
  spell({ 'LW-1': waxbills(`${brood}\n ${log}`) }, 'never-seen-out', '2026-03-20', '2026-06-30');

describe('a chick that was never seen out of the nest', () => {
  const three = 'date: 2026-04-03, fledged: [c1, c2, c3]';

  it('is asked about once, three days after the others, for four days', () => {
    expect(days(three)).toEqual(['04-06 … 04-09 watch']);
    expect(line({ 'LW-1': waxbills(`${brood}\n ${three}`) }, 'never-seen-out', '2026-04-06')).toEqual({
      level: 'watch',
      text: 'c4 was never seen out of the nest; 3 others left it, the last on 3 Apr.',
      check:
        'is it still in there, weak or held by a thread? Then an avian vet. Else write what became of it: `fledged`, or `died: {missing: …}`',
    });
  });

  it('is given its usual time first, when the others left early', () => {
    expect(days('date: 2026-03-31, fledged: [c1, c2, c3]')).toEqual(['04-05 … 04-08 watch']);
  });

  it('is counted from the last of the others, and a look on the day on which that left tells nothing', () => {
    const left = 'date: 2026-04-02, fledged: [c1, c2]\n date: 2026-04-04, checked, fledged: c3';
    expect(days(left)).toEqual(['04-07 … 04-10 watch']);
    expect(days(`${left}, weighed: {c4: 7.5}`)).toEqual(['04-07 … 04-10 watch']);
    expect(days(`${left}\n date: 2026-04-05, courting`)).toEqual(['04-07 … 04-10 watch']);
  });

  it('is nothing of which anybody knows, where nobody knows when its kind leaves the nest', () => {
    const log = `${brood}\n ${three}`;
    const unknown = spell(
      { 'RF-1': pair('RF-1', 'ridge finch', log) },
      'never-seen-out',
      '2026-04-01',
      '2026-05-01',
    );
    expect(unknown).toEqual([]);
    const untold = {
      'species/ridge-finch.yaml': 'species: ridge finch\nclutch: 4-5\nincubation: 11-13\n',
      'RF-1': pair('RF-1', 'ridge finch', log),
    };
    expect(spell(untold, 'never-seen-out', '2026-04-01', '2026-05-01')).toEqual([]);
  });

  it('is not, where they are reared by hand, in no nest', () => {
    expect(days(`date: 2026-03-20, fostered: {hand: all}\n ${three}`)).toEqual([]);
  });

  it('is named with the others that were not seen out', () => {
    const room = { 'LW-1': waxbills(`${brood}\n date: 2026-04-03, fledged: c1`) };
    expect(line(room, 'never-seen-out', '2026-04-06')).toMatchObject({
      text: 'c2, c3 and c4 were never seen out of the nest; 1 other left it, the last on 3 Apr.',
      check:
        'is anybody still in there, weak or held by a thread? Then an avian vet. Else write what became of them: `fledged`, or `died: {missing: …}`',
    });
  });

  it.each([
    ['left with the last', 'date: 2026-04-05, fledged: c4'],
    ['died', 'date: 2026-04-05, died: {missing: c4}'],
    ['was seen fed since', 'date: 2026-04-05, feeding: {cock: c4}'],
    ['was weighed since', 'date: 2026-04-05, weighed: {c4: 7.5}'],
    ['had its crop looked at since', 'date: 2026-04-05, crops: {full: c4}'],
    ['was there at a look', 'date: 2026-04-05, checked: {chicks: 1}'],
  ])('is not, where it %s', (_what, then) => {
    expect(days(`${three}\n ${then}`)).toEqual([]);
  });

  it('is not, where nobody wrote of any that it left: the task of the whole brood asks', () => {
    expect(days('')).toEqual([]);
  });

  it('is not, where only some were heard and nobody counted them', () => {
    const heard = 'date: 2026-03-01, sitting\n date: 2026-03-14, heard\n date: 2026-04-03, fledged: 2';
    expect(spell({ 'LW-1': waxbills(heard) }, 'never-seen-out', '2026-03-20', '2026-06-30')).toEqual([]);
  });
});
