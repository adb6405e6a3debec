import { naturally } from '../../findings/naturally.ts';
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

export function countEggs(eggs: Iterable<Egg>): EggCounts {
  const counts = { laid: 0, fertile: 0, clear: 0, unknown: 0, hatched: 0, taken: 0, open: 0 };
  const lost = new Map<string, number>();
  for (const egg of eggs) {
    counts.laid += 1;
    if (egg.fate?.kind === 'lost') addCause(lost, egg.fate.cause);
    else counts[egg.fate?.kind ?? 'open'] += 1;
    if (egg.fate?.kind !== 'taken') counts[fertilityOf(egg) ?? 'unknown'] += 1;
  }
  const { laid, fertile, clear, unknown, hatched, taken, open } = counts;
  return { laid, fertile, clear, unknown, hatched, lost: commonestFirst(lost), taken, open };
}

export function countChicks(chicks: Iterable<Bird>): ChickCounts {
  const counts = { hatched: 0, fledged: 0, independent: 0, gone: 0, open: 0 };
  const died = new Map<string, number>();
  for (const bird of chicks) {
    counts.hatched += 1;
    if (bird.fledged !== null) counts.fledged += 1;
    const fate = youngFateOf(bird);
    if (fate === 'died') addCause(died, bird.fate?.kind === 'died' ? bird.fate.cause : null);
    else counts[fate] += 1;
  }
  const { hatched, fledged, independent, gone, open } = counts;
  return { hatched, fledged, independent, died: commonestFirst(died), gone, open };
}

function addCause(causes: Map<string, number>, cause: string | null): void {
  const name = cause ?? 'unknown';
  causes.set(name, (causes.get(name) ?? 0) + 1);
}

function commonestFirst(causes: ReadonlyMap<string, number>): Record<string, number> {
  return Object.fromEntries([...causes].sort(([a, n], [b, m]) => m - n || naturally(a, b)));
}
