import type { WarningLevel, WarningLine } from '../../../rules/agenda/item.ts';
import { relativeDay, shortDate } from '../dates.ts';
import { wrap } from '../width.ts';
import { naturally } from '../words.ts';
import { besideGutter, bodyWidth, type Page } from './lines.ts';

/** The word that says how much a warning presses, the most pressing first. */
const WORDS: Record<WarningLevel, string> = { act: 'ACT NOW', watch: 'WATCH', note: 'note' };
const LEVELS = Object.keys(WORDS) as WarningLevel[];

/** Warnings, the most pressing first: what was seen and why it matters, and what to check. */
export function warningLines(warnings: readonly WarningLine[], page: Page): string[] {
  return [...warnings]
    .sort(
      (a, b) =>
        LEVELS.indexOf(a.level) - LEVELS.indexOf(b.level) ||
        b.date - a.date ||
        naturally(a.pair ?? a.bird ?? '', b.pair ?? b.bird ?? ''),
    )
    .flatMap((warning) => oneWarning(warning, page));
}

function oneWarning({ level, pair, bird, clutch, date, text, check }: WarningLine, page: Page): string[] {
  const whom = [pair, clutch === null ? null : `clutch ${clutch}`, bird].filter((part) => part !== null);
  const when = date === page.day ? relativeDay(date, page.day) : shortDate(date, page.day);
  const body = bodyWidth(page);
  const head = `${whom.length === 0 ? 'the room' : whom.join(', ')} · ${when}`;
  const lines = [
    ...wrap(head, body, { hanging: 2 }).map(page.styles.task),
    ...wrap(text, body),
    ...wrap(`check: ${check}`, body, { hanging: 2 }),
  ];
  return besideGutter(WORDS[level], level, lines, page);
}
