import type { Finding } from '../../findings/finding.ts';
import { CONFLICT_MARK, DOCUMENT_MARK, LONGEST_LINE } from './line-shapes.ts';
import { Lines } from './lines.ts';
import { withoutPhoneSigns } from './phone-signs.ts';

/** A file's text made ready for YAML, character for character as long as the text whose lines are counted. */
export interface Prepared {
  lines: Lines;
  /** The text to parse: what journals do not use is blanked or turned into comments. */
  yaml: string;
}

const BYTE_ORDER_MARK = '\ufeff';
/** What a byte that is no UTF-8 was turned into when the file was read. */
export const LOST = '\ufffd';
const CONFLICTS = new RegExp(`${CONFLICT_MARK.source}.*$`, 'gm');
const DOCUMENT_MARKS = new RegExp(DOCUMENT_MARK.source, 'gm');
const CONTENT = /^[ \t]*[^\s#]/m;

/**
 * Takes out what YAML allows and journals do not (directives, further documents, endless comments), and the marks that git
 * leaves where two people changed one line. Each is a finding; both sides of a conflict are read.
 */
export function prepare(file: string, raw: string, findings: Finding[]): Prepared {
  const unmarked = raw.startsWith(BYTE_ORDER_MARK) ? raw.slice(1) : raw;
  const text = unmarked.includes('\r') ? unmarked.replace(/\r(?!\n)/g, '\n') : unmarked;
  const lines = new Lines(file, text);
  const lost = text.indexOf(LOST);
  if (lost >= 0) findings.push({ code: 'not-utf8', at: lines.place(lost), args: {} });
  return {
    lines,
    yaml: [
      withoutEndlessComments,
      withoutPhoneSigns,
      withoutConflicts,
      withoutDirectives,
      oneDocument,
    ].reduce((made, step) => step(made, lines, findings), text),
  };
}

/**
 * A comment or blanks on a line of their own take no entry with them, however long they are: they become as many line
 * ends, which a parser passes over.
 */
function withoutEndlessComments(text: string, lines: Lines, findings: Finding[]): string {
  if (text.length <= LONGEST_LINE) return text;
  const parts: string[] = [];
  let kept = 0;
  for (let at = 0; at < text.length; ) {
    const end = lines.lineEnd(at);
    if (end - at > LONGEST_LINE && !CONTENT.test(text.slice(at, end))) {
      const first = at + Math.max(0, text.slice(at, end).search(/\S/));
      findings.push({
        code: 'unreadable-lines',
        at: lines.place(first),
        args: { why: 'too-long' },
      });
      parts.push(text.slice(kept, at), '\n'.repeat(end - at));
      kept = end;
    }
    at = text.indexOf('\n', end) + 1 || text.length;
  }
  return parts.join('') + text.slice(kept);
}

/** One finding a conflict, at its first mark. */
function withoutConflicts(text: string, lines: Lines, findings: Finding[]): string {
  const first = ['<<<<<<<', '>>>>>>>'].find((mark) => text.includes(mark));
  if (first === undefined) return text;
  return text.replace(CONFLICTS, (mark, at: number) => {
    if (mark.startsWith(first))
      findings.push({ code: 'conflict-mark', at: lines.place(at, at + 7), args: {} });
    return `#${mark.slice(1)}`;
  });
}

/** Directives can only stand before the document. */
function withoutDirectives(text: string, lines: Lines, findings: Finding[]): string {
  const head: string[] = [];
  let at = 0;
  while (at < text.length) {
    const end = lines.lineEnd(at);
    const next = text.indexOf('\n', end) + 1 || text.length;
    const line = text.slice(at, end);
    if (line.startsWith('%')) {
      findings.push({ code: 'yaml-feature', at: lines.place(at, end), args: { feature: 'directive' } });
      head.push('#', text.slice(at + 1, next));
    } else if (CONTENT.test(line)) break;
    else head.push(text.slice(at, next));
    at = next;
  }
  return head.join('') + text.slice(at);
}

/** A `---` before everything else is blanked; what follows a later one is another document, and is not read. */
function oneDocument(text: string, lines: Lines, findings: Finding[]): string {
  DOCUMENT_MARKS.lastIndex = 0;
  const first = DOCUMENT_MARKS.exec(text);
  if (first === null) return text;
  const opens = !CONTENT.test(text.slice(0, first.index));
  const begun = opens ? `${text.slice(0, first.index)}   ${text.slice(first.index + 3)}` : text;
  const end = opens ? DOCUMENT_MARKS.exec(text) : first;
  if (end === null) return begun;
  if (CONTENT.test(text.slice(end.index + 3))) {
    findings.push({ code: 'several-documents', at: lines.place(end.index, end.index + 3), args: {} });
  }
  return begun.slice(0, end.index);
}
