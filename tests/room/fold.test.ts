import { describe, expect, it } from 'vitest';
import { codes as kinds } from '../../src/findings/codes.ts';
import { room } from '../rooms.ts';
import { birdIn, clutchIn, codes, days, fates, journal, pairIn, waxbills } from './facts.ts';

function sizes(log: string, on: string, species = 'lavender waxbill'): Record<number, number> {
  const { clutches } = pairIn(room({ P: journal('P-1', species, log) }, on), 'P-1');
  return Object.fromEntries(clutches.map(({ number, eggs }) => [number, eggs.length]));
}

describe('a clutch', () => {
  // One egg a day: 4 × 1 is less than six days.
  it('takes an egg that comes six days after the last, and none that comes later', () => {
    const first = 'date: 2026-03-01, laid: 1';
    expect(sizes(`${first}\ndate: 2026-03-07, laid: 1`, '2026-04-01')).toEqual({ 1: 2 });
    expect(sizes(`${first}\ndate: 2026-03-08, laid: 1`, '2026-04-01')).toEqual({ 1: 1, 2: 1 });
  });

  it('takes several found at once, though the last of them came later: the first was in time', () => {
    const found = (count: number, on: string, first = 'laid: 1') =>
      sizes(`date: 2026-03-01, ${first}\ndate: 2026-03-${on}, laid: ${count}, sitting`, '2026-04-01');
    expect(found(2, '08')).toEqual({ 1: 3 });
    expect(found(3, '09')).toEqual({ 1: 4 });
    expect(found(3, '10')).toEqual({ 1: 1, 2: 3 });
    // Lavender waxbills lay four or five: a sixth is of the next.
    expect(found(2, '08', 'laid: 3')).toEqual({ 1: 5 });
    expect(found(3, '08', 'laid: 3')).toEqual({ 1: 3, 2: 3 });
  });

  it('begun anew while the eggs of the one before cannot have hatched is doubtful, unless its number is told', () => {
    const doubts = (second: string, on = '10') =>
      room(
        { P: waxbills(`date: 2026-03-01, laid: 2\ndate: 2026-03-${on}, ${second}`) },
        '2026-04-01',
      ).findings.map(({ code, args }) => [code, args.taken, args.others, args.number]);
    const anew = ['which-clutch', 'a new one, clutch 2', 'clutch 1', 2];
    expect(doubts('laid: 1')).toEqual([anew]);
    expect(doubts('clutch: 2, laid: 1')).toEqual([]);
    // A lavender waxbill sits eleven days at least; the first of two was laid on the day before.
    expect(doubts('laid: 1', '11')).toEqual([]);
    expect(doubts('lost: {eaten: all}\ndate: 2026-03-11, laid: 1', '09')).toEqual([]);
  });

  // One egg every other day (common practice for parrots): 4 × 2 = 8 days.
  it('of a species that lays every other day takes one eight days after the last', () => {
    const first = 'date: 2026-03-01, laid: 1';
    expect(sizes(`${first}\ndate: 2026-03-09, laid: 1`, '2026-04-01', 'budgerigar')).toEqual({ 1: 2 });
    expect(sizes(`${first}\ndate: 2026-03-10, laid: 1`, '2026-04-01', 'budgerigar')).toEqual({ 1: 1, 2: 1 });
  });

  it('takes no more once every egg has ended', () => {
    const log = `
      date: 2026-03-01, laid: 2
      date: 2026-03-03, lost: {eaten: all}
      date: 2026-03-05, laid: 1
    `;
    expect(sizes(log, '2026-03-05')).toEqual({ 1: 2, 2: 1 });
  });

  it('is followed by the next while the last brood is still fed', () => {
    const log = `
      date: 2026-03-01, laid: 1
      date: 2026-03-03, laid: 2, sitting
      date: 2026-03-15, hatched: 3
      date: 2026-04-03, fledged: 3
      date: 2026-04-06, laid: 1
    `;
    const known = room({ P: waxbills(log) }, '2026-04-06');
    const { here, clutches } = pairIn(known, 'LW-1');
    expect(clutches.map(({ number }) => number)).toEqual([1, 2]);
    expect([...here.eggs].map(({ clutch, ref }) => `${clutch.number}/${ref}`)).toEqual(['2/e1']);
    expect([...here.young].map(({ id }) => id)).toEqual(['LW-1/1/c1', 'LW-1/1/c2', 'LW-1/1/c3']);
  });

  it('keeps the number it was pinned to; the next counts on from there', () => {
    const log = `
      date: 2026-03-01, clutch: 5, laid: 2
      date: 2026-03-02, laid: 1
      date: 2026-06-01, laid: 1
    `;
    expect(sizes(log, '2026-06-01')).toEqual({ 5: 3, 6: 1 });
  });

  it('that nothing opened cannot be pinned: said once, with the clutches that there are', () => {
    const log = 'date: 2026-03-01, laid: 2\ndate: 2026-03-02, clutch: 4, skip: candle, food: [egg food]';
    const { findings } = room({ P: waxbills(log) }, '2026-03-02');
    expect(findings.map(({ code, args }) => [code, args.number, args.have])).toEqual([
      ['no-such-clutch', 4, '1'],
    ]);
    const found = room(
      { P: waxbills('date: 2026-03-01, laid: 2\ndate: 2026-03-02, clutch: 4, lost: {clear: 3}') },
      '2026-03-02',
    );
    expect(found.findings.map(({ code, args }) => kinds[code].hint(args as never))).toEqual([
      'it has 1; of eggs that nobody knew of, `clutch: 4, laid: 4, lost: {clear: 4}`',
    ]);
  });
});

