import { scalar } from '../../journal/print.ts';
import { dateForm } from './date-forms.ts';
import { decideOrder } from './date-order.ts';
import { type Column, columnsOf, NOTHINGS, type Role, type Stage, stageOf } from './guess-columns.ts';
import type { Table } from './table.ts';
import { plainHeading } from './template.ts';

/**
 * A mapping for a table, as far as its headings and cells tell; the rest is asked in comments. Lines that need an answer
 * are left out by a `#`, so that nothing is imported by a guess that nobody looked at.
 */
export function guessMapping(table: Table): string {
  const columns = columnsOf(table);
  const find = findIn(columns);
  const events = find('event');
  const date =
    find('date') ?? (events === null ? null : (columns.find(({ kind }) => kind === 'dates') ?? null));
  const byEvent = events !== null && date !== null;
  const lines = [
    `# How ${table.file.replace(/\p{C}/gu, ' ')} becomes journals. A guess from its headings: read it line by line.`,
    '# <Heading> stands for the cell of a row; `<Hatched> + 18` for a date counted from another, which the entry will say.',
    byEvent ? 'rows: events' : 'rows: clutches',
    ...dateLines(table, columns),
    ...nothingLines(columns),
    find('pair') === null
      ? '# pair: which column names the pair? pair: <Heading>'
      : `pair: ${hole(find('pair'))}`,
    ...(['species', 'cock', 'hen', 'housing'] as const).flatMap((role) => {
      const column = find(role);
      if (column !== null) return [`${role}: ${hole(column)}`];
      return role === 'species' ? ['# species: of which species are they? species: lavender waxbill'] : [];
    }),
    'log:',
    ...(byEvent ? eventLines(columns, events, date) : clutchLines(columns)),
  ];
  return `${[...lines, ...unreadLines(columns, lines.join('\n'))].join('\n')}\n`;
}

/** Finds the column that plays a part. */
function findIn(columns: readonly Column[]): (role: Role) => Column | null {
  return (role) => columns.find((column) => column.role === role) ?? null;
}

/** Asks for the order of dates, or says what tells it. */
function dateLines(table: Table, columns: readonly Column[]): string[] {
  const dates = columns.flatMap(({ heading, kind, values }) =>
    kind === 'dates'
      ? values.map((text) => ({ row: rowOf(table, heading, text), column: heading, text }))
      : [],
  );
  const forms = dates.map((date) => ({ ...date, form: dateForm(date.text) }));
  const problems: Parameters<typeof decideOrder>[3] = [];
  const { order, because } = decideOrder(table.file, forms, null, problems);
  const serial = forms.find(({ form }) => form.kind === 'serial');
  return [
    ...(order === null ? [] : [`dates: ${order}   # ${because}`]),
    ...problems.map(({ text }) => `# dates: day-first or month-first? ${text}`),
    ...(serial === undefined
      ? []
      : [
          `# excel-dates: 1900 or 1904? ${serial.column} has a spreadsheet's number of a day, ${serial.text}`,
        ]),
  ];
}

function rowOf({ headings, rows }: Table, heading: string, text: string): number {
  const index = headings.findIndex((name) => plainHeading(name) === plainHeading(heading));
  return rows.find(({ cells }) => cells[index] === text)?.number ?? 1;
}

function nothingLines(columns: readonly Column[]): string[] {
  const used = new Set(columns.flatMap(({ values }) => values.filter((value) => NOTHINGS.test(value))));
  return used.size === 0 ? [] : [`nothing: [${[...used].map((word) => JSON.stringify(word)).join(', ')}]`];
}

/** One entry a stage, where there is a date for it. */
function clutchLines(columns: readonly Column[]): string[] {
  const find = findIn(columns);
  const counted = (stage: Stage) => find(`${stage} count`);
  const notes = find('note');
  const lines: string[] = [];
  const put = (stage: Stage, said: string | null, fallback: string | null) => {
    const own = find(`${stage} date`);
    if (own !== null) lines.push(`  - {date: ${hole(own)}, ${said ?? stage}}`);
    else if (said !== null) {
      const date = fallback ?? '<Heading>';
      lines.push('  # No date for it in the table. Is this about right? Then take the # away:');
      lines.push(`  # - {date: ${date}, ${said}}`);
    }
  };
  const after = (stage: Stage, days: number) => {
    const date = find(`${stage} date`);
    return date === null ? null : `${hole(date)} ${days < 0 ? '-' : '+'} ${Math.abs(days)}`;
  };
  const who = (stage: Stage) => (counted(stage) === null ? null : `${stage}: ${hole(counted(stage))}`);
  const pin = find('clutch') === null ? '' : `clutch: ${hole(find('clutch'))}, `;
  const laid = who('laid');
  put('laid', laid === null ? null : `${pin}${laid}`, after('sitting', -1) ?? after('hatched', -14));
  put('sitting', find('sitting date') === null ? null : 'sitting', null);
  const lamp = (['fertile', 'clear'] as const).flatMap((stage) => who(stage) ?? []);
  put('fertile', lamp.length === 0 ? null : `candled: {${lamp.join(', ')}}`, after('sitting', 6));
  put('hatched', who('hatched'), after('sitting', 13));
  put('fledged', who('fledged'), after('hatched', 20));
  put('independent', who('independent'), after('fledged', 20));
  put('died', who('died'), after('hatched', 10));
  const [first] = lines.filter((line) => line.startsWith('  - '));
  if (notes === null || first === undefined) return lines;
  return lines.map((line) =>
    line === first ? line.replace(/\}$/, `, note: "${hole(notes, false)}"}`) : line,
  );
}

/** One entry for each word of the column that says what happened. */
function eventLines(columns: readonly Column[], events: Column, date: Column): string[] {
  const find = findIn(columns);
  const number = find('number');
  const notes = find('note');
  const note = notes === null ? '' : `, note: "${hole(notes, false)}"`;
  return events.values.map((word) => {
    const stage = stageOf(word);
    const when = `when: {${scalar(events.heading)}: ${scalar(word)}}, date: ${hole(date)}`;
    if (stage === null) return `  # Which observation is it?\n  # - {${when}, checked${note}}`;
    const who = number === null ? 'some' : hole(number);
    const said =
      stage === 'sitting'
        ? 'sitting'
        : stage === 'fertile' || stage === 'clear'
          ? `candled: {${stage}: ${who}}`
          : `${stage}: ${who}`;
    return `  - {${when}, ${said}${note}}`;
  });
}

function unreadLines(columns: readonly Column[], mapping: string): string[] {
  const unread = columns.map(({ heading }) => heading).filter((heading) => !mapping.includes(`<${heading}>`));
  return unread.length === 0 ? [] : [`# Not used: ${unread.join(', ').replace(/\p{C}/gu, ' ')}`];
}

/** A column as the mapping names it, in quotes where YAML needs them. */
function hole(column: Column | null, quoted = true): string {
  const text = `<${column?.heading ?? 'Heading'}>`;
  return !quoted || /^<[\p{L}\p{N} _.-]+>$/u.test(text) ? text : JSON.stringify(text);
}
