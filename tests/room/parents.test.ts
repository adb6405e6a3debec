import { describe, expect, it } from 'vitest';
import { housingOf, isDependent } from '../../src/room/lives.ts';
import { day, type Files, room } from '../rooms.ts';
import { birdIn, codes, days, journal, pairIn, waxbills } from './facts.ts';

// Who makes up a pair, where they live, and who comes along.

const heads = 'cock: LW-19-04\nhen: LW-20-11\nhousing: cage 3';
const at = (log: string, more: Files = {}, on = '2026-07-01') =>
  room({ P: waxbills(log, heads), ...more }, on);
const pair = (log: string) => pairIn(at(log), 'LW-1');
const brood = `date: 2026-03-05, laid: 2, sitting
  date: 2026-03-18, hatched: [e1, e2]`;

describe('a new mate', () => {
  const start = 'date: 2026-03-01, paired';

  it('takes the place of the old one from that day', () => {
    const { cock, hen, partings } = pair(
      `${start}\ndate: 2026-04-01, parted\ndate: 2026-04-09, paired: {hen: LW-21-02}`,
    );
    expect([cock, hen]).toEqual([['LW-19-04'], ['LW-21-02']]);
    expect(partings.map(({ what, cock, hen }) => `${what} ${cock} ${hen}`)).toEqual([
      'paired LW-19-04 LW-20-11',
      'parted LW-19-04 LW-20-11',
      'paired LW-19-04 LW-21-02',
    ]);
    expect(pair(`${start}\ndate: 2026-04-09, paired: {cock: LW-22-01}`).cock).toEqual(['LW-22-01']);
  });

  it.each([
    ['date: 2026-04-09, paired: {hen: LW-21-02}', ['paired-anew']],
    ['date: 2026-04-09, paired: {cock: LW-22-01}', ['paired-anew']],
    ['date: 2026-04-01, parted\ndate: 2026-04-09, paired: {hen: LW-21-02}', []],
    ['date: 2026-04-01, died: hen\ndate: 2026-04-09, paired: {hen: LW-21-02}', []],
    ['date: 2026-04-01, died: cock\ndate: 2026-04-09, paired: {hen: LW-21-02}', ['paired-anew', 'dead-bird']],
    ['date: 2026-04-09, paired: {hen: LW-20-11}', []],
    ['date: 2026-04-09, paired', []],
    ['date: 2026-04-09, reunited: {hen: LW-21-02}', []],
  ])('is a doubt while the old one is alive and was not parted: %s', (entries, found) => {
    expect(codes(at(`${start}\n${entries}`)).toSorted()).toEqual(found.toSorted());
  });

  it('is none where nobody knew who the first was', () => {
    const named = (cock: string) =>
      codes(
        room(
          { P: waxbills(`${start}\ndate: 2026-03-05, paired: {cock: LW-19-07}`, `${cock}hen: LW-20-11`) },
          '2026-07-01',
        ),
      );
    expect(named('')).toEqual([]);
    expect(named('cock: [LW-19-06, LW-19-07]\n')).toEqual([]);
    expect(named('cock: [LW-19-04, LW-19-05]\n')).toEqual(['paired-anew']);
  });

  it('named at the first pairing is no new mate', () => {
    expect(codes(at('date: 2026-03-01, paired: {hen: LW-21-02}'))).toEqual([]);
    expect(
      codes(at('date: 2026-02-20, food: [egg food]\ndate: 2026-03-01, paired: {hen: LW-21-02}')),
    ).toEqual([]);
  });

  it('has the sex of its place and is known from that day, and lives where the pair lives', () => {
    const known = at(`${start}\ndate: 2026-04-01, parted\ndate: 2026-04-09, paired: {hen: LW-21-02}`);
    expect(birdIn(known, 'LW-21-02')).toMatchObject({ sex: 'hen', firstSeen: day('2026-04-09') });
    expect(housingOf(birdIn(known, 'LW-21-02'))).toBe('cage 3');
    expect(birdIn(known, 'LW-19-04')).toMatchObject({ sex: 'cock', firstSeen: day('2026-03-01') });
  });

  it('bred here and not yet told to feed itself does so since it left the nest', () => {
    const files = {
      Q: journal(
        'LW-2',
        'lavender waxbill',
        'date: 2026-06-10, paired: {hen: LW-1/1/c1}',
        'cock: LW-22-01\nhousing: cage 8',
      ),
    };
    const young = (log: string, more: Files = files) => {
      const bird = birdIn(at(log, more), 'LW-1/1/c1');
      return [bird.independent && days(bird.independent.span), housingOf(bird), isDependent(bird)];
    };
    expect(young(`${brood}\ndate: 2026-04-06, fledged: 2`)).toEqual(['04-06…06-10', 'cage 8', false]);
    expect(young(brood)).toEqual(['06-10', 'cage 8', false]);
    const known = at(`${brood}\ndate: 2026-04-06, fledged: 2`, files);
    expect([...pairIn(known, 'LW-1').here.young].map(({ ref }) => ref)).toEqual(['c2']);
    // Named at the head of the journal, it is so from the first entry on; one of two is nobody in particular.
    const head = (hen: string) => ({
      Q: journal('LW-2', 'lavender waxbill', 'date: 2026-06-10, courting', `hen: ${hen}\nhousing: cage 8`),
    });
    expect(young(`${brood}\ndate: 2026-04-06, fledged: 2`, head('LW-1/1/c1'))).toEqual([
      '04-06…06-10',
      'cage 8',
      false,
    ]);
    expect(young(brood, head('LW-1/1/c1'))).toEqual(['06-10', 'cage 8', false]);
    expect(young(brood, head('[LW-1/1/c1, LW-20-12]'))).toEqual([null, 'cage 3', true]);
  });
});