describe('clutches by number', () => {
  it('stand in the order of their numbers, whichever was begun first', () => {
    const log =
      'date: 2026-03-01, site: left, clutch: 5, laid: 2\ndate: 2026-03-02, site: right, clutch: 2, laid: 1';
    const { clutches } = pairIn(room({ P: waxbills(log) }, '2026-04-01'), 'LW-1');
    expect(clutches.map(({ number, site }) => `${number} ${site}`)).toEqual(['2 right', '5 left']);
  });

  it('that are told of after the next were laid before it, on days that nobody knows', () => {
    const log =
      'date: 2026-03-01, laid: 3\ndate: 2026-05-01, clutch: 3, laid: 1\ndate: 2026-05-04, laid: 3, sitting';
    const found = (count: number) =>
      clutchIn(
        room(
          { P: waxbills(`${log}\ndate: 2026-05-10, clutch: 2, laid: ${count}, lost: {clear: all}`) },
          '2026-05-10',
        ),
        'LW-1/2',
      );
    // Lavender waxbills lay an egg a day and sit 13 days at the longest.
    expect(found(3).eggs.map(({ laid }) => days(laid))).toEqual([
      '04-15…04-28',
      '04-16…04-29',
      '04-17…04-30',
    ]);
    expect(found(1).eggs.map(({ laid }) => days(laid))).toEqual(['04-17…04-30']);
    expect(fates(found(3))).toEqual(['e1 lost (clear)', 'e2 lost (clear)', 'e3 lost (clear)']);
  });

  // Four eggs that were found in an old nest are not the four that are sat on.
  it('that the pair does not have are no other: what is told of them leaves the eggs and chicks of the nest alone', () => {
    const eggs = 'date: 2026-03-01, laid: 1\ndate: 2026-03-04, laid: 3, sitting';
    const chicks = `${eggs}\ndate: 2026-03-16, hatched: 4`;
    for (const [log, last] of [
      [eggs, '2026-03-16, clutch: 3, hatched: 3'],
      [eggs, '2026-03-10, clutch: 3, lost: {clear: 4}'],
      [eggs, '2026-03-16, clutch: 3, heard'],
      [eggs, '2026-03-16, clutch: 3, sitting'],
      [chicks, '2026-03-20, clutch: 3, died: 2'],
      [chicks, '2026-03-20, clutch: 3, died: {missing: all}'],
      [chicks, '2026-04-03, clutch: 3, fledged: 4'],
    ] as const) {
      const without = room({ P: waxbills(log) }, '2026-04-03');
      const known = room({ P: waxbills(`${log}\ndate: ${last}`) }, '2026-04-03');
      expect(codes(known), last).toEqual(['no-such-clutch']);
      const told = ({ pairs, birds }: typeof known) => [
        pairs.map(({ clutches, looks }) => [clutches.map(fates), looks.length]),
        birds.map(({ id, fledged, fate }) => [id, fledged, fate]),
      ];
      expect(told(known), last).toEqual(told(without));
    }
  });

  it('that nothing opened are named once an entry, each entry by itself', () => {
    const log = `date: 2026-03-01, laid: 2
      date: 2026-03-02, clutch: 4, skip: candle, food: [egg food]
      date: 2026-03-03, clutch: 5, skip: candle, food: [egg food]`;
    const { findings } = room({ P: waxbills(log) }, '2026-03-03');
    expect(findings.map(({ code, at, args }) => `${at.line}:${at.column} ${code} ${args.number}`)).toEqual([
      '5:32 no-such-clutch 4',
      '6:32 no-such-clutch 5',
    ]);
  });
});

