import { massCodes } from './codes/masses.ts';
import { readingCodes } from './codes/reading.ts';
import { roomCodes } from './codes/room.ts';
import { stockCodes } from './codes/stock.ts';
import type { Finding, FindingArgs, Level } from './finding.ts';

/** One kind of finding: how bad it is, what is wrong, and what was probably meant. */
export interface FindingKind {
  level: Level;
  /** What is wrong, one sentence without a full stop. */
  text: (args: FindingArgs) => string;
  /** The likely fix; where it can be a line to paste, it is one. Null when there is nothing to suggest. */
  hint: (args: FindingArgs) => string | null;
}

/** Every kind of finding there is. */
export const codes = { ...readingCodes, ...roomCodes, ...stockCodes, ...massCodes } as const;

export type FindingCode =
  | keyof typeof readingCodes
  | keyof typeof roomCodes
  | keyof typeof stockCodes
  | keyof typeof massCodes;

/** Whether something cannot be read or cannot be true; else it is a hint. */
export function isError(finding: Pick<Finding, 'code'>): boolean {
  return kindOf(finding).level === 'error';
}

/** The kind behind a finding's code. */
export function kindOf(finding: Pick<Finding, 'code'>): FindingKind {
  return codes[finding.code];
}
