import type { ComponentChildren } from 'preact';

interface FigureParts {
  title: string;
  /** What the drawing shows, in a sentence, for whoever cannot see it. */
  says: string;
  /**
   * In the drawing's own units; on the page it is as wide as the column. Null: the height is in CSS pixels, and places
   * across are percentages, so that letters stay legible on a narrow screen.
   */
  width: number | null;
  height: number;
  /** The same figures as a table, folded away on the screen; null where a table stands beside it anyway. */
  table: ComponentChildren;
  children: ComponentChildren;
}

/** A drawing under its title, with its words and its table. */
export function Figure({ title, says, width, height, table, children }: FigureParts) {
  return (
    <figure>
      <figcaption>{title}</figcaption>
      <svg {...sizes(width, height)} role="img" aria-label={`${title}. ${says}`}>
        {children}
      </svg>
      {table === null ? null : (
        <details>
          <summary>The figures as a table</summary>
          {table}
        </details>
      )}
    </figure>
  );
}

function sizes(width: number | null, height: number) {
  return width === null ? { style: `height: ${height}px` } : { viewBox: `0 0 ${width} ${height}` };
}
