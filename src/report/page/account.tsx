import type { Account } from '../../rules/account/account.ts';
import { accountParts, type Piece } from '../account/sections.ts';
import type { Picture } from '../pictures/picture.ts';
import { documentText } from './document.tsx';
import { FACTS_STYLE, Facts } from './facts.tsx';
import { PICTURE_STYLE, Pictures } from './pictures.tsx';
import { Table } from './table.tsx';

/** An account as a page: the same words and figures as in Markdown, with its photos. */
export function accountPage(account: Account, pictures: readonly Picture[]): string {
  const { title, opening, sections } = accountParts(account);
  return documentText({
    title,
    style: PICTURE_STYLE + FACTS_STYLE,
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

function Part({ piece }: { piece: Piece }) {
  if (piece.kind === 'text') return <p>{piece.text}</p>;
  if (piece.kind === 'table') {
    return <Table caption={null} head={piece.head} rows={piece.rows} right={piece.right} />;
  }
  return <Facts items={piece.items} />;
}
