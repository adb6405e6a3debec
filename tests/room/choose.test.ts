import { describe, expect, it } from 'vitest';
import { codes as kinds } from '../../src/findings/codes.ts';
import { fullRef } from '../../src/room/model.ts';
import { room } from '../rooms.ts';
import { birdIn, clutchIn, codes, days, fates, journal, pairIn, waxbills } from './facts.ts';

const five = `
  date: 2026-03-01, paired
  date: 2026-03-05, laid: 5, sitting
`;
const chicks = `${five}
  date: 2026-03-18, hatched: [e1, e2, e3, e4, e5]
`;

/** How the eggs of one clutch of five ended, and what was found doubtful. */
function eggs(more: string): { fates: string[]; codes: string[] } {
  const known = room({ P: waxbills(`${five}\n${more}`) }, '2026-04-20');
  return { fates: fates(clutchIn(known, 'LW-1/1')), codes: codes(known) };
}

/** Which of five chicks are dead, and what was found doubtful. */
function dead(who: string, files = {}): { dead: (string | null)[]; codes: string[] } {
  const text = waxbills(`${chicks}\ndate: 2026-03-24, ringed: {c1: "014", c2: LW 26 015}
    date: 2026-03-26, died: ${who}`);
  const known = room({ P: text, ...files }, '2026-04-20');
  const died = clutchIn(known, 'LW-1/1').chicks.filter(({ fate }) => fate?.kind === 'died');
  return { dead: died.map(({ ref }) => ref), codes: codes(known) };
}

it('a chick that a count took for the dead one is said to have been counted, and how to name another', () => {
  const { hint } = kinds['dead-bird'];
  expect(hint({ who: 'c1' })).toMatch(
    'if another died, name it in the entry of that day, such as `died: c3`',
  );
  expect(hint({ who: 'LW-3/2/c1' })).toMatch('`died: c3`');
  expect(hint({ who: 'LW-20-11' })).toMatch('a new mate is `paired: {hen: ID}`');
});

