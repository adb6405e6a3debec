import type { AgendaItem } from '../../../rules/agenda/item.ts';
import { count, stated } from '../../../words.ts';
import type { Morning } from '../../morning.ts';
import { longDate, relativeDay, weekdayDate } from '../dates.ts';
import { subject } from './where.ts';

/** What a morning opens with: its day and room, whether it is another than today, and how much there is to do. */
export function openingOf({ day, today, room, days, items }: Morning) {
  const number = (state: AgendaItem['state']) => items.filter((item) => item.state === state).length;
  const counts = [
    number('late') > 0 ? `${number('late')} late` : null,
    number('now') > 0 ? `${number('now')} for today` : null,
    number('coming') > 0 ? `${number('coming')} to come in the next ${count(days, 'day')}` : null,
  ];
  return {
    title: stated([longDate(day), room]),
    standing: day === today ? null : `as it stands on that day; today is ${weekdayDate(today, day)}`,
    counts: stated(counts),
  };
}

/** A kind word when there is nothing to do now, and when the next work comes; nothing when there is. */
export function quietText(morning: Morning, broken: boolean): string[] {
  const { items, warnings } = morning;
  if (items.some(({ state }) => state !== 'coming')) return [];
  const nothing = broken
    ? 'Nothing is due as far as the journals can be read.'
    : `${warnings.length > 0 ? 'Beyond that' : 'A quiet morning'}: nothing is late and nothing is due today.`;
  return [items.length > 0 ? nothing : `${nothing} ${afterwards(morning)}`];
}

/** What an agenda without a line says of the time after it. */
function afterwards({ day, days, next }: Morning): string {
  if (next === null) return 'Nothing is foreseen either. Food, water and a look at every bird, all the same.';
  const when = `${weekdayDate(next.from, day)}, ${relativeDay(next.from, day)}`;
  return `Nor is anything in the next ${count(days, 'day')}. After that: ${next.say}, ${subject(next)} (${when}).`;
}

/** Where to read the hints, which a morning only counts. */
export function hintsText(number: number): string {
  return `${count(number, 'hint')} on how something is written: nestlog check shows ${number === 1 ? 'it' : 'them'}`;
}
