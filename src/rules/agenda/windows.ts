import type { Day } from '../../days.ts';
import type { Profile, Range } from '../../species/profile.ts';
import type { Brood, Expected } from '../brood.ts';
import { basisOf } from '../forecast/duration.ts';
import type { Anchor } from './anchors.ts';
import type { TaskWindow } from './item.ts';

/** From which end of an anchor's days the first and the last day of a task are counted. */
interface Edges {
  from: keyof Anchor['span'];
  to: keyof Anchor['span'];
}

/** From the earliest day that it can be to the latest: for what is watched, or must not be missed. */
export const SAFE_EARLY: Edges = { from: 'from', to: 'to' };
/** By the latest: for what is judged. */
const SAFE_LATE: Edges = { from: 'to', to: 'to' };
/** By the earliest: for what has to be there before. */
export const FROM_FIRST: Edges = { from: 'from', to: 'from' };

/** The days from so many to so many after the anchor; without a last one where `high` is null. */
export function days(low: number, high: number | null, edges = SAFE_LATE) {
  return ({ span }: Anchor): TaskWindow => ({
    from: span[edges.from] + low,
    likely: null,
    to: high === null ? null : span[edges.to] + high,
    days: plus(low, high),
    basis: null,
  });
}

/** As they are added to the anchor in a reason: `+ 5–6 d`, `− 2 d`. */
export function plus(low: number, high: number | null): string {
  const signed = (n: number) => (n < 0 ? `− ${-n}` : `+ ${n}`);
  return high === null || high === low ? `${signed(low)} d` : `${signed(low)}–${high} d`;
}

type RangeKey = 'layingInterval' | 'candling' | 'brooding' | 'ringAge' | 'restart' | 'independence';

/** A range of the profile, in days; null where nobody knows it. */
export function rangeOf(profile: Profile | null, key: RangeKey): Range | null {
  return profile?.[key]?.value ?? null;
}

/**
 * As {@link days}, by a range of the profile; no task where the profile does not know it.
 *
 * @param sooner days before the range from which it is already asked
 */
export function byProfile(key: RangeKey, edges = SAFE_LATE, sooner = 0) {
  return (anchor: Anchor, { profile }: Brood): TaskWindow | null => {
    const range = rangeOf(anchor.profile ?? profile, key);
    return range === null ? null : days(range.low - sooner, range.high, edges)(anchor);
  };
}

/** The forecast itself, as the brood has it. */
export function forecast(kind: 'hatch' | 'fledge') {
  return ({ span, likely }: Anchor, brood: Brood): TaskWindow | null => {
    const expected = brood[kind];
    if (expected === null) return null;
    const { low, high } = expected.duration.range;
    return {
      from: span.from,
      likely: likely ?? null,
      to: span.to,
      days: plus(low, high),
      basis: basisFor(expected),
    };
  };
}

/** What a forecast rests on, in words. */
export function basisFor(expected: Expected | null): string | null {
  return expected === null ? null : basisOf(expected.duration.range, expected.duration.n);
}

/** A task lapses so many days after its window; of one that stays open, after its first day. */
export function afterWindow(more: number) {
  return (_anchor: Anchor, { from, to }: TaskWindow): Day => (to ?? from) + more;
}

/** It lapses so many days after what it is counted from. */
export function afterAnchor(more: number) {
  return ({ span }: Anchor): Day => span.to + more;
}

/** It lapses so many days before the hatch window; never while none is foreseen. */
export function beforeHatch(less: number) {
  return (_anchor: Anchor, _window: TaskWindow, { hatch }: Brood): Day | null =>
    hatch === null ? null : hatch.from - less;
}
