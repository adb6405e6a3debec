import { type Day, shortDay } from '../../days.ts';
import { isStillNestling } from '../../room/left-behind.ts';
import { together } from '../../room/model.ts';
import { familyOf } from '../../species/families.ts';
import { middle, type Profile } from '../../species/profile.ts';
import { listed } from '../../words.ts';
import { absencesFrom } from '../absences.ts';
import { type Brood, mayHatch } from '../brood.ts';
import type { View } from './warning.ts';

/** Days by which the stages of two nests may differ for eggs or nestlings to change over (common practice). */
const APART = 2;
/** A foster parent is at most so many times heavier or lighter (common practice: of about one size). */
const HEAVIER = 2;
/** So many are named. */
const NAMED = 3;

/** Around which day the nest hatched, or is expected to. */
interface Stage {
  day: Day;
  seen: boolean;
}

interface Taker {
  pair: string;
  species: string | null;
  sameSpecies: boolean;
  stage: Stage;
  room: number;
}

/**
 * Who could take the eggs or nestlings of a nest, as a sentence: pairs that are together and whose own hatching is
 * within two days of this one's, with fewer eggs and nestlings than their usual clutch. Own species first.
 */
export function takersFor(view: View, brood: Brood): string {
  const found = takers(view, brood);
  if (found.length === 0) return 'No pair in this room is at that stage and has room';
  const named = found.slice(0, NAMED).map(({ pair, species, sameSpecies, stage, room }) => {
    const hatching = `${stage.seen ? 'hatched' : 'hatch'} ${shortDay(stage.day)}`;
    return `${pair} (${sameSpecies ? '' : `${species}, `}${hatching}, room for ${room})`;
  });
  return `Could be taken by ${listed(named)}`;
}

function takers(view: View, brood: Brood): Taker[] {
  const stage = stageOf(brood);
  if (stage === null) return [];
  return view.broods
    .filter((one) => one.where === 'nest' && one.pair !== brood.pair && together(one.pair))
    .flatMap((one): Taker[] => {
      const its = stageOf(one);
      const room = roomIn(one);
      if (
        its === null ||
        Math.abs(its.day - stage.day) > APART ||
        room < 1 ||
        !alike(brood.profile, one.pair.profile)
      )
        return [];
      if (absencesFrom(one).length > 0) return [];
      const { id: pair, species } = one.pair;
      return [{ pair, species, sameSpecies: species === brood.pair.species, stage: its, room }];
    })
    .sort((a, b) => Number(b.sameSpecies) - Number(a.sameSpecies) || b.room - a.room);
}

/** The day around which its nestlings hatched or its eggs are expected to; null where there are neither. */
function stageOf({ young, eggs, hatch }: Brood): Stage | null {
  const days = young
    .flatMap(({ fledged, hatched }) => (fledged === null ? [hatched.to] : []))
    .sort((a, b) => a - b);
  const median = days[Math.floor(days.length / 2)];
  if (median !== undefined) return { day: median, seen: true };
  return hatch !== null && eggs.some(mayHatch) ? { day: hatch.likely, seen: false } : null;
}

/** How many more it could rear: its usual clutch less what lies there, clear eggs included. */
function roomIn({ pair, room }: Brood): number {
  const usual = pair.profile?.clutch?.value.high ?? 0;
  const nestlings = [...pair.here.young].filter((bird) => isStillNestling(bird, room.day));
  return usual - pair.here.eggs.size - nestlings.length;
}

function alike(one: Profile | null, another: Profile | null): boolean {
  if (one === null || another === null) return false;
  if (one.id === another.id) return true;
  const [a, b] = [massOf(one), massOf(another)];
  if (a === null || b === null || familyOf(one.scientific) !== familyOf(another.scientific)) return false;
  return Math.max(a, b) / Math.min(a, b) <= HEAVIER;
}

function massOf({ adultMass }: Profile): number | null {
  return adultMass === null ? null : middle(adultMass.value);
}
