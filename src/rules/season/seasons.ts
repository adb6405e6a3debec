import { civilDate, type Day, dayOf, daysInMonth } from '../../days.ts';
import { nearest } from '../../findings/nearest.ts';
import { incubation } from '../../room/lives.ts';
import type { Clutch } from '../../room/model.ts';
import { firstEgg } from '../hen-year.ts';

/** Month and date on which a room's season begins. */
export interface SeasonStart {
  month: number;
  date: number;
}

/** Which seasons are asked for, by the years in which they begin; all of them where an end is infinite. */
export interface Seasons {
  from: number;
  to: number;
}

export const ALL: Seasons = { from: Number.NEGATIVE_INFINITY, to: Number.POSITIVE_INFINITY };

/** The year in which the season of a day began. */
export function seasonOf(day: Day, { month, date }: SeasonStart): number {
  const { year } = civilDate(day);
  // A season from 29 February begins on the 28th where there is none.
  return day >= dayOf(year, month, Math.min(date, daysInMonth(year, month))) ? year : year - 1;
}

/**
 * The day of a clutch's first egg, as it was written. One that nobody saw laid, of a brood found late, was laid no
 * later than a short sitting before it hatched.
 */
export function begun(clutch: Clutch): Day {
  const day = firstEgg(clutch);
  const [egg] = clutch.eggs;
  if (egg?.assumed !== true || egg.fate?.kind !== 'hatched') return day;
  const hatched = egg.fate.bird.hatched.to;
  return Math.min(day, hatched - Math.floor(incubation(clutch.pair.profile).low));
}

/** The years in which the seasons of these clutches began, each once, in order. */
export function yearsOf(clutches: readonly Clutch[], start: SeasonStart): number[] {
  const years = new Set(clutches.map((clutch) => seasonOf(begun(clutch), start)));
  return [...years].sort((a, b) => a - b);
}

/** `2026`, or `2026/27` where a season runs across New Year. */
export function seasonName(year: number, { month, date }: SeasonStart): string {
  if (month === 1 && date === 1) return String(year);
  return `${year}/${String((year + 1) % 100).padStart(2, '0')}`;
}

/** `2026`, `2024..2026`, `all`: as they are asked for. */
export function seasonsName({ from, to }: Seasons, start: SeasonStart): string {
  if (from === ALL.from && to === ALL.to) return 'all';
  return from === to ? seasonName(from, start) : `${seasonName(from, start)}..${seasonName(to, start)}`;
}

const YEAR = /^(\d{4})(?:\/(\d{2}))?$/;

/** What was asked for; null where it is no season. `2026` is also the season that begins in 2026. */
export function parseSeasons(text: string): Seasons | null {
  if (text === 'all') return ALL;
  const ends = text.split('..');
  if (ends.length > 2) return null;
  const years = ends.map(parseYear);
  const [from = null, to = from] = years;
  return from === null || to === null || from > to ? null : { from, to };
}

/** The seasons that were probably meant by what is none: `2025/26` by `2025-26` or `25/26`; empty where none was. */
export function seasonsMeant(text: string): string {
  const plain = text.trim();
  if (/^\d\d$/.test(plain)) return `20${plain}`;
  const [, from = '', to = ''] = /^(\d\d|\d{4})\s*[-–—/.:,]+\s*(\d\d|\d{4})$/.exec(plain) ?? [];
  if (from === '') return nearest(plain, ['all']) ?? '';
  const [first, last] = [from, to].map((year) => (year.length === 2 ? `20${year}` : year)) as [
    string,
    string,
  ];
  return [`${first}/${last.slice(2)}`, `${first}..${last}`]
    .filter((season) => parseSeasons(season) !== null)
    .join(' or ');
}

function parseYear(text: string): number | null {
  const [, year, next] = YEAR.exec(text) ?? [];
  if (year === undefined) return null;
  return next === undefined || (Number(year) + 1) % 100 === Number(next) ? Number(year) : null;
}
