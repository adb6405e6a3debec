import { describe, expect, it } from 'vitest';
import { inOrder } from '../../src/room/sightings.ts';
import { day, type Files, record, room } from '../rooms.ts';
import { clutchIn, codes, fates, journal, pairIn, waxbills } from './facts.ts';

// A day on which eggs or young go from nest to nest: what each pair's journal says of it, as one story.

const four = 'date: 2026-03-04, laid: 4, sitting';
const finches = (log: string, id = 'BF-1') => journal(id, 'bengalese finch', log);
const own = 'date: 2026-03-03, laid: 3, sitting';

/** What was seen on the sixth, in order: `LW-1 fostered`. */
function told(files: Files): string[] {
  const { pairs } = record(files, '2026-03-06');
  return [...inOrder(pairs, [], day('2026-03-06'))].flatMap((sighting) =>
    sighting.of === 'pair' && sighting.entry.date === day('2026-03-06')
      ? [`${sighting.journal.pair.text} ${sighting.observation.key}`]
      : [],
  );
}

/** How many eggs lie in the nest of a pair on the sixth, and how many clutches it has itself. */
function nest(files: Files, id: string): { eggs: number; clutches: number; findings: string[] } {
  const known = room(files, '2026-03-06');
  const { here, clutches } = pairIn(known, id);
  return { eggs: here.eggs.size, clutches: clutches.length, findings: codes(known) };
}

const BROUGHT = { eggs: 4, clutches: 0, findings: [] };

describe('foster parents that are given eggs', () => {
  it('and are seen sitting that day sit on these: they have no egg that nobody wrote', () => {
    for (const way of ['fostered', 'set'])
      expect(
        nest(
          {
            P: waxbills(`${four}\ndate: 2026-03-06, sitting: off, ${way}: {BF-1: all}`),
            Q: finches('date: 2026-03-06, sitting, checked: {eggs: 4}'),
          },
          'BF-1',
        ),
      ).toEqual(BROUGHT);
  });

  it('had them before a visit of which nobody wrote the time, whenever they came', () => {
    const files = (sat: string) => ({
      P: waxbills(`${four}\ndate: 2026-03-06, time: 09:00, fostered: {BF-1: all}`),
      Q: finches(`date: 2026-03-06, ${sat}sitting, checked: {eggs: 4}`),
    });
    expect(nest(files(''), 'BF-1')).toEqual(BROUGHT);
    expect(nest(files('time: 18:00, '), 'BF-1')).toEqual(BROUGHT);
    // Sat on before they came: on something else.
    expect(nest(files('time: 07:00, '), 'BF-1')).toMatchObject({ clutches: 1 });
  });

  it('from a third pair to which they came that day have them all the same, whatever their names', () => {
    const through = (first: string, second: string, third: string) => {
      const files = {
        P: journal(first, 'lavender waxbill', `${four}\ndate: 2026-03-06, fostered: {${second}: all}`),
        Q: finches(`date: 2026-03-06, time: 10:00, fostered: {${third}: all}`, second),
        R: finches('date: 2026-03-06, sitting, candled: {fertile: 3, clear: 1}', third),
      };
      return nest(files, third);
    };
    expect(through('A', 'B', 'C')).toEqual(BROUGHT);
    expect(through('C', 'B', 'A')).toEqual(BROUGHT);
  });

  it('by two pairs, one of which had hers of a third that day, have all of them before they are seen', () => {
    const files = {
      P: waxbills(`${four}\ndate: 2026-03-06, time: 10:00, fostered: {BF-1: 2}`),
      Q: finches('date: 2026-03-06, sitting, candled: {fertile: 3}'),
      R: finches(`${own}\ndate: 2026-03-06, fostered: {BF-3: 1}`, 'BF-2'),
      S: finches('date: 2026-03-06, fostered: {BF-1: 1}', 'BF-3'),
    };
    expect(nest(files, 'BF-1')).toEqual({ eggs: 3, clutches: 0, findings: [] });
  });

  it('had laid their own that day before the look at eight, whatever was brought at ten', () => {
    const files = {
      P: waxbills(`${four}\ndate: 2026-03-06, time: 10:00, fostered: {BF-1: 1}`),
      Q: finches(`${own}\ndate: 2026-03-06, laid: 1\ndate: 2026-03-06, time: 08:00, candled: {unsure: 4}`),
    };
    expect(nest(files, 'BF-1')).toEqual({ eggs: 5, clutches: 1, findings: [] });
  });

  it('in exchange for theirs are seen when these have come, whichever pair is named first', () => {
    const exchange = (first: string, second: string) =>
      told({
        P: finches(`${own}\ndate: 2026-03-06, time: 09:00, fostered: {${second}: 1}`, first),
        Q: finches(`${own}\ndate: 2026-03-06, fostered: {${first}: 1}, sitting`, second),
      });
    expect(exchange('A', 'B')).toEqual(['B sitting', 'A fostered', 'B fostered']);
    expect(exchange('B', 'A')).toEqual(['A sitting', 'A fostered', 'B fostered']);
  });

  it('are told of after those who gave them, each pair’s own day in the order of the trade', () => {
    const files = {
      P: waxbills(`${four}\ndate: 2026-03-06, fostered: {BF-1: 2}, candled: {fertile: 3, clear: 1}, sitting`),
      Q: finches(`${own}\ndate: 2026-03-06, candled: {fertile: 5}, sitting, nest: lined, checked: {eggs: 5}`),
    };
    expect(told(files)).toEqual([
      'BF-1 nest',
      'LW-1 sitting',
      'LW-1 candled',
      'LW-1 fostered',
      'BF-1 sitting',
      'BF-1 candled',
      'BF-1 checked',
    ]);
    expect(nest(files, 'BF-1')).toEqual({ eggs: 5, clutches: 1, findings: [] });
  });
});

