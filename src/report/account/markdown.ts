import type { Account } from '../../rules/account/account.ts';
import type { Picture } from '../pictures/picture.ts';
import { shortDate } from '../terminal/dates.ts';
import { visible } from '../terminal/visible.ts';
import { accountParts, type Piece } from './sections.ts';

/**
 * An account as Markdown (CommonMark, with the tables that forges and forums know). Whatever a keeper wrote is text:
 * no mark in it is taken for markup, no address in it becomes a link.
 */
export function accountMarkdown(account: Account, pictures: readonly Picture[]): string {
  const { title, opening, sections } = accountParts(account);
  const days = [...new Set(pictures.map(({ day }) => shortDate(day, 0)))];
  const blocks = [
    `# ${escaped(title)}`,
    ...opening.map(escaped),
    ...sections.flatMap((section) => [`## ${escaped(section.title)}`, ...section.pieces.map(pieceText)]),
    ...(days.length === 0 ? [] : ['## Photos', `Taken on ${days.join(', ')}.`]),
  ];
  return `${blocks.join('\n\n')}\n`;
}

function pieceText(piece: Piece): string {
  if (piece.kind === 'text') return escaped(piece.text);
  if (piece.kind === 'list')
    return piece.items.map(({ of, text }) => `- ${escaped(of)}: ${escaped(text)}`).join('\n');
  const { head, rows, right } = piece;
  const line = (cells: readonly string[]) => `| ${cells.map(escaped).join(' | ')} |`;
  const rule = `|${head.map((_, column) => (right.includes(column) ? '---:' : '---')).join('|')}|`;
  return [line(head), rule, ...rows.map(line)].join('\n');
}

/** Marks that mean something inside a line, also to the dialects that link mentions, numbers and formulas. */
const MARKS = /[\\`*_[\]<>#|~&@$]/g;
/** Addresses that some dialects link without being asked. */
const ADDRESS = /:(?=\/\/)|(?<=www)\.|(?<=mailto|xmpp):/gi;

/** A text in which nothing is markup. It stands within a line of ours, so that no line begins with it. */
export function escaped(text: string): string {
  return visible(text).trim().replace(MARKS, '\\$&').replace(ADDRESS, '\\$&');
}
