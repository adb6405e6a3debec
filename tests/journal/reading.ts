import { kindOf } from '../../src/findings/codes.ts';
import type { Finding } from '../../src/findings/finding.ts';
import type { Entry, PairJournal } from '../../src/journal/entry.ts';
import { readFile } from '../../src/journal/record.ts';

/** A pair's journal as it stands in a test, and what was found in it. */
export interface Read {
  journal: PairJournal;
  entries: Entry[];
  findings: Finding[];
  /** `line:column code` of each finding, in the order of the text. */
  found: string[];
  /** What each finding says is wrong. */
  said: string[];
  /** The fix of each finding. */
  fixes: (string | null)[];
}

/** Reads a whole journal. */
export function read(text: string, path = 'pairs/LW-1.yaml'): Read {
  const { says, findings } = readFile(path, text);
  const sorted = [...findings].sort((a, b) => a.at.line - b.at.line || a.at.column - b.at.column);
  const nothing = { pair: { text: '' }, entries: [] } as unknown as PairJournal;
  const journal = says.journal ?? nothing;
  return {
    journal,
    entries: [...journal.entries],
    findings: sorted,
    found: sorted.map(({ code, at }) => `${at.line}:${at.column} ${code}`),
    said: sorted.map((finding) => kindOf(finding).text(finding.args)),
    fixes: sorted.map((finding) => kindOf(finding).hint(finding.args)),
  };
}

/** Reads the lines of a log under a sound header; the first of them is line 3 of the file. */
export function readLog(...lines: string[]): Read {
  return read(`pair: LW-1\nlog:\n${lines.map((line) => `  ${line}\n`).join('')}`);
}

/** What each entry saw, as `key value`, without places. */
export function seen(entries: readonly Entry[]): string[] {
  return entries.flatMap(({ saw }) => saw.map(({ key, value }) => `${key} ${plain(value)}`));
}

/** A value as JSON without places. */
export function plain(value: unknown): string {
  return JSON.stringify(value, (name, inner) => (name === 'at' || name === 'dateAt' ? undefined : inner));
}
