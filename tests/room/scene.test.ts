import { describe, expect, it } from 'vitest';
import type { Span } from '../../src/days.ts';
import { room } from '../rooms.ts';
import { birdIn, clutchIn, days, eggIn, pairIn, waxbills } from './facts.ts';

const at = (log: string, on = '2026-04-20') => room({ P: waxbills(log) }, on);
const laid = 'date: 2026-03-01, laid: 1\ndate: 2026-03-05, laid: 4, sitting';
const hatched = (log: string) => {
  const { fate } = eggIn(at(`${laid}\n${log}`), 'LW-1/1/e1');
  return days((fate as { span: Span }).span);
};

describe('what an entry reports happened', () => {
  it('after the last look of an earlier day, and by its date', () => {
    expect(hatched('date: 2026-03-14, checked\ndate: 2026-03-18, hatched: e1')).toBe('03-15…03-18');
  });

  it('since the last look whatever was only heard or seen from outside in between', () => {
    const outside = 'date: 2026-03-16, sitting: hen\ndate: 2026-03-17, food: [egg food], feeding: {cock: 0}';
    expect(hatched(`date: 2026-03-14, checked\n${outside}\ndate: 2026-03-18, hatched: e1`)).toBe(
      '03-15…03-18',
    );
  });

  it('on the day itself where the nest was seen the day before', () => {
    expect(hatched('date: 2026-03-17, checked\ndate: 2026-03-18, hatched: e1')).toBe('03-18');
  });

  it('two looks of one day do not bound each other', () => {
    const twice = 'date: 2026-03-18, time: 07:00, checked\ndate: 2026-03-18, time: 18:00, hatched: e1';
    expect(hatched(`date: 2026-03-14, checked\n${twice}`)).toBe('03-15…03-18');
  });

  it('after the time that the entry gives, instead of the last look', () => {
    const looked = 'date: 2026-03-14, checked';
    expect(hatched(`${looked}\ndate: 2026-03-18, after: 2026-03-16, hatched: e1`)).toBe('03-17…03-18');
    // From seven in the morning of the 16th on: the 16th itself is possible.
    expect(hatched(`${looked}\ndate: 2026-03-18, after: 2026-03-16 07:00, hatched: e1`)).toBe('03-16…03-18');
  });

  it('after a weighing of chicks, for then somebody looked; not after one of the parents', () => {
    const died = (weighed: string) => {
      const log = `${laid}\ndate: 2026-03-18, hatched: 2\ndate: 2026-03-22, weighed: {${weighed}}
        date: 2026-03-24, died: c1`;
      const known = room({ P: waxbills(log, 'hen: LW-20-11') }, '2026-03-24');
      return days((birdIn(known, 'LW-1/1/c1').fate as { span: Span }).span);
    };
    expect(died('c2: 4.1')).toBe('03-23…03-24');
    expect(died('hen: 8.6')).toBe('03-19…03-24');
  });

  it.each([
    ['unwell: {c1: fluffed}', '03-22…03-24'],
    ['treated: {c1: kept warm}', '03-22…03-24'],
    ['feeding: {cock: c1}', '03-22…03-24'],
    ['unwell: {c2: fluffed}', '03-19…03-24'],
    ['unwell: {c1: fluffed}\ndate: 2026-03-23, unwell: {c1: lies on its side}', '03-23…03-24'],
  ])('not before it was last seen alive by itself, though nobody looked into the nest: %s', (seen, span) => {
    const log = `${laid}\ndate: 2026-03-18, hatched: 2\ndate: 2026-03-22, ${seen}\ndate: 2026-03-24, died: c1`;
    const known = room({ P: waxbills(log, 'cock: LW-19-04') }, '2026-03-24');
    expect(days((birdIn(known, 'LW-1/1/c1').fate as { span: Span }).span)).toBe(span);
  });
});

