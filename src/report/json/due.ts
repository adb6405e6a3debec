import { formatDay } from '../../days.ts';
import type { AgendaItem, WarningLine } from '../../rules/agenda/item.ts';
import type { Morning } from '../morning.ts';
import { dayData } from './course.ts';
import { findingData } from './finding.ts';
import { jsonText } from './text.ts';

/** The morning for programs. The keys are promised: none is renamed or left out while `nestlog` stays 1. */
export function dueJson({ day, room, items, warnings, findings }: Morning): string {
  return jsonText({
    nestlog: 1,
    date: formatDay(day),
    room,
    items: items.map(itemData),
    warnings: warnings.map(warningData),
    findings: findings.map(findingData),
  });
}

function itemData(item: AgendaItem) {
  const { task, pair, bird, clutch, who, housing, species, from, likely, to, state, why, basis } = item;
  return {
    task,
    pair,
    bird,
    clutch,
    who,
    housing,
    species,
    from: formatDay(from),
    likely: dayData(likely),
    to: dayData(to),
    state,
    why,
    basis,
  };
}

function warningData({ kind, level, pair, bird, clutch, date, text, check }: WarningLine) {
  return { kind, level, pair, bird, clutch, date: formatDay(date), text, check };
}
