import type { Day } from '../days.ts';
import { nameOfFile } from '../file-names.ts';
import { partsOf } from '../findings/alike.ts';
import { type Finding, withoutPlaces } from '../findings/finding.ts';
import { dayAt, entryAt } from '../journal/entries.ts';
import type { Entry, PairJournal } from '../journal/entry.ts';
import { few, listed } from '../words.ts';

/** More lines are counted, not named. */
const MOST_LINES = 8;

/**
 * The journals that count, one a pair, and a finding for each that is left out. Of two the one whose file is named after its
 * pair counts, as what syncing puts beside it has another name; then the one that goes on longest.
 */
export function onePerPair(journals: readonly PairJournal[]): { kept: PairJournal[]; findings: Finding[] } {
  const chosen = new Map<string, PairJournal>();
  for (const journal of journals) {
    const other = chosen.get(journal.pair.text);
    if (other === undefined || isBefore(journal, other)) chosen.set(journal.pair.text, journal);
  }
  if (chosen.size === journals.length) return { kept: [...journals], findings: [] };
  const kept = journals.filter((journal) => chosen.get(journal.pair.text) === journal);
  const findings = journals.flatMap((journal): Finding[] => {
    const instead = chosen.get(journal.pair.text) as PairJournal;
    return instead === journal ? [] : [leftOut(journal, instead)];
  });
  return { kept, findings };
}

function isBefore(one: PairJournal, other: PairJournal): boolean {
  const named = Number(isNamedAfterPair(one)) - Number(isNamedAfterPair(other));
  return named === 0 ? lastDay(one) > lastDay(other) : named > 0;
}

function isNamedAfterPair({ file, pair }: PairJournal): boolean {
  return partsOf(nameOfFile(file)).join(' ') === partsOf(pair.text).join(' ');
}

function lastDay({ entries }: PairJournal): Day {
  let last = Number.NEGATIVE_INFINITY;
  for (let index = 0; index < entries.length; index++) last = Math.max(last, dayAt(entries, index));
  return last;
}

function leftOut(journal: PairJournal, instead: PairJournal): Finding {
  const known = new Set(entriesOf(instead).map(withoutPlaces));
  const lines = entriesOf(journal).flatMap((entry) =>
    known.has(withoutPlaces(entry)) ? [] : [entry.at.line],
  );
  const only = listed(few([...new Set(lines)].map(String), MOST_LINES));
  return {
    code: 'pair-twice',
    at: journal.pair.at,
    args: { pair: journal.pair.text, file: instead.pair.at.file, only },
  };
}

function entriesOf({ entries }: PairJournal): Entry[] {
  return Array.from({ length: entries.length }, (_, index) => entryAt(entries, index));
}