describe('two nests of one pair', () => {
  it('each have looks of their own: one seen yesterday says nothing of the other', () => {
    const log = `
      date: 2026-03-01, site: left, laid: 1
      date: 2026-03-05, site: left, laid: 4, sitting
      date: 2026-03-17, site: right, checked
      date: 2026-03-18, site: left, hatched: e1
    `;
    const span = (eggIn(at(log), 'LW-1/1/e1').fate as { span: Span }).span;
    expect(days(span)).toBe('03-07…03-18');
  });

  it('a look without a site was a look at both', () => {
    const log = `
      date: 2026-03-05, site: left, laid: 1
      date: 2026-03-17, checked
      date: 2026-03-18, site: left, hatched: e1
    `;
    expect(days((eggIn(at(log), 'LW-1/1/e1').fate as { span: Span }).span)).toBe('03-18');
  });

  it('a clutch of which nobody said where is that of either nest', () => {
    const log = (first: string, second: string) =>
      `date: 2026-03-01, ${first}laid: 1\ndate: 2026-03-03, ${second}laid: 1`;
    const sizes = (text: string) => pairIn(at(text), 'LW-1').clutches.map(({ eggs }) => eggs.length);
    expect(sizes(log('', 'site: right, '))).toEqual([2]);
    expect(sizes(log('site: left, ', ''))).toEqual([2]);
    expect(sizes(log('site: left, ', 'site: left, '))).toEqual([2]);
    expect(sizes(log('site: left, ', 'site: right, '))).toEqual([1, 1]);
    expect(sizes(log('', 'clutch: 2, '))).toEqual([1, 1]);
    expect(sizes(log('', 'clutch: 1, '))).toEqual([2]);
  });

  describe('that is named is the one that is meant', () => {
    const both = `
      date: 2026-03-01, site: left, laid: 1
      date: 2026-03-04, site: left, laid: 3, sitting
      date: 2026-03-05, site: right, laid: 1
      date: 2026-03-08, site: right, laid: 3
    `;
    const clutches = (log: string) => pairIn(at(both + log), 'LW-1').clutches;
    const doubts = (log: string) => at(both + log).findings.map(({ code }) => code);

    it('by who sits on it', () => {
      const sat = (log: string) => clutches(log).map(({ sittings }) => sittings.length);
      expect(sat('date: 2026-03-09, site: left, sitting')).toEqual([2, 0]);
      expect(sat('date: 2026-03-09, site: right, sitting')).toEqual([1, 1]);
      // In a third nest it is a clutch that nobody saw laid.
      expect(sat('date: 2026-03-09, site: top, sitting')).toEqual([1, 0, 1]);
    });

    it('by the lamp, a loss and a count', () => {
      const lamps = (log: string) => clutches(log).map(({ eggs }) => eggs.flatMap(({ lamp }) => lamp).length);
      expect(lamps('date: 2026-03-10, site: right, candled: {fertile: 2}')).toEqual([0, 2]);
      expect(lamps('date: 2026-03-10, site: left, candled: {fertile: all}')).toEqual([4, 0]);
      const left = (log: string) =>
        clutches(log).map(({ eggs }) => eggs.filter(({ fate }) => fate === null).length);
      expect(left('date: 2026-03-10, site: right, lost: {broken: 1}')).toEqual([4, 3]);
      expect(doubts('date: 2026-03-10, site: right, lost: {broken: 1}')).toEqual([]);
      expect(doubts('date: 2026-03-10, site: right, checked: {eggs: 4}')).toEqual([]);
      expect(doubts('date: 2026-03-10, clutch: 2, checked: {eggs: 4}')).toEqual([]);
      expect(doubts('date: 2026-03-10, checked: {eggs: 8}')).toEqual([]);
      expect(left('date: 2026-03-10, site: right, checked: {eggs: 5}')).toEqual([4, 5]);
      expect(doubts('date: 2026-03-10, site: right, lost: e1')).toEqual([]);
      expect(left('date: 2026-03-10, site: left, lost: e1')).toEqual([3, 4]);
    });

    it('by what hatches, is heard or is told old', () => {
      const hatched = (log: string) => clutches(log).map(({ chicks }) => chicks.length);
      expect(hatched('date: 2026-03-20, site: right, hatched: 2')).toEqual([0, 2]);
      expect(hatched('date: 2026-03-20, site: right, heard')).toEqual([0, 1]);
      // One was heard on the right: the two that are counted on the left are others.
      const heard = 'date: 2026-03-18, site: right, heard\n';
      expect(hatched(`${heard}date: 2026-03-18, site: left, hatched: 2`)).toEqual([2, 1]);
      expect(hatched(`${heard}date: 2026-03-18, clutch: 1, hatched: 2`)).toEqual([2, 1]);
      expect(hatched(`${heard}date: 2026-03-19, site: left, heard`)).toEqual([1, 1]);
      expect(hatched(`${heard}date: 2026-03-19, site: left, checked: {chicks: 3}`)).toEqual([3, 1]);
      expect(hatched(`${heard}date: 2026-03-19, site: right, checked: {chicks: 3}`)).toEqual([0, 3]);
      const aged = clutches(`${heard}date: 2026-03-19, site: left, aged: {12: all}`).map(({ eggs }) =>
        eggs.filter((egg) => egg.aged !== null),
      );
      expect(aged.map(({ length }) => length)).toEqual([4, 0]);
    });

    it('by a brood that is found in it, whatever lies in the other', () => {
      const chicks = (log: string) =>
        pairIn(
          at(`date: 2026-03-01, site: left, laid: 1\ndate: 2026-03-02, site: left, laid: 1\n${log}`),
          'LW-1',
        ).clutches.map((clutch) => clutch.chicks.length);
      expect(chicks('date: 2026-03-06, site: right, hatched: 2')).toEqual([0, 2]);
      expect(chicks('date: 2026-03-06, site: right, checked: {chicks: 2}')).toEqual([0, 2]);
      expect(
        chicks('date: 2026-03-16, site: left, hatched: 2\ndate: 2026-03-18, site: right, fledged: 2'),
      ).toEqual([2, 2]);
      expect(chicks('date: 2026-03-06, site: left, hatched: 2')).toEqual([0]);
    });

    it('by a task that is left out, and by a nest that is taken down', () => {
      const skipped = clutches('date: 2026-03-09, site: left, skip: candle').map(
        ({ skipped }) => skipped.length,
      );
      expect(skipped).toEqual([1, 0]);
      const down = pairIn(at(`${both}date: 2026-03-09, clutch: 2, nest: removed`), 'LW-1').nestStates;
      expect(down.map(({ site }) => site)).toEqual(['right']);
    });
  });

  it('hold two clutches at a time', () => {
    const log = `
      date: 2026-03-01, site: left, laid: 1
      date: 2026-03-03, site: right, laid: 1
      date: 2026-03-04, site: left, laid: 2
    `;
    const known = at(log);
    expect(['LW-1/1', 'LW-1/2'].map((name) => clutchIn(known, name).eggs.length)).toEqual([3, 1]);
    expect(['LW-1/1', 'LW-1/2'].map((name) => clutchIn(known, name).site)).toEqual(['left', 'right']);
  });
});
