import { describe, expect, it } from 'vitest';
import { agenda } from '../../rooms.ts';
import { line, pair, spell } from './warned.ts';

// One dead chick does not empty a nest that nobody has counted: most broods are of several (common practice).

const hidden = `
  date: 2026-03-22, sitting: hen
  date: 2026-04-07, heard: begging
  date: 2026-04-20, died: 1`;
const parrotfinches = (more = '') => ({
  P: pair('A-1', 'blue-faced parrotfinch', `${hidden}\n${more}`, 'nest-looks: never'),
});
const stands = (more = '') => spell(parrotfinches(more), 'others-there', '2026-04-18', '2026-05-05');

describe('a death in a nest that nobody counted', () => {
  it('says that others may be there, for four days', () => {
    expect(stands()).toEqual(['04-20 … 04-24 watch']);
    expect(line(parrotfinches(), 'others-there', '2026-04-21').text).toBe(
      'A chick died on 20 Apr in a nest nobody ever counted: others may be there. Their food goes on until somebody knows better.',
    );
  });

  it('ends when they are heard, seen fed or counted, or all died', () => {
    expect(stands('date: 2026-04-22, heard: begging')).toEqual(['04-20 … 04-21 watch']);
    expect(stands('date: 2026-04-22, feeding: {cock: all}')).toEqual(['04-20 … 04-21 watch']);
    expect(stands('date: 2026-04-22, checked: {chicks: 2}')).toEqual(['04-20 … 04-21 watch']);
    expect(stands('date: 2026-04-22, fledged: 2')).toEqual(['04-20 … 04-21 watch']);
    expect(stands('date: 2026-04-22, died: all')).toEqual(['04-20 … 04-21 watch']);
  });

  it('ends also when a crop was looked at', () => {
    expect(stands('date: 2026-04-22, crops: {full: 1}')).toEqual(['04-20 … 04-21 watch']);
  });

  it('goes on whatever was heard on the day of the death, and whatever else was seen since', () => {
    expect(stands('date: 2026-04-20, heard: begging')).toEqual(['04-20 … 04-24 watch']);
    expect(stands('date: 2026-04-22, courting')).toEqual(['04-20 … 04-24 watch']);
  });

  it('is counted from the last that died', () => {
    expect(stands('date: 2026-04-22, died: 1')).toEqual(['04-20 … 04-26 watch']);
  });

  it('is not said of a brood that was counted', () => {
    const counted = pair(
      'A-1',
      'blue-faced parrotfinch',
      `${hidden}`.replace('heard: begging', 'hatched: 3'),
    );
    expect(spell({ P: counted }, 'others-there', '2026-04-18', '2026-05-05')).toEqual([]);
  });

  it('leaves the fledging of the others to be expected, until fourteen days after its time', () => {
    const tasks = (on: string) => agenda(parrotfinches(), on).map(({ task }) => task);
    expect(tasks('2026-04-22')).toContain('fledge');
    expect(tasks('2026-05-10')).toContain('fledge');
    expect(tasks('2026-05-20')).not.toContain('fledge');
  });
});
