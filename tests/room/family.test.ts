import { describe, expect, it } from 'vitest';
import { everReared } from '../../src/room/family.ts';
import { fullRef } from '../../src/room/model.ts';
import { room } from '../rooms.ts';
import { birdIn, codes, journal, until, waxbills } from './facts.ts';

// Whom `moved`, `treated` and `unwell` mean where they stand before what was done.

const { eggs, chicks, fledglings, young } = until;
const head = 'cock: LW-19-04\nhen: LW-20-11\nhousing: cage 3';
const known = (log: string, files = {}) => room({ P: waxbills(log, head), ...files }, '2026-07-01');

/** Who lives in the flight for young birds, and what is doubtful. */
function inFlight(log: string, files = {}): string[] {
  const stood = known(log, files);
  const there = stood.birds.filter(({ stays }) => stays.at(-1)?.housing === 'flight 3');
  return [...there.map(fullRef), ...codes(stood)];
}

it('a pair reared its own young and its guests, also those that died', () => {
  const stood = known(`${chicks}\ndate: 2026-03-20, died: c1`, {
    G: journal('LW-2', 'lavender waxbill', `${chicks}\ndate: 2026-03-19, fostered: {LW-1: c2}`),
  });
  const [pair] = stood.pairs;
  expect(pair === undefined ? [] : everReared(pair).map(fullRef)).toEqual([
    'LW-1/1/c1',
    'LW-1/1/c2',
    'LW-1/1/c3',
    'LW-2/1/c2',
  ]);
});

describe('a brood moved to the flight', () => {
  it('is all of it, once it feeds itself', () => {
    expect(inFlight(`${young}\ndate: 2026-04-26, moved: {all: flight 3}`)).toEqual([
      'LW-1/1/c1',
      'LW-1/1/c2',
      'LW-1/1/c3',
    ]);
  });

  it('is out of the nest where it is too old for one, though nobody wrote that it flew', () => {
    // Lavender waxbills leave the nest at 17 to 21 days and feed themselves from 35 on (species profile).
    expect(inFlight(`${chicks}\ndate: 2026-05-02, moved: {all: flight 3}`)).toHaveLength(3);
    expect(codes(known(`${chicks}\ndate: 2026-04-10, moved: {all: flight 3}`))).toEqual(['nobody-possible']);
  });

  it('is not a brood of months ago of which nobody wrote that it flew, where another is out', () => {
    const winter = 'date: 2026-01-01, laid: 3, sitting\ndate: 2026-01-14, hatched: 3';
    const spring =
      'date: 2026-03-05, laid: 3, sitting\ndate: 2026-03-18, hatched: 3\ndate: 2026-04-06, fledged: 3';
    for (const who of ['all', '3'])
      expect(inFlight(`${winter}\n${spring}\ndate: 2026-04-24, moved: {${who}: flight 3}`), who).toEqual([
        'LW-1/2/c1',
        'LW-1/2/c2',
        'LW-1/2/c3',
      ]);
    const moved = known(`${chicks}\ndate: 2026-05-02, moved: {all: flight 3}`);
    expect(birdIn(moved, 'LW-1/1/c1').fledged).not.toBeNull();
  });

  it('may still be fed: who feeds it goes on doing so', () => {
    const log = `${fledglings}\ndate: 2026-04-08, moved: {all: flight 3}`;
    expect(inFlight(log)).toHaveLength(3);
    expect(birdIn(known(log), 'LW-1/1/c1').stays.at(-1)?.nest?.id).toBe('LW-1');
  });

  it('leaves the nestlings of the next brood, the parents, and who lives elsewhere already', () => {
    const log = `${young}
      date: 2026-04-22, laid: 2, sitting
      date: 2026-04-28, moved: {c1: flight 9}
      date: 2026-05-05, hatched: 2
      date: 2026-05-10, moved: {all: flight 3}`;
    expect(inFlight(log)).toEqual(['LW-1/1/c2', 'LW-1/1/c3']);
  });

  it('leaves who died, and who is fed by another pair that lives beside it', () => {
    expect(
      inFlight(`${fledglings}\ndate: 2026-04-07, died: c2\ndate: 2026-04-08, moved: {all: flight 3}`),
    ).toEqual(['LW-1/1/c1', 'LW-1/1/c3']);
    const foster = journal('BF-1', 'bengalese finch', 'date: 2026-03-01, paired', 'housing: cage 3');
    const given = `${chicks}\ndate: 2026-03-20, fostered: {BF-1: c1}\ndate: 2026-04-06, fledged: [c1, c2, c3]`;
    expect(inFlight(`${given}\ndate: 2026-04-08, moved: {all: flight 3}`, { Q: foster })).toEqual([
      'LW-1/1/c2',
      'LW-1/1/c3',
    ]);
  });

  it('takes a brood that fed itself before fledglings, by count', () => {
    const log = `${young}
      date: 2026-04-22, laid: 2, sitting
      date: 2026-05-05, hatched: 2
      date: 2026-05-25, fledged: 2
      date: 2026-05-26, moved: {3: flight 3}`;
    expect(inFlight(log)).toEqual(['LW-1/1/c1', 'LW-1/1/c2', 'LW-1/1/c3']);
  });

  it('may be some of it, by name: in quotes, as names before a value stand', () => {
    expect(inFlight(`${young}\ndate: 2026-04-26, moved: {"c1, c3": flight 3, c2: flight 9}`)).toEqual([
      'LW-1/1/c1',
      'LW-1/1/c3',
    ]);
    expect(inFlight(`${young}\ndate: 2026-04-26, moved: {"c1, c7": flight 3}`)).toEqual([
      'LW-1/1/c1',
      'no-such-chick',
    ]);
  });

  it('may have been reared by hand, or by another pair', () => {
    const hand = `${chicks}\ndate: 2026-03-20, fostered: {hand: all}\ndate: 2026-04-06, fledged: all
      date: 2026-04-25, independent: all\ndate: 2026-04-26, moved: {all: flight 3}`;
    expect(inFlight(hand)).toHaveLength(3);
    const flying = `${chicks}\ndate: 2026-03-20, fostered: {hand: all}\ndate: 2026-04-06, fledged: all`;
    expect(inFlight(`${flying}\ndate: 2026-04-08, moved: {all: flight 3}`)).toHaveLength(3);
    const foster = journal(
      'BF-1',
      'bengalese finch',
      'date: 2026-04-06, fledged: all\ndate: 2026-04-25, independent: all\ndate: 2026-04-26, moved: {all: flight 3}',
    );
    const given = `${chicks}\ndate: 2026-03-20, fostered: {BF-1: [c1, c2]}`;
    expect(inFlight(given, { Q: foster })).toEqual(['LW-1/1/c1', 'LW-1/1/c2']);
  });

  it('of nestlings is nobody', () => {
    expect(inFlight(`${chicks}\ndate: 2026-03-26, moved: {all: flight 3}`)).toEqual(['nobody-possible']);
  });
});

