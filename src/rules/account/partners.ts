import type { Room } from '../../room/fold.ts';
import type { Pair } from '../../room/model.ts';
import type { Discreet } from '../discretion/discretion.ts';
import { mateshipsOf } from '../stock/mateships.ts';
import { birdsByName, onlyOf } from '../stock/names.ts';
import type { Dated } from './care.ts';

/** How one of the two died or left while they were the pair, whichever file tells it; nobody is named. */
export function partnersLost(room: Room, pair: Pair, discreet: Discreet): Dated[] {
  const find = birdsByName(room.birds);
  const lost = mateshipsOf(pair, find).flatMap(({ to, ...mates }) =>
    (['cock', 'hen'] as const).flatMap((parent): Dated[] => {
      const fate = onlyOf(mates[parent], find)?.fate ?? null;
      // Who was parted before is of the pair no longer.
      if (fate === null || fate.day !== to) return [];
      const cause = fate.kind === 'died' && fate.cause !== null ? discreet(fate.cause) : null;
      const how = fate.kind === 'died' ? 'died' : 'left the room';
      return [{ day: fate.day, text: `the ${parent} ${how}${cause === null ? '' : `: ${cause}`}` }];
    }),
  );
  return lost.filter(
    ({ day, text }, i) => lost.findIndex((one) => one.day === day && one.text === text) === i,
  );
}
