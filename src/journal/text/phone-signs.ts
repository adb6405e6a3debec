import type { Finding } from '../../findings/finding.ts';
import type { Lines } from './lines.ts';

/** Blanks that look like any other: nobody sees them, so nothing is said of them. */
const BLANKS = /[\u00a0\u2000-\u200a\u202f\u3000]/g;
const WITH_BLANKS = /[\u00a0\u2000-\u200a\u202f\u3000]/;

/** Lines in which a phone or another keyboard may have put its own signs for those of YAML. */
const LINES = /^(?![ \t]*#).*[\uff0c\uff1a\u2018\u201c-\u201f\u2022\u2013\u2014\u2212*].*$/gm;

/** A dash that a phone made long, or the dot or star of a list of notes. */
const BULLET = /^([ \t]*)([\u2013\u2014\u2212\u2022*])(?=[ \t]+\{)/;

/** A text in the quotes of a keyboard, where YAML would have its own. */
const QUOTES =
  /([[{,:][ \t]*|^[ \t]*(?:-[ \t]+)?)(?:[\u201c-\u201f]([^\u201c-\u201f"\\]*)[\u201c-\u201f]|\u2018([^\u2018\u2019"\\]*)\u2019)(?=[ \t]*(?:[,:\uff0c\uff1a}\]#]|\r?$))/g;

/** From here on a line is quoted, or is the words of a note. */
const LEFT_ALONE = /"|[[{,:][ \t]*'|(?:^|[{, \t])note[ \t]*:[ \t]+(?=[^\u201c-\u201f\u2018\s])/;

/**
 * Reads the signs that a phone or a keyboard of another script puts for those of YAML as these, where they can mean nothing
 * else: each sign is a hint, once a file. Of a line with quotes or a note, all up to them.
 */
export function withoutPhoneSigns(text: string, lines: Lines, findings: Finding[]): string {
  const seen = new Set<string>();
  const tell = (sign: string, meant: string, at: number) => {
    if (!seen.has(sign)) findings.push({ code: 'read-as', at: lines.place(at), args: { key: sign, meant } });
    seen.add(sign);
    return meant;
  };
  const blanked = WITH_BLANKS.test(text) ? text.replace(BLANKS, ' ') : text;
  return blanked.replace(LINES, (line, at: number) => {
    const own = line.search(LEFT_ALONE);
    const head = (own < 0 ? line : line.slice(0, own))
      .replace(BULLET, (_, indent: string, sign: string) => indent + tell(sign, '-', at + indent.length))
      .replace(QUOTES, (all: string, before: string, double?: string, single?: string, offset = 0) => {
        tell(all.charAt(before.length), '"', at + offset + before.length);
        return `${before}"${double ?? single}"`;
      });
    const ours = head
      .replace(/(?<=[\w"][ \t]?)\uff1a/g, (sign, offset: number) => tell(sign, ':', at + offset))
      .replace(/\uff0c/g, (sign, offset: number) =>
        line.includes('{') ? tell(sign, ',', at + offset) : sign,
      );
    return own < 0 ? ours : ours + line.slice(own);
  });
}
