import type { Finding } from '../../findings/finding.ts';
import { nearest } from '../../findings/nearest.ts';
import { mentioning } from '../../journal/entries.ts';
import type { RoomRecord } from '../../journal/record.ts';
import { taskWords } from './tasks.ts';

/** Tasks that a journal skips though there are none of that name. */
export function unknownSkips(record: RoomRecord): Finding[] {
  const tasks = [
    ...new Set([
      ...taskWords.map(({ task }) => task),
      ...record.settings.routines.map(({ name }) => name.text),
    ]),
  ];
  return record.pairs
    .flatMap(({ entries }) => [...mentioning(entries, 'skip')])
    .flatMap(({ saw }) => saw)
    .flatMap((observation) => (observation.key === 'skip' ? observation.value : []))
    .filter(({ text }) => !tasks.includes(text))
    .map(({ text, at }) => {
      const args = { task: text, suggestion: nearest(text, tasks) ?? '', tasks: tasks.join(', ') };
      return { code: 'unknown-task', at, args };
    });
}