describe('a count', () => {
  it('of the dead takes who is in the nest before who has left it, and nobody died before it left', () => {
    const left = `${chicks}\ndate: 2026-04-04, fledged: 4\n`;
    const ends = (more: string) =>
      clutchIn(room({ P: waxbills(left + more) }, '2026-04-20'), 'LW-1/1').chicks.flatMap(({ ref, fate }) =>
        fate?.kind === 'died' ? [`${ref} ${days(fate.span)}`] : [],
      );
    expect(ends('date: 2026-04-05, died: 1')).toEqual(['c5 03-19…04-05']);
    expect(ends('date: 2026-04-06, died: 2')).toEqual(['c1 04-04…04-06', 'c5 03-19…04-06']);
  });

  it('in the journal of those that laid is told in whose nest they are', () => {
    const files = {
      P: waxbills('date: 2026-03-05, laid: 3, fostered: {BF-1: all}\ndate: 2026-03-20, hatched: 3'),
      B: journal('BF-1', 'Bengalese finch', 'date: 2026-03-06, sitting'),
    };
    const [finding, ...others] = room(files, '2026-03-20').findings;
    expect(others).toEqual([]);
    expect(finding && kinds[finding.code].hint(finding.args as never)).toBe(
      'its eggs or young are with BF-1: write it in that journal, or name them here: e1, e2, e3',
    );
  });

  describe('in the journal of those whose young another pair rears', () => {
    const told = (more: string) => {
      const files = {
        P: waxbills(`date: 2026-03-05, laid: 3, fostered: {BF-1: all}\n${more}`),
        B: journal(
          'BF-1',
          'Bengalese finch',
          'date: 2026-03-06, sitting\ndate: 2026-03-18, hatched: [LW-1/1/e1, LW-1/1/e2]\ndate: 2026-04-06, fledged: LW-1/1/c1',
        ),
      };
      const known = room(files, '2026-05-20');
      const fixes = known.findings.map(({ code, args }) => [code, kinds[code].hint(args as never)]);
      return { fixes, clutches: pairIn(known, 'LW-1').clutches.length };
    };
    const there = 'its eggs or young are with BF-1: write it in that journal';

    it('begins no brood that nobody saw, and tells who can be named here', () => {
      expect(told('date: 2026-04-07, fledged: 2')).toEqual({
        fixes: [
          ['too-many', `${there}, or name them here: c2; of another brood of its own name the \`clutch:\``],
        ],
        clutches: 1,
      });
      expect(told('date: 2026-04-08, died: 1').fixes).toEqual([
        ['too-many', `${there}, or name them here: c1, c2`],
      ]);
      expect(told('date: 2026-04-24, independent: all').fixes).toEqual([
        ['nobody-possible', `${there}, or name them here: c1`],
      ]);
    });

    it('takes a brood that nobody saw as told where its clutch is named', () => {
      expect(told('date: 2026-04-20, clutch: 2, fledged: 2')).toEqual({ fixes: [], clutches: 2 });
    });
  });

  it('takes the lowest numbers where all are alike, and nobody needs to be asked', () => {
    const { fates, codes } = eggs('date: 2026-03-18, hatched: 2');
    expect(fates).toEqual(['e1 hatched', 'e2 hatched', 'e3 open', 'e4 open', 'e5 open']);
    expect(codes).toEqual([]);
  });

  it('of hatched takes no clear egg while another is there', () => {
    const { fates } = eggs(
      'date: 2026-03-11, candled: {clear: [e1, e2], fertile: [e3, e4, e5]}\ndate: 2026-03-18, hatched: 3',
    );
    expect(fates).toEqual(['e1 open', 'e2 open', 'e3 hatched', 'e4 hatched', 'e5 hatched']);
  });

  it('of clear eggs takes those that the lamp showed clear', () => {
    const { fates, codes } = eggs(
      'date: 2026-03-11, candled: {clear: e4, fertile: [e1, e2, e3, e5]}\ndate: 2026-03-18, lost: {clear: 1}',
    );
    expect(fates[3]).toBe('e4 lost (clear)');
    expect(codes).toEqual([]);
  });

  it('of eggs dead in shell takes those that had been seen dead, then fertile ones', () => {
    const { fates } = eggs(
      'date: 2026-03-11, candled: {clear: e1, fertile: [e2, e3], dead: e5}\ndate: 2026-03-20, lost: {dead-in-shell: 2}',
    );
    expect(fates).toEqual([
      'e1 open',
      'e2 lost (dead-in-shell)',
      'e3 open',
      'e4 open',
      'e5 lost (dead-in-shell)',
    ]);
  });

  it('that guesses between unlike eggs asks for refs: fertile or clear broken is another rate', () => {
    const candled = 'date: 2026-03-11, candled: {fertile: [e1, e2], clear: [e3, e4, e5]}';
    expect(eggs(`${candled}\ndate: 2026-03-12, lost: {broken: 1}`).codes).toEqual(['guessed']);
    expect(eggs(`${candled}\ndate: 2026-03-12, lost: {broken: e1}`).codes).toEqual([]);
    expect(eggs(`${candled}\ndate: 2026-03-12, lost: {broken: all}`).codes).toEqual([]);
    expect(eggs('date: 2026-03-12, lost: {broken: 1}').codes).toEqual([]);
  });

  it('of more than there are takes those that there are and says so', () => {
    const { fates, codes } = eggs('date: 2026-03-18, hatched: 6');
    expect(fates.every((fate) => fate.endsWith('hatched'))).toBe(true);
    expect(codes).toEqual(['too-many']);
  });

  it.each(['some', '3+', '~3'])('of %s is no promise of how many', (who) => {
    const known = room({ P: waxbills(`${five}\ndate: 2026-03-18, hatched: ${who}`) }, '2026-03-18');
    const { chicks, chicksCounted } = clutchIn(known, 'LW-1/1');
    expect(chicks).toHaveLength(who === 'some' ? 1 : 3);
    expect(chicksCounted).toBe(false);
    expect(codes(known)).toEqual([]);
  });

  it('of eggs laid may be unsure as well: the clutch is then not counted', () => {
    const known = room({ P: waxbills('date: 2026-03-05, laid: 3+') }, '2026-03-05');
    const { eggs, counted } = clutchIn(known, 'LW-1/1');
    expect([eggs.length, counted]).toEqual([3, false]);
  });

  it('of none changes nothing', () => {
    expect(eggs('date: 2026-03-11, candled: {clear: 0, fertile: 5}').codes).toEqual([]);
  });
});

