import type { Day } from '../days.ts';
import type { Finding } from '../findings/finding.ts';
import type { AgendaItem, WarningLine } from '../rules/agenda/item.ts';

/** All that a keeper is told in the morning, whatever it is then printed as. */
export interface Morning {
  /** The day stood on. */
  day: Day;
  /** The day on the keeper's wall; another than `day` when the keeper asked for another. */
  today: Day;
  /** The room's name, or null where none was given. */
  room: string | null;
  /** How many days ahead were asked for. */
  days: number;
  /** Late ones, those of now, and those that begin within the days asked for. */
  items: AgendaItem[];
  warnings: WarningLine[];
  findings: Finding[];
  /** The first task after the days asked for, or null: a quiet morning says when the next work comes. */
  next: AgendaItem | null;
}
