import type { ComponentChildren } from 'preact';

interface TableParts {
  /** What the table holds; read out before it. Null where a heading right above says so. */
  caption: string | null;
  head: readonly ComponentChildren[];
  /** The first cell of a row names it. */
  rows: readonly (readonly ComponentChildren[])[];
  /** Which columns are numbers, from 0. */
  right?: readonly number[];
  /** Which column holds drawings, from 0: it takes what width is left. */
  drawing?: number;
  /** Many columns: a narrow screen leaves the drawings out, which say nothing that the figures do not. */
  wide?: boolean;
  /** So many words in its columns that a narrow screen shows a part at a time; what it is called to be moved to. */
  moved?: string;
}

/** A table that a screen reader can walk through and a printer can break between rows. Nothing without rows. */
export function Table({ caption, head, rows, right = [], drawing, wide = false, moved }: TableParts) {
  if (rows.length === 0) return null;
  const side = (column: number) =>
    right.includes(column) ? 'right' : column === drawing ? 'drawing' : undefined;
  return (
    <div class="table" {...(moved === undefined ? {} : { role: 'region', 'aria-label': moved, tabIndex: 0 })}>
      <table class={wide ? 'wide' : undefined}>
        {caption === null ? null : <caption>{caption}</caption>}
        <thead>
          <tr>
            {head.map((name, column) =>
              name === '' ? (
                <td />
              ) : (
                <th scope="col" class={side(column)}>
                  {name}
                </th>
              ),
            )}
          </tr>
        </thead>
        <tbody>
          {rows.map(([name, ...cells]) => (
            <tr>
              <th scope="row" class={side(0)}>
                {name}
              </th>
              {cells.map((cell, index) => (
                <td class={side(index + 1)}>{cell}</td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}
