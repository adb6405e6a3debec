import { birdColumns } from '../../src/report/tables/birds.ts';
import { chickColumns } from '../../src/report/tables/chicks.ts';
import { clutchColumns } from '../../src/report/tables/clutches.ts';
import { eggColumns } from '../../src/report/tables/eggs.ts';
import { rateColumns } from '../../src/report/tables/rates.ts';

const tables: Record<string, { one: string; columns: readonly { name: string; doc: string }[] }> = {
  birds: { one: 'bird', columns: birdColumns },
  eggs: { one: 'egg', columns: eggColumns },
  chicks: { one: 'chick', columns: chickColumns },
  clutches: { one: 'clutch', columns: clutchColumns },
  rates: { one: 'rate of a season, a species or a pair', columns: rateColumns },
};

/** The tables for other programs, column by column. */
export function tablesPage(): string {
  return `# Tables for other programs

<!-- Made from src/report/tables by \`UPDATE_GOLDEN=1 npx vitest run tests/manual\`: change it there. -->

\`nestlog export TABLE\` prints a table as CSV; \`--format json\` or \`ndjson\` for programs. Dates are ISO dates; a cell is empty (null)
where nothing is known. Columns are never renamed or left out.

${Object.entries(tables).map(section).join('\n\n')}
`;
}

function section([name, { one, columns }]: [string, (typeof tables)[string]]): string {
  const rows = columns.map((column) => `| \`${column.name}\` | ${column.doc} |`);
  return [`## \`${name}\``, '', `One row a ${one}.`, '', '| column | says |', '|---|---|', ...rows].join(
    '\n',
  );
}
