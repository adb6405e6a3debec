import { type Day, formatDay } from '../../days.ts';
import type { Finding } from '../../findings/finding.ts';
import { findingData } from './finding.ts';
import { jsonText } from './text.ts';

/** Every finding for programs. */
export function checkJson(day: Day, room: string | null, findings: readonly Finding[]): string {
  return jsonText({ nestlog: 1, date: formatDay(day), room, findings: findings.map(findingData) });
}