describe('who is taken out of a nest by hand', () => {
  it('is not who was brought there that day: the foster parents’ own eggs make room for the others', () => {
    const files = {
      P: waxbills(`${four}\ndate: 2026-03-06, fostered: {BF-1: all}`),
      Q: finches(`${own}\ndate: 2026-03-06, lost: {removed: all}`),
    };
    const known = room(files, '2026-03-06');
    expect(fates(clutchIn(known, 'LW-1/1'))).toEqual(['e1 open', 'e2 open', 'e3 open', 'e4 open']);
    expect(fates(clutchIn(known, 'BF-1/1'))).toEqual(
      ['e1', 'e2', 'e3'].map((egg) => `${egg} taken (removed)`),
    );
  });

  it('is who was brought where a time says that it was so, or nobody else is there', () => {
    const removed = (entry: string, before = own) => {
      const files = {
        P: waxbills(`${four}\ndate: 2026-03-06, time: 08:00, fostered: {BF-1: all}`),
        Q: finches(`${before}\ndate: 2026-03-06, ${entry}`),
      };
      return nest(files, 'BF-1').eggs;
    };
    expect(removed('time: 18:00, lost: {removed: all}')).toBe(0);
    expect(removed('lost: {removed: all}', 'date: 2026-03-01, paired')).toBe(0);
    expect(removed('lost: {broken: all}')).toBe(0);
    expect(removed('lost: {removed: all}')).toBe(4);
  });

  it('is who was there before, where two pairs exchange their eggs or their young', () => {
    const eggs = {
      P: waxbills(`${four}\ndate: 2026-03-06, fostered: {BF-1: all}`),
      Q: finches(`${own}\ndate: 2026-03-06, fostered: {LW-1: all}`),
    };
    expect([nest(eggs, 'LW-1'), nest(eggs, 'BF-1')]).toMatchObject([
      { eggs: 3, findings: [] },
      { eggs: 4, findings: [] },
    ]);
    const young = {
      P: waxbills(`${four}\ndate: 2026-03-17, hatched: 4\ndate: 2026-03-19, fostered: {BF-1: all}`),
      Q: finches(`${own}\ndate: 2026-03-18, hatched: 3\ndate: 2026-03-19, fostered: {LW-1: all}`),
    };
    const known = room(young, '2026-03-19');
    const inNest = (id: string) => [...pairIn(known, id).here.young].map(({ id: chick }) => chick);
    expect(inNest('LW-1')).toEqual(['BF-1/1/c1', 'BF-1/1/c2', 'BF-1/1/c3']);
    expect(inNest('BF-1')).toEqual(['LW-1/1/c1', 'LW-1/1/c2', 'LW-1/1/c3', 'LW-1/1/c4']);
  });
});

