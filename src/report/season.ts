import { naturally } from '../findings/naturally.ts';
import { fullRef, type Pair } from '../room/model.ts';
import type { Reared } from '../rules/season/block.ts';
import type { SeasonBook } from '../rules/season/season.ts';
import { count, listed } from '../words.ts';
import { longDate } from './terminal/dates.ts';
import { visible } from './terminal/visible.ts';

/** The first words of a season: what it is called, the day it is known on, and how much there was of it. */
export function headOf({ season, room, day, totals, bySpecies }: SeasonBook) {
  const name = season === 'all' ? 'All seasons' : `Season ${season}`;
  const kinds = bySpecies.length > 1 ? ` of ${count(bySpecies.length, 'species', 'species')}` : '';
  return {
    title: `${name}${room === null ? '' : ` · ${visible(room)}`}`,
    standing: `as known on ${longDate(day)}`,
    counted: `${count(totals.clutches.length, 'clutch', 'clutches')} of ${count(totals.pairs, 'pair')}${kinds}`,
  };
}

/** What is said of a season without a clutch. */
export function emptyWords({ seasons, season }: SeasonBook): string {
  const others =
    seasons.length === 0
      ? 'No journal of this room has a clutch yet.'
      : `There are clutches in ${seasons.join(', ')}; \`nestlog season all\` takes them together.`;
  return `${season === 'all' ? '' : 'No clutch was begun in it. '}${others}`;
}

/** What a pair reared of others; empty where it was given none. */
export function guestsWords({ taken, fledged, independent }: Reared): string {
  if (taken === 0) return '';
  const came =
    fledged === 0
      ? 'none that it reared has left the nest'
      : `with its own it fledged ${fledged}${independent === 0 ? ', of which none feeds itself' : ` and brought ${independent} to independence`}`;
  return `It was given ${count(taken, 'egg or chick', 'eggs and chicks')} of other pairs; ${came}.`;
}

/** Whose eggs and young of other pairs a pair cares for now; nothing where there are none. */
export function inCareWords(pair: Pair): string {
  const guests = [...pair.here.eggs, ...pair.here.young].filter(({ clutch }) => clutch.pair !== pair);
  if (guests.length === 0) return '';
  return `In its care from other pairs: ${visible(listed(guests.map(fullRef).sort(naturally)))}.`;
}

/** How its rates are to be read. */
export const HOW =
  'A clutch enters a rate once all of it is past that stage; the rest stands beside it as open. The 95 % are where the rate would lie 19 times in 20, allowing for eggs of one clutch sharing their fate.';

/** The short heads of a table of groups, in order. */
export const GROUP_HEADS = {
  fertility: 'fertile',
  hatchOfFertile: 'hatched',
  fledge: 'fledged',
  overall: 'of laid',
} as const;

export type GroupMeasure = keyof typeof GROUP_HEADS;

/** The rates that fit beside each other on a page of 80 columns. */
export const GROUP_MEASURES = Object.keys(GROUP_HEADS) as GroupMeasure[];

/** Whether there is anything to count of a group in one of them. */
export function hasGroupRate(rates: Record<GroupMeasure, { n: number }>): boolean {
  return GROUP_MEASURES.some((measure) => rates[measure].n > 0);
}

/** Whether clutches were followed through a stage. */
export function wasWatched({ exposure, losses }: { exposure: number; losses: number }): boolean {
  return exposure > 0 || losses > 0;
}

/** What the short heads stand for. */
export const GROUP_NOTE =
  'fertile: of eggs judged; hatched: of fertile eggs; fledged: of chicks hatched; of laid: independent of eggs laid.';

/** What stands below the pairs in order. */
export function rankingNote(title: string): string {
  return `${title}, counted, and what to expect of the next clutch: each pair’s own figure drawn towards the room’s as far as its few clutches call for, so that one good clutch does not lead. Where the bars overlap, the order may be luck.`;
}

export const TOO_LITTLE = 'Too little is finished to put the pairs in order.';
export const FEW_CLUTCHES =
  'Groups of fewer than three clutches are not compared: what befell them befell them once.';
export const STAGE_NOTE =
  'Clutches lost as a whole; one that was clear throughout is not among them. Days count from the first look to the last, so that a nest found late does not flatter.';
