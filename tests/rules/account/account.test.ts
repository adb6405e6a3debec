import { describe, expect, it } from 'vitest';
import { accountOf } from '../../../src/rules/account/account.ts';
import { discretionOf } from '../../../src/rules/discretion/discretion.ts';
import type { Tellable } from '../../../src/rules/discretion/tellable.ts';
import { pairStory } from '../../../src/rules/season/story.ts';
import { known, ON } from '../../report/seasons.ts';
import { day, type Files, record, room } from '../../rooms.ts';

/** The account of LW-1 in a room, with what may be told. */
function account(files: Files, on: string, ...told: Tellable[]) {
  const [read, understood] = [record(files, on), room(files, on)];
  const pair = understood.pairs.find(({ id }) => id === 'LW-1');
  if (pair === undefined) throw new Error('no LW-1');
  const asked = new Set(told);
  const discreet = discretionOf(read, understood, asked);
  return accountOf(understood, read.pairs, pairStory(understood, pair), { discreet, told: asked });
}

const kept: Files = {
  'nestlog.yaml': `
    room: the elm room
    log:
      - {date: 2026-02-02, food: greens}
      - {date: 2026-12-02, food: later}
  `,
  'LW-1': `
    pair: LW-1
    species: lavender waxbill
    cock: LW-19-04
    hen: LW-20-11
    housing: flight 2
    nest-looks: never
    log:
      - {date: 2026-02-01, paired, food: [dry seed, "private: the mix of a friend"], note: "moved in from flight 9"}
      - {date: 2026-02-03, courting: before LW-20-11, nest: {state: lined, site: broom by flight 3, height: 180, material: moss}}
      - {date: 2026-02-04, chasing: {by: LW-19-04, at: hen, level: hard}, food: {live food: 9}}
      - {date: 2026-03-01, clutch: 1, laid: 4, sitting, note: "private: four at last"}
      - {date: 2026-03-13, hatched: 4}
      - {date: 2026-03-20, ringed: {c1: LW 26 01}}
      - {date: 2026-03-21, died: {"fell from the nest of LW-1": c2}}
      - {date: 2026-03-22, moved: aviary}
  `,
};

