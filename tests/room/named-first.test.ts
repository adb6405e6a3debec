import { describe, expect, it } from 'vitest';
import type { Bird } from '../../src/room/model.ts';
import { room } from '../rooms.ts';
import { clutchIn, codes, waxbills } from './facts.ts';

// A keeper writes `crops: {full: all, thin: c3}`, and `fertile: 3, clear: e2`, in whichever order: the one that has a
// name is told by it, and the number or `all` means the others.

const known = (...entries: string[]) =>
  room(
    {
      P: waxbills(
        ['date: 2026-03-05, laid: 4, sitting: hen', ...entries.map((entry) => `date: ${entry}`)].join('\n'),
        'cock: LW-19-04\nhen: LW-20-11\nhousing: cage 3',
      ),
    },
    '2026-06-01',
  );
const hatched = '2026-03-18, hatched: 4';
const out = ['2026-04-06, fledged: all', '2026-04-28, independent: all'];

it('of what the lamp shows, the egg that is named is not among the counted ones', () => {
  for (const said of ['{fertile: 3, clear: e2}', '{clear: e2, fertile: 3}', '{fertile: all, clear: e2}']) {
    const room = known(`2026-03-14, candled: ${said}`);
    expect(codes(room), said).toEqual([]);
    const seen = clutchIn(room, 'LW-1/1').eggs.map(({ lamp }) => lamp.map(({ saw }) => saw).join());
    expect(seen, said).toEqual(['fertile', 'clear', 'fertile', 'fertile']);
  }
});

describe('of the young', () => {
  const told = (tell: (bird: Bird) => unknown, ...entries: string[]) => {
    const room = known(hatched, ...entries);
    expect(codes(room), entries.at(-1)).toEqual([]);
    return clutchIn(room, 'LW-1/1').chicks.map(tell);
  };

  it.each(['{full: all, thin: c3}', '{thin: c3, full: all}', '{full: 3, thin: c3}'])(
    'a thin crop is no full one: %s',
    (said) => {
      const crops = told((bird) => bird.crops.map(({ crop }) => crop).join(), `2026-03-22, crops: ${said}`);
      expect(crops).toEqual(['full', 'full', 'thin', 'full']);
    },
  );

  it.each(['{chilled: 1, starved: c1}', '{starved: c1, chilled: 1}'])(
    'two died of two causes: %s',
    (said) => {
      const causes = told(
        ({ fate }) => (fate?.kind === 'died' ? fate.cause : null),
        `2026-03-22, died: ${said}`,
      );
      expect(causes).toEqual(['starved', 'chilled', null, null]);
    },
  );

  it.each(['{hen: c3, cock: all}', '{cock: all, hen: c3}'])(
    'one is a hen and the others cocks: %s',
    (said) => {
      expect(told(({ sex }) => sex, `2026-04-20, sexed: ${said}`)).toEqual(['cock', 'cock', 'hen', 'cock']);
    },
  );

  it.each(['{nest: c3, out: all}', '{out: all, nest: c3}'])(
    'one sleeps in the nest, the rest out: %s',
    (said) => {
      const nights = told(
        ({ roosting }) => roosting.map(({ where }) => where).join(),
        '2026-04-06, fledged: all',
        `2026-04-07, roosting: ${said}`,
      );
      expect(nights).toEqual(['out', 'out', 'nest', 'out']);
    },
  );

  it.each(['{c3: cage 5, all: flight 7}', '{all: flight 7, c3: cage 5}'])(
    'one goes elsewhere: %s',
    (said) => {
      const homes = told(({ stays }) => stays.at(-1)?.housing, ...out, `2026-05-01, moved: ${said}`);
      expect(homes).toEqual(['flight 7', 'flight 7', 'cage 5', 'flight 7']);
    },
  );

  it.each(['{sold: 1, given: c1}', '{given: c1, sold: 1}', '{given: c1, sold: c2}'])(
    'one is given: %s',
    (said) => {
      const ways = told(
        ({ fate }) => (fate?.kind === 'gone' ? fate.how : null),
        ...out,
        `2026-05-01, gone: ${said}`,
      );
      expect(ways).toEqual(['given', 'sold', null, null]);
    },
  );

  it.each(['{5: all, 3: c4}', '{3: c4, 5: all}'])('one is younger: %s', (said) => {
    const ages = told(({ aged }) => aged?.days, `2026-03-21, aged: ${said}`);
    expect(ages).toEqual([5, 5, 5, 3]);
  });
});

it('who is named twice in one look is asked about', () => {
  const room = known(hatched, '2026-03-22, crops: {full: [c1, c3], thin: c3}');
  expect(codes(room)).toEqual(['impossible']);
});
