import type { Room } from '../../src/room/fold.ts';
import { type Bird, type Clutch, clutchId, type Egg, fullRef, type Pair } from '../../src/room/model.ts';

/** Everything that a room knows, without where it was written: equal for rooms in which the same is known. */
export function summaryOf(room: Room): unknown {
  return {
    pairs: room.pairs.map((pair) => plain(pair, true)),
    birds: [...room.birds].sort((a, b) => (a.id < b.id ? -1 : 1)).map((bird) => plain(bird, true)),
  };
}

/** What was found, without where. */
export function findingsOf(room: Room): string[] {
  return room.findings.map(({ code, args }) => `${code} ${JSON.stringify({ ...args, line: 0 })}`).sort();
}

/** A value without places; whoever appears inside another is only named, except a clutch and its eggs in its pair. */
function plain(value: unknown, open = false): unknown {
  if (value instanceof Set) return [...value].map((one) => plain(one) as string).sort();
  if (Array.isArray(value)) return value.map((one) => plain(one));
  if (typeof value !== 'object' || value === null) return value;
  if (!open && 'nestLooks' in value) return (value as Pair).id;
  if (!open && 'stays' in value) return (value as Bird).id;
  if (!open && 'lamp' in value) return fullRef(value as Egg);
  if (!open && 'chicksCounted' in value) return clutchId(value as Clutch);
  const parts = Object.entries(value).filter(([key]) => !LEFT_OUT.includes(key));
  return Object.fromEntries(
    parts.map(([key, inner]) => {
      if (key === 'clutches') return [key, (inner as Clutch[]).map((clutch) => plain(clutch, true))];
      if (key === 'eggs' && Array.isArray(inner)) return [key, inner.map((egg) => plain(egg, true))];
      return [key, plain(inner)];
    }),
  );
}

const LEFT_OUT = ['at', 'profile', 'listed'];
