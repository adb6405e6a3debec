import type { Day } from '../../days.ts';
import type { Contribution } from '../../rules/stock/groups.ts';
import type { StockBird } from '../../rules/stock/stock.ts';
import { few, fromTo } from '../../words.ts';

const DAYS_A_YEAR = 365.25;

/** A coefficient with three figures behind the point: `0`, `0.125`, `<0.001`; `?` where it is not known. */
export function coefficient(value: number | null): string {
  if (value === null) return '?';
  if (value === 0) return '0';
  return value < 0.0005 ? '<0.001' : String(Number(value.toFixed(3)));
}

/** `12 %`, with a figure behind the point below ten: `6.3 %`. */
export function percentInTwoFigures(share: number): string {
  const hundred = share * 100;
  return `${hundred < 10 && hundred > 0 ? Number(hundred.toFixed(1)) : Math.round(hundred)} %`;
}

/** A bird of which the day is known to no more than so many days has an age in whole years. */
const WIDE = 60;

/** `12 d`, `5 mo`, `4 y`: an age as short as it can be, `1–2 y` of a year's ring, or nothing where nobody wrote when. */
export function ageText({ bird }: Pick<StockBird, 'bird'>, day: Day): string {
  if (bird.hatched === null) return '';
  const { from, to } = bird.hatched;
  if (to - from > WIDE) {
    const years = (hatched: Day) => Math.floor((day - hatched) / DAYS_A_YEAR);
    return `${fromTo(years(to), years(from))} y`;
  }
  const days = day - to;
  if (days < 60) return `${days} d`;
  const months = Math.floor((days * 12) / DAYS_A_YEAR);
  return months < 24 ? `${months} mo` : `${Math.floor(days / DAYS_A_YEAR)} y`;
}

/** `GS (0.063), GD (0.063)`: ancestors with their part of F, so many of them. */
export function ancestorsText(through: readonly Contribution[], most: number): string {
  return few(
    through.map(({ founder, share }) => `${founder} (${coefficient(share)})`),
    most,
  ).join(', ');
}
