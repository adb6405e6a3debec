import { naturally } from '../../findings/naturally.ts';
import type { Room } from '../../room/fold.ts';
import type { WarningLevel, WarningLine } from '../agenda/item.ts';
import type { Brood } from '../brood.ts';
import { boundBefore } from './bound-before.ts';
import { chasing } from './chasing.ts';
import { clearEggs } from './clear-eggs.ts';
import { closeKin } from './close-kin.ts';
import { countsDiffer } from './counts-differ.ts';
import { deserted } from './deserted.ts';
import { eggBinding } from './egg-binding.ts';
import { eggGap } from './egg-gap.ts';
import { eggWeightLoss } from './egg-weight-loss.ts';
import { emptyCrop } from './empty-crop.ts';
import { feederAway } from './feeder-away.ts';
import { fledgedEarly } from './fledged-early.ts';
import { liveFoodAhead } from './live-food-ahead.ts';
import { liveFoodMissing } from './live-food-missing.ts';
import { neverSeenOut } from './never-seen-out.ts';
import { noProfile } from './no-profile.ts';
import { othersThere } from './others-there.ts';
import { overLimit } from './over-limit.ts';
import { overdue } from './overdue.ts';
import { parentLost } from './parent-lost.ts';
import { pippedLong } from './pipped-long.ts';
import { quarantine } from './quarantine.ts';
import { quarantineHeld } from './quarantine-held.ts';
import { ringTooLate } from './ring-too-late.ts';
import { stored } from './stored.ts';
import { tooYoung } from './too-young.ts';
import { twoHens } from './two-hens.ts';
import { unaccounted } from './unaccounted.ts';
import { unwell } from './unwell.ts';
import { type Found, viewOf, type Warning } from './warning.ts';
import { weight } from './weight.ts';
import { youngAtHatch } from './young-at-hatch.ts';
import { youngAway } from './young-away.ts';

/** Every kind of warning, what presses most first. */
export const warnings = [
  eggBinding,
  unwell,
  parentLost,
  feederAway,
  youngAway,
  emptyCrop,
  othersThere,
  weight,
  liveFoodMissing,
  noProfile,
  fledgedEarly,
  neverSeenOut,
  chasing,
  deserted,
  pippedLong,
  eggGap,
  eggWeightLoss,
  overdue,
  stored,
  countsDiffer,
  youngAtHatch,
  boundBefore,
  overLimit,
  tooYoung,
  quarantineHeld,
  quarantine,
  closeKin,
  twoHens,
  clearEggs,
  liveFoodAhead,
  ringTooLate,
  unaccounted,
] as const satisfies readonly Warning<Found>[];

const LEVELS: readonly WarningLevel[] = ['act', 'watch', 'note'];

/** What is wrong or risky in the room on the day stood on: what presses most first, then by pair. */
export function warningsOf(room: Room, broods: Brood[]): WarningLine[] {
  const view = viewOf(room, broods);
  // Each kind is given its own findings only.
  return (warnings as readonly Warning<Found>[])
    .flatMap((warning) =>
      warning.find(view).map((found): WarningLine => {
        const { level, pair, bird, clutch, housing = null, date } = found;
        return { kind: warning.kind, level, pair, bird, clutch, housing, date, ...warning.say(found) };
      }),
    )
    .sort(byUrgency);
}

/** A stable sort: of one level and pair, the order of the kinds stays. The room's own come last. */
function byUrgency(a: WarningLine, b: WarningLine): number {
  return (
    LEVELS.indexOf(a.level) - LEVELS.indexOf(b.level) ||
    Number(a.pair === null) - Number(b.pair === null) ||
    naturally(a.pair ?? '', b.pair ?? '')
  );
}
