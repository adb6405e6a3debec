import { describe, expect, it } from 'vitest';
import { kindOf } from '../../src/findings/codes.ts';
import type { Finding } from '../../src/findings/finding.ts';
import { type Files, room } from '../rooms.ts';
import { journal, until, waxbills } from './facts.ts';

// What cannot be is answered in one sentence that says whom it is about, what was told of it, and why that cannot be.

const { start, eggs, chicks, fledglings, young } = until;
const heads = 'cock: LW-19-04\nhen: LW-20-11\nhousing: cage 3';

const sentence = (finding: Finding) => kindOf(finding).text(finding.args);

function told(before: string, entry: string, more: Files = {}): string[] {
  const files = {
    P: waxbills(`${before}\ndate: ${entry}`, heads),
    Q: journal('BF-1', 'bengalese finch', 'date: 2026-03-06, laid: 5, sitting', 'hen: BF-20-02'),
    ...more,
  };
  return room(files, '2026-05-01').findings.map(sentence);
}

const lostEgg = `${eggs}\ndate: 2026-03-08, lost: {broken: e1}`;
const deadChick = `${chicks}\ndate: 2026-03-20, died: c1`;
const deadHen = `${start}\ndate: 2026-03-03, died: {egg binding: hen}`;

describe('of an egg that has ended nothing more can be told', () => {
  const broken = 'it was lost (broken) on 2026-03-08';

  it.each([
    ['pulled: e1', `e1 cannot be taken into store: ${broken}`],
    ['set: {BF-1: e1}', `e1 cannot be set: ${broken}`],
    ['fostered: {BF-1: e1}', `e1 cannot be fostered: ${broken}`],
    ['candled: {fertile: e1}', `e1 cannot be candled fertile: ${broken}`],
    ['aged: {5: e1}', `e1 cannot be aged: ${broken}`],
    ['pipped: e1', `e1 cannot be pipped: ${broken}`],
    ['hatched: e1', `e1 cannot be hatched: ${broken}`],
    ['weighed: {e1: 0.9}', `e1 cannot be weighed: ${broken}`],
    ['lost: {clear: e1}', `e1 cannot be lost: ${broken}`],
  ])('%s', (entry, why) => {
    expect(told(lostEgg, `2026-03-17, ${entry}`)).toEqual([why]);
  });

  it('lost without a cause is said to have been lost so', () => {
    const unknown = `${eggs}\ndate: 2026-03-08, lost: e1`;
    expect(told(unknown, '2026-03-17, pipped: e1')).toEqual([
      'e1 cannot be pipped: it was lost (no cause given) on 2026-03-08',
    ]);
  });

  it('that hatched is named with its chick', () => {
    expect(told(chicks, '2026-03-19, hatched: e1')).toEqual([
      'e1 cannot hatch again: it hatched on 2026-03-18 as LW-1/1/c1',
    ]);
    expect(told(chicks, '2026-03-19, pipped: e1')).toEqual([
      'e1 cannot be pipped: it hatched on 2026-03-18 as LW-1/1/c1',
    ]);
  });

  it('found again was lost before; one in the nest, hatched or given was not', () => {
    const given = `${chicks}\ndate: 2026-03-19, lost: {given: e4}`;
    expect(told(lostEgg, '2026-03-10, back: e1')).toEqual([]);
    expect(told(eggs, '2026-03-10, back: e1')).toEqual([
      'e1 cannot be back: it is in the nest as far as the journal knows',
    ]);
    expect(told(given, '2026-03-20, back: e4')).toEqual(['e4 cannot be back: it is not lost']);
  });
});

