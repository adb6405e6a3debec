import { shortDay } from '../../src/days.ts';
import { fewNames, quarantineOf } from '../../src/rules/quarantine.ts';
import { birdIn } from '../room/facts.ts';
import { type Files, room } from '../rooms.ts';

/** A bird list of these items. */
export const birds = (...items: string[]): Files => ({
  'birds.yaml': `birds:\n${items.map((item) => `  - ${item}`).join('\n')}\n`,
});
/** A bird that came to cage 9 on a day. */
export const came = (id: string, on: string, ...more: string[]) =>
  `{id: ${id}, log: [${[`date: ${on}, arrived: cage 9`, ...more].map((entry) => `{${entry}}`).join(', ')}]}`;

/** When a bird's days are over, and who made them begin anew: `31 Mar`, `9 Apr with B`, `9 Apr, B died`. */
export function out(files: Files, who: string, on = '2026-03-30'): string | null {
  const known = room(files, on);
  const quarantine = quarantineOf(known, birdIn(known, who));
  if (quarantine === null) return null;
  const { until, joined, died } = quarantine;
  const why = [
    ...(joined.length === 0 ? [] : [` with ${fewNames(joined)}`]),
    ...(died.length === 0 ? [] : [`, ${fewNames(died)} died`]),
  ];
  return `${shortDay(until)}${why.join('')}`;
}

/** A bird that has long been in flight 2. */
export const resident = (id: string, ...more: string[]) =>
  `{id: ${id}, log: [${['date: 2025-03-01, arrived: flight 2', 'date: 2025-04-01, released', ...more].map((entry) => `{${entry}}`).join(', ')}]}`;