describe('what two journals tell of a guest on one day', () => {
  it('is that it hatched with its foster parents before its own pair’s tells that it died there', () => {
    const files = {
      P: waxbills(`${four}\ndate: 2026-03-17, fostered: {BF-1: e1}, died: {weak: 1/c1}`),
      Q: finches(`${own}\ndate: 2026-03-17, hatched: LW-1/1/e1`),
    };
    const stood = room(files, '2026-03-17');
    expect([clutchIn(stood, 'LW-1/1').chicks.map(({ fate }) => fate?.kind), codes(stood)]).toEqual([
      ['died'],
      [],
    ]);
  });

  it('is its ring, by which its own pair’s journal knows it that day', () => {
    const files = {
      P: waxbills(
        `${four}\ndate: 2026-03-17, hatched: 4\ndate: 2026-03-25, fostered: {BF-1: all}, weighed: {"ring:014": 5.1}`,
      ),
      Q: finches(`${own}\ndate: 2026-03-25, ringed: {LW-1/1/c1: "014"}`),
    };
    const stood = room(files, '2026-03-25');
    const [first] = clutchIn(stood, 'LW-1/1').chicks;
    expect([first?.ring, first?.weights.map(({ grams }) => grams), codes(stood)]).toEqual(['014', [5.1], []]);
  });
});

it('whoever comes home in the evening is none of those found dead at an hour that nobody wrote', () => {
  const log = `${four}\ndate: 2026-03-17, hatched: 4\ndate: 2026-03-20, fostered: {BF-1: [c3, c4]}
    date: 2026-03-24, died: {chilled: all}\ndate: 2026-03-24, time: 18:00, fostered: {LW-1: all}`;
  const known = room({ P: waxbills(log), Q: finches('date: 2026-03-01, paired') }, '2026-03-24');
  const fed = [...pairIn(known, 'LW-1').here.young].map(({ ref }) => ref);
  expect([fed, codes(known)]).toEqual([['c3', 'c4'], []]);
});

describe('three pairs whose eggs go round', () => {
  /** Two, three and four eggs of three pairs, each of which gives them to the next; how many each has then. */
  const round = (
    names: readonly string[],
    does: (to: string, i: number) => string,
    looks = (_eggs: number) => '',
  ) => {
    const files = names.map((name, i): [string, string] => {
      const to = names[(i + 1) % 3] as string;
      const log = `date: 2026-03-03, laid: ${i + 2}, sitting\ndate: 2026-03-06, ${does(to, i)}`;
      return [name, finches(`${log}\ndate: 2026-03-06, sitting${looks([4, 2, 3][i] as number)}`, name)];
    });
    const known = room(Object.fromEntries(files), '2026-03-06');
    return [
      ...names.map((name) => [...pairIn(known, name).here.eggs].map(({ clutch }) => clutch.pair.id).join('')),
      ...codes(known),
    ];
  };
  const orders = ['ABC', 'BCA', 'CBA'].map((names) => [...names]);
  const counted = (eggs: number) => `, checked: {eggs: ${eggs}}`;

  it('have each what came from the one before, whichever word and whichever order of names', () => {
    for (const names of orders) {
      const [a, b, c] = names as [string, string, string];
      const went = [c.repeat(4), a.repeat(2), b.repeat(3)];
      for (const word of ['set', 'fostered'])
        expect(
          round(names, (to) => `${word}: {${to}: all}`, counted),
          `${names} ${word}`,
        ).toEqual(went);
      for (const first of [0, 1, 2]) {
        const mixed = (to: string, i: number) => `${i === first ? 'set' : 'fostered'}: {${to}: all}`;
        expect(round(names, mixed, counted), `${names} ${first}`).toEqual(went);
      }
    }
  });

  it('have no egg that nobody wrote, where one hour of the three is known, or each', () => {
    for (const names of orders) {
      const [a, b, c] = names as [string, string, string];
      const went = [c.repeat(4), a.repeat(2), b.repeat(3)];
      for (const which of [0, 1, 2]) {
        const timed = (to: string, i: number) =>
          `${i === which ? 'time: 09:00, ' : ''}fostered: {${to}: all}`;
        expect(round(names, timed, counted), `${names} ${which}`).toEqual(went);
      }
      expect(
        round(names, (to, i) => `time: 09:0${i}, fostered: {${to}: all}`),
        `${names}`,
      ).toEqual(went);
    }
  });

  it('give to a fourth, that sits on these and on nothing else', () => {
    const files = (id: string) => ({
      A: finches(`${own}\ndate: 2026-03-06, fostered: {B: 1}`, 'A'),
      B: finches(`${own}\ndate: 2026-03-06, fostered: {A: 1, ${id}: 1}`, 'B'),
      [id]: finches('date: 2026-03-06, sitting, checked: {eggs: 1}', id),
    });
    for (const id of ['AA', 'D']) expect(nest(files(id), id)).toEqual({ eggs: 1, clutches: 0, findings: [] });
  });

  it('give to a fourth, that exchanges one with a fifth and has theirs under the lamp by then', () => {
    const files = {
      B: finches(`${own}\ndate: 2026-03-06, fostered: {C: 1}`, 'B'),
      C: finches(`${own}\ndate: 2026-03-06, fostered: {B: 1, A: 1}`, 'C'),
      A: finches(`${own}\ndate: 2026-03-06, candled: {fertile: 4}, fostered: {D: 1}`, 'A'),
      D: finches(`${own}\ndate: 2026-03-06, fostered: {A: 1}`, 'D'),
    };
    expect(nest(files, 'A')).toEqual({ eggs: 4, clutches: 1, findings: [] });
  });
});

