import type { Amount } from '../../../rules/feed/amount.ts';

/** What to put out, g: rounded up to half a gram, as fine as a kitchen scale is; to more where there is more. */
export function portion(grams: number): number {
  const step = grams > 20 ? 5 : grams > 5 ? 1 : 0.5;
  return Math.ceil(grams / step - 1e-9) * step;
}

/** `3–8 g`, `under 1 g`, `none`: a range in steps that it is known to. */
export function gramRange({ low, high }: Amount): string {
  if (high <= 0) return 'none';
  if (high < 1) return 'under 1 g';
  const step = stepOf(high);
  const from = Math.floor(low / step) * step;
  const to = upTo(high);
  return from === 0 ? `up to ${to} g` : `${from}–${to} g`;
}

/** `about 300 g (150–750 g)`. */
export function likelyGrams(amount: Amount): string {
  const step = stepOf(amount.high);
  const likely = Math.round(amount.likely / step) * step;
  return likely === 0 ? gramRange(amount) : `about ${likely} g (${gramRange(amount)})`;
}

/** Rounded up, in steps that fit its size. */
export function upTo(grams: number): number {
  const step = stepOf(grams);
  return Math.ceil(grams / step) * step;
}

function stepOf(grams: number): number {
  return grams >= 500 ? 50 : grams >= 100 ? 10 : grams >= 50 ? 5 : 1;
}
