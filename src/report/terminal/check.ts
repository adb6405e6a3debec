import type { Finding } from '../../findings/finding.ts';
import { count, stated } from '../../words.ts';
import { countLevel, findingsText } from './findings.ts';
import type { Screen } from './page.ts';
import { styles } from './style.ts';
import { visible } from './visible.ts';
import { wrap } from './width.ts';

/** What was read and what was found in it. */
export interface Checked {
  /** The room's name, or null. */
  room: string | null;
  findings: readonly Finding[];
  /** The text of each file, by the name that findings use. */
  sources: Pick<ReadonlyMap<string, string>, 'get'>;
  pairs: number;
  entries: number;
}

interface CheckOptions extends Screen {
  /** How many findings of one file are shown. */
  perFile: number;
}

/** Every finding with its line and its fix, and what was read in all; a kind word when there is nothing to mend. */
export function checkText(checked: Checked, { width, color, perFile }: CheckOptions): string {
  const { room, findings, sources, pairs, entries } = checked;
  const look = styles(color);
  const read = `${count(pairs, 'pair')} and ${count(entries, 'entry', 'entries')}`;
  if (findings.length === 0) {
    const where = room === null ? '' : ` of ${visible(room)}`;
    return `${wrap(`All is well: ${read}${where} read, and nothing to mend.`, width).join('\n')}\n`;
  }
  const errors = countLevel(findings, 'error');
  const hints = findings.length - errors;
  const counted = [errors > 0 ? count(errors, 'error') : null, hints > 0 ? count(hints, 'hint') : null];
  const files = count(new Set(findings.map(({ at }) => at.file)).size, 'file');
  const summary = `${stated(counted, ' and ')} in ${files}. All else counts: ${read} were read.`;
  const last = wrap(summary, width).map(look.heading).join('\n');
  return `${findingsText(findings, { sources, width, styles: look, perFile })}\n${last}\n`;
}