describe('a pair', () => {
  it('is of the bird list’s sex and home until its journal says otherwise', () => {
    const list = {
      'birds.yaml': 'birds:\n  - {id: LW-20-11, sex: cock, log: [{date: 2026-02-01, arrived: cage 9}]}\n',
    };
    const known = at('date: 2026-03-01, courting', list);
    expect(birdIn(known, 'LW-20-11')).toMatchObject({ sex: 'cock', firstSeen: day('2026-02-01') });
    expect(housingOf(birdIn(known, 'LW-20-11'))).toBe('cage 9');
    expect(housingOf(birdIn(known, 'LW-19-04'))).toBe('cage 3');
    expect(housingOf(birdIn(at('date: 2026-03-01, paired', list), 'LW-20-11'))).toBe('cage 3');
  });

  it('paired into another flight lives there, and the young that it feeds with it', () => {
    const known = at(`${brood}\ndate: 2026-04-08, reunited: flight 2`);
    expect(pairIn(known, 'LW-1').housing).toBe('flight 2');
    for (const id of ['LW-19-04', 'LW-20-11', 'LW-1/1/c1', 'LW-1/1/c2'])
      expect(housingOf(birdIn(known, id)), id).toBe('flight 2');
    expect(birdIn(known, 'LW-1/1/c1').stays.at(-1)).toMatchObject({
      nest: { id: 'LW-1' },
      clutch: { number: 1 },
    });
    expect(pairIn(known, 'LW-1').here.young.size).toBe(2);
    const same = at(`${brood}\ndate: 2026-04-08, reunited`);
    expect(birdIn(same, 'LW-1/1/c1').stays).toHaveLength(1);
    expect(housingOf(birdIn(same, 'LW-20-11'))).toBe('cage 3');
  });

  it('parted lives where each was put, and the other stays', () => {
    const known = at('date: 2026-03-01, paired\ndate: 2026-04-01, parted: {hen: flight 7}');
    expect(['LW-19-04', 'LW-20-11'].map((id) => housingOf(birdIn(known, id)))).toEqual([
      'cage 3',
      'flight 7',
    ]);
  });

  it('parted and put together on one day was parted first: with a new mate, or with the old one again', () => {
    const told = (log: string) =>
      pairIn(at(`date: 2026-03-01, paired\n${log}`), 'LW-1').partings.map(
        ({ what, hen }) => `${what} ${hen}`,
      );
    const anew = ['paired LW-20-11', 'parted LW-20-11', 'paired LW-21-02'];
    const parted = 'date: 2026-04-01, parted: {hen: flight 7}';
    const paired = 'date: 2026-04-01, paired: {hen: LW-21-02}';
    for (const log of [`${parted}\n${paired}`, `${paired}\n${parted}`, `${parted}, paired: {hen: LW-21-02}`])
      expect(told(log), log).toEqual(anew);
    const known = at(`date: 2026-03-01, paired\n${parted}\n${paired}`);
    expect(codes(known)).toEqual([]);
    expect(['LW-20-11', 'LW-21-02'].map((id) => housingOf(birdIn(known, id)))).toEqual([
      'flight 7',
      'cage 3',
    ]);
    expect(told(`${parted}, reunited`)).toEqual(['paired LW-20-11', 'parted LW-20-11', 'reunited LW-20-11']);
    expect(told(`${parted}\n${paired}\ndate: 2026-04-01, reunited`)).toEqual([...anew, 'reunited LW-21-02']);
  });

  it('parted in the evening was parted before it got a new mate at an hour that nobody wrote', () => {
    const log = `date: 2026-03-01, paired
      date: 2026-04-01, paired: {hen: LW-21-02}\ndate: 2026-04-01, time: 18:00, parted`;
    expect(pairIn(at(log), 'LW-1').partings.at(-1)).toMatchObject({ what: 'paired', hen: ['LW-21-02'] });
    expect(codes(at(log))).toEqual([]);
  });

  it('put together and parted on one day stays apart where it was apart before, or where the times say so', () => {
    const last = (log: string) => pairIn(at(log), 'LW-1').partings.at(-1)?.what;
    expect(last('date: 2026-03-01, paired, parted')).toBe('parted');
    // Put into a flight together, where it came to blows.
    expect(last('date: 2026-03-01, paired\ndate: 2026-04-01, paired: flight 2, parted')).toBe('parted');
    expect(
      last('date: 2026-03-01, paired\ndate: 2026-03-20, parted\ndate: 2026-04-01, reunited, parted'),
    ).toBe('parted');
    expect(
      last(
        'date: 2026-03-01, paired\ndate: 2026-04-01, time: "08:00", paired: {hen: LW-21-02}\ndate: 2026-04-01, time: "18:00", parted',
      ),
    ).toBe('parted');
  });

  it('moved goes with its young; who is dead, parted or was put elsewhere does not', () => {
    const moved = (entries: string) => {
      const known = at(`${brood}\n${entries}\ndate: 2026-04-08, moved: flight 5`);
      expect(pairIn(known, 'LW-1').housing).toBe('flight 5');
      return ['LW-19-04', 'LW-20-11', 'LW-1/1/c1'].map((id) => housingOf(birdIn(known, id)));
    };
    expect(moved('')).toEqual(['flight 5', 'flight 5', 'flight 5']);
    expect(moved('date: 2026-04-01, parted: {cock: flight 7}')).toEqual(['flight 7', 'flight 5', 'flight 5']);
    expect(moved('date: 2026-04-01, died: hen')).toEqual(['flight 5', 'cage 3', 'flight 5']);
    expect(moved('date: 2026-04-01, moved: {cock: cage 1}')).toEqual(['cage 1', 'flight 5', 'flight 5']);
    const chick = at(`${brood}\ndate: 2026-04-08, moved: {c1: cage 4}`);
    expect(birdIn(chick, 'LW-1/1/c1').stays.at(-1)).toMatchObject({
      housing: 'cage 4',
      nest: { id: 'LW-1' },
      clutch: { number: 1 },
    });
    expect(pairIn(chick, 'LW-1').housing).toBe('cage 3');
  });
});

