import type { Span } from '../../days.ts';
import type { Account } from '../../rules/account/account.ts';
import type { AccountClutch } from '../../rules/account/clutch.ts';
import { either, fromTo } from '../../words.ts';
import { guestsWords } from '../season.ts';
import { dateSpan, shortDate } from '../terminal/dates.ts';
import { number, percent, percentRange } from '../terminal/figures.ts';
import { visibleData } from '../terminal/visible.ts';
import { losses, openings } from './words.ts';

/** A piece of an account, whatever it is then written as. */
export type Piece =
  | { kind: 'text'; text: string }
  /** Each item may begin with what it is of: a day, a clutch. */
  | { kind: 'list'; items: { of: string; text: string }[] }
  | { kind: 'table'; head: string[]; rows: string[][]; right: number[] };

export interface Section {
  title: string;
  pieces: Piece[];
}

/** Dates of many years beside each other are all written with their year. */
const WITH_YEAR = 0;

/** An account from top to bottom: its title, its opening, and its sections without those that would be empty. */
export function accountParts(told: Account): { title: string; opening: string[]; sections: Section[] } {
  const account = visibleData(told);
  const sections = [
    kept(account),
    dated('The two together', account.care.together),
    dated('Nests', account.care.nests),
    dated('Food offered, from that day on', account.care.food),
    { title: 'Clutch by clutch', pieces: [clutchTable(account.clutches)] },
    { title: 'What was lost', pieces: [list(account.clutches.flatMap(losses))] },
    { title: 'How long it took', pieces: [durationTable(account)] },
    { title: 'Rates', pieces: rates(account) },
    {
      title: 'Rings',
      pieces: [list((account.rings ?? []).map(({ chick, ring }) => ({ of: chick, text: ring })))],
    },
    dated('Notes', account.notes ?? []),
  ];
  return {
    ...openings(account),
    sections: sections
      .map(({ title, pieces }) => ({ title, pieces: pieces.filter((piece) => !isEmpty(piece)) }))
      .filter(({ pieces }) => pieces.length > 0),
  };
}

function isEmpty(piece: Piece): boolean {
  return piece.kind === 'text'
    ? piece.text === ''
    : (piece.kind === 'list' ? piece.items : piece.rows).length === 0;
}

const list = (items: { of: string; text: string }[]): Piece => ({ kind: 'list', items });

function dated(title: string, entries: readonly { day: number; text: string }[]): Section {
  return { title, pieces: [list(entries.map(({ day, text }) => ({ of: shortDate(day, WITH_YEAR), text })))] };
}

const LOOKS: Record<Account['nestLooks'], string> = {
  freely: 'it bears them well',
  sparingly: 'as few as needed',
  never: 'none',
};

function kept({ housing, nestLooks, names }: Account): Section {
  const items = [
    ...(names === null
      ? []
      : [
          {
            of: 'Pair',
            text: `${names.pair}: ${either(names.cock) ?? 'unknown'} × ${either(names.hen) ?? 'unknown'}`,
          },
        ]),
    { of: 'Housing', text: housing.length === 0 ? 'not told' : housing.join(', then ') },
    { of: 'Looks into the nest', text: LOOKS[nestLooks] },
  ];
  return { title: 'How it was kept', pieces: [list(items)] };
}

function clutchTable(clutches: readonly AccountClutch[]): Piece {
  const span = (one: Span | null) => (one === null ? '–' : dateSpan(one.from, one.to, WITH_YEAR));
  const ofThem = (number: number | null, when: Span | null) => {
    const many = number === null ? '?' : String(number);
    return number === 0 && when === null ? '–' : when === null ? many : `${many}: ${span(when)}`;
  };
  return {
    kind: 'table',
    head: [
      'clutch',
      'laid',
      'eggs',
      'fertile',
      'clear',
      'sat on from',
      'hatched',
      'left the nest',
      'fed themselves',
    ],
    right: [2, 3, 4],
    rows: clutches.map((one) => {
      const judged = one.fertile + one.clear > 0;
      return [
        String(one.number),
        span(one.laid),
        one.eggs === null ? '?' : String(one.eggs),
        judged ? String(one.fertile) : '–',
        judged ? String(one.clear) : '–',
        one.sitting === null ? '–' : `${span(one.sitting.span)}${one.sitting.inferred ? ' (inferred)' : ''}`,
        ofThem(one.chicks, one.hatched),
        ofThem(one.left, one.fledged),
        ofThem(one.fed, one.independent),
      ];
    }),
  };
}

const DURATIONS = { incubation: 'sitting to hatching', fledging: 'hatching to leaving the nest' };

function durationTable({ durations }: Account): Piece {
  return {
    kind: 'table',
    head: ['', 'days', 'mean', 'clutches', 'how sure'],
    right: [1, 2, 3],
    rows: durations.map(({ kind, shortest, longest, mean, clutches, unseen }) => [
      DURATIONS[kind],
      fromTo(number(shortest), number(longest)),
      unseen === 0 ? number(mean) : `about ${number(mean)}`,
      String(clutches),
      howSure(clutches, unseen),
    ]),
  };
}

/** Whether somebody saw it, or only that it must lie somewhere between. */
function howSure(clutches: number, unseen: number): string {
  if (unseen === 0) return 'to the day';
  const between = 'somewhere between, as nobody looked';
  return unseen === clutches ? between : `${clutches - unseen} to the day, ${unseen} ${between}`;
}

function rates({ measures, rates: all, reared }: Account): Piece[] {
  const counted = measures.filter(({ name }) => all[name].n > 0);
  const rows = counted.map(({ name, title }) => {
    const { k, n, rate, low, high, open } = all[name];
    const range = low === null || high === null ? '' : percentRange(low, high);
    return [
      title,
      `${k} of ${n}`,
      rate === null ? '–' : percent(rate),
      range,
      open === 0 ? '' : String(open),
    ];
  });
  const caution =
    rows.length === 0 ? '' : 'One pair is few: its true rate may lie anywhere in the range of 95 %.';
  return [
    { kind: 'table', head: ['', 'counted', 'rate', '95 %', 'open'], right: [1, 2, 3, 4], rows },
    { kind: 'text', text: caution },
    { kind: 'text', text: guestsWords(reared) },
  ];
}
