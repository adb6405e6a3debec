import { curveOf, type SurvivalStep } from './survival.ts';

/** One life whose death fell into (left, right]; right = ∞: it was last known alive at left. */
export interface IntervalLife {
  /** The time from which it was under observation. */
  entry: number;
  left: number;
  right: number;
}

/** A step of the curve, with the stretch (from, time] in which its deaths fell. */
export interface IntervalStep extends SurvivalStep {
  from: number;
}

/** Below this share a candidate stretch holds nothing. */
const NOTHING = 1e-6;
const ENOUGH = 1e-13;
const ROUNDS = 100_000;

/**
 * How many are still alive, when each death is known only to lie between two looks: the curve that makes the looks most
 * likely, without any assumption on its shape.
 *
 * Source: Turnbull 1976, Journal of the Royal Statistical Society B 38:290–295, as self-consistent numbers at risk
 * and dead; late entry leaves a life out of the numbers at risk before it. Its error is Greenwood's formula on the
 * expected numbers at risk and dead, as Sun 2001, Statistics in Medicine 20:1249–1257, proposes (from memory): good
 * enough to draw, and a little too narrow.
 */
export function turnbullCurve(lives: readonly IntervalLife[]): IntervalStep[] {
  const rows = estimate(lives).filter(({ mass }) => mass > NOTHING);
  const curve = curveOf(rows.map(({ to, atRisk, died }) => ({ time: to, atRisk, died })));
  return curve.map((step, i) => ({ ...step, from: rows[i]?.from ?? step.time }));
}

/** A stretch of time (from, to] into which a share of all deaths falls; none into one without an end. */
interface Candidate {
  from: number;
  to: number;
  /** The share of all lives that ends there, 0 to 1; to begin with, all are alike. */
  mass: number;
  atRisk: number;
  died: number;
}

/**
 * Each life once, with how many there are: of many thousands most are alike, and all steps only add them up. Who was found
 * dead at the first look, or seen but once, was never at risk: its looks are not to part those of the others.
 */
function counted(lives: readonly IntervalLife[]): (IntervalLife & { lives: number })[] {
  const known = new Map<string, IntervalLife & { lives: number }>();
  for (const { entry, left, right } of lives) {
    if ((right === Number.POSITIVE_INFINITY ? left : right) <= entry) continue;
    const key = `${entry} ${left} ${right}`;
    const alike = known.get(key);
    if (alike === undefined) known.set(key, { entry, left, right, lives: 1 });
    else alike.lives += 1;
  }
  return [...known.values()];
}

function estimate(lives: readonly IntervalLife[]): Candidate[] {
  const distinct = counted(lives);
  const candidates = innermost(distinct);
  const ranges = distinct.map(({ entry, left, right, lives: times }) => ({
    lives: times,
    first: candidates.findIndex(({ from }) => from >= left),
    last: candidates.findLastIndex(({ to }) => to <= right),
    entered: candidates.findIndex(({ to }) => to > entry),
    died: right !== Number.POSITIVE_INFINITY,
  }));
  for (let round = 0; round < ROUNDS; round++) {
    expect(candidates, ranges);
    if (maximise(candidates) < ENOUGH) break;
  }
  return candidates;
}

interface Range {
  /** How many lives it stands for. */
  lives: number;
  /** The candidates into which its death can have fallen, and the first for which it was under observation. */
  first: number;
  last: number;
  entered: number;
  died: boolean;
}

/** How many are expected to have been at risk and to have died in each candidate stretch, given the masses. */
function expect(candidates: Candidate[], ranges: readonly Range[]): void {
  for (const candidate of candidates) {
    candidate.atRisk = 0;
    candidate.died = 0;
  }
  for (const { lives, first, last, entered, died } of ranges) {
    // Who was last known alive is at risk until then. What may follow would only repeat what the others say.
    if (!died) {
      for (let j = entered; j < first; j++) (candidates[j] as Candidate).atRisk += lives;
      continue;
    }
    let total = 0;
    for (let j = first; j <= last; j++) total += (candidates[j] as Candidate).mass;
    if (total <= 0) continue;
    let alive = 1;
    for (let j = entered; j <= last; j++) {
      const candidate = candidates[j] as Candidate;
      const dies = j < first ? 0 : candidate.mass / total;
      candidate.atRisk += lives * alive;
      candidate.died += lives * dies;
      alive = Math.max(0, alive - dies);
    }
  }
}

/** Takes over the masses that the expected numbers make; gives the largest change. */
function maximise(candidates: Candidate[]): number {
  let surviving = 1;
  let change = 0;
  for (const candidate of candidates) {
    const hazard = hazardIn(candidate);
    const mass = surviving * hazard;
    change = Math.max(change, Math.abs(mass - candidate.mass));
    candidate.mass = mass;
    surviving *= 1 - hazard;
  }
  return change;
}

function hazardIn({ atRisk, died }: Candidate): number {
  return atRisk > 0 ? Math.min(1, died / atRisk) : 0;
}

/** Stretches from a last look alive to the next look dead with no other look between: only they can hold deaths. */
function innermost(lives: readonly IntervalLife[]): Candidate[] {
  const ends = lives
    .flatMap(({ left, right }) => [
      { at: left, alive: true },
      { at: right, alive: false },
    ])
    .sort((a, b) => (a.at === b.at ? Number(a.alive) - Number(b.alive) : a.at - b.at));
  return ends.flatMap(({ at: from, alive }, i) => {
    const next = ends[i + 1];
    if (!alive || next === undefined || next.alive) return [];
    return [{ from, to: next.at, mass: 1, atRisk: 0, died: 0 }];
  });
}
