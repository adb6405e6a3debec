import { grouped } from '../../grouped.ts';
import { middle, type Range } from '../../species/profile.ts';
import type { Course } from './courses.ts';
import type { Prospect } from './prospects.ts';

/**
 * Courses by the size that their species gets: one in hand that its profile allows, else one that the keeper has of other
 * days and of which none are left, else one that others get, else its middle.
 */
export function bySize(courses: readonly Course[], inHand: Map<number, number>): [number | null, Course[]][] {
  const profiles = new Set(courses.map(({ prospect }) => prospect.profile));
  const ranges = new Map([...profiles].map((profile) => [profile, profile?.ringSize?.value ?? null]));
  const chosen = new Map<Prospect['profile'], number | null>();
  const used = [...inHand.keys()];
  const have = used.filter((mm) => inHand.get(mm) !== 0);
  const wanted: number[] = [];
  // Narrow ranges choose first: they have the fewest sizes to choose from.
  for (const [profile, range] of [...ranges].sort(([, a], [, b]) => width(a) - width(b))) {
    const size =
      range === null
        ? null
        : (nearestIn(range, have) ?? nearestIn(range, used) ?? nearestIn(range, wanted) ?? middleSize(range));
    if (size !== null) wanted.push(size);
    chosen.set(profile, size);
  }
  const groups = grouped(courses, ({ prospect }) => chosen.get(prospect.profile) ?? null);
  return [...groups].sort(([a], [b]) => (a ?? Number.POSITIVE_INFINITY) - (b ?? Number.POSITIVE_INFINITY));
}

const width = (range: Range | null) => (range === null ? 0 : range.high - range.low);

/** To a tenth of a millimetre, as rings are sold; the larger where it lies between two: a ring must never be tight. */
function middleSize(range: Range): number {
  const tenth = Math.floor(middle(range) * 10 + 0.5 + ROUNDING) / 10;
  return allows(range, tenth) ? tenth : range.high;
}

const ROUNDING = 1e-9;

/** Whether a ring of this inside diameter is one of those that a species may wear. */
export function allows({ low, high }: Range, mm: number): boolean {
  return mm >= low - ROUNDING && mm <= high + ROUNDING;
}

/** The size that lies nearest the middle of the range, of those inside it; the larger of two that lie equally near. */
function nearestIn(range: Range, sizes: readonly number[]): number | null {
  const from = (mm: number) => Math.abs(mm - middle(range));
  const fitting = sizes.filter((mm) => allows(range, mm)).sort((a, b) => b - a);
  return fitting.sort((a, b) => (Math.abs(from(a) - from(b)) < ROUNDING ? 0 : from(a) - from(b)))[0] ?? null;
}
