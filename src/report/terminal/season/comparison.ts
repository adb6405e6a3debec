import type { Comparison, RateComparison } from '../../../rules/season/compare.ts';
import type { MeasureWords } from '../../../rules/season/measures/index.ts';
import { percent, pointsRange } from '../figures.ts';
import { indented, type Page } from '../page.ts';
import { visible } from '../visible.ts';
import { fitted } from './page.ts';

interface Words {
  measures: readonly MeasureWords[];
  /** What the others are: `all other pairs`, `before`. */
  others: string;
}

/** What the differences between groups amount to: those that the numbers show, then what they cannot. */
export function comparisonLines(comparison: Comparison, words: Words, page: Page): string[] {
  return comparisonSentences(comparison, words).flatMap((text) => indented(text, page));
}

export function comparisonSentences({ rates, survival }: Comparison, words: Words): string[] {
  if (rates.length + survival.length === 0) return [];
  const shown = rates.filter((one) => one.shown);
  const apart = survival.filter((one) => one.shown);
  const sentences = [
    ...shown.map((one) => rateSentence(one, words)),
    ...apart.map(({ group, observed, expected }) => {
      const more = observed > expected ? 'worse' : 'better';
      return `${named(group)}chicks survived ${more} than ${words.others}: ${observed} died where ${expected.toFixed(1)} were to be expected.`;
    }),
  ];
  const none = shown.length + apart.length === 0;
  const rest = none
    ? 'No difference that these numbers could show.'
    : 'Beside that, no difference that these numbers could show.';
  return [...sentences, rest];
}

function rateSentence(
  { measure, group, rate, other, low, high, difference }: RateComparison,
  words: Words,
): string {
  const title = words.measures.find(({ name }) => name === measure)?.title ?? measure;
  const more = difference > 0 ? 'more' : 'fewer';
  return `${named(group)}${more} ${title}: ${percent(rate)} against ${percent(other)} of ${words.others}; the difference lies at ${pointsRange(low, high)}.`;
}

function named(group: string | null): string {
  return group === null || group === '' ? '' : `${visible(group)}: `;
}

/** Every rate beside that of the seasons before, with where the difference lies. */
export function besideLines({ rates }: Comparison, measures: readonly MeasureWords[], page: Page): string[] {
  if (rates.length === 0) return [];
  const rows = rates.map(({ measure, rate, other, low, high }) => [
    measures.find(({ name }) => name === measure)?.title ?? measure,
    percent(rate),
    percent(other),
    pointsRange(low, high),
  ]);
  const head = ['', 'now', 'before', 'the difference lies at'];
  return fitted([{ rows: [head, ...rows], right: [1, 2] }], page);
}
