import type { RingSize, Rings } from '../../../rules/ahead/rings.ts';
import { relativeDay, shortDate, weekdayDate } from '../dates.ts';
import { count } from '../words.ts';
import { estimateText, indented, type Page } from './page.ts';

/** What to order by when, size by size: the most urgent order first. */
export function ringLines(rings: Rings, page: Page): string[] {
  const { wanted, sizes, tooOld, unused } = rings;
  const { look } = page;
  const title = look.heading('Rings');
  if (!wanted) return [title, ...indented('This room rings no birds (`ringing: no`).', page)];
  const order = (size: RingSize) => size.orderBy ?? Number.POSITIVE_INFINITY;
  const lines = [
    ...[...sizes].sort((a, b) => order(a) - order(b)).flatMap((size) => sizeLines(size, page)),
    ...(tooOld.length === 0
      ? []
      : indented(`Without a ring and too old for a closed one, never force it: ${tooOld.join(', ')}.`, page)),
    ...unusedLines(unused, page),
  ];
  if (lines.length === 0) return [];
  return [title, ...lines, ...closing(rings, page)];
}

function sizeLines(size: RingSize, page: Page): string[] {
  const { species, needed, inHand, chicks, first } = size;
  const { day, look } = page;
  const names = species.map(
    ({ species: name, size: allowed }) =>
      `${name ?? 'species not recorded'}${allowed === null ? '' : ` ${allowed.low}–${allowed.high}`}`,
  );
  const facts = [
    `${estimateText(needed)} needed`,
    ...(chicks > 0 ? [`${chicks} of them in the nests`] : []),
    `${inHand} in hand`,
    ...(first === null ? [] : [`the first about ${shortDate(first, day)}`]),
  ];
  const style = size.late !== null ? look.watch : size.order > 0 ? look.task : (text: string) => text;
  return [
    ...indented(headOf(size, page), page).map(style),
    ...indented(`${names.join(', ')}: ${facts.join(', ')}`, page, 4),
    ...lateLines(size, page),
    ...spareLines(size, page),
  ];
}

function headOf({ mm, order, orderBy, late }: RingSize, { day }: Page): string {
  const size = mm === null ? 'Size not in the profile' : `${mm.toFixed(1)} mm`;
  if (order === 0) return `${size}: those in hand will do`;
  if (orderBy === null || late !== null) return `${size}: order ${order} today, which is late`;
  return `${size}: order ${order} by ${weekdayDate(orderBy, day)} (${relativeDay(orderBy, day)})`;
}

function lateLines({ late }: RingSize, page: Page): string[] {
  if (late === null) return [];
  const { arrives, tooLate } = late;
  const arrival = `Ordered today they come about ${shortDate(arrives, page.day)}`;
  const lost =
    tooLate.high === 0
      ? 'in time if the chicks take their usual time'
      : `by then ${estimateText(tooLate)} of the chicks will be too big for a closed ring`;
  return indented(`${arrival}: ${lost}. Another keeper may have some; never force a ring.`, page, 4);
}

function spareLines({ spare }: RingSize, page: Page): string[] {
  if (spare.length === 0) return [];
  const each = spare.map(({ mm, rings }) => `${rings} of ${mm.toFixed(1)} mm`);
  return indented(`The profile would also allow what is spare in hand: ${each.join(', ')}.`, page, 4);
}

function unusedLines(unused: Rings['unused'], page: Page): string[] {
  const some = unused.filter(({ rings }) => rings > 0);
  if (some.length === 0) return [];
  const each = some.map(({ mm, rings }) => `${rings} of ${mm.toFixed(1)} mm`);
  return indented(`In hand and needed for nobody here: ${each.join(', ')}.`, page);
}

function closing({ lead, sizes }: Rings, page: Page): string[] {
  if (sizes.length === 0) return [];
  const days = lead.assumed
    ? `\`ring-lead\` is not set in nestlog.yaml: reckoned with ${count(lead.days, 'day')} from ordering to having them`
    : `${count(lead.days, 'day')} from ordering to having them`;
  return indented(
    `Orders cover nine futures in ten; ${days}. The leg decides, not the table: sizes as your ring issuer lists them, and where a closed ring is asked for, local rules say which.`,
    page,
    2,
    0,
  ).map(page.look.muted);
}