describe('all', () => {
  it('are all for whom it is possible', () => {
    const { fates } = eggs('date: 2026-03-18, hatched: [e1, e2]\ndate: 2026-03-25, lost: {addled: all}');
    expect(fates).toEqual([
      'e1 hatched',
      'e2 hatched',
      'e3 lost (addled)',
      'e4 lost (addled)',
      'e5 lost (addled)',
    ]);
  });

  it('of nobody is an error', () => {
    expect(eggs('date: 2026-03-06, fledged: all').codes).toEqual(['nobody-possible']);
  });

  it('that become independent are those that have left the nest', () => {
    const log = `${chicks}\ndate: 2026-04-06, fledged: [c1, c2, c3]\ndate: 2026-04-22, independent: all`;
    const known = room({ P: waxbills(log) }, '2026-04-22');
    const chicksOf = clutchIn(known, 'LW-1/1').chicks;
    expect(chicksOf.map(({ independent }) => independent !== null)).toEqual([true, true, true, false, false]);
  });
});

describe('a ref', () => {
  it.each([
    ['a chick', 'c3', ['c3']],
    ['a list of chicks', '[c3, c5]', ['c3', 'c5']],
    ['a chick of a clutch of this pair', '1/c4', ['c4']],
    ['a chick by its full name', 'LW-1/1/c4', ['c4']],
    ['a ring', 'LW 26 015', ['c2']],
    ['a ring that looks like a count', 'ring:014', ['c1']],
  ])('names %s: %s', (_what, who, which) => {
    expect(dead(who)).toEqual({ dead: which, codes: [] });
  });

  it('of digits alone is a count, not a ring', () => {
    expect(dead('2').dead).toEqual(['c1', 'c2']);
  });

  it('names one of another pair that is a guest here', () => {
    const files = {
      P: waxbills(`${chicks}\ndate: 2026-03-24, fostered: {BF-1: c5}`),
      Q: journal(
        'BF-1',
        'bengalese finch',
        'date: 2026-03-10, laid: 1\ndate: 2026-03-26, died: {chilled: LW-1/1/c5}',
      ),
    };
    const known = room(files, '2026-03-26');
    expect(birdIn(known, 'LW-1/1/c5').fate).toMatchObject({ kind: 'died', cause: 'chilled' });
    expect(codes(known)).toEqual([]);
  });

  it.each([
    ['no-such-chick', 'c9'],
    ['no-such-pair', 'LW-7/1/c1'],
    ['no-such-bird', 'ring:999'],
    ['egg-not-hatched', 'LW-1/1/e7'],
    ['parent-unknown', 'hen'],
  ])('that means nobody is %s: %s', (code, who) => {
    expect(dead(who)).toEqual({ dead: [], codes: [code] });
  });

  it.each([
    ['died: night fright', 'died: {night fright: c1}'],
    ['gone: sold', 'gone: {sold: c1}'],
    ['lost: infertile', 'lost: {clear: e5}'],
    ['died: LW-26-77', ''],
    ['gone: home', ''],
  ])('that is a cause alone is answered with the cause before whom: %s', (said, instead) => {
    const laid = 'date: 2026-03-01, clutch: 1, laid: 5\ndate: 2026-03-14, hatched: 4';
    const known = room({ P: waxbills(`${laid}\ndate: 2026-03-24, ${said}`) }, '2026-03-26');
    expect(known.findings.map(({ args }) => args.instead)).toEqual([instead]);
  });

  it('that is a cause alone is no cause of anybody where nobody is there', () => {
    const known = room({ P: waxbills('date: 2026-03-24, died: cold') }, '2026-03-26');
    expect(known.findings.map(({ code, args }) => [code, args.instead])).toEqual([['no-such-bird', '']]);
  });

  it('to one who is dead already is an error with the day it died', () => {
    const known = room(
      { P: waxbills(`${chicks}\ndate: 2026-03-20, died: c1\ndate: 2026-03-22, died: c1`) },
      '2026-03-22',
    );
    expect(known.findings.map(({ code, args }) => [code, args.why])).toEqual([
      ['dead-bird', 'it died on 2026-03-20'],
    ]);
  });

  it('to an egg means the chick that came of it, where the egg is known to have hatched', () => {
    const log = `${five}\ndate: 2026-03-18, hatched: [e3, e5]\ndate: 2026-03-20, died: e5`;
    const known = room({ P: waxbills(log) }, '2026-03-20');
    expect(birdIn(known, 'LW-1/1/c2').fate?.kind).toBe('died');
  });

  it('that could be of two clutches means the youngest where the old one is over', () => {
    const log = `${chicks}
      date: 2026-04-06, fledged: all
      date: 2026-04-10, laid: 3
      date: 2026-04-11, lost: {broken: e1}`;
    const known = room({ P: waxbills(log) }, '2026-04-20');
    expect(fates(clutchIn(known, 'LW-1/2'))[0]).toBe('e1 lost (broken)');
    expect(codes(known)).toEqual([]);
  });
});

