/** `80 %`; never 100 or 0 for what is only nearly so. */
export function percent(share: number): string {
  const rounded = Math.round(share * 100);
  if (rounded === 100 && share < 1) return '>99 %';
  if (rounded === 0 && share > 0) return '<1 %';
  return `${rounded} %`;
}

/** `66–90 %` */
export function percentRange(low: number, high: number): string {
  return `${Math.round(low * 100)}–${Math.round(high * 100)} %`;
}

/** `−8 to +25 points`: from where to where a difference lies. */
export function pointsRange(low: number, high: number): string {
  return `${signed(low)} to ${signed(high)} points`;
}

function signed(share: number): string {
  const points = Math.round(share * 100);
  return points > 0 ? `+${points}` : points < 0 ? `−${-points}` : '0';
}

/** `day 3`, `days 3–5` */
export function days(from: number, to: number): string {
  return from === to ? `day ${from}` : `days ${from}–${to}`;
}

/** A number that need not be whole: `4`, `2.5`. */
export function number(value: number): string {
  return Math.abs(value - Math.round(value)) < 0.05 ? String(Math.round(value)) : value.toFixed(1);
}