describe('a clutch', () => {
  it('is of the parents and in the housing of the day on which it was begun', () => {
    const { clutches } = pair(`date: 2026-03-01, paired
      date: 2026-03-05, site: gorse, laid: 1
      date: 2026-03-07, lost: {eaten: all}
      date: 2026-04-01, parted
      date: 2026-04-09, paired: {hen: LW-21-02}
      date: 2026-04-10, moved: flight 5
      date: 2026-04-20, laid: 1`);
    expect(clutches.map(({ cock, hen, housing, site }) => [cock, hen, housing, site])).toEqual([
      [['LW-19-04'], ['LW-20-11'], 'cage 3', 'gorse'],
      [['LW-19-04'], ['LW-21-02'], 'flight 5', null],
    ]);
  });
});

describe('home again', () => {
  const fledged = `${brood}\ndate: 2026-04-06, fledged: 2`;
  const grown = `${fledged}\ndate: 2026-04-25, independent: 2`;

  it('a fledgling is fed as before, a grown bird by nobody', () => {
    const back = (log: string) => birdIn(at(log), 'LW-1/1/c1');
    const young = back(`${fledged}\ndate: 2026-04-08, gone: {escaped: c1}\ndate: 2026-04-09, back: c1`);
    expect(young.stays.at(-1)).toMatchObject({
      housing: 'cage 3',
      nest: { id: 'LW-1' },
      clutch: { number: 1 },
    });
    const old = back(`${grown}\ndate: 2026-05-08, gone: {escaped: c1}\ndate: 2026-05-09, back: c1`);
    expect(old.stays.at(-1)).toMatchObject({ housing: 'cage 3', nest: null, clutch: null });
    expect([old.fate, old.arrived]).toEqual([null, null]);
    expect(old.quarantine && days({ from: old.quarantine.from, to: old.quarantine.until })).toBe(
      '05-09…06-08',
    );
  });

  it('from outside it stays apart, found in the room it does not', () => {
    const missing = birdIn(
      at(`${fledged}\ndate: 2026-04-08, died: {missing: c1}\ndate: 2026-04-09, back: c1`),
      'LW-1/1/c1',
    );
    expect([missing.fate, missing.quarantine, missing.arrived]).toEqual([null, null, null]);
    expect(missing.stays.at(-1)?.nest?.id).toBe('LW-1');
    const nest = birdIn(at(`${fledged}\ndate: 2026-04-07, back: c1`), 'LW-1/1/c1');
    expect([nest.fledged, nest.quarantine]).toEqual([null, null]);
  });

  it('by count is one that is in the room rather than one that is missing, and none that was lent', () => {
    const log = `${fledged}\ndate: 2026-04-08, died: {missing: c1}\ndate: 2026-04-09, back: 1`;
    const known = at(log);
    expect(birdIn(known, 'LW-1/1/c2').fledged).toBeNull();
    expect(codes(known)).toEqual([]);
    const both = at(
      `${grown}\ndate: 2026-05-08, gone: {lent: c1}, died: {missing: c2}\ndate: 2026-05-09, back: 1`,
    );
    expect(codes(both)).toEqual([]);
    expect(birdIn(both, 'LW-1/1/c1').fate?.kind).toBe('gone');
    expect(birdIn(both, 'LW-1/1/c2').fate).toBeNull();
  });

  it('by count is none that would feed itself by now, though nobody wrote so, and one of the last brood', () => {
    const next = `date: 2026-06-01, laid: 2, sitting\ndate: 2026-06-15, hatched: 2\ndate: 2026-07-04, fledged: 2`;
    const known = at(`${fledged}\n${next}\ndate: 2026-07-05, back: 1`, {}, '2026-07-06');
    expect(codes(known)).toEqual([]);
    const inNest = known.birds.filter((bird) => bird.clutch !== null && bird.fledged === null);
    expect(inNest.map(({ id }) => id)).toEqual(['LW-1/2/c1']);
  });

  it('a chick that was always fed by hand is in its box again, and in nobody’s nest', () => {
    const hand =
      'date: 2026-03-05, laid: 2\ndate: 2026-03-06, set: {incubator: all}\ndate: 2026-03-18, hatched: 2';
    const chick = birdIn(
      at(`${hand}\ndate: 2026-04-05, fledged: c1\ndate: 2026-04-06, back: c1`),
      'LW-1/1/c1',
    );
    expect(chick.stays.at(-1)).toMatchObject({ housing: 'hand', nest: null });
    expect(chick.fledged).toBeNull();
  });

  it('a bird of which nobody wrote where it lived is where it is found', () => {
    const list = { 'birds.yaml': 'birds:\n  - {id: X-1, log: [{date: 2026-03-02, died}]}\n' };
    const found = birdIn(at('date: 2026-03-01, paired\ndate: 2026-03-05, back: X-1', list), 'X-1');
    expect(found.fate).toBeNull();
    expect(found.stays).toMatchObject([{ housing: 'cage 3', nest: null, clutch: null }]);
  });

  it('an adult lives where it did, by the word of any pair’s journal', () => {
    const known = at(
      'date: 2026-03-01, paired\ndate: 2026-03-05, gone: {lent: cock}\ndate: 2026-04-05, back: cock',
    );
    expect(birdIn(known, 'LW-19-04')).toMatchObject({
      fate: null,
      arrived: null,
      quarantine: { from: day('2026-04-05') },
    });
    expect(birdIn(known, 'LW-19-04').stays.at(-1)).toMatchObject({
      housing: 'cage 3',
      nest: null,
      clutch: null,
    });
  });
});
