import { readingCodes } from '../findings/codes/reading.ts';
import { isError } from '../findings/codes.ts';
import type { Finding } from '../findings/finding.ts';
import type { EntryPlan } from './plan.ts';

/** What an entry makes wrong or doubtful that was not so before. */
export interface Verdict {
  /** What cannot be read: such an entry says nothing, and is never written. */
  unreadable: Finding[];
  /** What cannot be true beside the rest of the record, or stands there already. */
  errors: Finding[];
  hints: Finding[];
}

/** What was read but cannot be true: a keeper who knows better may write it. */
const READ_ALL_THE_SAME: readonly string[] = [
  'future-date',
  'after-later',
] satisfies (keyof typeof readingCodes)[];

/** Compares what was found before an entry with what is found with it. */
export function judge(plan: EntryPlan, before: readonly Finding[], after: readonly Finding[]): Verdict {
  const known = new Map<string, number>();
  for (const finding of before) {
    const name = nameOf(finding, shift(plan, finding));
    known.set(name, (known.get(name) ?? 0) + 1);
  }
  const fresh = after.filter((finding) => {
    const name = nameOf(finding, finding.at.line);
    const left = known.get(name) ?? 0;
    known.set(name, left - 1);
    return left <= 0;
  });
  const unreadable = fresh.filter(isUnreadable);
  const errors = fresh.filter(
    (finding) => !isUnreadable(finding) && (isError(finding) || finding.code === 'same-entry'),
  );
  return {
    unreadable,
    errors,
    hints: fresh.filter((finding) => !isError(finding) && !errors.includes(finding)),
  };
}

/** What is wrong or doubtful in a file that is to be begun. A name that is hardly another's is wrong there: it can still be chosen. */
export function judgeFile(path: string, findings: readonly Finding[]): Omit<Verdict, 'unreadable'> {
  const own = findings.filter(({ at }) => at.file === path);
  const isWrong = (finding: Finding) => isError(finding) || finding.code === 'alike-names';
  return { errors: own.filter(isWrong), hints: own.filter((finding) => !isWrong(finding)) };
}

function isUnreadable(finding: Finding): boolean {
  const { code } = finding;
  return isError(finding) && Object.hasOwn(readingCodes, code) && !READ_ALL_THE_SAME.includes(code);
}

/** The line on which a finding stands once the entry is there. */
function shift({ path, line, lines }: EntryPlan, { at }: Finding): number {
  return at.file === path && at.line >= line ? at.line + lines.length : at.line;
}

/** Alike for two findings that say the same of the same thing; lines that a sentence names move as well. */
function nameOf({ code, at, args: { line: _, ...args } }: Finding, line: number): string {
  return JSON.stringify([code, at.file, line, at.column, args]);
}
