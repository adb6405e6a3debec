import type { RingSize, Rings } from '../../../rules/ahead/rings.ts';
import { count, speciesName } from '../../../words.ts';
import { relativeDay, shortDate, weekdayDate } from '../dates.ts';
import { aside } from '../page.ts';
import { type DatedPage, estimateText, item } from './page.ts';

/** What to order by when, size by size: the most urgent order first. */
export function ringLines(rings: Rings, page: DatedPage): string[] {
  const { wanted, sizes, tooOld, unused } = rings;
  const { look } = page;
  const title = look.heading('Rings');
  if (!wanted) return [title, ...item('This room rings no birds (`ringing: no`).', page)];
  const order = (size: RingSize) => size.orderBy ?? Number.POSITIVE_INFINITY;
  const lines = [
    ...[...sizes].sort((a, b) => order(a) - order(b)).flatMap((size) => sizeLines(size, page)),
    ...(tooOld.length === 0
      ? []
      : item(`Without a ring and too old for a closed one, never force it: ${tooOld.join(', ')}.`, page)),
    ...unusedLines(unused, page),
  ];
  if (lines.length === 0) return [];
  return [title, ...lines, ...closing(rings, page)];
}

function sizeLines(size: RingSize, page: DatedPage): string[] {
  const { species, needed, inHand, chicks, first } = size;
  const { day, look } = page;
  const names = species.map(
    ({ species: name, size: allowed }) =>
      `${speciesName(name)}${allowed === null ? '' : ` ${millimetres(allowed.low)}–${millimetres(allowed.high)}`}`,
  );
  const facts = [
    `${estimateText(needed)} needed${chicks > 0 ? `, ${chicks} of them by chicks in the nests` : ''}`,
    `${inHand} in hand`,
    ...(first === null ? [] : [`the first ${first <= day ? 'now' : `about ${shortDate(first, day)}`}`]),
  ];
  const style = size.late !== null ? look.watch : size.orderBy !== null ? look.task : (text: string) => text;
  return [
    ...item(headOf(size, page), page).map(style),
    ...item(`${names.join(', ')}: ${facts.join('; ')}`, page, 4),
    ...lateLines(size, page),
    ...spareLines(size, page),
  ];
}

/** `2.0`, `2.3`, `2.67`: a tenth at the least. */
function millimetres(mm: number): string {
  const short = mm.toFixed(1);
  return Number(short) === mm ? short : String(mm);
}

function headOf({ mm, order, orderBy, late }: RingSize, { day }: DatedPage): string {
  const size = mm === null ? 'size not in the profile' : `${millimetres(mm)} mm`;
  if (orderBy === null) return `${size}: those in hand will do`;
  if (late === null)
    return `${size}: order ${order} by ${weekdayDate(orderBy, day)} (${relativeDay(orderBy, day)})`;
  return order > 0 ? `${size}: order ${order} today; it is late` : `${size}: too late to order`;
}

function lateLines({ late }: RingSize, page: DatedPage): string[] {
  if (late === null) return [];
  const { arrives, tooLate } = late;
  const arrival = `ordered today they come about ${shortDate(arrives, page.day)}`;
  const lost =
    tooLate.high === 0
      ? 'still in time for chicks that take their usual time'
      : `too big by then for a closed ring: ${estimateText(tooLate)} of them`;
  return item(`${arrival}; ${lost}`, page, 4);
}

function spareLines({ spare }: RingSize, page: DatedPage): string[] {
  return spare.flatMap(({ mm, rings, species }) => {
    const names = species.map(speciesName).join(', ');
    return item(
      `${rings} spare of ${millimetres(mm)} mm in hand would fit too, by the profile: ${names}`,
      page,
      4,
    );
  });
}

function unusedLines(unused: Rings['unused'], page: DatedPage): string[] {
  const some = unused.filter(({ rings }) => rings > 0);
  if (some.length === 0) return [];
  const each = some.map(({ mm, rings }) => `${rings} of ${millimetres(mm)} mm`);
  return item(`In hand and needed for nobody here: ${each.join(', ')}.`, page);
}

function closing({ lead, sooner, sizes }: Rings, page: DatedPage): string[] {
  if (sizes.length === 0) return [];
  const late = sizes.some((size) => size.late !== null)
    ? ' Where an order comes late: another keeper may have some, and a ring is never forced.'
    : '';
  const days = lead.assumed
    ? `\`ring-lead\` is not set in nestlog.yaml: reckoned with ${count(lead.days, 'day')} from ordering to having them`
    : `${count(lead.days, 'day')} from ordering to having them`;
  const stock =
    sooner === null
      ? ''
      : ` That is longer than from sitting to ringing (${sooner.species}: ${sooner.days} d), so keep some in hand before they lay.`;
  return aside(
    `Orders cover nine futures in ten; ${days}.${stock} The leg decides, not the table: sizes as your ring issuer lists them, and where a closed ring is asked for, local rules say which.${late}`,
    page,
  );
}
