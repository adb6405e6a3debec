import type { Account } from '../../rules/account/account.ts';
import { accountParts, type Piece } from '../account/sections.ts';
import type { Picture } from '../pictures/picture.ts';
import { documentText } from './document.tsx';
import { PICTURE_STYLE, Pictures } from './pictures.tsx';
import { Table } from './table.tsx';

/** An account as a page: the same words and figures as in Markdown, with its photos. */
export function accountPage(account: Account, pictures: readonly Picture[]): string {
  const { title, opening, sections } = accountParts(account);
  return documentText({
    title,
    style: PICTURE_STYLE + ACCOUNT_STYLE,
    children: (
      <>
        <h1>{title}</h1>
        {opening.map((text, index) => (
          <p class={index === 0 ? 'lead' : 'quiet'}>{text}</p>
        ))}
        {sections.map((section) => (
          <section>
            <h2>{section.title}</h2>
            {section.pieces.map((piece) => (
              <Part piece={piece} />
            ))}
          </section>
        ))}
        <Pictures pictures={pictures} of="The pair, its nest or its young" files={false} />
      </>
    ),
  });
}

const ACCOUNT_STYLE = `
.facts { display: grid; grid-template-columns: max-content 1fr; gap: 0.25rem 1rem; margin: 0; }
.facts dt { color: var(--quiet); white-space: nowrap; }
.facts dd { margin: 0; }
@media (max-width: 30rem) { .facts { grid-template-columns: 1fr; gap: 0; } .facts dd { margin-bottom: 0.5rem; } }
`;

function Part({ piece }: { piece: Piece }) {
  if (piece.kind === 'text') return <p>{piece.text}</p>;
  if (piece.kind === 'table') {
    return <Table caption={null} head={piece.head} rows={piece.rows} right={piece.right} />;
  }
  return (
    <dl class="facts">
      {piece.items.map(({ of, text }) => (
        <>
          <dt>{of}</dt>
          <dd>{text}</dd>
        </>
      ))}
    </dl>
  );
}
