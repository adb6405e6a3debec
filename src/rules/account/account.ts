import type { Day } from '../../days.ts';
import { entriesOf, type PairJournal } from '../../journal/entry.ts';
import type { Room } from '../../room/fold.ts';
import type { Pair } from '../../room/model.ts';
import type { Discreet } from '../discretion/discretion.ts';
import { housingKind } from '../discretion/housing-kind.ts';
import type { Tellable } from '../discretion/tellable.ts';
import { ownDurations } from '../forecast/own-durations.ts';
import type { MeasureWords } from '../season/measures/index.ts';
import type { Rates } from '../season/rates.ts';
import type { PairStory } from '../season/story.ts';
import { type AccountCare, careOf, type Dated } from './care.ts';
import { type AccountClutch, accountClutch } from './clutch.ts';
import { type AccountDuration, durationsOf } from './durations.ts';
import { partnersLost } from './partners.ts';

/**
 * How one pair was kept and what it did, for other keepers. Plain dates, numbers and words: nothing in it leads back to
 * the record, so that what shows it cannot tell more than was asked for.
 */
export interface Account {
  day: Day;
  species: { common: string; scientific: string | null } | null;
  /** The pair and its birds by name; null unless asked for. */
  names: { pair: string; cock: string[]; hen: string[] } | null;
  /** Rings of the young by clutch and chick; null unless asked for. */
  rings: { chick: string; ring: string }[] | null;
  /** Kinds of housing in order, or their names where asked for. */
  housing: string[];
  nestLooks: Pair['nestLooks'];
  care: AccountCare;
  clutches: AccountClutch[];
  durations: AccountDuration[];
  rates: Rates;
  measures: readonly MeasureWords[];
  /** Eggs and young of others that it was given, and what it brought up in all. */
  reared: PairStory['reared'];
  /** Null unless asked for. */
  notes: Dated[] | null;
}

interface Asked {
  discreet: Discreet;
  told: ReadonlySet<Tellable>;
}

/** Tells a pair's account up to the day stood on. Pure. */
export function accountOf(
  room: Room,
  journals: readonly PairJournal[],
  story: PairStory,
  { discreet, told }: Asked,
): Account {
  const { pair, day, own, reared, measures } = story;
  const entries = entriesOf(journals, pair.id)
    .filter(({ date }) => date <= day)
    .sort((a, b) => a.date - b.date);
  const say = (texts: readonly string[]) => texts.flatMap((text) => discreet(text) ?? []);
  const rooms = room.settings.log.filter(({ date }) => date <= day);
  const care = careOf(entries, rooms, discreet);
  return {
    day,
    species: speciesOf(pair, discreet),
    names: told.has('names')
      ? { pair: discreet(pair.id) ?? '', cock: say(pair.cock), hen: say(pair.hen) }
      : null,
    rings: told.has('rings') ? ringsOf(pair, discreet) : null,
    housing: housingOf(pair, told, say),
    nestLooks: pair.nestLooks,
    care: {
      ...care,
      together: [...care.together, ...partnersLost(room, pair, discreet)].sort((a, b) => a.day - b.day),
    },
    clutches: story.clutches.map((clutch) => accountClutch(clutch, discreet)),
    durations: durationsOf(ownDurations(room).filter(({ clutch }) => clutch.pair === pair)),
    rates: own.rates,
    measures,
    reared,
    notes: told.has('notes')
      ? entries.flatMap(({ date, note }) => {
          const text = note === null ? null : discreet(note.text);
          return text === null ? [] : [{ day: date, text }];
        })
      : null,
  };
}

function speciesOf({ profile, species }: Pair, discreet: Discreet): Account['species'] {
  if (profile !== null) return { common: profile.species, scientific: profile.scientific || null };
  const common = species === null ? null : discreet(species);
  return common === null ? null : { common, scientific: null };
}

/** Of the pair and of each of its clutches, in the order in which they lived there. */
function housingOf(pair: Pair, told: Asked['told'], say: (texts: readonly string[]) => string[]): string[] {
  const all = [...pair.clutches.map(({ housing }) => housing), pair.housing].flatMap((name) => name ?? []);
  const words = told.has('places') ? say(all) : all.flatMap((name) => housingKind(name) ?? []);
  return words.filter((word, index) => word !== words[index - 1]);
}

function ringsOf({ clutches }: Pair, discreet: Discreet): Account['rings'] {
  return clutches.flatMap(({ number, chicks }) =>
    chicks.flatMap(({ ref, ring }) => {
      const code = ring === null ? null : discreet(ring);
      return code === null ? [] : [{ chick: `${number}/${ref}`, ring: code }];
    }),
  );
}
