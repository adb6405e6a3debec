import type { Day } from '../../days.ts';
import { hatchedOn } from '../../room/clock.ts';
import { type Absence, type Bird, type BirdFate, clutchId } from '../../room/model.ts';
import { either } from '../../words.ts';
import type { StockBird } from './stock.ts';

/** One thing that happened to a bird. */
export interface LifeEvent {
  /** The first day on which it can have happened. */
  from: Day;
  /** The day on which it was seen or done: the last on which it can have happened. */
  day: Day;
  /** A few words: `weighed 8.4 g`. */
  what: string;
}

/** A bird's life in order: from its hatching to what became of it. */
export function lifeEvents({ bird, mateships }: StockBird): LifeEvent[] {
  const events: Happening[] = [
    ...beginnings(bird),
    // Who comes home is there before anything else is told of it that day.
    ...bird.absences.filter(({ fate, until }) => until > fate.day).map(homecoming),
    ...stays(bird),
    ...mateships.flatMap(({ pair, cock, hen, from, to }) => [
      { day: from, what: `put together in ${pair.id}: ${namesOf(cock)} and ${namesOf(hen)}` },
      ...(to === null || to === bird.fate?.day
        ? []
        : [{ day: to, what: `no longer together in ${pair.id}` }]),
    ]),
    ...bird.weights.map(({ day, grams }) => ({ day, what: `weighed ${grams} g` })),
    ...bird.moult.map(({ day, state }) => ({
      day,
      what: state === 'started' ? 'moult started' : 'moult done',
    })),
    ...bird.unwell.map(({ day, text }) => ({ day, what: `unwell: ${text}` })),
    ...bird.treated.map(({ day, text }) => ({ day, what: `treated: ${text}` })),
    ...absences(bird),
    ...endings(bird),
  ];
  return events.map((event) => ({ ...event, from: event.from ?? event.day })).sort((a, b) => a.day - b.day);
}

/** Where nothing else is said, it happened on the day itself. */
type Happening = Omit<LifeEvent, 'from'> & { from?: Day };

const namesOf = (names: readonly string[]) => either(names) ?? 'unknown';

function beginnings(bird: Bird): Happening[] {
  const { clutch, ringed, ring, fledged, independent, arrived, listed, releases } = bird;
  const origin = listed?.origin?.text ?? null;
  const hatched = hatchedOn(bird);
  const events: [Day | null | undefined, string][] = [
    [ringed, `ringed ${ring ?? ''}`.trim()],
    [independent?.day, 'fed itself'],
    [arrived, origin === null ? 'arrived' : `arrived: ${origin}`],
    ...releases.map((day): [Day, string] => [day, 'let out of quarantine']),
  ];
  const hatching = clutch === null ? 'hatched' : `hatched in clutch ${clutchId(clutch)}`;
  return [
    ...(hatched === null ? [] : [{ from: hatched.from, day: hatched.to, what: hatching }]),
    ...(fledged === null ? [] : [{ from: fledged.span.from, day: fledged.day, what: 'left the nest' }]),
    ...events.flatMap(([day, what]) => (day === null || day === undefined ? [] : [{ day, what }])),
  ];
}

/** Where it was put, each time that this changed; the nest where it hatched goes without saying. */
function stays({ stays: all, clutch }: Bird): Happening[] {
  return all.flatMap(({ from, housing, nest }, index) => {
    const before = all[index - 1];
    const moved = housing !== null && housing !== before?.housing;
    const byHand = moved && housing === 'hand';
    const fostered = nest !== null && nest !== (before?.nest ?? clutch?.pair);
    const what = [
      ...(fostered ? [`given to ${nest.id}`] : []),
      ...(byHand ? ['fed by hand'] : moved && (index > 0 || clutch === null) ? [`in ${housing}`] : []),
    ];
    return what.length === 0 ? [] : [{ day: from, what: what.join(', ') }];
  });
}

/** Ends that were none: lent and home again, missing and found. */
function absences({ absences: all }: Bird): Happening[] {
  return all.flatMap((absence) => {
    const { fate, until } = absence;
    return until > fate.day ? [ending(fate)] : [ending(fate), homecoming(absence)];
  });
}

function homecoming({ fate, until }: Absence): Happening {
  return { day: until, what: fate.kind === 'gone' ? 'back' : 'found again' };
}

function endings({ fate }: Bird): Happening[] {
  return fate === null ? [] : [ending(fate)];
}

function ending(fate: BirdFate): Happening {
  const { day } = fate;
  if (fate.kind === 'gone') return { day, what: fate.how ?? 'left' };
  const { cause, span } = fate;
  return { from: span.from, day, what: cause === null ? 'died' : `died: ${cause}` };
}