it('what two pairs tell on one day is each kept with its own nest and clutch', () => {
  const files = {
    A: journal(
      'A',
      'canary',
      'date: 2026-03-05, clutch: 1, site: left, laid: 1\ndate: 2026-03-06, site: left, checked',
    ),
    B: journal('B', 'canary', 'date: 2026-03-05, laid: 1\ndate: 2026-03-06, checked'),
    C: journal('C', 'canary', 'date: 2026-03-05, clutch: 1, laid: 1\ndate: 2026-03-06, clutch: 1, checked'),
  };
  const told = room(files, '2026-03-06').pairs.map(({ id, events }) =>
    [id, ...events.map(({ key, site, clutch }) => `${key} ${site} ${clutch?.pair.id}`)].join(', '),
  );
  expect(told).toEqual([
    'A, laid left A, checked left undefined',
    'B, laid null undefined, checked null undefined',
    'C, laid null C, checked null C',
  ]);
});

it('chicks that were only heard are not counted by a line of a clutch that there is not', () => {
  const log = 'date: 2026-03-18, heard\ndate: 2026-03-20, clutch: 7, hatched: 2';
  const known = room({ P: waxbills(log) }, '2026-03-20');
  expect(known.birds.filter(({ ref }) => ref !== null).map(({ placeholder }) => placeholder)).toEqual([true]);
});

it('a line in the bird list is no hindrance to what a pair’s journal tells of that day', () => {
  const files = {
    'birds.yaml': 'birds:\n  - {id: LW-19-04, log: [{date: 2026-04-01, weighed: 8.4}]}\n',
    P: waxbills(
      'date: 2026-03-01, paired\ndate: 2026-04-01, parted: {hen: flight 7}, paired: {hen: LW-21-02}',
      'cock: LW-19-04\nhen: LW-20-11',
    ),
  };
  expect(codes(room(files, '2026-04-01'))).toEqual([]);
});

describe('a pair of a species without a profile', () => {
  it('is looked at as freely as any, unless its journal says otherwise', () => {
    const pair = (head: string) => {
      const known = room({ P: journal('X-1', 'ridge finch', '', head) }, '2026-03-02');
      const { nestLooks, species } = pairIn(known, 'X-1');
      return [nestLooks, species, ...known.findings.map(({ args }) => args.suggestion)];
    };
    expect(pair('')).toEqual(['freely', 'ridge finch', '']);
    expect(pair('nest-looks: never')).toEqual(['never', 'ridge finch', '']);
    const looks = pairIn(room({ P: waxbills('') }, '2026-03-02'), 'LW-1').nestLooks;
    expect(looks).toBe('sparingly');
  });

  it('has the profile’s own name where it was called by another', () => {
    const known = room({ P: journal('X-1', 'Estrilda caerulescens', '') }, '2026-03-02');
    expect(pairIn(known, 'X-1').species).toBe('lavender waxbill');
  });
});

describe('a clutch that nobody saw laid', () => {
  it.each([
    ['they sit', 'sitting: hen', ['e1 open']],
    ['somebody begs', 'heard: begging', ['e1 hatched']],
    ['chicks are counted', 'hatched: 3', ['e1 hatched', 'e2 hatched', 'e3 hatched']],
    ['young come out', 'fledged: 2', ['e1 hatched', 'e2 hatched']],
  ])('is opened when %s: its size is unknown, and that is no error', (_seen, saw, eggs) => {
    const known = room({ P: waxbills(`date: 2026-04-20, ${saw}`) }, '2026-04-20');
    const clutch = clutchIn(known, 'LW-1/1');
    expect(fates(clutch)).toEqual(eggs);
    expect([clutch.counted, clutch.chicksCounted]).toEqual([false, false]);
    expect(clutch.eggs.every(({ assumed }) => assumed)).toBe(true);
    expect(codes(known)).toEqual([]);
  });

  // Lavender waxbills leave the nest at 17–21 days.
  it('hatched a fledging age before its young came out', () => {
    const known = room({ P: waxbills('date: 2026-04-22, fledged: 1') }, '2026-04-22');
    expect(days(birdIn(known, 'LW-1/1/c1').hatched as never)).toBe('04-01…04-05');
  });

  it('takes all the chicks that are seen later, and those only heard are the first of them', () => {
    const log = `
      date: 2026-04-01, heard: begging
      date: 2026-04-04, checked: {chicks: 3}
      date: 2026-04-17, fledged: 4
    `;
    const known = room({ P: waxbills(log) }, '2026-04-17');
    expect(clutchIn(known, 'LW-1/1').chicks.map(({ ref }) => ref)).toEqual(['c1', 'c2', 'c3', 'c4']);
    expect(codes(known)).toEqual([]);
  });
});

