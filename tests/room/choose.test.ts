import { describe, expect, it } from 'vitest';
import { codes as kinds } from '../../src/findings/codes.ts';
import { room } from '../rooms.ts';
import { clutchIn, codes, journal, pairIn, waxbills } from './facts.ts';
import { chicks, eggs, five } from './five-eggs.ts';

it('a chick that a count took for the dead one is said to have been counted, and how to name another', () => {
  const { hint } = kinds['dead-bird'];
  expect(hint({ who: 'c1' })).toMatch(
    'if another died, name it in the entry of that day, such as `died: c3`',
  );
  expect(hint({ who: 'LW-3/2/c1' })).toMatch('`died: c3`');
  expect(hint({ who: 'LW-20-11' })).toMatch('a new mate is `paired: {hen: ID}`');
});

describe('a count', () => {
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

    it('begins none while nobody wrote that theirs hatched, until there was time for a next one', () => {
      // Lavender waxbills lay again after five days at the soonest, sit 11 and lie in the nest 17 (species profile).
      const flown = (on: string) => {
        const files = {
          P: waxbills(
            `date: 2026-03-05, laid: 3\ndate: 2026-03-06, fostered: {BF-1: all}\ndate: ${on}, fledged: 2`,
          ),
          B: journal('BF-1', 'Bengalese finch', 'date: 2026-03-06, sitting'),
        };
        const known = room(files, '2026-05-20');
        return [pairIn(known, 'LW-1').clutches.length, ...codes(known)];
      };
      expect(flown('2026-04-05')).toEqual([1, 'too-many']);
      expect(flown('2026-04-07')).toEqual([1, 'too-many']);
      expect(flown('2026-04-08')).toEqual([2]);
      // A brood before it, of which nobody wrote either.
      expect(flown('2026-03-15')).toEqual([2]);
    });

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
        ['nobody-possible', `${there}, or name them here: c1, c2`],
      ]);
    });

    it('takes a brood that nobody saw as told where its clutch is named', () => {
      expect(told('date: 2026-04-20, clutch: 2, fledged: 2')).toEqual({ fixes: [], clutches: 2 });
    });
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

  it('of eggs takes none out of a nest whose young have flown, and more than are known out of one with eggs', () => {
    const known = (log: string) => codes(room({ P: waxbills(log) }, '2026-06-01'));
    expect(known('date: 2026-04-14, fledged: 3\ndate: 2026-04-29, pulled: 1')).toEqual(['too-many']);
    expect(
      known(
        'date: 2026-04-24, hatched: 3\ndate: 2026-04-26, checked: {eggs: 1}\ndate: 2026-04-27, pulled: 2',
      ),
    ).toEqual([]);
  });

  it('of more than all eggs of two clutches says only that they are too many', () => {
    const two =
      'date: 2026-03-01, laid: 1\ndate: 2026-03-03, clutch: 4, laid: 1\ndate: 2026-03-16, hatched: 6';
    const known = room({ P: waxbills(two, 'nest-looks: freely') }, '2026-03-16');
    expect(codes(known)).toEqual(['too-many']);
  });

  it('asks only about those who would do as well as the last that it takes', () => {
    const clear = 'date: 2026-03-11, candled: {clear: [e1, e2, e3]}\ndate: 2026-03-18, hatched: 4';
    expect(eggs(clear).codes).not.toContain('guessed');
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

  it('are none of those of whom one may have died in the place of an own chick', () => {
    const [finding] = room(
      files('date: 2026-03-22, died: c1\ndate: 2026-03-24, crops: {full: c1}'),
      '2026-04-10',
    ).findings;
    expect(finding && kinds[finding.code].hint(finding.args as never)).toMatch('of those here c2, or a slip');
    const hen = 'date: 2026-03-22, gone: {sold: hen}\ndate: 2026-03-24, died: hen';
    const parents = room({ P: waxbills(hen, 'cock: LW-19-04\nhen: LW-20-11') }, '2026-04-10');
    expect(parents.findings.map(({ args }) => args.others)).toEqual(['']);
  });

  it('or own young by count is another rate: a hint asks which', () => {
    expect(codes(room(files('date: 2026-04-10, died: 1'), '2026-04-10'))).toEqual(['guessed']);
  });
});
