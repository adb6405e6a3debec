import type { Ancestor } from '../../../rules/stock/lineage.ts';
import type { Parent } from '../../../rules/stock/parents.ts';

/** Generations of ancestors that the tree shows. */
const GENERATIONS = 4;

/** Doubts about somebody’s parents, where there are any. */
export type DoubtsOf = (one: Ancestor) => { sire: Parent; dam: Parent } | null;

/**
 * A bird’s ancestors as a tree, sire above dam, four generations back. Whoever stands in it more than once has a `*`.
 * Branches of which nothing is known are left out.
 */
export function pedigreeLines(one: Ancestor, doubts: DoubtsOf): string[] {
  const times = new Map<Ancestor, number>();
  tally(one, GENERATIONS, times);
  return [`${one.id}${ringOf(one)}`, ...branches(one, GENERATIONS, { times, doubts })];
}

function tally({ sire, dam }: Ancestor, left: number, times: Map<Ancestor, number>): void {
  if (left === 0) return;
  for (const parent of [sire, dam]) {
    if (parent === null) continue;
    times.set(parent, (times.get(parent) ?? 0) + 1);
    tally(parent, left - 1, times);
  }
}

function branches(
  one: Ancestor,
  left: number,
  tree: { times: ReadonlyMap<Ancestor, number>; doubts: DoubtsOf },
): string[] {
  const doubts = tree.doubts(one);
  const nothing = one.sire === null && one.dam === null && !doubts?.sire.doubt && !doubts?.dam.doubt;
  if (left === 0 || nothing) return [];
  return (['sire', 'dam'] as const).flatMap((role) => {
    const parent = one[role];
    const [fork, stem] = role === 'sire' ? ['├─', '│  '] : ['└─', '   '];
    if (parent === null) {
      const doubt = doubts?.[role].doubt ?? null;
      return [`${fork} ${role} unknown${doubt === null ? '' : `: ${doubt}`}`];
    }
    const again = (tree.times.get(parent) ?? 0) > 1 ? ' *' : '';
    const more = branches(parent, left - 1, tree).map((line) => stem + line);
    return [`${fork} ${role} ${parent.id}${ringOf(parent)}${again}`, ...more];
  });
}

function ringOf({ bird, id }: Ancestor): string {
  const ring = bird?.ring ?? null;
  return ring === null || ring === id ? '' : ` (ring ${ring})`;
}
