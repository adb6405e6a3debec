import type { SeasonBook } from '../../../rules/season/season.ts';
import type { Danger } from '../../../rules/season/survival.ts';
import { sumOf } from '../../../statistics/sums.ts';
import { count, stated } from '../../../words.ts';
import { days } from '../figures.ts';
import { visible } from '../visible.ts';
import { wrap } from '../width.ts';

export function openingLines(book: SeasonBook, width: number): string[] {
  return wrap(storyOf(book), width);
}

/** The season in a few sentences, as one would tell it at the club. */
export function storyOf({ totals, ranking }: Pick<SeasonBook, 'totals' | 'ranking'>): string {
  const { eggs, chicks, survival } = totals;
  const sentences = [
    eggs.laid === 0 ? 'Clutches without any egg that could be counted.' : eggSentence(eggs, chicks),
    chicks.hatched > 0 ? chickSentence(chicks) : null,
    worst('eggs', eggs.lost),
    worst('young', chicks.died),
    survival.danger === null ? null : dangerSentence(survival.danger),
    bestSentence(ranking),
  ];
  return stated(sentences, ' ');
}

function eggSentence({ laid }: { laid: number }, { hatched }: { hatched: number }): string {
  return `Of ${count(laid, 'egg')} ${hatched === 0 ? 'none' : hatched} hatched${hatched === 0 ? ' so far' : ''}.`;
}

function chickSentence({ fledged, independent, open }: SeasonBook['totals']['chicks']): string {
  const left = fledged === 0 ? 'None has left the nest' : `${fledged} left the nest`;
  const alone =
    independent > 0
      ? ` and ${independent} ${independent === 1 ? 'feeds itself' : 'feed themselves'}`
      : fledged > 0 && open === 0
        ? ', none came to feed itself'
        : '';
  // Whether they are fed still, or nobody wrote of them for months, is not told apart.
  const unknown =
    open === 0
      ? ''
      : `; ${open} ${open === 1 ? 'is not known to feed itself' : 'are not known to feed themselves'} yet`;
  return `${left}${alone}${unknown}.`;
}

function dangerSentence({ from, to, died, of }: Danger): string {
  return `Most dangerous: ${days(from, to)} of age, with ${Math.round(died)} of the ${Math.round(of)} deaths at a known age.`;
}

function worst(who: string, causes: Record<string, number>): string | null {
  const [[cause, n] = ['', 0], [, next] = ['', 0]] = Object.entries(causes).filter(
    ([name]) => name !== 'unknown',
  );
  if (n < 2 || next === n) return null;
  return `The commonest loss of ${who} was “${visible(cause)}” (${n} of ${sumOf(Object.values(causes))}).`;
}

/** Only where there is something to choose from: with intervals that overlap, the first is not the best. */
function bestSentence(ranking: SeasonBook['ranking']): string | null {
  const [first, ...others] = ranking?.rows ?? [];
  const last = others.at(-1);
  if (first === undefined || last === undefined || first.name === null) return null;
  return first.low > last.high
    ? `${visible(first.name)} did best, ${visible(last.name ?? '')} worst.`
    : 'No pair stands out beyond what luck can do.';
}
