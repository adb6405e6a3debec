import { describe, expect, it } from 'vitest';
import { fullRef } from '../../src/room/model.ts';
import { room } from '../rooms.ts';
import { birdIn, clutchIn, codes, fates, journal, pairIn, waxbills } from './facts.ts';
import { chicks, dead, five } from './five-eggs.ts';

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

describe('a number that two clutches have', () => {
  const known = (log: string, files = {}) => room({ P: waxbills(log), ...files }, '2026-07-01');

  it('of an egg that is measured means the one that there is', () => {
    const two = `date: 2026-03-05, laid: 2\ndate: 2026-03-12, clutch: 2, site: right, laid: 2`;
    const sizes = (lost: number) => {
      const measured = known(
        `${two}\ndate: 2026-03-14, clutch: ${lost}, lost: {broken: all}\ndate: 2026-03-16, measured: {e1: 14.2 x 10.8}`,
      );
      return [
        ...pairIn(measured, 'LW-1').clutches.map(({ eggs }) => eggs[0]?.size?.length),
        ...codes(measured),
      ];
    };
    expect(sizes(1)).toEqual([undefined, 14.2]);
    expect(sizes(2)).toEqual([14.2, undefined]);
  });

  it('of grown young means the younger, and asks', () => {
    const broods = ['2026-03', '2026-05'].map(
      (month) => `date: ${month}-01, laid: 2, sitting\ndate: ${month}-14, hatched: 2`,
    );
    const log = `${broods[0]}\ndate: 2026-04-02, fledged: all\ndate: 2026-04-25, independent: all
      ${broods[1]}\ndate: 2026-06-02, fledged: 2\ndate: 2026-06-25, independent: all`;
    const weighed = known(`${log}\ndate: 2026-06-28, weighed: {c1: 8.1}`);
    expect(['LW-1/1/c1', 'LW-1/2/c1'].map((name) => birdIn(weighed, name).weights.length)).toEqual([0, 1]);
    expect(codes(weighed)).toEqual(['which-clutch']);
  });

  it('is found though the entry names a nest in which nobody has it', () => {
    const log =
      'date: 2026-03-05, site: left, laid: 2\ndate: 2026-03-12, site: right, candled: {fertile: e1}';
    expect(clutchIn(known(log), 'LW-1/1').eggs.map(({ lamp }) => lamp.length)).toEqual([1, 0]);
  });
});

it('`ring:` names the wearer, though another bird of the list is called so', () => {
  const list = { 'birds.yaml': 'birds:\n  - {id: LW 26 015}\n' };
  expect(dead('ring:LW 26 015', list)).toEqual({ dead: ['c2'], codes: [] });
});

it('a ring that the bird list gives to a chick of the room is on no other', () => {
  const files = {
    'birds.yaml': 'birds:\n  - {id: Pearl, is: LW-1/1/c1, ring: LW 26 001}\n',
    P: waxbills(`${chicks}\ndate: 2026-03-24, ringed: {c1: LW 26 001}`),
  };
  const known = room(files, '2026-03-24');
  expect([birdIn(known, 'Pearl').ringed !== null, codes(known)]).toEqual([true, []]);
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