describe('a room', () => {
  const log = `
    date: 2026-03-01, laid: 1
    date: 2026-03-04, laid: 3, sitting
    date: 2026-03-10, candled: {fertile: [e1, e2, e3], clear: e4}
    date: 2026-03-17, hatched: [e1, e2], lost: {clear: e4}
  `;

  it('on an earlier day knows nothing of what came later', () => {
    const on = (day: string) => fates(clutchIn(room({ P: waxbills(log) }, day), 'LW-1/1'));
    expect(on('2026-03-03')).toEqual(['e1 open']);
    expect(on('2026-03-16')).toEqual(['e1 open', 'e2 open', 'e3 open', 'e4 open']);
    expect(on('2026-03-17')).toEqual(['e1 hatched', 'e2 hatched', 'e3 open', 'e4 lost (clear)']);
  });

  it('on an earlier day is the room of a journal that ends there', () => {
    const until = (lines: number) => waxbills(log.trim().split('\n').slice(0, lines).join('\n'));
    const facts = (text: string) => {
      const { eggs, sittings } = clutchIn(room({ P: text }, '2026-03-12'), 'LW-1/1');
      return [eggs.map(({ ref, laid, lamp, fate }) => [ref, laid, lamp, fate]), sittings];
    };
    expect(facts(waxbills(log))).toEqual(facts(until(3)));
  });

  it('has one pair of a name: a second journal of it counts for nothing and is named', () => {
    const files = {
      a: waxbills('date: 2026-03-01, laid: 2'),
      b: waxbills('date: 2026-03-01, laid: 5'),
    };
    const known = room(files, '2026-03-02');
    expect(clutchIn(known, 'LW-1/1').eggs).toHaveLength(2);
    expect(known.findings.map(({ code, at, args }) => [code, at.file, args.file])).toEqual([
      ['pair-twice', 'pairs/b.yaml', 'pairs/a.yaml'],
    ]);
  });

  it('keeps the record of a species nobody knows, and asks whether another was meant', () => {
    const known = room({ P: journal('X-1', 'lavander waxbil', 'date: 2026-03-01, laid: 2') }, '2026-03-02');
    expect(pairIn(known, 'X-1').profile).toBeNull();
    expect(clutchIn(known, 'X-1/1').eggs).toHaveLength(2);
    expect(known.findings.map(({ code, args }) => [code, args.suggestion])).toEqual([
      ['unknown-species', 'lavender waxbill'],
    ]);
  });

  it('orders its pairs as a keeper counts: LW-2 before LW-10', () => {
    const files = { a: journal('LW-10', 'canary', ''), b: journal('LW-2', 'canary', '') };
    expect(room(files, '2026-03-02').pairs.map(({ id }) => id)).toEqual(['LW-2', 'LW-10']);
  });

  it('has the parents from the first entry on, in the pair’s housing', () => {
    const text = waxbills('date: 2026-03-01, paired', 'cock: LW-19-04\nhen: LW-20-11\nhousing: flight 2');
    const known = room({ P: text }, '2026-03-01');
    expect(birdIn(known, 'LW-19-04')).toMatchObject({ sex: 'cock', stays: [{ housing: 'flight 2' }, {}] });
    expect(birdIn(known, 'LW-20-11').sex).toBe('hen');
    expect(room({ P: text }, '2026-02-28').birds).toEqual([]);
  });

  it('takes a parent for one of the pair’s species where the bird list does not say', () => {
    const files = {
      'birds.yaml': 'birds:\n  - id: LW-19-04\n  - {id: LW-20-11, species: star finch}',
      P: waxbills('date: 2026-03-01, paired', 'cock: LW-19-04\nhen: LW-20-11'),
    };
    const known = room(files, '2026-03-01');
    expect(birdIn(known, 'LW-19-04')).toMatchObject({ species: 'lavender waxbill', sex: 'cock' });
    expect(birdIn(known, 'LW-20-11').species).toBe('star finch');
  });
});
