import { civilDate, MONTHS } from '../../days.ts';
import { naturallyNamed } from '../../findings/naturally.ts';
import type { RoomSettings } from '../../journal/settings.ts';
import { incubation } from '../../room/lives.ts';
import type { Clutch } from '../../room/model.ts';
import { either } from '../../words.ts';
import { foodOn } from '../food-on-offer.ts';
import type { Care } from './care.ts';
import { begun, seasonName, seasonOf } from './seasons.ts';

/** What of the room's settings a division depends on. */
export type GroupingSettings = Pick<RoomSettings, 'seasonStart' | 'log'>;

/** A way to divide a season into groups. */
export interface Grouping {
  name: string;
  /** What it divides by, in a keeper's words. */
  says: string;
  /** Whether the group is whoever had the care; else it is the clutch's own, whoever reared its young. */
  byCare: boolean;
  /** What stands for a group without a name. */
  nameless: string;
  /** The group's name; null where nothing was written down, or nobody had the care. */
  of(care: Care, settings: GroupingSettings): string | null;
}

/** Everything that `--by` takes, and `all`, which does not divide. */
export const groupings = {
  pair: {
    name: 'pair',
    says: 'pair',
    byCare: true,
    nameless: 'no pair’s',
    of: ({ pair }) => pair?.id ?? null,
  },
  species: {
    name: 'species',
    says: 'species',
    byCare: false,
    nameless: 'not written down',
    of: ({ origin }) => origin.pair.species,
  },
  housing: {
    name: 'housing',
    says: 'housing',
    byCare: true,
    nameless: 'not written down',
    of: ({ housing }) => housing,
  },
  site: { name: 'site', says: 'nest site', byCare: true, nameless: 'not written down', of: siteOf },
  food: {
    name: 'food',
    says: 'food offered at hatching',
    byCare: true,
    nameless: 'not written down',
    of: foodOf,
  },
  hen: { name: 'hen', says: 'hen', byCare: true, nameless: 'not known', of: (care) => parentOf(care, 'hen') },
  cock: {
    name: 'cock',
    says: 'cock',
    byCare: true,
    nameless: 'not known',
    of: (care) => parentOf(care, 'cock'),
  },
  month: {
    name: 'month',
    says: 'month of the first egg',
    byCare: false,
    nameless: 'not known',
    of: ({ origin }) => MONTHS[civilDate(begun(origin)).month - 1] ?? null,
  },
  year: {
    name: 'year',
    says: 'season',
    byCare: false,
    nameless: 'not known',
    of: ({ origin }, { seasonStart }) => seasonName(seasonOf(begun(origin), seasonStart), seasonStart),
  },
} as const satisfies Record<string, Grouping>;

export type GroupingName = keyof typeof groupings;

export const whole: Grouping = { name: 'all', says: 'all', byCare: false, nameless: 'all', of: () => '' };

/** Groups in the order of a calendar where they are months, else in natural order; what is unknown comes last. */
export function inGroupOrder(name: string): (a: string | null, b: string | null) => number {
  if (name !== 'month') return naturallyNamed;
  const place = (month: string | null) => (month === null ? MONTHS.length : MONTHS.indexOf(month));
  return (a, b) => place(a) - place(b);
}

/** The nest itself (`wicker basket`), else the site that the entries name where a pair has two. */
function siteOf({ pair, clutch }: Care): string | null {
  if (pair === null) return null;
  const day = clutch === null ? Number.POSITIVE_INFINITY : begun(clutch);
  const told = pair.nestStates.findLast(({ day: seen, site }) => site !== null && seen <= day)?.site;
  return clutch?.site ?? told ?? null;
}

/** What was on offer when the first of them hatched, or would have: the kinds, whatever their order. */
function foodOf({ pair, clutch, origin }: Care, settings: GroupingSettings): string | null {
  if (pair === null) return null;
  const kinds = foodOn(pair, settings, hatchDay(clutch ?? origin))?.kinds.map(({ kind }) => kind);
  return kinds === undefined || kinds.length === 0 ? null : [...new Set(kinds)].sort().join(', ');
}

function hatchDay(clutch: Clutch): number {
  const days = clutch.chicks.map(({ hatched }) => hatched.to);
  if (days.length > 0) return Math.min(...days);
  return begun(clutch) + Math.round(incubation(clutch.pair.profile).high);
}

/** The bird of that sex: of the clutch's own day, for pairs change mates. */
function parentOf({ pair, clutch }: Care, sex: 'cock' | 'hen'): string | null {
  return either(clutch?.[sex] ?? pair?.[sex] ?? []);
}
