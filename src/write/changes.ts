import type { AgendaItem } from '../rules/agenda/item.ts';

/** What an entry does to the agenda. */
export interface Changes {
  gone: AgendaItem[];
  begun: AgendaItem[];
  moved: { from: AgendaItem; to: AgendaItem }[];
}

/** Compares two agendas: the same task for the same nest or bird is one task, on whatever days. */
export function changesOf(before: readonly AgendaItem[], after: readonly AgendaItem[]): Changes {
  const gone = [...before];
  const take = (found: (item: AgendaItem) => boolean): AgendaItem | undefined => {
    const index = gone.findIndex(found);
    return index < 0 ? undefined : gone.splice(index, 1)[0];
  };
  // What did not move is taken out first, so that of several alike the right one is told as moved.
  const other = after.filter((item) => take((known) => sameTask(known, item) && sameDays(known, item)) === undefined);
  const changes: Changes = { gone, begun: [], moved: [] };
  for (const to of other) {
    const from = take((known) => sameTask(known, to));
    if (from === undefined) changes.begun.push(to);
    else changes.moved.push({ from, to });
  }
  return changes;
}

function sameTask(a: AgendaItem, b: AgendaItem): boolean {
  return a.task === b.task && a.pair === b.pair && a.bird === b.bird && a.clutch === b.clutch;
}

function sameDays(a: AgendaItem, b: AgendaItem): boolean {
  return a.from === b.from && a.to === b.to && a.likely === b.likely;
}
