import type { Block } from '../../../rules/season/block.ts';
import type { MeasureWords } from '../../../rules/season/measures/index.ts';
import type { Rate } from '../../../rules/season/rates.ts';
import { stated } from '../../../words.ts';
import { percent, percentRange } from '../figures.ts';
import type { Page } from '../page.ts';
import { pad, wrap } from '../width.ts';
import { intervalBar } from './plots.ts';

const TITLE = 23;
/** Columns of counts at the least; a large room needs more. */
const COUNT = 12;
const RATE = 7;
const RANGE = 11;
/** Columns of the picture at the least; below that there is none. */
const PICTURE = 16;

/** Each rate with its counts, its interval in figures and as a picture, and below it what is not in it. */
export function rateLines(
  { rates }: Pick<Block, 'rates'>,
  measures: readonly MeasureWords[],
  page: Page,
): string[] {
  const rows = measures.map((words) => ({ words, rate: rates[words.name] }));
  const counts = Math.max(COUNT, ...rows.map(({ rate }) => countOf(rate).length + 1));
  const picture = Math.min(41, page.width - 2 - TITLE - counts - RATE - RANGE);
  const widths = { counts, picture };
  const scale = picture >= PICTURE && rows.some(({ rate }) => rate.n > 0) ? [scaleLine(widths, page)] : [];
  return [
    ...scale,
    ...rows.flatMap(({ words, rate }) => [figuresLine(words, rate, widths), ...besideLines(rate, page)]),
  ];
}

interface Widths {
  counts: number;
  picture: number;
}

function countOf({ k, n }: Rate): string {
  return `${k} of ${n}`;
}

function scaleLine({ counts, picture }: Widths, { look }: Page): string {
  const blank = ' '.repeat(2 + TITLE + counts + RATE);
  const middle = Math.floor((picture - 1) / 2);
  const scale = `${pad('0', middle - 1)}50 %`;
  return look.muted(`${blank}${pad('95 %', RANGE)}${pad(scale, picture - 5)}100 %`);
}

function figuresLine({ title }: MeasureWords, one: Rate, { counts, picture }: Widths): string {
  const { rate, low, high } = one;
  const head = `  ${pad(title, TITLE)}`;
  if (rate === null || low === null || high === null) return `${head}nothing to count yet`;
  const figures = `${pad(countOf(one), counts)}${pad(percent(rate), RATE)}${pad(percentRange(low, high), RANGE)}`;
  return `${head}${figures}${picture < PICTURE ? '' : intervalBar({ low, rate, high }, picture)}`.trimEnd();
}

/** What stands beside the rate: whose time is not over, and who cannot be judged. */
function besideLines({ open, outside }: Rate, { width, look }: Page): string[] {
  const beside = stated(
    [open > 0 ? `${open} still open` : null, outside > 0 ? `${outside} not to be judged` : null],
    ', ',
  );
  return beside === '' ? [] : wrap(beside, width - 4).map((line) => look.muted(`    ${line}`));
}
