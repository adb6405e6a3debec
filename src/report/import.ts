/** What an import said or did, as the outputs need it. */
export interface ImportOutcome {
  table: string;
  rows: number;
  skipped: number;
  journals: { pair: string; path: string; text: string; entries: number; assumed: number }[];
  dates: { order: string | null; because: string | null };
  unread: readonly string[];
  zeros: ReadonlyMap<string, number>;
  hints: readonly { row: number | null; text: string; times: number }[];
  problems: readonly ImportTrouble[];
  /** Whether the journals are in the room now. */
  written: boolean;
}

interface ImportTrouble {
  file: string;
  row: number | null;
  line: number | null;
  column: string | null;
  text: string;
  hint: string | null;
}
