import { describe, expect, it } from 'vitest';
import { room } from '../rooms.ts';
import { clutchIn, codes, days, due, journal, pairIn, spell, warned, waxbills } from './morning.ts';

// One egg every other day, sat on from the first (common practice for parakeets).
describe('a budgerigar that sits from her first egg', () => {
  const files = {
    a: journal(
      'B-1',
      'budgerigar',
      `
      date: 2026-03-01, laid: 1, sitting: hen
      date: 2026-03-03, laid: 1
      date: 2026-03-05, laid: 1
      date: 2026-03-07, laid: 1
      date: 2026-03-18, checked
      date: 2026-03-19, hatched: e1
      date: 2026-03-21, hatched: e2
      date: 2026-03-23, hatched: e3
      date: 2026-03-25, hatched: e4
    `,
    ),
  };

  it('hatches them two days apart, and every chick keeps its own day', () => {
    const { chicks } = clutchIn(room(files, '2026-03-25'), 'B-1/1');
    expect(chicks.map(({ hatched }) => hatched && days(hatched))).toEqual([
      '03-19',
      '03-20…03-21',
      '03-22…03-23',
      '03-24…03-25',
    ]);
  });

  // Ring age 5–10 days, looked for from a day before: c1 of the 19th from the 23rd, c2 (20th–21st) from the 24th.
  it('rings each chick at its own age, not the brood at one', () => {
    const rings = (on: string) => due(files, on).filter((line) => line.includes(' ring '));
    expect(rings('2026-03-22')).toEqual([]);
    expect(rings('2026-03-23')).toEqual(['B-1 ring c1']);
    expect(rings('2026-03-24')).toEqual(['B-1 ring c1', 'B-1 ring c2']);
    // The 29th is the last day for c1, the 31st for c2.
    expect(rings('2026-03-30')).toEqual(['B-1 ring c2', 'B-1 ring c3', 'B-1 ring c4']);
  });

  it('is not told of a missing egg on the day between two', () => {
    expect(warned(files, 'egg-gap', '2026-03-04')).toEqual([]);
    expect(due(files, '2026-03-04')).not.toContain('B-1 next-egg');
  });
});

describe('a second clutch while the first brood is fed', () => {
  const files = {
    a: waxbills(`
      date: 2026-03-01, laid: 1
      date: 2026-03-04, laid: 3, sitting
      date: 2026-03-16, hatched: 4
      date: 2026-04-03, fledged: 4
      date: 2026-04-09, laid: 1
      date: 2026-04-12, laid: 3, sitting
    `),
  };

  it('is a clutch of its own: young that are fed and eggs that are sat on, each with their days', () => {
    const { clutches, here } = pairIn(room(files, '2026-04-12'), 'LW-1');
    expect(clutches.map(({ eggs }) => eggs.length)).toEqual([4, 4]);
    expect([here.young.size, here.eggs.size]).toEqual([4, 4]);
    // Sitting on 12 April: candling on the 17th and 18th.
    expect(spell(files, 'candle', 'LW-1', '2026-04-05', '2026-04-30')).toEqual(['04-17 … 04-18']);
  });

  // Hatched by 16 March: by 20 April the eldest are 35 d, and young of this species feed themselves at 30–40 d.
  it('goes on asking whether the first brood feeds itself', () => {
    expect(due(files, '2026-04-20')).toContain('LW-1 independent');
  });

  it('no longer asks for the old nest, nor whether a parent drives', () => {
    expect(due(files, '2026-04-12').filter((line) => /nest-down|watch-restart/.test(line))).toEqual([]);
  });

  it('an egg named by ref is of the new clutch, whose eggs are in the nest', () => {
    const more = { a: `${files.a}\n  - {date: 2026-04-14, lost: {broken: e1}}` };
    const known = room(more, '2026-04-14');
    expect(clutchIn(known, 'LW-1/2').eggs[0]?.fate?.kind).toBe('lost');
    expect(codes(known)).toEqual([]);
  });
});

describe('two nests of one pair', () => {
  const files = {
    a: waxbills(`
      date: 2026-03-01, site: gorse, laid: 1
      date: 2026-03-04, site: gorse, laid: 3, sitting
      date: 2026-03-16, site: gorse, hatched: 4
      date: 2026-03-28, site: basket, laid: 1
      date: 2026-03-31, site: basket, laid: 3
    `),
  };

  it('have a clutch each, and what is said of one nest is not said of the other', () => {
    const known = room(files, '2026-03-31');
    expect(['LW-1/1', 'LW-1/2'].map((name) => clutchIn(known, name).site)).toEqual(['gorse', 'basket']);
    expect(clutchIn(known, 'LW-1/2').eggs.map((egg) => days(egg.laid))).toEqual([
      '03-28',
      '03-29',
      '03-30',
      '03-31',
    ]);
    expect(codes(known)).toEqual([]);
  });
});