describe('an account', () => {
  it('tells that one of the two died or left, whichever file has it, and names nobody', () => {
    const pair = (more: string): Files => ({
      'birds.yaml': 'birds:\n  - {id: LW-20-11, log: [{date: 2026-05-02, gone: escaped}]}\n',
      'LW-1': `pair: LW-1\nspecies: lavender waxbill\ncock: LW-19-04\nhen: LW-20-11\nlog:\n  - {date: 2026-02-01, paired}\n${more}`,
    });
    const cock = '  - {date: 2026-04-01, died: {egg food of LW-1 gone off: cock}}\n';
    const told = (more: string) => account(pair(more), '2026-06-01').care.together.map(({ text }) => text);
    expect(told(cock)).toEqual(['put together', 'the cock died: egg food of [pair] gone off']);
    const anew = '  - {date: 2026-04-10, paired: {cock: LW-22-03}}\n';
    expect(told(cock + anew)).toEqual([
      'put together',
      'the cock died: egg food of [pair] gone off',
      'put together with a new cock',
      'the hen left the room',
    ]);
    expect(told('  - {date: 2026-04-01, parted}\n')).toEqual(['put together', 'parted']);
  });

  it('tells how the pair was kept, and names nobody', () => {
    const told = account(kept, '2026-04-01');
    expect(told.species).toEqual({ common: 'lavender waxbill', scientific: 'Glaucestrilda caerulescens' });
    expect(told.housing).toEqual(['flight', 'aviary']);
    expect(told.nestLooks).toBe('never');
    expect([told.names, told.rings, told.notes]).toEqual([null, null, null]);
    expect(told.care).toEqual({
      together: [
        { day: day('2026-02-01'), text: 'put together' },
        { day: day('2026-02-03'), text: 'courting: before [bird]' },
        { day: day('2026-02-04'), text: 'hard chasing by another bird, of the hen' },
      ],
      nests: [{ day: day('2026-02-03'), text: 'lined, broom by [flight], height 180, of moss' }],
      food: [
        { day: day('2026-02-01'), text: 'dry seed' },
        { day: day('2026-02-02'), text: 'greens (for the whole room)' },
        { day: day('2026-02-04'), text: 'live food 9 g a day' },
      ],
    });
    expect(told.clutches[0]?.losses).toEqual([
      { what: 'young', cause: 'fell from the nest of [pair]', number: 1 },
    ]);
  });

  it('tells names, rings, places and notes where each was asked for', () => {
    expect(account(kept, '2026-04-01', 'names').names).toEqual({
      pair: 'LW-1',
      cock: ['LW-19-04'],
      hen: ['LW-20-11'],
    });
    expect(account(kept, '2026-04-01', 'rings').rings).toEqual([{ chick: '1/c1', ring: 'LW 26 01' }]);
    expect(account(kept, '2026-04-01', 'places').housing).toEqual(['flight 2', 'aviary']);
    expect(account(kept, '2026-04-01', 'notes').notes).toEqual([
      { day: day('2026-02-01'), text: 'moved in from [flight]' },
    ]);
  });

  it('has the counts, days and rates of the pair’s own story', () => {
    const told = account(known, ON);
    expect(
      told.clutches.map(({ number, eggs, chicks, left, fed }) => [number, eggs, chicks, left, fed]),
    ).toEqual([
      [1, 5, 3, 2, 2],
      [2, 4, 2, 2, 1],
    ]);
    expect(told.clutches[0]).toMatchObject({
      fertile: 4,
      clear: 1,
      laid: { from: day('2026-03-01'), to: day('2026-03-05') },
      hatched: { from: day('2026-03-16'), to: day('2026-03-16') },
      over: day('2026-04-25'),
      losses: [
        { what: 'egg', cause: 'dead-in-shell', number: 1 },
        { what: 'egg', cause: 'clear', number: 1 },
        { what: 'young', cause: 'cold', number: 1 },
      ],
    });
    expect(told.clutches[1]).toMatchObject({ fostered: 1, taken: 0 });
    expect(told.rates.fertility).toMatchObject({ k: 6, n: 8 });
    expect(told.durations).toEqual([
      { kind: 'incubation', clutches: 2, unseen: 1, shortest: 10, longest: 13, mean: 12 },
      {
        kind: 'fledging',
        clutches: 2,
        unseen: 1,
        shortest: expect.any(Number),
        longest: expect.any(Number),
        mean: expect.any(Number),
      },
    ]);
  });

  it('knows what is dated on its day, and nothing that is dated later', () => {
    const early = account(kept, '2026-02-03', 'notes');
    expect(early.clutches).toEqual([]);
    expect(early.care.food).toHaveLength(2);
    expect(early.care.nests).toHaveLength(1);
    expect(account(kept, '2026-02-02').care.food).toHaveLength(2);
  });

  it('goes through time in order, whatever the order of the lines; who moves there and back is told so', () => {
    const moves = account(
      {
        'LW-1': `
          pair: LW-1
          species: lavender waxbill
          housing: flight 2
          log:
            - {date: 2026-06-01, moved: "private: the back room", note: third}
            - {date: 2026-04-01, moved: cage 9, note: second}
            - {date: 2026-04-05, clutch: 2, laid: 4}
            - {date: 2026-02-01, paired, note: first}
            - {date: 2026-03-01, clutch: 1, laid: 4}
            - {date: 2026-03-05, lost: {deserted: all}}
            - {date: 2026-04-10, lost: {deserted: all}}
            - {date: 2026-05-01, moved: flight 2}
            - {date: 2026-05-05, clutch: 3, laid: 4}
            - {date: 2026-05-10, lost: {deserted: all}}
            - {date: 2026-05-15, clutch: 4, laid: 4}
        `,
      },
      '2026-06-15',
      'places',
      'notes',
    );
    expect(moves.notes?.map(({ text }) => text)).toEqual(['first', 'second', 'third']);
    expect(moves.housing).toEqual(['flight 2', 'cage 9', 'flight 2']);
  });
});

it('a species that nobody has a profile of is named as the journal names it, one that nobody named not at all', () => {
  const log = 'log:\n  - {date: 2026-02-01, paired}';
  expect(account({ 'LW-1': `pair: LW-1\nspecies: ridge finch\n${log}` }, '2026-03-01').species).toEqual({
    common: 'ridge finch',
    scientific: null,
  });
  expect(account({ 'LW-1': `pair: LW-1\n${log}` }, '2026-03-01').species).toBeNull();
});
