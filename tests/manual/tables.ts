import { definitions, type TableDefinition } from '../../src/report/tables/definitions.ts';

const tables: Record<string, TableDefinition> = definitions;

const types = { integer: 'whole number', number: 'number', date: 'date', time: 'time' } as const;

/** The tables for other programs, column by column. */
export function tablesPage(): string {
  return `# Tables for other programs

<!-- Made from src/report/tables by \`UPDATE_GOLDEN=1 npx vitest run tests/manual\`: change it there. -->

\`nestlog export TABLE\` prints a table as CSV; \`--format json\` or \`ndjson\` for programs. \`nestlog export --all FOLDER\` writes all of
them, with what their columns hold: [the data package](data-package.md). Dates are ISO dates, times \`HH:MM\`; a cell is empty (null)
where nothing is known. Columns are never renamed or left out.

CSV is as RFC 4180 has it: UTF-8, commas, CR LF, quotes where they are needed.

**Text that a spreadsheet would run.** A note such as \`=2+2\` is a formula to a spreadsheet, and one from somebody else's journal may do
harm. So in CSV an apostrophe stands before text that begins with \`=\`, \`+\`, \`-\`, \`@\`, a tab or a line break (or with apostrophes and
then one of these: they get one more). Take one apostrophe away from such a cell to have the keeper's text; \`nestlog import\` does.
Numbers are never touched, and JSON has the text as it is.

${Object.entries(tables).map(section).join('\n\n')}
`;
}

function section([name, { one, columns, key, references }]: [string, TableDefinition]): string {
  const rows = columns.map(
    ({ name: column, doc, type }) =>
      `| \`${column}\` | ${type === undefined ? 'text' : types[type]} | ${doc} |`,
  );
  const told = key === null ? [] : [`Told apart by ${key.map((column) => `\`${column}\``).join(', ')}.`];
  const names = references.map(({ column, table, its }) => `\`${column}\` → \`${table}.${its}\``);
  const refers = names.length === 0 ? [] : [`Names rows of other tables: ${names.join(', ')}.`];
  return [
    `## \`${name}\``,
    '',
    [`One row ${/^[aeiou]/.test(one) ? 'an' : 'a'} ${one}.`, ...told, ...refers].join(' '),
    '',
    '| column | holds | says |',
    '|---|---|---|',
    ...rows,
  ].join('\n');
}
