import { civilDate, type Day, weekday } from '../../../days.ts';
import type { Food } from '../../../rules/feed/foods.ts';
import type { FeedPlan, HousingDay } from '../../../rules/feed/plan.ts';
import { columns } from '../columns.ts';
import type { Page } from '../page.ts';
import { portion } from './grams.ts';
import { housingName } from './who.ts';

const WEEKDAYS = ['Mon', 'Tue', 'Wed', 'Thu', 'Fri', 'Sat', 'Sun'];
/** Days side by side: as many as 80 columns hold. */
const DAYS_A_TABLE = 7;
const INDENT = 2;

/**
 * What goes into each dish of one food: a row a housing, a column a day; a dot where there is none. Of live food as much
 * as they may need at most, in portions; of soft food what is likely, as it spoils.
 */
export function dishTable({ housings, hours }: FeedPlan, food: Food, { width, look }: Page): string[] {
  const of = ({ foods }: HousingDay) =>
    food === 'live' ? foods.live.high / hours.portions.length : foods[food].likely;
  const given = housings.filter(({ days }) => days.some((one) => of(one) > 0));
  const starts = given[0]?.days.flatMap((_day, index) => (index % DAYS_A_TABLE === 0 ? [index] : [])) ?? [];
  return starts.flatMap((start) => {
    const part = given.map((place) => ({ place, days: place.days.slice(start, start + DAYS_A_TABLE) }));
    const head = part[0]?.days.map((one) => `${WEEKDAYS[weekday(one.day) - 1]} ${dateOf(one.day)}`) ?? [];
    const rows = part
      .filter(({ days }) => days.some((one) => of(one) > 0))
      .map(({ place, days }) => [
        housingName(place),
        ...days.map((one) => (of(one) > 0 ? String(portion(of(one))) : '·')),
      ]);
    if (rows.length === 0) return [];
    const right = head.map((_name, index) => index + 1);
    const [first = '', ...others] = columns([['', ...head], ...rows], {
      width,
      indent: INDENT,
      right,
      cut: 0,
    });
    return [look.muted(first), ...others];
  });
}

const dateOf = (day: Day) => String(civilDate(day).date);
