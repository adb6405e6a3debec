import type { AgendaItem, WarningLine } from '../rules/agenda/item.ts';

/** What a morning says. */
export interface MorningLines {
  items: readonly AgendaItem[];
  warnings: readonly WarningLine[];
}

/** What an entry does to the agenda. */
export interface Changes {
  /** Warnings that were not there before. */
  warnings: WarningLine[];
  gone: AgendaItem[];
  begun: AgendaItem[];
  moved: { from: AgendaItem; to: AgendaItem }[];
}

/** Compares two mornings: the same task for the same nest or bird is one task, on whatever days. */
export function changesOf(before: MorningLines, after: MorningLines): Changes {
  const gone = [...before.items];
  const take = (found: (item: AgendaItem) => boolean): AgendaItem | undefined => {
    const index = gone.findIndex(found);
    return index < 0 ? undefined : gone.splice(index, 1)[0];
  };
  // What did not move is taken out first, so that of several alike the right one is told as moved.
  const other = after.items.filter(
    (item) => take((known) => sameTask(known, item) && sameDays(known, item)) === undefined,
  );
  const warnings = after.warnings.filter(
    (warning) => !before.warnings.some((known) => sameWarning(known, warning)),
  );
  const changes: Changes = { warnings, gone, begun: [], moved: [] };
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

/** A warning that presses more than before is a new one. */
function sameWarning(a: WarningLine, b: WarningLine): boolean {
  return (
    a.kind === b.kind &&
    a.level === b.level &&
    a.pair === b.pair &&
    a.bird === b.bird &&
    a.clutch === b.clutch
  );
}
