import type { Day } from '../../../days.ts';
import type { Estimate } from '../../../statistics/estimate.ts';
import { fromTo } from '../../../words.ts';
import { indented, type Page } from '../page.ts';

/** How the page is laid out, and the day that it stands on. */
export interface DatedPage extends Page {
  day: Day;
}

/** What is told of one thing below a heading: later lines are set in further, as the next thing follows at once. */
export function item(text: string, page: Page, indent = 2): string[] {
  return indented(text, page, { indent, hanging: 2 });
}

/** Nobody, as near as matters. */
export const NOBODY = '–';

/** `6.4 (4–9)`, `12 (9–15)`, `2` where that is all but sure; `–` for nobody. */
export function estimateText({ mean, low, high }: Estimate): string {
  if (high === 0) return mean < 0.05 ? NOBODY : number(mean);
  if (low === high && number(mean) === String(low)) return String(low);
  return `${number(mean)} (${fromTo(low, high)})`;
}

function number(value: number): string {
  return value < 10 ? String(Number(value.toFixed(1))) : String(Math.round(value));
}
