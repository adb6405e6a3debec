import { describe, expect, it } from 'vitest';
import { formatDay } from '../../src/days.ts';
import { type ObservationKey, observations } from '../../src/journal/observations/index.ts';
import type { Room } from '../../src/room/fold.ts';
import { housingOf } from '../../src/room/lives.ts';
import { together } from '../../src/room/model.ts';
import { room } from '../rooms.ts';
import { birdIn, clutchIn, codes, eggIn, fates, journal, pairIn, until, waxbills } from './facts.ts';

const { start, eggs, chicks, fledglings, young } = until;

const pair = (known: Room) => pairIn(known, 'LW-1');
const clutch = (known: Room) => clutchIn(known, 'LW-1/1');
const egg = (known: Room, ref = 'e1') => eggIn(known, `LW-1/1/${ref}`);
const chick = (known: Room, ref = 'c1') => birdIn(known, `LW-1/1/${ref}`);

interface Case {
  /** What the journal held until then. */
  before: string;
  /** The entry, dated 1 May unless its time is another, with just this observation. */
  entry: string;
  on?: string;
  /** A fact of the room that the entry alone changes, before and after. */
  fact: (known: Room) => unknown;
  was: unknown;
  is: unknown;
}

/** What each observation does: a fact of the room, without the entry and with it. */
const cases: Record<ObservationKey, Case> = {
  paired: {
    before: '',
    entry: 'paired: flight 2',
    fact: (known) => pair(known).housing,
    was: 'cage 3',
    is: 'flight 2',
  },
  reunited: {
    before: `${start}\ndate: 2026-04-01, parted`,
    entry: 'reunited',
    fact: (known) => together(pair(known)),
    was: false,
    is: true,
  },
  parted: {
    before: start,
    entry: 'parted: {cock: flight 7}',
    fact: (known) => [together(pair(known)), housingOf(birdIn(known, 'LW-19-04'))],
    was: [true, 'cage 3'],
    is: [false, 'flight 7'],
  },
  courting: {
    before: start,
    entry: 'courting: cock with a straw',
    fact: (known) => pair(known).events.map(({ key }) => key),
    was: ['paired'],
    is: ['paired', 'courting'],
  },
  nest: {
    before: start,
    entry: 'nest: lined',
    fact: (known) => pair(known).nestStates.map(({ state }) => state),
    was: [],
    is: ['lined'],
  },
  laid: {
    before: start,
    entry: 'laid: 1',
    fact: (known) => pair(known).here.eggs.size,
    was: 0,
    is: 1,
  },
  pulled: {
    before: eggs,
    entry: 'pulled: e1',
    fact: (known) => egg(known).places.at(-1)?.place.kind,
    was: 'nest',
    is: 'store',
  },
  set: {
    before: `${eggs}\ndate: 2026-03-06, pulled: e1`,
    entry: 'set: e1',
    fact: (known) => egg(known).places.at(-1)?.place.kind,
    was: 'store',
    is: 'nest',
  },
  sitting: {
    before: `${start}\ndate: 2026-04-28, laid: 4`,
    entry: 'sitting: hen',
    fact: (known) => clutch(known).sittings.map(({ by }) => by),
    was: [],
    is: ['hen'],
  },
  candled: {
    before: eggs,
    entry: 'candled: {fertile: [e1, e3], clear: e2}',
    fact: (known) => clutch(known).eggs.map(({ lamp }) => lamp.at(-1)?.saw ?? null),
    was: [null, null, null, null],
    is: ['fertile', 'clear', 'fertile', null],
  },
  aged: {
    before: eggs,
    entry: 'aged: {5: [e1, e2]}',
    fact: (known) => clutch(known).eggs.map(({ aged }) => aged?.days ?? null),
    was: [null, null, null, null],
    is: [5, 5, null, null],
  },
  pipped: {
    before: eggs,
    entry: 'pipped: e2',
    fact: (known) => egg(known, 'e2').pipped !== null,
    was: false,
    is: true,
  },
  hatched: {
    before: eggs,
    entry: 'hatched: 2',
    on: '2026-03-18',
    fact: (known) => [fates(clutch(known))[0], pair(known).here.young.size, pair(known).here.eggs.size],
    was: ['e1 open', 0, 4],
    is: ['e1 hatched', 2, 2],
  },
  heard: {
    before: eggs,
    on: '2026-03-18',
    entry: 'heard: begging',
    fact: (known) => clutch(known).chicks.map(({ placeholder }) => placeholder),
    was: [],
    is: [true],
  },
  lost: {
    before: eggs,
    entry: 'lost: {clear: e2, given: e3}',
    fact: (known) => fates(clutch(known)),
    was: ['e1 open', 'e2 open', 'e3 open', 'e4 open'],
    is: ['e1 open', 'e2 lost (clear)', 'e3 taken (given)', 'e4 open'],
  },
  checked: {
    before: chicks,
    entry: 'checked: {chicks: 2}',
    on: '2026-03-26',
    fact: (known) => clutch(known).mismatches.map(({ what, known, seen }) => [what, known, seen]),
    was: [],
    is: [['chicks', 3, 2]],
  },
  ringed: {
    before: chicks,
    entry: 'ringed: {c1: LW 26 014}',
    on: '2026-03-26',
    fact: (known) => chick(known).ring,
    was: null,
    is: 'LW 26 014',
  },
  weighed: {
    before: chicks,
    entry: 'weighed: {c1: 4.5, e4: 0.9}',
    fact: (known) => [chick(known).weights, egg(known, 'e4').weights].map(([first]) => first?.grams ?? null),
    was: [null, null],
    is: [4.5, 0.9],
  },
  measured: {
    before: eggs,
    entry: 'measured: {e1: 14.2 x 10.8}',
    fact: (known) =>
      [egg(known).size].map((size) => size && { length: size.length, breadth: size.breadth })[0],
    was: null,
    is: { length: 14.2, breadth: 10.8 },
  },
  crops: {
    before: chicks,
    entry: 'crops: {full: [c1, c2], empty: c3}',
    fact: (known) => clutch(known).chicks.map(({ crops }) => crops.at(-1)?.crop ?? null),
    was: [null, null, null],
    is: ['full', 'full', 'empty'],
  },
  feeding: {
    before: chicks,
    entry: 'feeding: {cock: all}',
    fact: (known) => clutch(known).chicks.map(({ fedBy }) => fedBy.at(-1)?.by ?? null),
    was: [null, null, null],
    is: ['cock', 'cock', 'cock'],
  },
  food: {
    before: start,
    entry: 'food: {live food: 2}',
    fact: (known) => pair(known).food.at(-1)?.kinds ?? null,
    was: null,
    is: [{ kind: 'live food', grams: 2 }],
  },
  fledged: {
    before: chicks,
    entry: 'fledged: c1',
    fact: (known) => clutch(known).chicks.map(({ fledged }) => fledged !== null),
    was: [false, false, false],
    is: [true, false, false],
  },
  roosting: {
    before: fledglings,
    entry: 'roosting: {out: c1, nest: [c2, c3]}',
    fact: (known) => clutch(known).chicks.map(({ roosting }) => roosting.at(-1)?.where ?? null),
    was: [null, null, null],
    is: ['out', 'nest', 'nest'],
  },
  independent: {
    before: fledglings,
    entry: 'independent: [c1, c2]',
    fact: (known) => [...pair(known).here.young].map(({ ref }) => ref),
    was: ['c1', 'c2', 'c3'],
    is: ['c3'],
  },
  died: {
    before: young,
    entry: 'died: {cold night: c2, old age: hen}',
    fact: (known) => [chick(known, 'c2').fate?.kind, birdIn(known, 'LW-20-11').fate?.kind],
    was: [undefined, undefined],
    is: ['died', 'died'],
  },
  back: {
    before: fledglings,
    entry: 'back: c2',
    fact: (known) => clutch(known).chicks.map(({ fledged }) => fledged !== null),
    was: [true, true, true],
    is: [true, false, true],
  },
  fostered: {
    before: chicks,
    entry: 'fostered: {BF-1: c3}',
    fact: (known) => [pair(known).here.young.size, pairIn(known, 'BF-1').here.young.size],
    was: [3, 0],
    is: [2, 1],
  },
  moved: {
    before: chicks,
    entry: 'moved: flight 5',
    fact: (known) => [
      pair(known).housing,
      housingOf(birdIn(known, 'LW-20-11')),
      housingOf(chick(known)),
      pair(known).here.young.size,
    ],
    was: ['cage 3', 'cage 3', 'cage 3', 3],
    is: ['flight 5', 'flight 5', 'flight 5', 3],
  },
  gone: {
    before: young,
    entry: 'gone: {sold: c1}',
    fact: (known) => chick(known).fate,
    was: null,
    is: { kind: 'gone', how: 'sold', day: expect.any(Number) },
  },
  chasing: {
    before: start,
    entry: 'chasing: {by: cock, at: hen, level: hard}',
    fact: (known) => pair(known).chasing.map(({ by, at, level }) => [by, at, level]),
    was: [],
    is: [['cock', 'hen', 'hard']],
  },
  unwell: {
    before: start,
    entry: 'unwell: {hen: fluffed}',
    fact: (known) => birdIn(known, 'LW-20-11').unwell.map(({ text }) => text),
    was: [],
    is: ['fluffed'],
  },
  sexed: {
    before: young,
    entry: 'sexed: {cock: [c1, c3], hen: c2}',
    fact: (known) => clutch(known).chicks.map(({ sex }) => sex),
    was: [null, null, null],
    is: ['cock', 'hen', 'cock'],
  },
  moult: {
    before: young,
    entry: 'moult: {started: c1}',
    fact: (known) => chick(known).moult.map(({ state }) => state),
    was: [],
    is: ['started'],
  },
  treated: {
    before: start,
    entry: 'treated: as the vet ordered',
    fact: (known) => ['LW-19-04', 'LW-20-11'].map((id) => birdIn(known, id).treated.length),
    was: [0, 0],
    is: [1, 1],
  },
  photo: {
    before: start,
    entry: 'photo: pictures/nest.jpg',
    fact: (known) => pair(known).events.map(({ key }) => key),
    was: ['paired'],
    is: ['paired', 'photo'],
  },
  skip: {
    before: eggs,
    entry: 'skip: candle',
    fact: (known) => clutch(known).skipped.map(({ task }) => task),
    was: [],
    is: ['candle'],
  },
  done: {
    before: start,
    entry: 'done: calcium',
    fact: (known) => pair(known).done.map(({ name }) => name),
    was: [],
    is: ['calcium'],
  },
};