describe('eggs taken into store or set elsewhere, out of the nest to which others were brought that morning', () => {
  it('are those that were there before', () => {
    const taken = (entry: string) => {
      const files = {
        P: waxbills(`${four}\ndate: 2026-03-06, time: 08:00, fostered: {BF-1: all}`),
        Q: finches(`${own}\ndate: 2026-03-06, time: 09:00, ${entry}`),
      };
      return nest(files, 'BF-1');
    };
    for (const entry of ['pulled: all', 'pulled: 3', 'set: {incubator: all}', 'set: {incubator: 3}'])
      expect(taken(entry), entry).toEqual({ eggs: 4, clutches: 1, findings: [] });
  });
});

describe('a count without a time, on a day on which something else of its pair has one', () => {
  const mismatched = (files: Files) => room(files, '2026-03-20').findings.map(({ code }) => code);

  it('is of what was left after the eggs were taken to another pair, or of the hour before', () => {
    const counted = (eggs: number) => ({
      P: waxbills(
        `${four}\ndate: 2026-03-06, checked: {eggs: ${eggs}}\ndate: 2026-03-06, time: 10:00, fostered: {BF-1: 2}`,
      ),
      Q: finches(own),
    });
    for (const eggs of [2, 4]) {
      expect(mismatched(counted(eggs)), `${eggs}`).toEqual([]);
      expect(clutchIn(room(counted(eggs), '2026-03-20'), 'LW-1/1').eggs).toHaveLength(4);
    }
    expect(mismatched(counted(1))).toEqual(['counts-differ']);
    expect(mismatched(counted(3))).toEqual(['counted-as-laid']);
  });

  it('has in it the egg that was laid at six, and those that were brought', () => {
    const files = {
      P: waxbills(`${four}\ndate: 2026-03-06, time: 10:00, fostered: {BF-1: 2}`),
      Q: finches(`${own}\ndate: 2026-03-06, checked: {eggs: 6}\ndate: 2026-03-06, time: 06:00, laid: 1`),
    };
    expect(mismatched(files)).toEqual([]);
    expect(clutchIn(room(files, '2026-03-20'), 'BF-1/1').eggs).toHaveLength(4);
  });

  it('is of before what has its time, or of after it: an egg laid or broken, a chick hatched, dead or out of the nest', () => {
    const whole = `${four}\ndate: 2026-03-17, hatched: 3\ndate: 2026-03-18, checked`;
    const days: [log: string, timed: string, before: string, after: string][] = [
      [four, 'laid: 1', 'eggs: 4', 'eggs: 5'],
      [four, 'lost: {broken: 1}', 'eggs: 4', 'eggs: 3'],
      [`${four}\ndate: 2026-03-05, checked`, 'hatched: 1', 'eggs: 4, chicks: 0', 'eggs: 3, chicks: 1'],
      [whole, 'died: 1', 'chicks: 3', 'chicks: 2'],
      [whole, 'fledged: 2', 'chicks: 3', 'chicks: 1'],
    ];
    for (const [log, timed, before, after] of days) {
      const on = log === four ? '2026-03-06' : timed === 'hatched: 1' ? '2026-03-17' : '2026-04-04';
      const known = (count: string) => {
        const told = `${log}\ndate: ${on}, time: 18:00, ${timed}`;
        const all = room(
          { P: waxbills(count === '' ? told : `${told}\ndate: ${on}, checked: {${count}}`) },
          on,
        );
        const { eggs, chicks } = clutchIn(all, 'LW-1/1');
        return [eggs.length, chicks.length, ...codes(all)];
      };
      for (const count of [before, after]) expect(known(count), `${timed}, ${count}`).toEqual(known(''));
    }
  });

  it('is of before guests hatched, too', () => {
    for (const count of ['eggs: 7, chicks: 0', 'eggs: 5, chicks: 2'])
      expect(
        mismatched({
          P: waxbills(`${four}\ndate: 2026-03-06, fostered: {BF-1: all}`),
          Q: finches(
            `${own}\ndate: 2026-03-17, time: 14:00, hatched: [LW-1/1/e1, LW-1/1/e2]\ndate: 2026-03-17, checked: {${count}}`,
          ),
        }),
        count,
      ).toEqual([]);
  });

  it('is told before the age of the chicks that it counted', () => {
    const log = `date: 2026-03-24, checked: {chicks: 3}, aged: {6: all}\ndate: 2026-03-24, time: 07:00, lost: {broken: 1}`;
    const { chicks } = clutchIn(room({ P: waxbills(log) }, '2026-03-24'), 'LW-1/1');
    expect(chicks.map(({ aged }) => aged?.days)).toEqual([6, 6, 6]);
  });

  it('is what the day ended with: of after all that comes before it in the order of the trade', () => {
    const on = 'date: 2026-03-06';
    const visits = [`${on}, checked: {eggs: 5}`, `${on}, time: 10:00, food: [egg food]`];
    for (const lines of [visits, visits.toReversed()]) {
      const log = [four, ...lines, `${on}, time: 18:00, laid: 1`].join('\n');
      expect(told({ P: waxbills(log) })).toEqual(['LW-1 food', 'LW-1 laid', 'LW-1 checked']);
    }
  });

  it('is of before another count that has its time', () => {
    const log = 'date: 2026-03-16, time: 18:15, checked: {chicks: 1}\n  date: 2026-03-16, checked: {eggs: 4}';
    const known = room({ P: waxbills(log) }, '2026-03-16');
    expect(clutchIn(known, 'LW-1/1').eggs.map(({ fate }) => fate?.kind ?? 'open')).toEqual([
      'hatched',
      'open',
      'open',
      'open',
    ]);
  });

  it('with a time is what was there at that hour', () => {
    const files = {
      P: waxbills(
        `${four}\ndate: 2026-03-06, time: 08:00, checked: {eggs: 4}\ndate: 2026-03-06, time: 10:00, fostered: {BF-1: 2}`,
      ),
      Q: finches(own),
    };
    expect(mismatched(files)).toEqual([]);
  });
});

describe('a bird that was moved and died on one day', () => {
  const told = (said: string) =>
    codes(room({ P: waxbills(`${four}\ndate: 2026-03-06, ${said}`, 'hen: B') }, '2026-03-06'));

  it('died where it was moved to, and did not come along with the family', () => {
    expect(told('moved: {hen: cage 2}, died: {cold: hen}')).toEqual([]);
    expect(told('died: {cold: hen}\ndate: 2026-03-06, moved: {hen: cage 2}')).toEqual([]);
    expect(told('moved: flight 2, died: {cold: hen}')).toEqual([]);
    expect(told('time: 08:00, died: hen\ndate: 2026-03-06, time: 09:00, moved: {hen: cage 2}')).toEqual([
      'dead-bird',
    ]);
  });
});
