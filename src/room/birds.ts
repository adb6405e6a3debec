import type { Day, Span } from '../days.ts';
import type { Place } from '../findings/finding.ts';
import type { BirdObservation } from '../journal/bird-observations/index.ts';
import type { BirdEntry, BirdRecord } from '../journal/birds.ts';
import type { Located } from '../journal/grammar/values.ts';
import { findSpecies } from '../species/find.ts';
import { housingCalled } from './housings.ts';
import { joined } from './lists.ts';
import { comeBack, endKnown, endLife, rehouse, startQuarantine, whyNotAlive } from './lives.ts';
import type { Bird } from './model.ts';
import { newBird } from './names.ts';
import { type Fold, wordsOf } from './scene.ts';

/** Everyone on the bird list enters the room's names; what happened to them is told by their logs. */
export function listBirds(fold: Fold, records: readonly BirdRecord[], day: Day): void {
  for (const record of records) {
    const known = fold.birds.get(record.id.text)?.listed;
    if (known) {
      fold.findings.push({
        code: 'bird-twice',
        at: record.id.at,
        args: { id: record.id.text, line: known.id.at.line },
      });
      continue;
    }
    fold.birds.set(record.id.text, listed(record, fold, day));
    if (record.is !== null) nameChick(fold, record.is, record.id.text);
    wearRing(fold, record);
  }
}

/** One item a chick: a second one is a bird of its own. */
function nameChick(fold: Fold, { text, at }: Located, id: string): void {
  const bird = fold.aliases.get(text);
  if (bird === undefined) fold.aliases.set(text, id);
  else fold.findings.push({ code: 'chick-named-twice', at, args: { ref: text, bird } });
}

function listed(record: BirdRecord, fold: Fold, day: Day): Bird {
  const named = record.species?.text ?? null;
  const bird = newBird(
    record.id.text,
    named === null ? null : (findSpecies(named, fold.own)?.species ?? named),
  );
  return {
    ...bird,
    ring: record.ring?.text ?? null,
    sex: record.sex,
    hatched: hatchedBy(record, day),
    sire: record.sire.map(({ text }) => text),
    dam: record.dam.map(({ text }) => text),
    listed: record,
  };
}

/** A bird of which no more than the year is known was out of its egg when it was first told of, and is by the day stood on. */
function hatchedBy({ hatched, log }: BirdRecord, day: Day): Span | null {
  if (hatched === null) return null;
  const { from, to } = hatched;
  const told = log.map(({ date }) => date).filter((date) => date >= from);
  return { from, to: Math.max(from, Math.min(to, day, ...told)) };
}

function wearRing(fold: Fold, { id, ring }: BirdRecord): void {
  if (ring === null) return;
  const wearer = fold.byRing.get(ring.text);
  if (wearer === undefined) fold.byRing.set(ring.text, fold.birds.get(id.text) as Bird);
  else fold.findings.push({ code: 'ring-twice', at: ring.at, args: { ring: ring.text, bird: wearer.id } });
}

/** Takes one line of a bird's own log into its life. */
export function applyBirdObservation(
  fold: Fold,
  { record, entry, observation }: { record: BirdRecord; entry: BirdEntry; observation: BirdObservation },
): void {
  const bird = fold.birds.get(record.id.text);
  if (bird === undefined || bird.listed !== record) return;
  const away = observation.key === 'back' ? null : whyNotAlive(bird);
  if (away !== null && typeof away === 'object' && !toldAgain(bird, entry.date, observation)) {
    const args = { who: bird.id, did: observation.key, why: wordsOf(away.why) };
    fold.findings.push({ code: away.code, at: observation.at, args });
    return;
  }
  bird.firstSeen ??= entry.date;
  const live = lives[observation.key] as (moment: Moment, value: unknown) => void;
  live({ fold, bird, day: entry.date, at: observation.at }, observation.value);
}

function toldAgain(bird: Bird, day: Day, observation: BirdObservation): boolean {
  const { key, value } = observation;
  if (key === 'died') return endKnown(bird, key, day, value?.text ?? null);
  return key === 'gone' && endKnown(bird, key, day, value);
}

interface Moment {
  fold: Fold;
  bird: Bird;
  day: Day;
  at: Place;
}

type ValueOf<K extends BirdObservation['key']> = Extract<BirdObservation, { key: K }>['value'];

/** What each line of a bird's log does to its life. */
const lives: { [K in BirdObservation['key']]: (moment: Moment, value: ValueOf<K>) => void } = {
  arrived: ({ fold, bird, day }, housing) => {
    bird.arrived ??= day;
    startQuarantine(fold, bird, day);
    rehouse(bird, day, housing === null ? null : housingCalled(fold, housing));
  },
  quarantine: ({ fold, bird, day }, { days, until }) => {
    bird.quarantine = { from: day, until: until ?? day + (days ?? fold.quarantineDays) };
    bird.released = null;
  },
  released: ({ fold, bird, day }, housing) => {
    bird.released = day;
    bird.releases = joined(bird.releases, day);
    if (housing !== null) rehouse(bird, day, housingCalled(fold, housing));
  },
  moved: ({ fold, bird, day }, housing) => rehouse(bird, day, housingCalled(fold, housing)),
  weighed: ({ bird, day, at }, grams) => {
    bird.weights = joined(bird.weights, { day, grams, at });
  },
  treated: ({ bird, day }, what) => {
    bird.treated = joined(bird.treated, { day, text: what.text });
  },
  unwell: ({ bird, day }, what) => {
    bird.unwell = joined(bird.unwell, { day, text: what.text });
  },
  moult: ({ bird, day }, state) => {
    bird.moult = joined(bird.moult, { day, state });
  },
  sexed: ({ bird }, sex) => {
    bird.sex = sex;
  },
  died: ({ bird, day }, cause) => {
    endLife(bird, { kind: 'died', day, span: { from: day, to: day }, cause: cause?.text ?? null });
  },
  gone: ({ bird, day }, how) => {
    endLife(bird, { kind: 'gone', day, how });
  },
  back: ({ fold, bird, day }) => {
    comeBack(fold, bird, day);
  },
  photo: () => {},
};
