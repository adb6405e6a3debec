import { countIn } from './as-written.ts';

/** What keepers count by as well, in days or in months. */
const COUNTED: Readonly<Record<string, readonly [RegExp, number]>> = {
  days: [/\bweek/i, 7],
  months: [/\byear/i, 12],
  grams: [/mg\b|milligram/i, 0.001],
  mm: [/cm\b|centimet/i, 10],
};
const SPAN = /\b(?:day|week|month|year)/gi;

/** The share that was probably meant, `12.5%` by `12,5` and `0.125` by `0,125`; empty where the text tells of none. */
export function shareMeant(text: string): string {
  const [, whole, part = ''] = /^(\d{1,2})(?:[.,](\d+))?\s*%?$/.exec(text.trim()) ?? [];
  if (whole === undefined) return '';
  return Number(whole) > 0 ? `${whole}${part === '' ? '' : `.${part}`}%` : `0.${part}`;
}

/**
 * The number, or the range, that a text means which only says more than its figures, or says them otherwise; empty where
 * it may be another.
 *
 * @example figuresMeant('2,0 to 2,3 mm', 'mm') // '2.0-2.3'
 * @example figuresMeant('3 weeks', 'days') // '21'
 * @example figuresMeant('8400mg', 'grams') // '8.4'
 */
export function figuresMeant(text: string, unit: string): string {
  const pointed = text.replace(/(\d),(\d)(?!\d)/g, '$1.$2');
  const figures = pointed.match(/\d{1,6}(?:\.\d{1,6})?/g) ?? [
    String(countIn(text.replace(SPAN, '').replace(/s\b/, '')) ?? ''),
  ];
  const otherwise = /[<>+%]|(?:^|\s)-\d/.test(text) || (unit !== 'days' && /\d,\d/.test(pointed));
  const [first = '', second = first] = figures;
  if (first === '' || figures.length > 2 || otherwise) return '';
  const [other, times] = COUNTED[unit] ?? [];
  const factor = times !== undefined && other?.test(text) ? times : 1;
  const spans = text.match(SPAN) ?? [];
  if (factor === 1 && spans.some((span) => !unit.startsWith(span.toLowerCase()))) return '';
  const [low, high] = [first, second].map((figure) =>
    factor === 1 ? figure : Number((Number(figure) * factor).toFixed(6)),
  );
  if (low === high) return String(low);
  return Number(low) < Number(high) ? `${low}-${high}` : '';
}

/** The length of time that a text means, as it is written here; empty where it means none. */
export function hoursMeant(text: string): string {
  const [, figure, unit] = /^(\S+?)\s*(h|hrs?|hours?|min|minutes?|days?)\.?$/i.exec(text.trim()) ?? [];
  const number = figure === undefined ? '' : figuresMeant(figure, '');
  if (unit === undefined || number === '' || number.includes('-')) return '';
  if (/^m/i.test(unit)) return `${number} min`;
  return `${/^d/i.test(unit) ? Number(number) * 24 : number} h`;
}
