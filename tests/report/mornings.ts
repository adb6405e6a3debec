import fc from 'fast-check';
import { type Day, parseDay } from '../../src/days.ts';
import type { Morning } from '../../src/report/morning.ts';
import type { AgendaItem, WarningLine } from '../../src/rules/agenda/item.ts';
import { hostileText } from './hostile.ts';

/** The day of a date in a test. */
export function day(text: string): Day {
  const parsed = parseDay(text);
  if (parsed === null) throw new Error(`no such day: ${text}`);
  return parsed;
}

const standing = day('2026-05-17');

/** An item of the agenda, of which a test names what it is about. */
export function item(over: Partial<AgendaItem>): AgendaItem {
  return {
    task: 'candle',
    pair: 'LW-1',
    bird: null,
    clutch: 3,
    who: null,
    housing: 'flight 2',
    species: 'lavender waxbill',
    from: standing,
    likely: null,
    to: standing,
    state: 'now',
    say: 'candle the eggs',
    why: 'sitting since 12 May + 5–6 d',
    basis: null,
    apart: null,
    ...over,
  };
}

/** A warning, of which a test names what it is about. */
export function warning(over: Partial<WarningLine>): WarningLine {
  return {
    kind: 'overdue',
    level: 'watch',
    pair: 'LW-1',
    bird: null,
    clutch: 3,
    housing: null,
    date: standing,
    text: 'e4 has been sat on for 17 d; fewer than 1 in 100 such eggs still hatch.',
    check: 'candle e4 away from the nest; leave it if you are not sure.',
    ...over,
  };
}

/** A morning on 17 May 2026 with nothing in it but what a test names. */
export function morning(over: Partial<Morning> = {}): Morning {
  return {
    day: standing,
    today: standing,
    room: 'the finch room',
    days: 7,
    items: [],
    warnings: [],
    findings: [],
    next: null,
    ...over,
  };
}

/** The morning of a room with eight pairs in the middle of the season. */
export function busyMorning(): Morning {
  const food = {
    task: 'live-food',
    say: 'put live food out',
    from: day('2026-05-16'),
    to: day('2026-05-18'),
  };
  return morning({
    warnings: [
      warning({
        kind: 'feeder-parted',
        level: 'act',
        pair: 'SF-2',
        clutch: 1,
        text: 'The cock was parted on 16 May while three fledglings still depend on somebody. Who feeds them was never recorded.',
        check:
          'look at each crop within the next hours; if one is empty, put the family together again and ask an avian vet.',
        date: day('2026-05-16'),
      }),
      warning({}),
      warning({
        kind: 'live-food-species',
        level: 'note',
        pair: 'OF-1',
        clutch: null,
        text: 'Paired yesterday; this species rears on live food.',
        check: 'that a supply is there before the first hatch.',
        date: day('2026-05-16'),
      }),
    ],
    items: [
      item({
        pair: 'CB-2',
        housing: 'cage 4',
        species: 'cordon-bleu',
        clutch: 1,
        who: ['e1', 'e2', 'e3', 'e4'],
        from: day('2026-05-13'),
        to: day('2026-05-15'),
        state: 'late',
        why: 'sitting since 8 May + 5–6 d',
      }),
      item({
        ...food,
        why: 'hatch from 18 May − 2 d',
        basis: '11–13 d, book',
      }),
      item({
        ...food,
        pair: 'LW-3',
        clutch: 1,
        why: 'hatch from 18 May − 2 d',
        basis: '11–13 d, book',
      }),
      item({
        ...food,
        pair: 'CB-1',
        housing: 'cage 3',
        species: 'cordon-bleu',
        clutch: 2,
        why: 'hatch from 18 May − 2 d',
        basis: '12–13 d, book',
      }),
      item({
        task: 'ring',
        pair: 'ZF-1',
        housing: 'aviary',
        species: 'zebra finch',
        clutch: 7,
        who: ['c1', 'c2', 'c3'],
        from: day('2026-05-15'),
        to: day('2026-05-17'),
        say: 'ring the chicks',
        why: 'hatched 9 May + 6–8 d; never force a ring',
      }),
      item({
        task: 'worm flights',
        pair: null,
        clutch: null,
        housing: null,
        species: null,
        say: 'worm all flights',
        why: 'last done 16 Feb + 90 d',
      }),
      item({
        task: 'watch-restart',
        pair: 'SF-2',
        housing: 'flight 1',
        species: 'star finch',
        clutch: 1,
        from: day('2026-05-12'),
        to: null,
        say: 'watch whether a parent drives the young',
        why: 'first fledged 7 May + 5 d, until no young depend',
      }),
      item({
        task: 'hatch',
        who: ['e1', 'e2', 'e3', 'e4'],
        state: 'coming',
        from: day('2026-05-18'),
        likely: day('2026-05-19'),
        to: day('2026-05-21'),
        say: 'expect chicks; hands off the nest',
        why: 'sitting since 7 May + 12 d',
        basis: '11–13 d, book; 4 own clutches',
      }),
      item({
        task: 'next-egg',
        pair: 'OF-1',
        housing: 'cage 1',
        species: 'owl finch',
        clutch: 1,
        state: 'coming',
        from: day('2026-05-18'),
        to: day('2026-05-18'),
        say: 'look for egg 3',
        why: 'egg 2 on 17 May + 1 d',
      }),
      item({
        task: 'quarantine-end',
        pair: null,
        bird: 'SF-24-02',
        clutch: null,
        housing: 'quarantine cage',
        species: 'star finch',
        state: 'coming',
        from: day('2026-05-22'),
        to: day('2026-05-22'),
        say: 'quarantine ends',
        why: 'arrived 22 Apr + 30 d',
      }),
      item({
        task: 'quarantine-end',
        pair: null,
        bird: 'SF-24-05',
        clutch: null,
        housing: 'quarantine cage',
        species: 'star finch',
        state: 'coming',
        from: day('2026-05-22'),
        to: day('2026-05-22'),
        say: 'quarantine ends',
        why: 'arrived 22 Apr + 30 d',
      }),
      item({
        task: 'fledge',
        pair: 'ZF-1',
        housing: 'aviary',
        species: 'zebra finch',
        clutch: 7,
        who: ['c1', 'c2', 'c3'],
        state: 'coming',
        from: day('2026-05-24'),
        likely: day('2026-05-28'),
        to: day('2026-06-02'),
        say: 'young leave the nest',
        why: 'hatched 9 May + 17–22 d',
        basis: '17–22 d, book',
      }),
    ],
  });
}

/** Whatever a journal may have made of an item. */
export const anyItem: fc.Arbitrary<AgendaItem> = fc.record({
  task: hostileText,
  pair: fc.option(hostileText),
  bird: fc.option(hostileText),
  clutch: fc.option(fc.nat(9)),
  who: fc.option(fc.array(fc.oneof(hostileText, fc.constantFrom('e1', 'e2', 'e3', 'c1')), { maxLength: 5 })),
  housing: fc.option(hostileText),
  species: fc.option(hostileText),
  from: fc.integer({ min: standing - 400, max: standing + 400 }),
  likely: fc.option(fc.integer({ min: standing - 400, max: standing + 400 })),
  to: fc.option(fc.integer({ min: standing - 400, max: standing + 400 })),
  state: fc.constantFrom('late', 'now', 'coming'),
  say: hostileText,
  why: hostileText,
  basis: fc.option(hostileText),
  apart: fc.option(hostileText),
});