describe('each observation changes what the room knows', () => {
  it.each(Object.keys(observations) as ObservationKey[])('%s', (key) => {
    const one = cases[key];
    expect(one, `no case for ${key}`).toBeDefined();
    const on = one.on ?? '2026-05-01';
    expect(one.entry).toMatch(new RegExp(`^${key}\\b`));
    const known = (entry: string) =>
      room(
        {
          'nestlog.yaml': 'routines:\n  - {name: calcium, every: 7}\n',
          P: waxbills(`${one.before}\n${entry}`, 'cock: LW-19-04\nhen: LW-20-11\nhousing: cage 3'),
          Q: journal('BF-1', 'bengalese finch', ''),
        },
        '2026-05-01',
      );
    const doubts = codes(known(`date: ${on}, ${one.entry}`));
    expect(doubts).toEqual(key === 'checked' ? ['counts-differ'] : []);
    expect(one.fact(known(''))).toEqual(one.was);
    expect(one.fact(known(`date: ${on}, ${one.entry}`))).toEqual(one.is);
  });

  it('is kept with its day, its nest and its clutch', () => {
    const log = 'date: 2026-03-05, clutch: 1, site: gorse, laid: 2';
    const [event] = pair(room({ P: waxbills(log) }, '2026-05-01')).events;
    expect(event && [event.key, formatDay(event.day), event.site, event.clutch?.number]).toEqual([
      'laid',
      '2026-03-05',
      'gorse',
      1,
    ]);
  });
});
