import { formatDay } from '../../days.ts';
import type { Recorded } from '../terminal/record.ts';
import { findingData } from './finding.ts';
import { jsonText } from './text.ts';

/** An entry for programs: where it stands or would stand, and what speaks against it. */
export function recordJson({ day, what, plan, verdict }: Recorded): string {
  const { path, line, lines } = plan;
  return jsonText({
    nestlog: 1,
    date: formatDay(day),
    written: what === 'written',
    refused: what === 'refused',
    file: path,
    line,
    lines,
    findings: [...verdict.unreadable, ...verdict.errors, ...verdict.hints].map(findingData),
  });
}
