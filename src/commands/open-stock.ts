import { nearest } from '../findings/nearest.ts';
import { type Stock, type StockBird, stockOf } from '../rules/stock/stock.ts';
import type { Context } from './context.ts';
import { asWritten } from './named.ts';
import { type OpenRoom, openRoom } from './room.ts';
import { UsageError } from './usage-error.ts';

/** A room with its birds folded into one stock. */
export interface OpenStock extends OpenRoom {
  stock: Stock;
}

/** Reads the room's folder and folds its stock as known on the day stood on. */
export function openStock(context: Pick<Context, 'journals' | 'day' | 'today'>): OpenStock {
  const open = openRoom(context);
  return { ...open, stock: stockOf(open.room) };
}

/** The bird of that id, ring or `PAIR/CLUTCH/cN`, however its letters are written; a name that nobody bears is wrong usage. */
export function birdNamed(name: string, { find, of, birds }: Stock): StockBird {
  const names = birds.flatMap(({ id, bird: { ring } }) => (ring === null ? [id] : [id, ring]));
  const bird = find(name) ?? find(asWritten(name, names) ?? name);
  const known = bird === null ? null : of(bird);
  if (known !== null) return known;
  const near = nearest(name, names);
  const more = near === null ? '`nestlog stock` lists who is here' : `did you mean \`${near}\`?`;
  throw new UsageError(`no bird is called \`${name}\`; ${more}`);
}
