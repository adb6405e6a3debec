import type { ComponentChildren, VNode } from 'preact';
import { renderToStaticMarkup } from 'preact-render-to-string';
import { STYLE } from './style.ts';
import { codesWhole, WHOLE_STYLE } from './whole.tsx';

interface DocumentParts {
  title: string;
  /** Rules of this page alone, beside the common ones. */
  style?: string;
  children: ComponentChildren;
}

/**
 * A whole page as one file that needs nothing else: its style is inside, it has no scripts, and its policy lets a
 * browser load nothing but pictures that are part of it.
 */
export function documentText({ title, style = '', children }: DocumentParts): string {
  const page = (
    <html lang="en">
      <head>
        <meta charset="utf-8" />
        <meta name="viewport" content="width=device-width, initial-scale=1" />
        <meta http-equiv="Content-Security-Policy" content={POLICY} />
        <title>{title}</title>
        {/* Our own constants: no word of a keeper's may come here. */}
        <style dangerouslySetInnerHTML={{ __html: `${STYLE}${WHOLE_STYLE}${style}` }} />
      </head>
      <body>
        <main>{children}</main>
      </body>
    </html>
  );
  return `<!doctype html>\n${codesWhole(markupOf(page))}\n`;
}

/** Elements as text; every text inside them is escaped. */
export function markupOf<Props>(node: VNode<Props>): string {
  return renderToStaticMarkup(node);
}

const POLICY =
  "default-src 'none'; style-src 'unsafe-inline'; img-src data:; base-uri 'none'; form-action 'none'";