describe('two broods at a time', () => {
  const both = `${chicks}
    date: 2026-04-06, fledged: all
    date: 2026-04-10, laid: 4, sitting
    date: 2026-04-23, hatched: 4`;
  const fledged = (entry: string) => {
    const known = room({ P: waxbills(`${both}\n${entry}`) }, '2026-05-20');
    const dead = pairIn(known, 'LW-1').clutches.flatMap(({ chicks }) =>
      chicks.filter(({ fate }) => fate !== null).map(fullRef),
    );
    return [dead, codes(known)];
  };

  it('a count takes the older and says which it took', () => {
    expect(fledged('date: 2026-04-24, died: 1')).toEqual([['LW-1/1/c1'], ['which-clutch']]);
  });

  it('a ref takes the younger and says which it took', () => {
    expect(fledged('date: 2026-04-24, died: c1')).toEqual([['LW-1/2/c1'], ['which-clutch']]);
  });

  it('the number of the clutch leaves no doubt', () => {
    expect(fledged('date: 2026-04-24, clutch: 2, died: 1')).toEqual([['LW-1/2/c1'], []]);
    expect(fledged('date: 2026-04-24, died: 1/c2')).toEqual([['LW-1/1/c2'], []]);
  });
});

describe('guests', () => {
  const files = (log: string) => ({
    P: waxbills(`${chicks}\ndate: 2026-03-20, fostered: {BF-1: [c4, c5]}`),
    Q: journal(
      'BF-1',
      'bengalese finch',
      `date: 2026-03-02, laid: 2, sitting\ndate: 2026-03-18, hatched: 2\n${log}`,
    ),
  });

  it('are counted in their foster’s nest, and no longer at home', () => {
    const known = room(files('date: 2026-03-22, checked: {chicks: 4}'), '2026-03-22');
    expect(codes(known)).toEqual([]);
    expect(pairIn(known, 'BF-1').here.young.size).toBe(4);
    expect(pairIn(known, 'LW-1').here.young.size).toBe(3);
  });

  it('are among all of that nest, and stay in the record of their own clutch', () => {
    const known = room(files('date: 2026-04-10, fledged: all'), '2026-04-10');
    expect(clutchIn(known, 'LW-1/1').chicks.map(({ fledged }) => fledged !== null)).toEqual([
      false,
      false,
      false,
      true,
      true,
    ]);
    expect(clutchIn(known, 'BF-1/1').chicks).toHaveLength(2);
  });

  it('or own young by count is another rate: a hint asks which', () => {
    expect(codes(room(files('date: 2026-04-10, died: 1'), '2026-04-10'))).toEqual(['guessed']);
  });
});
