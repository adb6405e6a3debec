/** Stands for a parent that is not known. */
export const UNKNOWN = -1;

/** Who descends from whom, by number 0 … n − 1. */
export interface Pedigree {
  /** The number of each one's sire, or `UNKNOWN`. */
  sires: Int32Array;
  dams: Int32Array;
  /** 0 for those without known parents, else one more than the later of the parents. */
  generations: Int32Array;
  /**
   * 1 for everyone whose ancestors hold a loop. The members of loops are taken to have no known parents, so that all
   * else can be reckoned; what is reckoned for these is not to be relied on.
   */
  unsound: Uint8Array;
}

/**
 * Puts a pedigree in order, however deep it is and in whatever order it is given. A parent is a number of the same
 * list or `UNKNOWN`.
 */
export function pedigreeOf(sires: ArrayLike<number>, dams: ArrayLike<number>): Pedigree {
  const pedigree: Pedigree = {
    sires: Int32Array.from(sires),
    dams: Int32Array.from(dams),
    generations: new Int32Array(sires.length),
    unsound: new Uint8Array(sires.length),
  };
  const young = youngOf(pedigree);
  const left = descend(pedigree, young);
  if (left.length === 0) return pedigree;
  for (const one of left) pedigree.unsound[one] = 1;
  for (const one of onLoops(pedigree, left)) {
    pedigree.sires[one] = UNKNOWN;
    pedigree.dams[one] = UNKNOWN;
  }
  descend(pedigree, youngOf(pedigree));
  return pedigree;
}

/** The young of each one, one after the other in `list`; those of `i` from `starts[i]` to before `starts[i + 1]`. */
interface Young {
  starts: Int32Array;
  list: Int32Array;
}

function youngOf({ sires, dams }: Pedigree): Young {
  const starts = new Int32Array(sires.length + 1);
  for (const parents of [sires, dams]) {
    for (const parent of parents) if (parent !== UNKNOWN) (starts[parent + 1] as number) += 1;
  }
  for (let i = 0; i < sires.length; i++) (starts[i + 1] as number) += starts[i] as number;
  const next = starts.slice();
  const list = new Int32Array(starts[sires.length] as number);
  for (const parents of [sires, dams]) {
    parents.forEach((parent, i) => {
      if (parent === UNKNOWN) return;
      list[next[parent] as number] = i;
      (next[parent] as number) += 1;
    });
  }
  return { starts, list };
}

/** Numbers the generations from the founders on; gives those that no founder leads to: in loops, or behind one. */
function descend({ sires, dams, generations }: Pedigree, { starts, list }: Young): number[] {
  const waiting = Uint8Array.from(sires, (sire, i) => Number(sire !== UNKNOWN) + Number(dams[i] !== UNKNOWN));
  const ready: number[] = [];
  waiting.forEach((parents, i) => {
    if (parents === 0) ready.push(i);
  });
  generations.fill(0);
  for (let one = ready.pop(); one !== undefined; one = ready.pop()) {
    const next = (generations[one] as number) + 1;
    for (let k = starts[one] as number; k < (starts[one + 1] as number); k++) {
      const young = list[k] as number;
      if ((generations[young] as number) < next) generations[young] = next;
      (waiting[young] as number) -= 1;
      if (waiting[young] === 0) ready.push(young);
    }
  }
  return [...waiting.keys()].filter((i) => waiting[i] !== 0);
}

/** Of those, the ones that are on a loop or between two: whoever has no young among them falls away, and again. */
function onLoops({ sires, dams }: Pedigree, left: readonly number[]): Set<number> {
  const core = new Set(left);
  const young = new Map<number, number>();
  const parentsOf = (one: number) =>
    [sires[one] as number, dams[one] as number].filter((parent) => core.has(parent));
  for (const one of left)
    for (const parent of parentsOf(one)) young.set(parent, (young.get(parent) ?? 0) + 1);
  const childless = left.filter((one) => !young.has(one));
  for (let one = childless.pop(); one !== undefined; one = childless.pop()) {
    for (const parent of parentsOf(one)) {
      const rest = (young.get(parent) as number) - 1;
      young.set(parent, rest);
      if (rest === 0) childless.push(parent);
    }
    core.delete(one);
  }
  return core;
}
