import { isError, kindOf } from '../../findings/codes.ts';
import { byPlace, type Finding, type FindingArgs, type Level } from '../../findings/finding.ts';
import { grouped } from '../../grouped.ts';
import { count } from '../../words.ts';
import { excerpt } from './excerpt.ts';
import type { Styles } from './style.ts';
import { visible } from './visible.ts';
import { truncate, widthOf, wrap } from './width.ts';

/** What a list of findings is laid out with. */
interface Layout {
  /** The text of each file of the room, by the name that findings use. */
  sources: Pick<ReadonlyMap<string, string>, 'get'>;
  width: number;
  styles: Styles;
  /** How many findings of one file are shown, errors before hints. */
  perFile: number;
  /** How to type what a fix writes as in a journal, where that was typed; null where it is not text of a journal. */
  typed?: (text: string) => string | null;
}

const INDENT = '  ';
const SUMMARY_LINES = 3;
const LINE_END = /\r\n|\r|\n/;

/** How many findings of a level there are. */
export function countLevel(findings: readonly Finding[], level: Level): number {
  return findings.filter((finding) => kindOf(finding).level === level).length;
}

/**
 * Findings as a compiler prints them: `file:line:column: error: what` at the margin, then, behind blanks, the source
 * line with a marker under the place and the fix. Lines of a fix that are to be pasted are never broken.
 */
export function findingsText(findings: readonly Finding[], layout: Layout): string {
  const blocks: string[] = [];
  for (const [file, ofFile] of grouped([...findings].sort(byPlace), ({ at }) => at.file)) {
    const shown = worst(ofFile, layout.perFile);
    const lines = layout.sources.get(file)?.split(LINE_END) ?? [];
    for (const [index, finding] of shown.entries())
      blocks.push(block(finding, lines[finding.at.line - 1], layout, shown[index - 1]));
    const more = ofFile.length - shown.length;
    if (more > 0) blocks.push(`${layout.styles.place(visible(file))}: and ${more} more`);
  }
  return blocks.map((lines) => `${lines}\n`).join('\n');
}

/**
 * What a morning says of findings, at most three of them, a line each: errors only, as hints can wait for `check`.
 * No lines where there are no errors.
 */
export function findingsSummary(findings: readonly Finding[], width: number, styles: Styles): string[] {
  const summary = errorsOf(findings);
  if (summary === null) return [];
  return [
    ...wrap(summary.head, width).map(styles.error),
    ...summary.lines.map((line) => truncate(`${INDENT}${line}`, width)),
    ...wrap(summary.more, width - INDENT.length).map((line) => INDENT + line),
  ];
}

/** The same in whole lines, or null without an error. */
export function errorsOf(
  findings: readonly Finding[],
): { head: string; lines: string[]; more: string } | null {
  const errors = [...findings].sort(byPlace).filter(isError);
  if (errors.length === 0) return null;
  const files = [...grouped(errors, ({ at }) => at.file).values()];
  const rest = errors.length > SUMMARY_LINES ? `all ${errors.length}` : 'the lines and how to mend them';
  const where = files.length > SUMMARY_LINES ? `, in ${count(files.length, 'file')}` : '';
  return {
    head: `${count(errors.length, 'error')} in the journals, so something may be missing here:`,
    lines:
      errors.length > SUMMARY_LINES && files.length > 1
        ? perFile(files)
        : errors.slice(0, SUMMARY_LINES).map((one) => lineOf(one)),
    more: `nestlog check shows ${rest}${where}`,
  };
}

/** Where there is not room for all, a file a line, those with most errors: it tells whose tasks may be missing. */
function perFile(files: readonly (readonly [Finding, ...Finding[]])[]): string[] {
  const most = [...files].sort((a, b) => b.length - a.length).slice(0, SUMMARY_LINES);
  return files
    .filter((file) => most.includes(file))
    .map(([first, ...others]) => lineOf(first, others.length === 0 ? '' : ` and ${others.length} more`));
}

function lineOf(finding: Finding, more = ''): string {
  return `${placeOf(finding, more)} ${what(finding)}`;
}

/** As many findings as are shown, hints left out first, in the order they were in. */
function worst(findings: Finding[], most: number): Finding[] {
  if (findings.length <= most) return findings;
  const errors = findings.filter(isError);
  const hints = findings.filter((finding) => !isError(finding));
  const kept = new Set([...errors, ...hints].slice(0, most));
  return findings.filter((finding) => kept.has(finding));
}

const placeOf = ({ at }: Finding, more = '') => `${visible(at.file)}:${at.line}:${at.column}${more}:`;

/** The words of a finding, with what the keeper wrote made visible and cut to a length that can be read. */
function what({ code, args }: Finding): string {
  return kindOf({ code }).text(shortened(args, 100));
}

function block(
  finding: Finding,
  source: string | undefined,
  layout: Layout,
  above: Finding | undefined,
): string {
  const { width, styles } = layout;
  const { level } = kindOf(finding);
  const head = `${placeOf(finding)} ${level}: `;
  const [first, ...rest] = wrap(what(finding), width, { hanging: INDENT.length, taken: widthOf(head) });
  return [
    `${styles.place(placeOf(finding))} ${styles[level](`${level}:`)} ${first}`,
    ...rest,
    ...(source === undefined ? [] : marked(finding, source, width, styles)),
    ...fix(finding, layout, above),
  ].join('\n');
}

function marked({ at }: Finding, source: string, width: number, styles: Styles): string[] {
  const number = `${INDENT}${at.line} | `;
  const { line, before, length } = excerpt(source, at.column, at.length, width - number.length);
  const marker = `${' '.repeat(number.length - 2)}| ${' '.repeat(before)}${styles.marker('^'.repeat(length))}`;
  return [`${styles.muted(number)}${line}`.trimEnd(), marker];
}

/**
 * What was probably meant. Lines after a hint's first, and a hint that is an entry, are there to be pasted: where that is
 * what stands above already, mended in all, once.
 */
function fix(finding: Finding, layout: Layout, above: Finding | undefined): string[] {
  const { width } = layout;
  const hint = hintOf(finding, layout);
  if (hint === null) return [];
  if (
    above !== undefined &&
    hint.includes('\n') &&
    above.at.line === finding.at.line &&
    hintOf(above, layout) === hint
  )
    return [`${INDENT}fix: the line above mends this too`];
  const [words = '', ...lines] = /^ *- /.test(hint) ? ['', ...hint.split('\n')] : hint.split('\n');
  const outer = Math.min(...lines.map((line) => line.search(/\S|$/)));
  return [
    ...wrap(`fix: ${words}`, width - INDENT.length, { hanging: 5 }).map((line) => INDENT + line),
    ...lines.map((line) => INDENT + line.slice(outer)),
  ];
}

function hintOf({ code, args }: Finding, { typed }: Layout): string | null {
  const hint = kindOf({ code }).hint(shortened(args, 1000));
  if (hint === null || typed === undefined) return hint;
  const lines = hint.split('\n').map((line) => {
    if (/^ *- /.test(line)) return typed(line) ?? line;
    return line.replace(/`([^`]+)`/g, (quoted, text) => {
      const said = /: ./.test(text) ? typed(text) : null;
      return said === null ? quoted : `\`${said}\``;
    });
  });
  return lines.join('\n');
}

function shortened(args: FindingArgs, most: number): FindingArgs {
  const short = Object.entries(args).map(([name, value]) => [
    name,
    typeof value === 'string' ? truncate(visible(value.slice(0, 4 * most)), most) : value,
  ]);
  return Object.fromEntries(short);
}
