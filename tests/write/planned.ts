import { birdLog } from '../../src/journal/birds.ts';
import { pairLog } from '../../src/journal/pair-journal.ts';
import { type EntryPlan, planEntry, type Target } from '../../src/write/plan.ts';
import { entryOfWords } from '../../src/write/words.ts';
import { day } from '../rooms.ts';

/** The plan of an entry of 4 March 2026 in a file whose text stands in the test as it is. */
export function planned(text: string, words: string[], target: Target = { of: 'pair' }): EntryPlan | null {
  const isPair = target.of === 'pair';
  const spoken = entryOfWords(words, {
    day: day('2026-03-04'),
    note: null,
    grammar: isPair ? pairLog : birdLog,
  });
  if ('wrong' in spoken) throw new Error(spoken.wrong);
  return planEntry({ path: isPair ? 'pairs/LW-1.yaml' : 'birds.yaml', text }, target, spoken.entry);
}
