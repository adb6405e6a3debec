import { formatDay } from '../../src/days.ts';
import type { ReadOne } from '../../src/journal/record.ts';
import { agenda, day, type Files, readOnce } from '../rooms.ts';

export { birdIn, clutchIn, codes, days, eggIn, fates, journal, pairIn, waxbills } from '../room/facts.ts';
export { morning, warned } from '../rules/warnings/warned.ts';

/** What is to be done on a day, late or now: `LW-1 candle e1 e2`, in the order in which it is read. */
export function due(files: Files, on: string, pair?: string, read?: ReadOne): string[] {
  return agenda(files, on, 0, read)
    .filter((item) => item.state !== 'coming' && (pair === undefined || item.pair === pair))
    .map(({ task, pair, bird, who }) =>
      [pair ?? bird ?? 'room', task, ...(bird === null ? (who ?? []) : [])].join(' '),
    );
}

/** The days on which a task of a pair stands in the mornings, as known on each of them: `03-09 … 03-10`. */
export function spell(files: Files, task: string, pair: string, from: string, to: string): string[] {
  const runs: { first: number; last: number }[] = [];
  const read = readOnce();
  for (let on = day(from); on <= day(to); on++) {
    if (!due(files, formatDay(on), pair, read).some((line) => line.split(' ')[1] === task)) continue;
    const run = runs.at(-1);
    if (run?.last === on - 1) run.last = on;
    else runs.push({ first: on, last: on });
  }
  return runs.map(({ first, last }) => {
    const [a, b] = [first, last].map((one) => formatDay(one).slice(5));
    return a === b ? `${a}` : `${a} … ${b}`;
  });
}
