import type { Range } from '../../../species/profile.ts';

/** How a unit stands behind a number; an egg's number stands behind the word instead. */
const SHORT: Record<string, string> = { days: ' d', egg: '' };

/** A profile's value as a page shows it: `11–13 d`, `2.0–2.3 mm`, `egg 3–4`, `last`, `-5 to 3 d`. */
export function valueText(value: string | Range, unit: string): string {
  if (typeof value === 'string') return value;
  const { low, high } = value;
  const decimals = Math.max(...[low, high].map((number) => `${number}`.split('.')[1]?.length ?? 0));
  const [from, to] = [low.toFixed(decimals), high.toFixed(decimals)];
  const figures = low === high ? from : `${from}${low < 0 ? ' to ' : '–'}${to}`;
  const counted = unit === 'clutches' && low === 1 && high === 1 ? 'clutch' : unit;
  return `${unit === 'egg' ? 'egg ' : ''}${figures}${SHORT[unit] ?? ` ${counted}`}`;
}

/** `11.4–12.9`: days of a forecast, which need not be whole. */
export function forecastText({ low, high }: Range): string {
  return `${low.toFixed(1)}–${high.toFixed(1)}`;
}
