import type { AgendaItem } from '../../rules/agenda/item.ts';
import { stated } from '../../words.ts';
import { visible } from '../terminal/visible.ts';

/** RFC 5545, 3.8.4.7: programs have to take identifiers of up to 255 octets; longer ones they may refuse. */
const LONGEST = 255;

type Named = Pick<AgendaItem, 'task' | 'pair' | 'bird' | 'clutch' | 'apart'>;

/**
 * What names a task for good, so that a calendar that is given it again changes its entry instead of adding one: the
 * room, the task, whose it is, of which clutch and of which day of hatching; no date that is only expected. ASCII, at
 * most 255 characters.
 */
export function uidOf({ task, pair, bird, clutch, apart }: Named, room: string | null): string {
  const whose = [pair === null ? null : `pair=${part(pair)}`, bird === null ? null : `bird=${part(bird)}`];
  const parts = [
    part(task),
    ...whose,
    clutch === null ? null : `clutch=${clutch}`,
    apart === null ? null : part(apart),
  ];
  const uid = `${stated(parts, '/')}@${part(room ?? 'room')}.nestlog`;
  return uid.length <= LONGEST ? uid : `${uid.slice(0, LONGEST - 17)}~${fingerprint(uid)}`;
}

/** As in a URI: no blank, stroke, `@` or anything that would have to be escaped is left. */
function part(text: string): string {
  return encodeURIComponent(visible(text));
}

const PRIME = 0x100000001b3n;
const OFFSET = 0xcbf29ce484222325n;

/** FNV-1a of 64 bits (Fowler, Noll, Vo) of an ASCII text, as 16 hexadecimal digits. */
export function fingerprint(text: string): string {
  let hash = OFFSET;
  for (const character of text) {
    hash = BigInt.asUintN(64, (hash ^ BigInt(character.charCodeAt(0))) * PRIME);
  }
  return hash.toString(16).padStart(16, '0');
}