describe('of a chick that died nothing more can be told', () => {
  it.each([
    ['aged: {5: c1}', 'aged'],
    ['weighed: {c1: 4.5}', 'weighed'],
    ['crops: {empty: c1}', 'looked at (crop empty)'],
    ['feeding: {hen: c1}', 'fed'],
    ['fledged: c1', 'fledged'],
    ['roosting: {nest: c1}', 'roosted'],
    ['independent: c1', 'independent'],
    ['ringed: {c1: LW 26 014}', 'ringed'],
    ['moved: {c1: flight 5}', 'moved'],
    ['fostered: {BF-1: c1}', 'fostered'],
    ['gone: {sold: c1}', 'gone'],
    ['died: {chilled: c1}', 'died'],
    ['moult: {started: c1}', 'moulted'],
    ['treated: {c1: as the vet ordered}', 'treated'],
    ['unwell: {c1: fluffed}', 'unwell'],
  ])('%s', (entry, did) => {
    expect(told(deadChick, `2026-03-25, ${entry}`)).toEqual([
      `nothing new can be told of c1 (${did}): it died on 2026-03-20`,
    ]);
  });

  it('and the answer says which of its sisters are in that nest, whoever rears them', () => {
    const files = {
      P: waxbills(`${deadChick}\ndate: 2026-03-21, fostered: {BF-1: c2}`),
      Q: journal('BF-1', 'bengalese finch', 'date: 2026-03-25, ringed: {LW-1/1/c1: LW-7}'),
    };
    const hints = (more: Files) =>
      room(more, '2026-05-01').findings.map((finding) => kindOf(finding).hint(finding.args));
    expect(hints(files)).toEqual([
      expect.stringContaining('another chick, of those here LW-1/1/c2, or a slip'),
    ]);
    const home = { P: waxbills(`${deadChick}\ndate: 2026-03-25, ringed: {c1: LW-7}`) };
    expect(hints(home)).toEqual([expect.stringContaining('another chick, of those here c2, c3, or a slip')]);
  });

  it('nor of one that was sold, but that it is back', () => {
    const sold = `${young}\ndate: 2026-04-26, gone: {sold: c1}`;
    expect(told(sold, '2026-04-28, weighed: {c1: 8.1}')).toEqual([
      'nothing new can be told of c1 (weighed): it left on 2026-04-26',
    ]);
    expect(told(sold, '2026-04-28, back: c1')).toEqual([]);
  });
});

describe('a dead hen', () => {
  it.each([
    ['laid: 1', 'nothing new can be told of LW-20-11 (laid): it died on 2026-03-03'],
    ['sitting: hen', 'nothing new can be told of LW-20-11 (sat): it died on 2026-03-03'],
    ['paired', 'nothing new can be told of LW-20-11 (paired): it died on 2026-03-03'],
    ['reunited', 'nothing new can be told of LW-20-11 (reunited): it died on 2026-03-03'],
    ['treated: {hen: as the vet ordered}', 'nothing new can be told of hen (treated): it died on 2026-03-03'],
    ['parted: {hen: cage 4}', 'nothing new can be told of LW-20-11 (parted): it died on 2026-03-03'],
  ])('can be told of no more: %s', (entry, why) => {
    expect(told(deadHen, `2026-03-05, ${entry}`)).toEqual([why]);
  });

  it('is as the dead cock is, of whom nobody tells that he sat', () => {
    const dead = `${eggs}\ndate: 2026-03-06, died: cock`;
    expect(told(dead, '2026-03-08, sitting: hen')).toEqual([]);
    expect(told(dead, '2026-03-08, sitting: cock')).toEqual([
      'nothing new can be told of LW-19-04 (sat): it died on 2026-03-06',
    ]);
  });

  it('is no hindrance to the cock, who sits or is paired with a new hen', () => {
    expect(told(deadHen, '2026-03-05, sitting: cock')).toEqual([]);
    expect(told(deadHen, '2026-03-05, treated: {cock: as the vet ordered}')).toEqual([]);
    expect(told(deadHen, '2026-03-05, parted: {cock: cage 4}')).toEqual([]);
    expect(told(deadHen, '2026-03-05, parted')).toEqual([]);
    expect(told(deadHen, '2026-03-05, paired: {hen: LW-21-02}')).toEqual([]);
    const reared = `${eggs}\ndate: 2026-03-06, died: hen`;
    expect(told(reared, '2026-03-08, sitting')).toEqual([]);
    expect(told(reared, '2026-03-08, sitting: both')).toEqual([
      'nothing new can be told of LW-20-11 (sat): it died on 2026-03-06',
    ]);
  });
});

