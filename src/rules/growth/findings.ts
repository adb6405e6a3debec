import type { Finding } from '../../findings/finding.ts';
import type { Room } from '../../room/fold.ts';
import type { Bird, Egg } from '../../room/model.ts';
import type { Range } from '../../species/profile.ts';
import { daysRange } from '../../words.ts';
import { eggDoubt } from '../incubator/doubt.ts';
import { freshMass } from '../incubator/egg-size.ts';
import { profileOf } from '../profile-of.ts';
import { isSlip, mended } from './slip.ts';
import { doubtOf, standingOf } from './weighings.ts';

/** Weights and sizes that cannot be right, each where it is written. */
export function massFindings(room: Room): Finding[] {
  return [
    ...room.birds.flatMap((bird) => birdFindings(room, bird)),
    ...room.pairs.flatMap(({ clutches }) => clutches.flatMap(({ eggs }) => eggs.flatMap(eggFindings))),
  ];
}

function birdFindings(room: Room, bird: Bird): Finding[] {
  if (bird.weights.length === 0) return [];
  const profile = profileOf(room, bird);
  return bird.weights.flatMap((weight) => {
    const usual = doubtOf(bird, profile, weight);
    if (usual === null) return [];
    const age = standingOf(bird, profile, weight)?.age;
    const days = age === undefined ? '' : `, ${daysRange(age)} old`;
    const of = `${profile?.species}${days}`;
    const { grams, at } = weight;
    return [{ code: 'doubtful-weight', at, args: weightArgs(bird.ref ?? bird.id, grams, usual, of) }];
  });
}

function eggFindings(egg: Egg): Finding[] {
  const of = `${egg.clutch.pair.profile?.species} egg`;
  const weighed = egg.weights.flatMap((weight): Finding[] => {
    const usual = eggDoubt(egg, weight);
    if (usual === null) return [];
    return [{ code: 'doubtful-weight', at: weight.at, args: weightArgs(egg.ref, weight.grams, usual, of) }];
  });
  const usual = eggDoubt(egg, null);
  if (usual === null || egg.size === null) return weighed;
  const { length, breadth, at } = egg.size;
  const grams = rounded(freshMass(egg.size));
  const tenth = { length: length / 10, breadth: breadth / 10 };
  const better = isSlip(freshMass(tenth), usual) ? '' : `${tenth.length} x ${tenth.breadth}`;
  const args = { who: egg.ref, length, breadth, grams, of, ...limits(usual), mended: better };
  return [...weighed, { code: 'doubtful-egg-size', at, args }];
}

function weightArgs(who: string, grams: number, usual: Range, of: string): Finding['args'] {
  return { who, grams, of, ...limits(usual), mended: mended(grams, usual) ?? '' };
}

function limits({ low, high }: Range): Range {
  return { low: rounded(low), high: rounded(high) };
}

/** To two figures: no species is known better. */
function rounded(grams: number): number {
  return Number(grams.toPrecision(2));
}
