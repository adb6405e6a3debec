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
  /**
   * Many columns: a narrow screen leaves the drawings out, which say nothing that the figures do not, and the rest is
   * scrolled, by keys as well.
   */
  wide?: boolean;
}

/** A table that a screen reader can walk through and a printer can break between rows. Nothing without rows. */
export function Table({ caption, head, rows, right = [], drawing, wide = false }: TableParts) {
  if (rows.length === 0) return null;
  const side = (column: number) =>
    right.includes(column) ? 'right' : column === drawing ? 'drawing' : undefined;
  return (
    <div class="table" tabIndex={wide ? 0 : undefined}>
      <table class={wide ? 'wide' : undefined}>
        {caption === null ? null : <caption>{caption}</caption>}
        <thead>
          <tr>
            {head.map((name, column) => (
              <th scope="col" class={side(column)}>
                {name}
              </th>
            ))}
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