describe('what was told once is not told again', () => {
  it('a chick leaves the nest once, and feeds itself once', () => {
    expect(told(fledglings, '2026-04-08, fledged: c1')).toEqual([
      'c1 cannot be fledged: it has left the nest already',
    ]);
    expect(told(young, '2026-04-28, independent: c1')).toEqual([
      'c1 cannot be independent: it is independent already',
    ]);
  });

  it('a chick that is a parent by now has left its nest, though nobody wrote so', () => {
    const bred = { N: journal('LW-2', 'lavender waxbill', 'date: 2026-04-20, paired', 'cock: LW-1/1/c1') };
    expect(told(chicks, '2026-04-28, fledged: [c1, c2]', bred)).toEqual([
      'c1 cannot be fledged: it feeds itself',
    ]);
  });

  it('it wears one ring, and that ring is on no other', () => {
    const ringed = `${chicks}\ndate: 2026-03-26, ringed: {c1: LW 26 014}`;
    expect(told(ringed, '2026-03-27, ringed: {c1: LW 26 015}')).toEqual([
      'c1 cannot be ringed: it wears LW 26 014 already',
    ]);
    expect(told(ringed, '2026-03-27, ringed: {c2: LW 26 014}')).toEqual([
      'the ring LW 26 014 is on LW-1/1/c1 already',
    ]);
  });

  it('one look says one thing of an egg, and one of a crop', () => {
    const twice = 'the same look already says something else of it';
    expect(told(eggs, '2026-03-12, candled: {fertile: [e1, e2], clear: e2}')).toEqual([
      `e2 cannot be candled clear: ${twice}`,
    ]);
    expect(told(chicks, '2026-03-19, crops: {full: [c1, c2], empty: c2}')).toEqual([
      `c2 cannot be looked at (crop empty): ${twice}`,
    ]);
  });

  it('who is named twice in one list counts once, and it is asked whether another was meant', () => {
    for (const entry of ['hatched: [e1, e1]', 'lost: {clear: [e1, e2, e1]}'])
      expect(told(eggs, `2026-03-17, ${entry}`), entry).toEqual([
        '`e1` stands here twice; only the first one counts',
      ]);
    expect(told(eggs, '2026-03-12, candled: {fertile: [e1, e2]}, weighed: {e1: 1.2}')).toEqual([]);
    expect(told(eggs, '2026-03-12, food: [egg food, egg food], photo: [a.jpg, a.jpg]')).toEqual([]);
  });

  it('an egg is laid once, and its numbers are given in turn', () => {
    expect(told(eggs, '2026-03-06, laid: e4')).toEqual(['e4 of clutch 1 is laid already']);
    expect(told(eggs, '2026-03-06, laid: e7')).toEqual([
      'the next egg of this clutch is e5, not e7; it is counted as e5',
    ]);
    expect(told(eggs, '2026-03-06, laid: [e5, e6]')).toEqual([]);
    expect(told(eggs, '2026-03-06, laid: [e5, e5]')).toEqual(['e5 of clutch 1 is laid already']);
  });
});

describe('what comes too early', () => {
  it('is a chick out of an egg after less than half the shortest sitting, whether laid or set', () => {
    // Lavender waxbills sit 11 days at least (species profile): five and a half.
    expect(told(`${start}\ndate: 2026-03-05, laid: 1`, '2026-03-10, hatched: e1')).toEqual([
      'e1 cannot have hatched: it was laid on 2026-03-05, only 5 d before',
    ]);
    const stored = `${start}\ndate: 2026-03-05, laid: 1, pulled: e1\ndate: 2026-03-12, set: e1`;
    expect(told(stored, '2026-03-17, hatched: e1')).toEqual([
      'e1 cannot have hatched: it was set on 2026-03-12, only 5 d before',
    ]);
    expect(told(stored, '2026-03-18, hatched: e1')).toEqual([]);
  });

  it('is begging from a nest where no egg can have hatched yet', () => {
    expect(told(`${start}\ndate: 2026-03-05, laid: 1`, '2026-03-07, heard: begging')).toEqual([
      'e1 cannot have hatched: it was laid on 2026-03-05, only 2 d before',
    ]);
  });

  it('is a nestling that feeds itself', () => {
    expect(told(chicks, '2026-03-30, independent: c1')).toEqual([
      'c1 cannot be independent: it has not left the nest',
    ]);
  });

  it('is an age under which a chick seen before would not have been out', () => {
    expect(told(chicks, '2026-03-25, aged: {5: c1}')).toEqual([
      'c1 cannot be aged: it was out of the shell on 2026-03-18 already',
    ]);
    expect(told(chicks, '2026-03-25, aged: {7: c1}')).toEqual([]);
  });

  it('is an age at which a chick would have hatched before its egg, or within days of it', () => {
    const aged = (days: number) => told(chicks, `2026-03-18, aged: {${days}: c1}`);
    expect(aged(18)).toEqual([
      'c1 cannot be aged: it would have hatched on 2026-02-28, and its egg was laid on 2026-03-01',
    ]);
    expect(aged(14)).toHaveLength(1);
    expect(aged(2)).toEqual([]);
  });
});

