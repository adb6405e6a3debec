import type { Room } from '../room/fold.ts';
import { type Stock, type StockBird, stockOf } from '../rules/stock/stock.ts';
import { shellWord } from '../write/names.ts';
import { meant } from './meant.ts';
import { asWritten } from './named.ts';
import { type Asked, type OpenRoom, openRoom } from './room.ts';
import { UsageError } from './usage-error.ts';

/** A room with its birds folded into one stock. */
export interface OpenStock extends OpenRoom {
  stock: Stock;
}

/** Reads the room's folder and folds its stock as known on the day stood on. */
export function openStock(context: Asked): OpenStock {
  const open = openRoom(context);
  return { ...open, stock: stockOf(open.room) };
}

interface BirdsOfRoom {
  stock: Pick<Stock, 'find' | 'of' | 'birds'>;
  room: Pick<Room, 'pairs'>;
}

/** The bird of that id, ring or `PAIR/CLUTCH/cN`, however its letters are written; a name that nobody bears is wrong usage. */
export function birdNamed(name: string, { stock: { find, of, birds }, room }: BirdsOfRoom): StockBird {
  const names = birds.flatMap(({ id, bird: { ring } }) => (ring === null ? [id] : [id, ring]));
  const bird = find(name) ?? find(asWritten(name, names) ?? name);
  const known = bird === null ? null : of(bird);
  if (known !== null) return known;
  const pair = asWritten(
    name,
    room.pairs.map(({ id }) => id),
  );
  if (pair !== null)
    throw new UsageError(`no bird is called \`${name}\`; it is a pair: \`nestlog pair ${shellWord(pair)}\``);
  throw new UsageError(
    `no bird is called \`${name}\`; ${meant(name, names, '`nestlog stock` lists who is here')}`,
  );
}
