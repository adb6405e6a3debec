import { keptIn } from '../../grouped.ts';
import type { Room } from '../../room/fold.ts';
import { type Pair, together } from '../../room/model.ts';
import { onlyOf } from '../stock/names.ts';
import type { Stock, StockBird } from '../stock/stock.ts';

/** Which pairs are to stay. */
export interface PairWishes {
  /** Ids of pairs that stay, or come together again. */
  keep: ReadonlySet<string>;
  /** Whether pairs that were not parted, but for those to keep, are open to change. */
  anew: boolean;
}

/** The pair of every bird that is spoken for: pairs that were not parted, and those to keep. */
export function spokenFor(room: Room, stock: Stock, { keep, anew }: PairWishes): Map<StockBird, string> {
  const pairs = new Map<StockBird, string>();
  if (!anew) {
    for (const one of stock.birds) {
      if (one.current !== null) pairs.set(one, one.current.pair.id);
    }
  }
  for (const pair of room.pairs.filter(({ id }) => keep.has(id))) {
    for (const one of matesOf(pair, stock) ?? []) pairs.set(one, pair.id);
  }
  return pairs;
}

/** The pairs that were not parted in which a bird may be, as one of several that the journal names. */
export function perhapsIn({ pairs }: Room, stock: Stock): (one: StockBird) => string[] {
  const perhaps = new Map<StockBird, string[]>();
  for (const { id, cock, hen } of pairs.filter(together)) {
    for (const name of [cock, hen].flatMap((names) => (names.length > 1 ? names : []))) {
      const bird = stock.find(name);
      const one = bird === null ? null : stock.of(bird);
      if (one !== null) keptIn(perhaps, one, () => []).push(id);
    }
  }
  return (one) => perhaps.get(one) ?? [];
}

/** The cock and the hen of a pair, where it is known who they are and both are here; else null. */
export function matesOf({ cock, hen }: Pair, stock: Stock): [cock: StockBird, hen: StockBird] | null {
  const [his, hers] = [cock, hen].map((names) => {
    const bird = onlyOf(names, stock.find);
    const one = bird === null ? null : stock.of(bird);
    return one?.status === 'here' ? one : null;
  });
  return his && hers ? [his, hers] : null;
}
