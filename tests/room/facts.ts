import { formatDay, type Span } from '../../src/days.ts';
import type { Room } from '../../src/room/fold.ts';
import type { Bird, Clutch, Egg, Pair } from '../../src/room/model.ts';

export { pair as journal, waxbills } from '../rules/warnings/warned.ts';

const start = 'date: 2026-03-01, paired';
const eggs = `${start}\ndate: 2026-03-05, laid: 4, sitting`;
const chicks = `${eggs}\ndate: 2026-03-18, hatched: [e1, e2, e3]`;
const fledglings = `${chicks}\ndate: 2026-04-06, fledged: all`;
const young = `${fledglings}\ndate: 2026-04-25, independent: all`;

/** The log of one clutch up to each of its steps. */
export const until = { start, eggs, chicks, fledglings, young };

/** A stretch of days of one year: `03-01`, or `03-01…03-04` where it is not sure which. */
export function days({ from, to }: Span): string {
  const [a, b] = [from, to].map((one) => formatDay(one).slice(5));
  return a === b ? `${a}` : `${a}…${b}`;
}

/** The pair of that id. */
export function pairIn(room: Room, id: string): Pair {
  return found(
    room.pairs.find((pair) => pair.id === id),
    id,
  );
}

/** The clutch `PAIR/NUMBER`. */
export function clutchIn(room: Room, name: string): Clutch {
  const [id, number] = name.split('/');
  return found(
    pairIn(room, id as string).clutches.find((clutch) => clutch.number === Number(number)),
    name,
  );
}

/** The egg `PAIR/NUMBER/eN`. */
export function eggIn(room: Room, name: string): Egg {
  const egg = clutchIn(room, name).eggs.find(({ ref }) => ref === name.split('/')[2]);
  return found(egg, name);
}

/** The bird of that id, or the chick `PAIR/NUMBER/cN`. */
export function birdIn(room: Room, name: string): Bird {
  return found(
    room.birds.find((bird) => bird.id === name),
    name,
  );
}

/** Each egg of a clutch and how it ended: `e1 hatched`, `e2 lost (clear)`, `e3 open`. */
export function fates(clutch: Clutch): string[] {
  return clutch.eggs.map(({ ref, fate }) => {
    if (fate === null) return `${ref} open`;
    return fate.kind === 'hatched' ? `${ref} hatched` : `${ref} ${fate.kind} (${fate.cause ?? 'no cause'})`;
  });
}

/** The findings of a room by code. */
export function codes(room: Room): string[] {
  return room.findings.map(({ code }) => code);
}

function found<T>(one: T | undefined, name: string): T {
  if (one === undefined) throw new Error(`the room has no ${name}`);
  return one;
}
