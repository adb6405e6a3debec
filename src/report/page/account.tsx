import type { Account } from '../../rules/account/account.ts';
import { accountParts, type Piece } from '../account/sections.ts';
import type { Picture } from '../pictures/picture.ts';
import { visibleData } from '../terminal/visible.ts';
import { documentText } from './document.tsx';
import { FACTS_STYLE, Facts } from './facts.tsx';
import { PICTURE_STYLE, Pictures } from './pictures.tsx';
import { Table } from './table.tsx';
import { TIMELINE_STYLE } from './timeline/style.ts';
import { Years } from './years.tsx';

/** An account as a page: the same words and figures as in Markdown, with its photos. */
export function accountPage(account: Account, pictures: readonly Picture[]): string {
  const { title, opening, sections } = accountParts(account);
  return documentText({
    title,
    style: ACCOUNT_STYLE + TIMELINE_STYLE + FACTS_STYLE + PICTURE_STYLE,
    children: (
      <>
        <h1>{title}</h1>
        {opening.map((text, index) => (
          <p class={index === 0 ? 'lead' : 'quiet'}>{text}</p>
        ))}
        <Years clutches={visibleData(account.clutches)} day={account.day} />
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
    const parts = { caption: null, head: piece.head, rows: piece.rows, right: piece.right };
    if (piece.head.length <= MANY) return <Table {...parts} />;
    return (
      <div class="many">
        <Table {...parts} moved="Table, moved sideways on a narrow screen" />
      </div>
    );
  }
  return <Facts items={piece.items} />;
}

/** Columns beyond which a phone shows a part of the table at a time. */
const MANY = 6;

const ACCOUNT_STYLE = '@media screen { .many table { min-width: 46rem; } }';
