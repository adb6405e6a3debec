import { type PairStory, pairStory } from '../../src/rules/season/story.ts';
import { type Portrait, portraitOf } from '../../src/rules/stock/portrait.ts';
import { type Stock, stockOf } from '../../src/rules/stock/stock.ts';
import { exampleRoom } from './room.ts';

/** A pair of the example room with its story. */
export function exampleStory(id: string): PairStory {
  const room = exampleRoom();
  const pair = room.pairs.find((known) => known.id === id);
  if (pair === undefined) throw new Error(`no pair ${id}`);
  return pairStory(room, pair);
}

/** A bird of the example room with its stock. */
export function examplePortrait(id: string): { portrait: Portrait; stock: Stock } {
  const stock = stockOf(exampleRoom());
  const one = stock.birds.find((known) => known.id === id);
  if (one === undefined) throw new Error(`no bird ${id}`);
  return { portrait: portraitOf(one, stock), stock };
}
