import type * as z from 'zod';
import type { FindingCode } from '../../findings/codes.ts';
import type { FindingArgs, Place } from '../../findings/finding.ts';

/** What a grammar schema puts into a zod issue so that the reader can turn it into a finding at the right place. */
export interface GrammarIssue {
  code: FindingCode;
  args: FindingArgs;
  at: Place;
}

/** Reports, from inside a schema's check or transform, that the value cannot be what it should be. */
export function refuse(
  context: z.core.$RefinementCtx,
  at: Place,
  code: FindingCode,
  args: FindingArgs = {},
): typeof z.NEVER {
  const issue: GrammarIssue = { code, args, at };
  context.issues.push({ code: 'custom', input: context.value, message: code, params: issue as never });
  return undefined as never;
}
