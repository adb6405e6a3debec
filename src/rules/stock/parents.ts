import { shortDay } from '../../days.ts';
import { hatchedOn } from '../../room/clock.ts';
import type { Bird } from '../../room/model.ts';
import type { Mateship } from './mateships.ts';
import type { FindBird } from './names.ts';

/** One parent of a bird: who it is, or why that is not known. */
export interface Parent {
  /** The bird, where the room has it. */
  bird: Bird | null;
  /** Its id; also of a bird that is only named as a parent. Null where it is not known who it is. */
  id: string | null;
  /** Why it is not known though something is written: `one of LW-19-04, LW-19-07`. */
  doubt: string | null;
}

export interface Parents {
  sire: Parent;
  dam: Parent;
}

/** What parents are worked out from. */
interface Lines {
  find: FindBird;
  mateships: ReadonlyMap<Bird, Mateship[]>;
}

const UNKNOWN: Parent = { bird: null, id: null, doubt: null };

/** After so many days away from a cock, no egg of hers is taken to be his (rule of the room, common practice). */
const SIRE_DAYS = 14;

/**
 * Who a bird's parents are. The bird list is believed before the journal where it names one bird; a chick's parents
 * are those of the clutch that its egg was laid in, wherever it grew up. Who cannot be told for sure is unknown.
 */
export function parentsOf(bird: Bird, lines: Lines): Parents {
  const dam = parentNamed(bird, bird.listed?.dam.map(({ text }) => text) ?? [], bird.dam, lines.find);
  const sire = parentNamed(bird, bird.listed?.sire.map(({ text }) => text) ?? [], bird.sire, lines.find);
  if (dam.bird !== null && dam.bird === sire.bird) {
    const doubt = `${dam.bird.id} stands as both parents`;
    return { sire: { ...UNKNOWN, doubt }, dam: { ...UNKNOWN, doubt } };
  }
  const listedSire = bird.listed?.sire.length === 1;
  const doubt = listedSire ? null : anotherCock(bird, { sire, dam }, lines);
  return { sire: doubt === null ? sire : { ...UNKNOWN, doubt }, dam };
}

function parentNamed(
  bird: Bird,
  listed: readonly string[],
  journal: readonly string[],
  find: FindBird,
): Parent {
  const names = listed.length === 1 || journal.length === 0 ? listed : journal;
  const found = [...new Map(names.map((name) => [find(name)?.id ?? name, find(name)])).entries()];
  const [only, ...others] = found;
  if (only === undefined) return UNKNOWN;
  if (others.length > 0) return { ...UNKNOWN, doubt: `one of ${found.map(([id]) => id).join(', ')}` };
  const [id, parent] = only;
  if (parent === bird) return { ...UNKNOWN, doubt: `${id} stands as its own parent` };
  if (parent !== null && hatchedAfter(parent, bird)) return { ...UNKNOWN, doubt: `${id} hatched after it` };
  return { bird: parent, id, doubt: null };
}

/** Whether one cannot be the other's parent because it came into the world no earlier. */
export function hatchedAfter(parent: Bird, young: Bird): boolean {
  const first = hatchedOn(parent)?.from;
  return first !== undefined && young.hatched !== null && first >= young.hatched.to;
}

/** Which other cock may be the sire, because the hen had lately been with him when the egg was laid. */
function anotherCock({ clutch, egg }: Bird, { sire, dam }: Parents, lines: Lines): string | null {
  if (clutch === null || dam.bird === null || sire.id === null) return null;
  const laid = egg?.laid ?? { from: clutch.opened, to: clutch.opened };
  for (const mateship of lines.mateships.get(dam.bird) ?? []) {
    const cocks = mateship.cock.map((name) => lines.find(name)?.id ?? name);
    if (cocks.length === 1 && cocks[0] === sire.id) continue;
    const left = mateship.to;
    if (mateship.from > laid.to || (left !== null && laid.from - left > SIRE_DAYS)) continue;
    const whom = cocks.length === 0 ? 'a cock that nobody named' : cocks.join(' or ');
    return left === null
      ? `the hen was with ${whom} as well`
      : `the hen had been with ${whom} until ${shortDay(left)}, within ${SIRE_DAYS} d of the egg`;
  }
  return null;
}
