import { isPrivate } from '../../../journal/private.ts';
import type { SeasonBook } from '../../../rules/season/season.ts';

/** The book without causes of death that a keeper wrote for themselves alone: they count as not known. */
export function tellable(book: SeasonBook): SeasonBook {
  const { totals } = book;
  return { ...book, totals: { ...totals, chicks: { ...totals.chicks, died: known(totals.chicks.died) } } };
}

function known(causes: Record<string, number>): Record<string, number> {
  const own = Object.entries(causes).filter(([cause]) => isPrivate(cause));
  if (own.length === 0) return causes;
  const told = Object.entries(causes).filter(([cause]) => cause !== 'unknown' && !isPrivate(cause));
  const unknown = own.reduce((sum, [, n]) => sum + n, causes.unknown ?? 0);
  return Object.fromEntries([...told, ['unknown', unknown]]);
}
