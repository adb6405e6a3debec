import { fertilityOf } from '../../room/fertility.ts';
import type { Bird, Egg } from '../../room/model.ts';
import { youngFateOf } from './fates.ts';

/** What became of eggs. `laid` = hatched + lost + taken + open = fertile + clear + unknown + taken. */
export interface EggCounts {
  laid: number;
  /** Those taken by our hand are in none of these three. */
  fertile: number;
  clear: number;
  unknown: number;
  hatched: number;
  /** By cause, the commonest first; `unknown` where none was given. */
  lost: Record<string, number>;
  taken: number;
  open: number;
}

/** What became of young. `hatched` = independent + died + gone + open. */
export interface ChickCounts {
  hatched: number;
  fledged: number;
  independent: number;
  /** Before they fed themselves, by cause, the commonest first. */
  died: Record<string, number>;
  gone: number;
  open: number;
}

export function countEggs(eggs: readonly Egg[]): EggCounts {
  const ended = (kind: string) => eggs.filter(({ fate }) => fate?.kind === kind).length;
  const own = eggs.filter(({ fate }) => fate?.kind !== 'taken').map(fertilityOf);
  return {
    laid: eggs.length,
    fertile: own.filter((is) => is === 'fertile').length,
    clear: own.filter((is) => is === 'clear').length,
    unknown: own.filter((is) => is === null).length,
    hatched: ended('hatched'),
    lost: byCause(eggs.flatMap(({ fate }) => (fate?.kind === 'lost' ? [fate.cause] : []))),
    taken: ended('taken'),
    open: eggs.filter(({ fate }) => fate === null).length,
  };
}

export function countChicks(chicks: readonly Bird[]): ChickCounts {
  const fates = chicks.map(youngFateOf);
  const ended = (kind: string) => fates.filter((fate) => fate === kind).length;
  return {
    hatched: chicks.length,
    fledged: chicks.filter(({ fledged }) => fledged !== null).length,
    independent: ended('independent'),
    died: byCause(
      chicks.flatMap((bird) =>
        youngFateOf(bird) === 'died' && bird.fate?.kind === 'died' ? [bird.fate.cause] : [],
      ),
    ),
    gone: ended('gone'),
    open: ended('open'),
  };
}

function byCause(causes: readonly (string | null)[]): Record<string, number> {
  const counts = new Map<string, number>();
  for (const cause of causes) counts.set(cause ?? 'unknown', (counts.get(cause ?? 'unknown') ?? 0) + 1);
  const ranked = [...counts].sort(([a, n], [b, m]) => m - n || a.localeCompare(b, 'en'));
  return Object.fromEntries(ranked);
}

/** All that a table of causes adds up to. */
export function total(causes: Record<string, number>): number {
  return Object.values(causes).reduce((sum, n) => sum + n, 0);
}
