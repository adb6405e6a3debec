import type { AgendaItem } from '../../../rules/agenda/item.ts';
import type { ComingRest } from '../../../rules/ahead/rest.ts';
import { count, stated } from '../../../words.ts';
import { shortDate, weekdayDate } from '../dates.ts';
import { type DatedPage, item } from './page.ts';

/** Hens that will have had their clutches for a year. */
export function restLines(rest: readonly ComingRest[], page: DatedPage): string[] {
  if (rest.length === 0) return [];
  const lines = rest.flatMap(({ pair, hen, housing, clutches, limit, from, free }) => {
    const since =
      from === null
        ? 'once the young of this clutch fledge'
        : from <= page.day
          ? `since ${shortDate(from, page.day)}`
          : `from ${shortDate(from, page.day)} at the earliest, when the first may fledge`;
    const where = housing === null ? '' : ` · ${housing}`;
    return item(
      `${pair} (${hen})${where}: rest ${since}; ${count(clutches, 'clutch', 'clutches')} in a year, the limit is ${limit}; free again ${shortDate(free, page.day)}`,
      page,
    );
  });
  return [page.look.heading('Pairs that will need rest'), ...lines];
}

/** Birds that come of age and quarantines that end, day by day. */
export function eventLines(events: readonly AgendaItem[], page: DatedPage): string[] {
  if (events.length === 0) return [];
  const lines = [...events]
    .sort((a, b) => a.from - b.from)
    .flatMap(({ bird, say, from, species, housing }) => {
      const what = stated([bird, species, housing]);
      return item(`${weekdayDate(from, page.day)}: ${what}: ${say}`, page);
    });
  return [page.look.heading('Birds'), ...lines];
}