describe('what is said of the health of all', () => {
  const told = (log: string) => {
    const stood = known(log);
    const of = (key: 'treated' | 'unwell') =>
      stood.birds.filter((bird) => bird[key].length > 0).map(({ id }) => id);
    return [of('treated').sort(), of('unwell').sort(), codes(stood)];
  };
  const family = ['LW-1/1/c1', 'LW-1/1/c2', 'LW-1/1/c3', 'LW-19-04', 'LW-20-11'];

  it('is said of parents and young', () => {
    const all = 'treated: {all: as the vet ordered}, unwell: {all: fluffed}';
    expect(told(`${chicks}\ndate: 2026-03-20, ${all}`)).toEqual([family, family, []]);
    expect(told(`${eggs}\ndate: 2026-03-20, ${all}`)).toEqual([family.slice(3), family.slice(3), []]);
  });

  it('leaves out who is dead, and who feeds itself', () => {
    const log = `${young}\ndate: 2026-04-26, died: hen\ndate: 2026-04-27, treated: {all: as the vet ordered}`;
    expect(told(log)).toEqual([['LW-19-04'], [], []]);
  });

  it('is said of the parent that is left where the other died', () => {
    const widowed = `${eggs}\ndate: 2026-03-06, died: hen\n`;
    const stood = known(`${widowed}date: 2026-03-08, treated: as the vet ordered`);
    expect(birdIn(stood, 'LW-19-04').treated).toHaveLength(1);
    expect(birdIn(stood, 'LW-20-11').treated).toEqual([]);
    expect(codes(stood)).toEqual([]);
    const none = known(
      `${widowed}date: 2026-03-07, died: cock\ndate: 2026-03-08, treated: as the vet ordered`,
    );
    expect(codes(none)).toEqual(['dead-bird', 'dead-bird']);
  });

  it('by count is said of young, by name of anyone', () => {
    expect(told(`${chicks}\ndate: 2026-03-20, unwell: {2: cold}, treated: {"c3, hen": warmth}`)).toEqual([
      ['LW-1/1/c3', 'LW-20-11'],
      ['LW-1/1/c1', 'LW-1/1/c2'],
      [],
    ]);
  });
});

describe('young that are moved by count', () => {
  const brood = 'date: 2026-03-05, laid: 1, sitting\ndate: 2026-03-18, hatched: 1';
  const livesIn = (log: string) => birdIn(known(`${brood}\n${log}`), 'LW-1/1/c1').stays.at(-1)?.housing;

  it('are those that are out, be it of the box in which they were reared, and none that was moved away before', () => {
    for (const to of ['hand', 'incubator'])
      expect(
        livesIn(
          `date: 2026-03-22, fostered: {${to}: c1}\ndate: 2026-05-01, independent: 1\ndate: 2026-05-02, moved: {1: cage 9}`,
        ),
        to,
      ).toBe('cage 9');
    const away = 'date: 2026-04-06, fledged: c1\ndate: 2026-04-10, moved: {c1: cage 9}';
    expect(livesIn(`${away}\ndate: 2026-05-26, moved: {1: flight 2}`)).toBe('cage 9');
  });
});
