import { kindOf } from '../../findings/codes.ts';
import type { Finding } from '../../findings/finding.ts';

/** A finding as programs get it: its place, its words and the likely fix, or null. */
export function findingData({ code, at, args }: Finding) {
  const { level, text, hint } = kindOf({ code });
  return {
    code,
    level,
    file: at.file,
    line: at.line,
    column: at.column,
    text: text(args),
    hint: hint(args),
  };
}
