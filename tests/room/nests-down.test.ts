import { describe, expect, it } from 'vitest';
import { kindOf } from '../../src/findings/codes.ts';
import { room } from '../rooms.ts';
import { journal, pairIn, until, waxbills } from './facts.ts';

const { eggs, chicks, fledglings } = until;

/** What is doubtful where these lines follow a clutch. */
function doubts(...lines: string[]): string[] {
  const known = room(
    { P: waxbills(lines.join('\n')), Q: journal('BF-1', 'bengalese finch', '') },
    '2026-07-01',
  );
  return known.findings.map((finding) => kindOf(finding).text(finding.args));
}
const removed = 'date: 2026-03-10, nest: removed';
const over = (what: string, state = 'removed') =>
  `the nest of LW-1 was ${state} with ${what} in it, as far as the journal knows`;

describe('a nest that comes down', () => {
  it('over eggs or nestlings is asked about', () => {
    expect(doubts(eggs, removed)).toEqual([over('4 eggs')]);
    expect(doubts(chicks, 'date: 2026-03-20, nest: cleaned')).toEqual([
      over('1 egg and 3 chicks', 'cleaned'),
    ]);
  });

  it('with an end for every egg on the same day is in order, wherever that stands', () => {
    expect(doubts(eggs, 'date: 2026-03-10, nest: removed, lost: {deserted: all}')).toEqual([]);
    expect(doubts(eggs, removed, 'date: 2026-03-10, lost: {removed: all}')).toEqual([]);
    expect(doubts(eggs, removed, 'date: 2026-03-10, pulled: all')).toEqual([]);
    expect(doubts(eggs, removed, 'date: 2026-03-10, fostered: {BF-1: all}')).toEqual([]);
    expect(doubts(eggs, removed, 'date: 2026-03-10, lost: {broken: [e1, e2, e3]}')).toEqual([over('1 egg')]);
  });

  it('whose eggs are found gone at the next look may have been empty', () => {
    expect(doubts(eggs, removed, 'date: 2026-03-11, lost: {missing: all}')).toEqual([]);
    expect(doubts(eggs, 'date: 2026-03-10, checked, nest: removed', 'date: 2026-03-11, lost: all')).toEqual([
      over('4 eggs'),
    ]);
  });

  it('whose chicks are found dead at the next look, or had flown by then, may have been empty', () => {
    const down = 'date: 2026-03-24, nest: removed';
    expect(doubts(chicks, down, 'date: 2026-03-25, died: all, lost: {clear: all}')).toEqual([]);
    expect(doubts(chicks, down, 'date: 2026-03-24, died: {chilled: all}, lost: {clear: all}')).toEqual([]);
    expect(doubts(chicks, down, 'date: 2026-03-24, checked', 'date: 2026-03-26, died: all')).toEqual([
      over('1 egg and 3 chicks'),
    ]);
    const late = 'date: 2026-04-06, nest: removed';
    expect(doubts(chicks, late, 'date: 2026-04-08, after: 2026-04-04, fledged: all')).toEqual([]);
    expect(doubts(chicks, late, 'date: 2026-04-08, after: 2026-04-06, fledged: all')).toEqual([
      over('3 chicks'),
    ]);
  });

  it('over chicks that another pair has by then is in order, over those that came back is not', () => {
    const given = 'date: 2026-03-20, fostered: {BF-1: [c1, c2, c3]}, lost: {clear: all}';
    expect(doubts(chicks, given, 'date: 2026-03-22, nest: removed')).toEqual([]);
    expect(doubts(chicks, 'date: 2026-03-22, nest: removed', given.replace('03-20', '03-22'))).toEqual([]);
    expect(doubts(eggs, removed, 'date: 2026-03-15, fostered: {BF-1: all}')).toEqual([over('4 eggs')]);
    const cleaned = 'date: 2026-03-19, nest: cleaned';
    expect(doubts(chicks, cleaned, given)).toEqual([over('3 chicks', 'cleaned')]);
    const sold = 'date: 2026-03-22, gone: {given: [c1, c2, c3]}, lost: {clear: all}';
    expect(doubts(chicks, 'date: 2026-03-22, nest: removed', sold)).toEqual([]);
  });

  it('over guests that lie in it by themselves is asked about', () => {
    const foster = (log: string) => ({
      P: waxbills(`${eggs}\ndate: 2026-03-07, fostered: {BF-1: all}`),
      Q: journal('BF-1', 'bengalese finch', log),
    });
    const said = (log: string) =>
      room(foster(log), '2026-03-30').findings.map((finding) => kindOf(finding).text(finding.args));
    const text = 'the nest of BF-1 was removed with 4 eggs in it, as far as the journal knows';
    expect(said('date: 2026-03-10, nest: removed')).toEqual([text]);
    expect(said('date: 2026-03-10, nest: {state: removed, site: gorse}')).toEqual([text]);
    // The nest was gone by then: those that are lost lie in the next one.
    const again = 'date: 2026-03-12, laid: 2, sitting\ndate: 2026-03-20, lost: {deserted: all}';
    const stood = room(foster(`date: 2026-03-10, nest: removed\n${again}`), '2026-03-30');
    expect(pairIn(stood, 'LW-1').clutches[0]?.eggs.filter(({ fate }) => fate !== null)).toEqual([]);
    expect(pairIn(stood, 'BF-1').clutches[0]?.eggs.filter(({ fate }) => fate !== null)).toHaveLength(2);
  });

  it('over eggs out of which chicks came on that day is asked about, unless these went elsewhere', () => {
    const hatched = 'date: 2026-03-18, hatched: 4, nest: removed';
    expect(doubts(eggs, hatched)).toEqual([over('4 eggs')]);
    expect(doubts(eggs, `${hatched}, fostered: {BF-1: all}`)).toEqual([]);
    expect(doubts(eggs, hatched, 'date: 2026-03-18, died: all')).toEqual([]);
  });

  it('behind the young that left it is in order, with the eggs that they left over', () => {
    expect(doubts(fledglings, 'date: 2026-04-12, nest: removed')).toEqual([]);
    expect(doubts(chicks, 'date: 2026-04-06, nest: removed, fledged: all')).toEqual([]);
  });

  it('takes an egg left over with it: all that is lost later lies in the nest of today', () => {
    const again = 'date: 2026-05-01, clutch: 2, laid: 3, sitting\ndate: 2026-05-10, candled: {clear: all}';
    const ends = (more: string) => {
      const known = room({ P: waxbills(`${fledglings}\n${more}`) }, '2026-07-01');
      return pairIn(known, 'LW-1').clutches.map(
        (clutch) => clutch.eggs.filter(({ fate }) => fate?.kind === 'lost').length,
      );
    };
    const down = 'date: 2026-04-20, nest: removed\n';
    expect(ends(`${down}${again}\ndate: 2026-05-20, lost: {clear: all}`)).toEqual([0, 3]);
    expect(ends(`${down}${again}\ndate: 2026-05-20, lost: {clear: 1}`)).toEqual([0, 1]);
    // Where that nest was left in place, the old egg lies there still; told by itself, it is the one that is meant.
    expect(ends(`${again}\ndate: 2026-05-20, lost: {clear: all}`)).toEqual([1, 3]);
    expect(ends(`${down}date: 2026-04-21, lost: {clear: all}`)).toEqual([1]);
    // Nobody on it says nothing; somebody who sits on it says that it lies in a nest.
    const seen = (by: string) =>
      ends(
        `${down}date: 2026-04-22, clutch: 1, sitting: ${by}\n${again}\ndate: 2026-05-20, lost: {clear: all}`,
      );
    expect(seen('off')).toEqual([0, 3]);
    expect(seen('hen')).toEqual([1, 3]);
  });

  it('and is put back takes no egg along: all are those that lie in it', () => {
    const lost = (...more: string[]) => {
      const known = room({ P: waxbills([eggs, ...more].join('\n')) }, '2026-07-01');
      return pairIn(known, 'LW-1').clutches.map((clutch) =>
        clutch.eggs.map(({ fate }) => (fate?.kind === 'lost' ? 'lost' : 'open')).join(' '),
      );
    };
    const cleaned = 'date: 2026-03-06, nest: cleaned, checked: {eggs: 4}';
    expect(lost(cleaned, 'date: 2026-03-20, lost: {deserted: all}')).toEqual(['lost lost lost lost']);
    expect(lost(cleaned, 'date: 2026-03-07, laid: 1', 'date: 2026-03-20, lost: {deserted: all}')).toEqual([
      'lost lost lost lost lost',
    ]);
    // What was taken to the incubator before is no clutch of a newer nest.
    const warmed = 'date: 2026-03-07, set: {incubator: e4}';
    expect(lost(cleaned, warmed, 'date: 2026-03-20, lost: {chilled: all}')).toEqual(['lost lost lost lost']);
  });

  it('over eggs that hatch afterwards is asked about', () => {
    expect(doubts(eggs, 'date: 2026-03-17, nest: cleaned', 'date: 2026-03-18, hatched: 4')).toEqual([
      over('4 eggs', 'cleaned'),
    ]);
  });

  it('leaves the eggs that a look of that day, or into the other nest, has to count', () => {
    const differ = '3 eggs seen, 4 known in the nest of LW-1';
    expect(doubts(eggs, 'date: 2026-03-06, nest: cleaned, checked: {eggs: 3}')).toContain(differ);
    const gorse = 'date: 2026-03-05, site: gorse, laid: 4, sitting';
    const other = 'date: 2026-03-10, nest: {state: removed, site: basket}';
    expect(doubts(gorse, other, 'date: 2026-03-11, site: gorse, checked: {eggs: 3}')).toContain(differ);
  });

  it('may be the other of two', () => {
    const gorse = 'date: 2026-03-05, site: gorse, laid: 4, sitting';
    expect(doubts(gorse, 'date: 2026-03-10, nest: {state: removed, site: basket}')).toEqual([]);
    expect(doubts(gorse, 'date: 2026-03-10, site: basket, nest: cleaned')).toEqual([]);
    expect(doubts(gorse, 'date: 2026-03-10, site: gorse, nest: removed')).toEqual([over('4 eggs')]);
    expect(doubts(gorse, removed)).toEqual([over('4 eggs')]);
  });

  it('is no doubt while it is built or lined', () => {
    expect(doubts(eggs, 'date: 2026-03-10, nest: lined')).toEqual([]);
  });
});
