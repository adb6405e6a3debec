import type { Day } from '../../days.ts';
import { type Bird, type BirdFate, clutchId } from '../../room/model.ts';
import type { StockBird } from './stock.ts';

/** One thing that happened to a bird. */
export interface LifeEvent {
  day: Day;
  /** A few words: `weighed 8.4 g`. */
  what: string;
}

/** A bird's life in order: from its hatching to what became of it. */
export function lifeOf({ bird, mateships }: StockBird): LifeEvent[] {
  return [
    ...beginnings(bird),
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
  ].sort((a, b) => a.day - b.day);
}

const namesOf = (names: readonly string[]) => (names.length === 0 ? 'unknown' : names.join(' or '));

function beginnings(bird: Bird): LifeEvent[] {
  const { hatched, clutch, ringed, ring, fledged, independent, arrived, listed, releases } = bird;
  const origin = listed?.origin?.text ?? null;
  const events: [Day | null | undefined, string][] = [
    [hatched?.to, clutch === null ? 'hatched' : `hatched in clutch ${clutchId(clutch)}`],
    [ringed, `ringed ${ring ?? ''}`.trim()],
    [fledged?.day, 'left the nest'],
    [independent?.day, 'fed itself'],
    [arrived, origin === null ? 'arrived' : `arrived: ${origin}`],
    ...releases.map((day): [Day, string] => [day, 'let out of quarantine']),
  ];
  return events.flatMap(([day, what]) => (day === null || day === undefined ? [] : [{ day, what }]));
}

/** Where it was put, each time that this changed; the nest where it hatched goes without saying. */
function stays({ stays: all, clutch }: Bird): LifeEvent[] {
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
function absences({ absences: all }: Bird): LifeEvent[] {
  return all.flatMap(({ fate, until }) => [
    ending(fate),
    { day: until, what: fate.kind === 'gone' ? 'back' : 'found again' },
  ]);
}

function endings({ fate }: Bird): LifeEvent[] {
  return fate === null ? [] : [ending(fate)];
}

function ending(fate: BirdFate): LifeEvent {
  const { kind, day } = fate;
  const how = fate.kind === 'died' ? fate.cause : fate.how;
  if (kind === 'died') return { day, what: how === null ? 'died' : `died: ${how}` };
  return { day, what: how ?? 'left' };
}
