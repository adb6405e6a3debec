import { type Fields as Entry, Fields, Text } from '../journal/nodes.ts';
import type { Room } from '../room/fold.ts';

/**
 * The number of the clutch that an entry's `laid` began, so that it can be written down: counted numbers move when an
 * older clutch is recorded later, written ones do not. Null where it began none, or says its clutch itself.
 */
export function clutchBegun(entry: Entry, pair: string, before: Room, after: Room): number | null {
  const keys = entry.pairs.map(([key]) => key.text);
  if (!keys.includes('laid') || keys.includes('clutch')) return null;
  const openings = ({ pairs }: Room) => pairs.find(({ id }) => id === pair)?.clutches ?? [];
  const known = openings(before).map(({ opened }) => opened);
  const begun = openings(after).filter(({ opened }) => {
    const index = known.indexOf(opened);
    if (index >= 0) known.splice(index, 1);
    return index < 0;
  });
  return begun.length === 1 ? (begun[0]?.number ?? null) : null;
}

/** The entry with the number of its clutch, behind the date and time. */
export function pinned(entry: Entry, clutch: number): Entry {
  const first = entry.pairs.findIndex(([key]) => !['date', 'time', 'after'].includes(key.text));
  const pin = [new Text('clutch', entry.at), new Text(String(clutch), entry.at)] as const;
  return new Fields(entry.pairs.toSpliced(first < 0 ? entry.pairs.length : first, 0, pin), entry.at);
}