describe('whom nobody can mean', () => {
  it.each([
    ['fostered: {BF-1: hen}', 'hen cannot be fostered: it is no chick'],
    ['fostered: {BF-1: c1}', 'c1 cannot be fostered: it feeds itself'],
    ['fledged: hen', 'hen cannot be fledged: it is no chick'],
    ['independent: hen', 'hen cannot be independent: it depends on nobody'],
    ['back: c1', 'c1 cannot be back: it is here as far as the journal knows'],
    ['pipped: all', '`pipped` fits nobody in the nest of LW-1 on that day'],
    ['pipped: some', '`pipped` fits nobody in the nest of LW-1 on that day'],
    ['pipped: c1', '`c1` is not an egg'],
    ['candled: {clear: e9}', 'there is no egg `e9` (clutch 1)'],
    ['weighed: {c9: 4.5}', 'there is no chick `c9` (clutch 1)'],
    ['weighed: {7/c1: 4.5}', 'there is no chick `7/c1` (LW-1 has no such clutch)'],
    ['weighed: {e4: 0.9}', 'e4 cannot be weighed: it was given on 2026-04-25'],
    ['weighed: {Pearl: 8.5}', 'nobody here is called `Pearl` (weighed)'],
    ['weighed: {LW-9/1/e1: 0.9}', 'no journal has the pair `LW-9`'],
    ['weighed: {LW-9/1/c1: 8.5}', 'no journal has the pair `LW-9`'],
    ['sexed: {hen: ring:77}', 'nobody here is called `ring:77` (sexed as hen)'],
    ['moult: {started: Pearl}', 'nobody here is called `Pearl` (moulted)'],
    ['unwell: {Pearl: fluffed}', 'nobody here is called `Pearl` (unwell)'],
    ['moved: {Pearl: flight 5}', 'nobody here is called `Pearl` (moved)'],
    ['treated: {Pearl: as the vet ordered}', 'nobody here is called `Pearl` (treated)'],
    ['measured: {e9: 14.2 x 10.8}', 'there is no egg `e9` (clutch 1)'],
    ['laid: all', '`laid: all` does not say how many'],
    ['laid: c1', '`c1` is not an egg'],
    ['died: LW-1/1/e4', 'no chick came out of `LW-1/1/e4` as far as the journal knows'],
  ])('%s', (entry, why) => {
    expect(told(`${young}\ndate: 2026-04-25, lost: {given: e4}`, `2026-04-27, ${entry}`)).toEqual([why]);
  });

  it('more than there are: it is said for how many it was possible', () => {
    expect(told(eggs, '2026-03-18, hatched: 6')).toEqual([
      '6 hatched, but in the nest of LW-1 it is possible for 4',
    ]);
    expect(told(chicks, '2026-04-06, fledged: 5')).toEqual([
      '5 fledged, but in the nest of LW-1 it is possible for 3',
    ]);
  });

  it('a hen that may be one of two cannot be weighed', () => {
    const files = { P: waxbills('date: 2026-03-01, weighed: {hen: 8.4}', 'hen: [LW-20-11, LW-20-12]') };
    expect(room(files, '2026-05-01').findings.map(sentence)).toEqual([
      'which bird is the hen of LW-1 is not known',
    ]);
  });
});

describe('the likely fix', () => {
  const fix = (before: string, entry: string) => {
    const files = { P: waxbills(`${before}\ndate: ${entry}`, heads), Q: journal('BF-1', 'canary', '') };
    return room(files, '2026-05-01').findings.map((finding) => kindOf(finding).hint(finding.args));
  };

  it('names the eggs or chicks that there are', () => {
    expect(fix(chicks, '2026-03-20, died: c9')).toEqual(['the chicks there are c1, c2, c3']);
    expect(fix(eggs, '2026-03-10, candled: {clear: e9}')).toEqual(['the eggs there are e1, e2, e3, e4']);
    expect(fix(eggs, '2026-03-20, died: c1')).toEqual(['record it with `hatched: 1` first']);
    expect(fix(start, '2026-03-20, lost: {broken: e1}')).toEqual(['record it with `laid: 1` first']);
  });

  it('asks whether a pair of a similar name was meant, and nothing where none is similar', () => {
    expect(fix(eggs, '2026-03-10, fostered: {BF-11: e1}')).toEqual(['did you mean `BF-1`?']);
    expect(fix(eggs, '2026-03-10, fostered: {the neighbours: e1}')).toEqual([
      'pairs are named by the `pair:` of their journal',
    ]);
  });
});
