import type { Day, Span } from '../../days.ts';
import { wasFedByHand } from '../../room/lives.ts';
import { type Clutch, hatchedFrom } from '../../room/model.ts';
import type { Discreet } from '../discretion/discretion.ts';
import type { ClutchStory } from '../season/story.ts';

/** What became of one clutch, in dates and counts. */
export interface AccountClutch {
  season: string;
  number: number;
  begun: Day;
  site: string | null;
  /** Null where nobody counted them. */
  eggs: number | null;
  fertile: number;
  clear: number;
  laid: Span | null;
  sitting: { span: Span; inferred: boolean } | null;
  hatched: Span | null;
  /** Null where nobody counted them. */
  chicks: number | null;
  fledged: Span | null;
  left: number;
  independent: Span | null;
  fed: number;
  /** What was lost and why: eggs, then young. */
  losses: { what: 'egg' | 'young'; cause: string; number: number }[];
  /** Eggs taken by hand; eggs or young that others sat on or fed. */
  taken: number;
  fostered: number;
  /** The day on which nothing of it was left to wait for; null while something is. */
  over: Day | null;
  /** What was to be expected of it. */
  foreseen: { hatch: Window | null; fledge: Window | null; independent: Span | null };
}

interface Window extends Span {
  likely: Day;
}

/** A clutch without anything that would name a bird or a place. */
export function accountClutch(story: ClutchStory, discreet: Discreet): AccountClutch {
  const { clutch, laid, sitting, hatched, fledged, independent, over, foreseen } = story;
  const fertile = (which: 'fertile' | 'clear') =>
    story.eggs.filter(({ fertility }) => fertility === which).length;
  return {
    season: story.season,
    number: clutch.number,
    begun: story.begun,
    site: clutch.site === null ? null : discreet(clutch.site),
    eggs: clutch.counted ? clutch.eggs.length : null,
    fertile: fertile('fertile'),
    clear: fertile('clear'),
    laid,
    sitting,
    hatched,
    chicks: hatchedFrom(clutch),
    fledged,
    left: clutch.chicks.filter((bird) => bird.fledged !== null).length,
    independent,
    fed: clutch.chicks.filter((bird) => bird.independent !== null).length,
    losses: lossesOf(clutch, discreet),
    taken: clutch.eggs.filter(({ fate }) => fate?.kind === 'taken').length,
    fostered: fosteredOf(clutch),
    over,
    foreseen: {
      hatch: datesOf(foreseen.hatch),
      fledge: datesOf(foreseen.fledge),
      independent: foreseen.independent,
    },
  };
}

/** Its days alone: what a forecast rests on is told of the whole room. */
function datesOf(window: Window | null): Window | null {
  return window === null ? null : { from: window.from, likely: window.likely, to: window.to };
}

function lossesOf({ eggs, chicks }: Clutch, discreet: Discreet): AccountClutch['losses'] {
  const losses = new Map<string, AccountClutch['losses'][number]>();
  const add = (what: 'egg' | 'young', said: string | null) => {
    const cause = (said === null ? null : discreet(said)) ?? 'cause not known';
    const key = `${what} ${cause}`;
    losses.set(key, { what, cause, number: (losses.get(key)?.number ?? 0) + 1 });
  };
  for (const { fate } of eggs) if (fate?.kind === 'lost') add('egg', fate.cause);
  for (const { fate, independent } of chicks) {
    if (fate?.kind === 'died' && independent === null) add('young', fate.cause);
  }
  return [...losses.values()];
}

/** Eggs that another pair, or nobody's nest, kept warm, and young that somebody else fed; each once. */
function fosteredOf({ pair, eggs, chicks }: Clutch): number {
  const sat = eggs.filter(({ places }) =>
    places.some(({ place }) => (place.kind === 'nest' ? place.pair !== pair : place.kind !== 'store')),
  );
  const fed = chicks.filter(
    (bird) =>
      !sat.some((one) => one === bird.egg) &&
      (wasFedByHand(bird) || bird.stays.some(({ nest }) => nest !== null && nest !== pair)),
  );
  return sat.length + fed.length;
}
