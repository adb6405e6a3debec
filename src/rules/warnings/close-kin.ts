import { type Day, shortDay } from '../../days.ts';
import type { Room } from '../../room/fold.ts';
import { isCloser, kinship } from '../../statistics/pedigree/relationship.ts';
import { kinOf } from '../stock/kin.ts';
import { type Mateship, mateshipsOf } from '../stock/mateships.ts';
import { type FindBird, onlyOf } from '../stock/names.ts';
import { descentOf } from '../stock/stock.ts';
import type { Found, Warning } from './warning.ts';

interface CloseKin extends Found {
  cock: string;
  hen: string;
  kin: string;
  inbreeding: number;
  /** The room’s own limit, where it has one. */
  limit: number | null;
}

/** Days after they were put together for which it is said: until a first clutch has usually been laid. */
const SHOWN = 30;

/** F of the young of half brother and sister, of uncle and niece: said where the room has no limit of its own. */
const CLOSE = 1 / 8;

export const closeKin: Warning<CloseKin> = {
  kind: 'close-kin',
  levels: ['watch', 'note'],
  health: false,
  when: 'a pair was put together whose young would be inbred beyond the room’s `max-inbreeding`; without one, to 0.125 or more',
  over: `they are parted; ${SHOWN} d after they were put together`,
  explain:
    'The inbreeding coefficient F is the share of gene pairs that are expected to be one ancestor’s gene twice; it equals the kinship of the parents (Wright 1922). The young of close kin hatch and live less often, and hidden faults show in them. Birds of unknown parents pass for unrelated, so that kin may be closer than is known. It is stated, never forbidden: line breeding is the keeper’s decision, and local rules are the keeper’s matter.',
  find: ({ room, day, find }) => {
    const fresh = freshPairs(room, day, find);
    return fresh.length === 0 ? [] : closeKinAmong(fresh, room);
  },
  say({ cock, hen, kin, inbreeding, limit, date }) {
    const f = Number(inbreeding.toFixed(4));
    const beyond = limit === null ? '' : `, above the room’s limit of ${limit}`;
    return {
      text: `${cock} and ${hen}, put together on ${shortDay(date)}, are ${kin}: their young would have an F of ${f}${beyond}. Fewer young of close kin hatch and live, and hidden faults show in them.`,
      check:
        'by their rings whether these are the two birds you meant; whether they stay together is best decided before the first egg',
    };
  },
};

/** Pairs that came together lately and still are. */
function freshPairs(room: Room, day: Day, find: FindBird): Mateship[] {
  return room.pairs.flatMap((pair) => {
    const last = mateshipsOf(pair, find).at(-1);
    return last !== undefined && last.to === null && day - last.from <= SHOWN ? [last] : [];
  });
}

function closeKinAmong(pairs: readonly Mateship[], room: Room): CloseKin[] {
  const { find, lineage } = descentOf(room);
  const limit = room.settings.limits.maxInbreeding;
  return pairs.flatMap(({ pair, cock, hen, from }) => {
    const [his, hers] = [cock, hen].map((names) => onlyOf(names, find));
    if (!his || !hers) return [];
    const [sire, dam] = [lineage.of(his), lineage.of(hers)];
    const inbreeding = kinship(lineage.autosomes, sire.number, dam.number);
    const kin = kinOf(sire, dam, inbreeding);
    if (kin === null || (limit === null ? inbreeding < CLOSE : !isCloser(inbreeding, limit))) return [];
    const level = limit === null ? 'note' : 'watch';
    return [
      {
        level,
        pair: pair.id,
        bird: null,
        clutch: null,
        date: from,
        cock: his.id,
        hen: hers.id,
        kin,
        inbreeding,
        limit,
      },
    ];
  });
}
