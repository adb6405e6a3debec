import { type Day, formatDay } from '../../days.ts';
import { type DateForm, type DateOrder, type SerialSystem, serialDay } from './date-forms.ts';
import { type ImportProblem, problemIn } from './problem.ts';

/** A date of the table, as it stands there. */
export interface WrittenDate {
  row: number;
  /** Headings that it was put together from. */
  column: string;
  text: string;
  form: DateForm;
}

/** How dates of figures are read, and why so; an order of null where none needed one. */
export interface OrderDecision {
  order: DateOrder | null;
  because: string | null;
}

const QUESTION = 'write `dates: day-first` or `dates: month-first` into the mapping';

/**
 * Tells day-first from month-first dates by those that can only be one of them. Where the table does not tell, or tells
 * both, it is asked about: a wrong guess moves every date by months and nobody sees it.
 */
export function decideOrder(
  file: string,
  dates: readonly WrittenDate[],
  said: DateOrder | null,
  problems: ImportProblem[],
): OrderDecision {
  if (said !== null) return { order: said, because: 'as the mapping says' };
  const open = dates.flatMap(({ form, ...written }) =>
    form.kind === 'figures' ? [{ ...written, form }] : [],
  );
  if (open.length === 0) return { order: null, because: null };
  const short = open.find(({ form }) => form.shortYear);
  const dayOnly = open.find(({ form: { days } }) => days['month-first'] === null);
  const monthOnly = open.find(({ form: { days } }) => days['day-first'] === null);
  if (short !== undefined) {
    problems.push(
      asked(file, short, `\`${short.text}\` has a year of two figures, so any part may be the day`),
    );
  } else if (dayOnly !== undefined && monthOnly !== undefined) {
    const other = `\`${dayOnly.text}\` in row ${dayOnly.row} can only be day-first`;
    problems.push(asked(file, monthOnly, `\`${monthOnly.text}\` can only be month-first, but ${other}`));
  } else if (dayOnly !== undefined) return decided('day-first', dayOnly);
  else if (monthOnly !== undefined) return decided('month-first', monthOnly);
  else {
    const [first] = open as [(typeof open)[0]];
    const { 'day-first': one, 'month-first': two } = first.form.days;
    const both = [one, two].map((day) => formatDay(day as Day)).join(' or ');
    problems.push(
      asked(file, first, `\`${first.text}\` may be ${both}, and no date of the table tells which`),
    );
  }
  return { order: null, because: null };
}

function decided(order: DateOrder, { row, column, text }: WrittenDate): OrderDecision {
  return { order, because: `row ${row}, ${column}: ${text} can be nothing else` };
}

function asked(file: string, { row, column }: WrittenDate, text: string): ImportProblem {
  return problemIn(file, { row, column }, text, QUESTION);
}

/** The day that a date means, or what is wrong with it and what would help. */
export function resolveDate(
  { text, form }: Pick<WrittenDate, 'text' | 'form'>,
  order: DateOrder | null,
  serials: SerialSystem | null,
): { day: Day; time: number | null } | { wrong: string; hint: string | null } {
  switch (form.kind) {
    case 'day':
      return { day: form.day, time: form.time };
    case 'serial': {
      if (serials !== null) return { day: serialDay(form.serial, serials), time: null };
      const [early, late] = [serialDay(form.serial, '1900'), serialDay(form.serial, '1904')].map(formatDay);
      return {
        wrong: `${text} looks like a spreadsheet's number of a day: ${early}, or ${late} in a file from an old Mac`,
        hint: 'give the column a date format and save again, or write `excel-dates: 1900` (or 1904) into the mapping',
      };
    }
    case 'figures': {
      if (order === null) return { wrong: `\`${text}\` can be read in more than one way`, hint: QUESTION };
      const day = form.days[order];
      if (day !== null) return { day, time: null };
      const others = Object.values(form.days).flatMap((other) => (other === null ? [] : [formatDay(other)]));
      return { wrong: `\`${text}\` is no date when read ${order}`, hint: `is it ${others.join(' or ')}?` };
    }
    case 'impossible':
      return { wrong: `the calendar has no day \`${text}\``, hint: 'write it as YYYY-MM-DD' };
    case 'unreadable':
      return { wrong: `\`${text}\` is no date`, hint: helpFor(text) };
  }
}

/** What a spreadsheet shows of a date in its shorter formats: `3-May`, `3.5.`, `May-26`. */
function helpFor(text: string): string {
  const noYear = /^\d{1,2}(?:[-. ]+[a-z]{3,}|[-/. ] ?\d{1,2})\.?$/i.test(text);
  if (!noYear && !/^[a-z]{3,}[-. ]+(?:\d{2}|\d{4})$/i.test(text))
    return 'write it as YYYY-MM-DD, or leave the cell empty';
  const part = noYear ? 'year' : 'day';
  return `the ${part} is missing: give the column a date format that shows it and save again, or write YYYY-MM-DD`;
}
