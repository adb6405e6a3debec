import { grouped } from '../../../grouped.ts';
import type { AgendaItem } from '../../../rules/agenda/item.ts';
import { stated } from '../../../words.ts';
import type { Row } from './fold.ts';

/** What a heading has said already and a line under it leaves out; `whose` is the pair, the bird or the room. */
export interface Said {
  whose: boolean;
  housing: boolean;
  species: boolean;
}

/** Under a heading that says nothing of the kind. */
export const unsaid: Said = { whose: false, housing: false, species: false };

const NUMBERED = /^([ec])(\d+)$/;

/** Refs in as few words as possible: `e1, e2, e3, e5` is `e1–e3, e5`. */
export function refs(who: readonly string[]): string {
  const runs: string[][] = [];
  for (const ref of who) {
    const run = runs.at(-1);
    if (run !== undefined && follows(run.at(-1) as string, ref)) run.push(ref);
    else runs.push([ref]);
  }
  return runs.map((run) => (run.length > 2 ? `${run[0]}–${run.at(-1)}` : run.join(', '))).join(', ');
}

function follows(before: string, ref: string): boolean {
  const [, kind, number] = NUMBERED.exec(before) ?? [];
  const [, otherKind, otherNumber] = NUMBERED.exec(ref) ?? [];
  return kind !== undefined && kind === otherKind && Number(number) + 1 === Number(otherNumber);
}

/** Whose an item of a row is: `LW-1`, a bird's id, or the room; `LW-1 clutch 2` where the row has two of the pair's. */
export function ownerIn(row: readonly AgendaItem[], item: AgendaItem): string {
  return stated([item.pair ?? item.bird ?? 'the room', clutchIn(row, item)], ' ');
}

function clutchIn(row: readonly AgendaItem[], { pair, clutch }: AgendaItem): string | null {
  const others = row.filter((other) => other.pair === pair && other.clutch !== clutch);
  return pair === null || clutch === null || others.length === 0 ? null : `clutch ${clutch}`;
}

/** Whose task it is: `LW-1 (e1–e4)`, a bird's id, or the room; beside others of its row, which clutch's. */
export function subject(item: AgendaItem, said: Said = unsaid, row: readonly AgendaItem[] = [item]): string {
  const { pair, bird, who } = item;
  const whose = said.whose ? clutchIn(row, item) : ownerIn(row, item);
  const which = who !== null ? refs(who) : pair !== null ? bird : null;
  if (whose === null) return which ?? '';
  return which === null || which === whose ? whose : `${whose} (${which})`;
}

/** Where to go for a row, phrases for each housing: `LW-1 (e1–e4), LW-3` and `flight 2`. */
export function where(row: Row, said: Said): string[][] {
  const housings = grouped(row, ({ housing }) => (said.housing ? null : housing));
  return [...housings].map(([housing, some]) => {
    const subjects = new Set(some.map((item) => subject(item, said, row)));
    return [[...subjects].join(', '), housing ?? ''].filter((phrase) => phrase !== '');
  });
}
